"""The two ends of a link: power, sensitivity, loss of box and plate, and whether it repeats."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Form, Stated, Supply
from secondfix.findings import Look
from secondfix.house import Box, Place, Schedule, model_look, plate_look, settled, shell_look
from secondfix.radio.surfaces import NOT_DRAWN_DB
from secondfix.terms import Finish, PlateMaterial, ShellMaterial

REPEATS = "repeats"  # field of the look that asks whether a device repeats

Three = tuple[float, float, float]  # most favourable, assumed, least favourable
Around = tuple[Three, tuple[Look, ...], tuple[str, ...]]  # loss in dB, what would settle it, what it leans on

_LUMINAIRE, _PLASTIC, _METAL = "radio_luminaire_db", "radio_plastic_box_db", "radio_metal_box_db"
_SHELLS: dict[ShellMaterial | None, tuple[str, ...]] = {
    ShellMaterial.PLASTIC: (_PLASTIC,),
    ShellMaterial.METAL: (_METAL,),
    None: (_PLASTIC, _METAL),
}


@dataclass(frozen=True, slots=True)
class Station:
    """One end: a device, or a network's controller (``id`` is then the network's id).

    Powers in dBm and ``loss_db`` of what surrounds it, each in three readings; ``looks`` would settle
    what is unknown of it; ``assumptions`` stand for what is not stated. ``repeats`` of a controller is yes;
    ``supposed``: it stands there in a case alone.
    """

    id: str
    place: str
    power_dbm: Three
    sensitivity_dbm: Three
    loss_db: Three
    repeats: Stated
    plugged: bool
    looks: tuple[Look, ...] = ()
    assumptions: tuple[str, ...] = ()
    supposed: bool = False

    def may_repeat(self, reading: int) -> bool:
        """Whether it repeats in a reading: not stated counts as yes in the most favourable one only."""
        return self.repeats is Stated.YES or (self.repeats is Stated.NOT_STATED and reading == 0)


def controller(rows: Schedule, network_id: str, place: str, assumptions: Assumptions) -> Station:
    """The controller of a network as a station."""
    network = rows.house.networks[network_id]
    power, sensitivity = network.transmit_power_dbm, network.sensitivity_dbm
    loss, looks, leans = _surroundings(rows, place, assumptions)
    unknown = [
        Look(place, f"networks.{network_id}.{field}", f"the {words} of the controller of {network.name}")
        for field, words, value in (
            ("transmit_power_dbm", "transmit power", power),
            ("sensitivity_dbm", "sensitivity", sensitivity),
        )
        if value is None
    ]
    return Station(
        network_id,
        place,
        _power(power, assumptions),
        _sensitivity(sensitivity, assumptions),
        loss,
        Stated.YES,
        plugged=False,
        looks=(*looks, *unknown),
        assumptions=(*leans, *_not_stated(power, sensitivity)),
    )


def station(rows: Schedule, device_id: str, assumptions: Assumptions) -> Station:
    """A device as a station."""
    place = rows.place_of_device(device_id)
    model = rows.model_of(device_id)
    loss, looks, leans = _surroundings(rows, place, assumptions)
    if model and place in rows.house.places and model.form in {Form.CEILING_MODULE, Form.BOARD_MODULE}:
        loss, looks, leans = _built_in(model.form, place, assumptions)
    repeats = _repeats(rows, device_id)
    unknown = [] if model else [model_look(device_id)]
    if repeats is Stated.NOT_STATED:
        name = model.title if model else device_id
        unknown.append(Look(place, REPEATS, f"whether {name} repeats for others"))
    spot = rows.house.places.get(place)
    power = model.transmit_power_dbm if model else None
    sensitivity = model.sensitivity_dbm if model else None
    return Station(
        device_id,
        place,
        _power(power, assumptions),
        _sensitivity(sensitivity, assumptions),
        loss,
        repeats,
        plugged=model.form is Form.PLUG_IN if model else spot is not None and spot.kind == "socket",
        looks=(*looks, *unknown),
        assumptions=(*leans, *_not_stated(power, sensitivity)),
    )


def link_look(place: str) -> Look:
    """The measurement that settles a link which no survey of walls and boxes decides."""
    return Look(place, "radio", f"measure the link of {place} with its plate or cover fitted")


def _repeats(rows: Schedule, device_id: str) -> Stated:
    """Only a mains-powered device repeats, and only if its sheet (or the survey) says so."""
    device, model = rows.house.devices[device_id], rows.model_of(device_id)
    if model:
        return Stated.NO if model.supply is Supply.BATTERY else model.repeats
    source, told = settled(device.power_source), settled(device.repeats)
    if source == "battery" or told is False:
        return Stated.NO
    return Stated.YES if source == "mains" and told else Stated.NOT_STATED


def _power(stated_dbm: int | None, assumptions: Assumptions) -> Three:
    if stated_dbm is not None:
        return float(stated_dbm), float(stated_dbm), float(stated_dbm)
    low, value, high = assumptions.span("radio_transmit_power_dbm")
    return float(high), float(value), float(low)


def _sensitivity(stated_dbm: int | None, assumptions: Assumptions) -> Three:
    if stated_dbm is not None:
        return float(stated_dbm), float(stated_dbm), float(stated_dbm)
    low, value, high = assumptions.span("radio_sensitivity_dbm")
    return float(low), float(value), float(high)


def _not_stated(power_dbm: int | None, sensitivity_dbm: int | None) -> Iterator[str]:
    if power_dbm is None:
        yield "radio_transmit_power_dbm"
    if sensitivity_dbm is None:
        yield "radio_sensitivity_dbm"


def _surroundings(rows: Schedule, place: str, assumptions: Assumptions) -> Around:
    box = rows.house.boxes.get(place)
    if box is None:
        return _spot_loss(rows.house.places[place], assumptions)
    looks = tuple(_box_looks(place, box))
    return _box_loss(box, assumptions, closed=_may_be_closed(box)), looks, _SHELLS[settled(box.shell)]


def _built_in(form: Form, place: str, assumptions: Assumptions) -> Around:
    """A module above a ceiling is as one at a luminaire; a distribution board may be plastic or metal."""
    if form is Form.CEILING_MODULE:
        low, value, high = assumptions.span(_LUMINAIRE)
        return (float(low), float(value), float(high)), (), (_LUMINAIRE,)
    plastic, metal = assumptions.span(_PLASTIC), assumptions.span(_METAL)
    loss = float(min(plastic[0], metal[0])), float(metal[1]), float(max(plastic[2], metal[2]))
    return loss, (link_look(place),), _SHELLS[None]


def _spot_loss(spot: Place, assumptions: Assumptions) -> Around:
    if spot.kind != "light_point":
        return (0.0, 0.0, 0.0), (), ()
    low, value, high = assumptions.span(_LUMINAIRE)
    return (float(low), float(value), float(high)), (), (_LUMINAIRE,)


def _may_be_closed(box: Box) -> bool:
    """A metal plate or foil wallpaper closes the opening; not known may be either."""
    plate, finish = settled(box.plate), settled(box.finish)
    return plate in (None, PlateMaterial.METAL) or finish in (None, Finish.FOIL_PAPER)


def _box_loss(box: Box, assumptions: Assumptions, *, closed: bool) -> Three:
    plastic, metal = assumptions.span(_PLASTIC), assumptions.span(_METAL)
    shell = settled(box.shell)
    low, value, high = {
        ShellMaterial.PLASTIC: plastic,
        ShellMaterial.METAL: metal,
        None: (min(plastic[0], metal[0]), max(plastic[2], metal[2]), max(plastic[2], metal[2])),
    }[shell]
    if closed:
        return float(low), NOT_DRAWN_DB, NOT_DRAWN_DB
    return float(low), float(value), float(high)


def _box_looks(place: str, box: Box) -> Iterator[Look]:
    if settled(box.shell) is None:
        yield shell_look(place)
    if settled(box.plate) is None:
        yield plate_look(place)
    if settled(box.finish) is None:
        yield Look(place, "finish", f"what the wall around {place} is finished with, foil above all")
    if settled(box.plate) is PlateMaterial.METAL or settled(box.finish) is Finish.FOIL_PAPER:
        yield link_look(place)
