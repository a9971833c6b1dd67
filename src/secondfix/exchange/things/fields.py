"""Every kind of thing with what may be filled in of it."""

from secondfix.exchange.things.field import Field, ThingKind
from secondfix.exchange.things.of_building import OF_BUILDING
from secondfix.exchange.things.of_loads import LOAD_KIND
from secondfix.exchange.things.of_networks import OF_NETWORKS
from secondfix.house import House, is_nec

KINDS = {k.name: k for k in (*OF_BUILDING, LOAD_KIND, *OF_NETWORKS)}


def fields_of(kind: ThingKind, house: House) -> tuple[Field, ...]:
    """The fields of a kind in a house: what only one world asks stays away from the other."""
    world = "nec" if is_nec(house) else "iec" if house.wiring_rules is not None else ""
    return tuple(f for f in kind.fields if not world or f.only in {"", world})


def kind_of(house: House, thing_id: str) -> ThingKind | None:
    """The kind of a thing that stands in the house; None where none has this id."""
    return next((k for k in KINDS.values() if thing_id in (getattr(house, k.collection, None) or {})), None)
