"""Reconcile: a controller's device list held against a house, or a house begun from it."""

from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace

from secondfix import exchange, maintenance, naming
from secondfix.catalogue import Model
from secondfix.house import Fault, House, schedule
from secondfix.journal import Journal, as_built
from secondfix.maintenance import CANNOT_TELL, FAULTS, Begun, Reconciled


@dataclass(frozen=True, slots=True)
class Held:
    """What the list and the house say of each other; ``told`` is everything about reading the list."""

    found: Reconciled
    told: tuple[str, ...]


def columns_of(data: bytes, *, where: str, mapping: exchange.Mapping | None) -> exchange.Table | list[Fault]:
    """The table of a list, for a person who is to map its columns."""
    return exchange.read_list(
        data,
        where=where,
        delimiter=mapping.delimiter if mapping else None,
        encoding=mapping.encoding if mapping else None,
        sheet=mapping.sheet if mapping else None,
    )


def reconcile(
    house: House,
    journal: Journal,
    data: bytes,
    *,
    where: str,
    mapping: exchange.Mapping,
    models: Mapping[str, Model],
) -> Held | list[Fault]:
    """Hold a list against the house as its journal found it."""
    rows = _rows(data, where, mapping, {**models, **house.models})
    if isinstance(rows, list):
        return rows
    if mapping.network is not None and mapping.network not in house.networks:
        return [Fault("mapping", "network", f"'{mapping.network}'", "a network of this house")]
    built = as_built(house, journal, models=models)
    book = schedule(built.house, built.house.models)
    found = maintenance.reconcile(book, built.folded, naming.names(book), rows[0], network=mapping.network)
    return Held(found, tuple(rows[1]))


def begin_house(
    data: bytes,
    *,
    where: str,
    mapping: exchange.Mapping,
    models: Mapping[str, Model],
    house_id: str,
    name: str,
) -> Begun | list[Fault]:
    """A house from a list: rooms and devices first, boxes to be surveyed."""
    if mapping.protocol is None:
        return [Fault("mapping", "protocol", "nothing", "the protocol that the devices of the list speak")]
    rows = _rows(data, where, mapping, models)
    if isinstance(rows, list):
        return rows
    begun = maintenance.begin_from(
        rows[0],
        house_id=house_id,
        name=name,
        network_name=mapping.network_name or "Network of the list",
        protocol=mapping.protocol,
        models=models,
    )
    return begun if isinstance(begun, list) else replace(begun, told=(*rows[1], *begun.told))


def _rows(
    data: bytes, where: str, mapping: exchange.Mapping, models: Mapping[str, Model]
) -> tuple[list[maintenance.ListRow], list[str]] | list[Fault]:
    table = columns_of(data, where=where, mapping=mapping)
    return table if isinstance(table, list) else exchange.mapped(table, mapping, models)


def exit_code(held: Held) -> int:
    """1 where something is to be mended, 3 where something cannot be told, else 0."""
    kinds = {d.unlike for d in held.found.differences}
    if kinds & FAULTS:
        return 1
    return 3 if kinds & CANNOT_TELL else 0


def held_as_json(held: Held) -> dict[str, object]:
    """``differences`` with the step that mends each (docs/json.md)."""
    return {
        "rows": held.found.rows,
        "agreed": held.found.agreed,
        "told": list(held.told),
        "differences": [
            {
                "kind": d.unlike.value, "row": d.row, "device": d.device, "entry": d.number, "says": d.says,
                "step": d.step, "writes": None if d.entry is None else asdict(d.entry),
            }
            for d in held.found.differences
        ],
    }  # fmt: skip
