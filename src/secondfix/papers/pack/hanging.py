"""The page of this house for when a switch fails: which one it is, what hangs on it, what to have at hand."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from secondfix.house import House, Schedule, is_nec
from secondfix.joining import before_boxes
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    beside,
    cautions,
    column,
    heading,
    ident,
    para,
    soft,
    steps,
    strong,
    table,
    write_on,
)
from secondfix.papers.places import device_words, thing_words
from secondfix.papers.words import counted
from secondfix.scenes import CrossingKind, Resolution, resolve
from secondfix.terms import said

_MOST_ALSO = 3  # models beside the one fitted that a row names
_HALVES_FROM = 12  # devices from which the table is set in two halves


@dataclass(frozen=True, slots=True)
class Hanging:
    """What other answers know of each device: whom it carries by radio, which models would fit its place.

    ``fits`` lists models best first; a device without a key there was not asked about.
    """

    carries: Mapping[str, tuple[str, ...]]
    fits: Mapping[str, tuple[str, ...]]


_TELL = (
    "Write down what is dead: which buttons, which lamps, which names in the controller. Try each from "
    "another place too.",
    "All that is dead belongs to one row of the table: it is that device. Its plate bears the number of the "
    "box in the room elevations.",
    "It belongs to several rows of one circuit: look at the board first; no switch may have failed.",
    "It belongs to rows that one device carries by radio: see whether that device still has power.",
    "The whole of one network is dead: look at its controller.",
    "A name alone tells nothing: names may have been changed. Where the house's file is at hand, "
    "'secondfix swap HOUSE --silent ENTRY' says which device it is.",
)
_SAY_FIT = (
    "Would also fit means that no rule speaks against the model at the place. What scenes and names would "
    "lose is another question: ask 'secondfix swap HOUSE PLACE MODEL' before it is bought."
)


def hanging_sheet(schedule: Schedule, hanging: Hanging | None, number: str) -> Sheet:
    """How to tell which device it is, spares, whom to call; then a row for each device. One or two pages."""
    house = schedule.house
    nec = is_nec(house)
    blocks: list[Block] = [
        cautions(before_boxes(house)[0].words, []),
        write_on(["Whom to call", "Telephone", "Who keeps the key ring", "Where spares lie"]),
        beside(
            [heading("Which device is it?"), steps([said(w, nec=nec) for w in _TELL])],
            [heading("What to have at hand"), *_spares(schedule, hanging)],
            shares=(1, 1.7),
        ),
        heading("What hangs on each"),
        *_legend(house),
        *_devices(schedule, hanging),
    ]
    says = "The numbers of this house, for whoever stands before a switch that does nothing."
    return Sheet(number, "When a switch fails: this house", says, blocks)


def _spares(schedule: Schedule, hanging: Hanging | None) -> Iterator[Block]:
    """A row for each model: how many stand, where, what else would fit there, room for the shelf."""
    of_model: dict[str, list[str]] = {}
    for device_id, device in schedule.house.devices.items():
        of_model.setdefault(device.model or "", []).append(device_id)
    rows: list[list[Cell]] = [
        [
            strong(device_words(schedule, own[0]).partition(",")[0]),
            soft(model),
            str(len(own)),
            ", ".join(own),
            _also(model, own, hanging),
            "",
        ]
        for model, own in of_model.items()
        if model
    ]
    heads = [
        column("Model", fr=1.2),
        column("Edition", fr=1.2),
        column("Stand", mm=12, align="right"),
        column("Devices", fr=1.4),
        column("Would also fit", fr=1.6),
        column("Spare", mm=14),
    ]
    yield table(heads, rows, dense=True) if rows else para("No model is chosen.")
    yield para(_SAY_FIT, style="small")


def _also(model: str, devices: Sequence[str], hanging: Hanging | None) -> Cell:
    """The models that fit at most of these places, with at how many where it is not all."""
    asked = [d for d in devices if hanging is not None and d in hanging.fits]
    if hanging is None or not asked:
        return soft("not asked")
    found = Counter(key for d in asked for key in hanging.fits[d] if key != model)
    named = [
        key if n == len(asked) else f"{key} (at {n} of {len(asked)})"
        for key, n in found.most_common(_MOST_ALSO)
    ]
    return ", ".join(named) or soft("none of the models at hand")


def _legend(house: House) -> Iterator[Block]:
    if house.scenes:
        named = "; ".join(f"{key} {scene.name}" for key, scene in house.scenes.items())
        yield para(f"Scenes: {named}.", style="small")
    if house.outside_uses:
        uses = "; ".join(f"{key} ({u.kind}): {u.words}" for key, u in house.outside_uses.items())
        yield para(f"Uses that the house does not own, to ask about first: {uses}", style="small")


def _devices(schedule: Schedule, hanging: Hanging | None) -> Iterator[Block]:
    house, resolutions = schedule.house, resolve(schedule)
    rows: list[list[Cell]] = []
    ordered = sorted(house.devices, key=lambda d: _order(house, d))
    for device_id in ordered:
        device = house.devices[device_id]
        own = [c.row for c in schedule.channels_of[device_id] if c.row]
        circuits = dict.fromkeys(r.gang.line.value for r in own if r.gang.line)
        rows.append(
            [
                thing_words(house, schedule.place_of_device(device_id)),
                ident(device_id),
                " ".join(circuits),
                "; ".join(_hangs(schedule, resolutions, device_id, hanging)) or soft("nothing in the book"),
                device.code_ref or "",
            ]
        )
    heads = [
        column("Where", fr=1.1),
        column("Device", mm=14),
        column("Circuit", mm=14),
        column("What hangs on it", fr=1.9),
        column("Code", mm=12),
    ]
    half = -(-len(rows) // 2) if len(rows) > _HALVES_FROM else len(rows)
    if not rows:
        yield para("No device is chosen.")
    elif half == len(rows):
        yield table(heads, rows, dense=True)
    else:
        yield beside(
            [table(heads, rows[:half], dense=True)], [table(heads, rows[half:], dense=True)], shares=(1, 1)
        )
    if hanging is None:
        yield para("Who is carried by whom was not asked of radio.", style="small")
    yield para(
        f"Codes stand on the key ring alone; here are their references ({_refs(house)}).", style="small"
    )


def _order(house: House, device_id: str) -> tuple[bool, int]:
    """Boxes in the document's order, then places."""
    device = house.devices[device_id]
    if device.box:
        return False, list(house.boxes).index(device.box)
    return True, list(house.places).index(device.place or "")


def _refs(house: House) -> str:
    missing = sum(d.code_ref is None for d in house.devices.values())
    have = len(house.devices) - missing
    return f"{counted(have, 'device')} with one, {missing} without"


def _hangs(
    schedule: Schedule, resolutions: Sequence[Resolution], device_id: str, hanging: Hanging | None
) -> Iterator[str]:
    """Scenes that command it, scenes it starts, extension units, devices carried, uses of others."""
    house, device = schedule.house, schedule.house.devices[device_id]
    reached = {CrossingKind.SWITCHED, CrossingKind.CONFLICT}
    used = [
        r.scene_id
        for r in resolutions
        if any(c.device_id == device_id and c.kind in reached for c in r.crossings.values())
    ]
    if used:
        yield f"scenes {' '.join(used)}"
    gangs = [f"{device.box}.{slot}" for slot in device.gangs]
    started = [
        key
        for key, scene in house.scenes.items()
        if any(s.gang in gangs or s.device == device_id for s in scene.starts)
    ]
    if started:
        yield f"starts {' '.join(started)}"
    extended = [other for gang in gangs for other in schedule.extended_by.get(gang, ())]
    if extended:
        yield f"extended by {' '.join(extended)}"
    carried = hanging.carries.get(device_id, ()) if hanging else ()
    if carried:
        yield f"carries {' '.join(carried)}"
    uses = [key for key, use in house.outside_uses.items() if use.device == device_id]
    if uses:
        yield f"used by {' '.join(uses)}"
