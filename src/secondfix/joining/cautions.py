"""The cautions of one device where it stands.

The words tell what to do; none of them calls anything free of danger. Sources as named beside each;
the wording is ours. Local code and a licensed person always decide.
"""

from collections.abc import Iterator
from dataclasses import replace

from secondfix.catalogue import Form, Output, Stated
from secondfix.house import EARTH, Box, House, Load, Schedule, is_nec, settled
from secondfix.joining.circuits import feed_of, is_wired
from secondfix.joining.fronts import joined_on_bench
from secondfix.joining.usual_cautions import CP, Caution, before_boxes, to_mind
from secondfix.joining.wording import LIVE_UNTIL_PROVED, circuits_words
from secondfix.terms import PURPOSES, PlateMaterial, Purpose, ShellMaterial, UnattendedOn, said

_LIVE = Caution(
    "live_front",
    "Live parts can be touched with this front off. Isolate, lock off, prove dead before the front "
    "comes off.",
    "maker's data sheet",
)
_LIVE_NOT_STATED = Caution(
    "live_front",
    "The maker does not state whether live parts can be touched with this front off: take it that they can. "
    "Isolate, lock off, prove dead before the front comes off.",
    CP,
)
_BENCH = Caution(
    "joined_front_off",
    "Its gesture wants the front off and power on, and live parts can then be touched: not in the wall box. "
    "Join it before fitting, on a bench, by a person authorised for live work under local code; keep "
    "everybody else away.",
    CP,
)
_BATHROOM = Caution(
    "bathroom_here",
    "This room is tagged as wet: look up its zones before fitting anything.",
    "IEC 60364-7-701; BS 7671 section 701 (secondary)",
)
_BATHROOM_NEC = Caution(
    "bathroom_here",
    "This room is tagged as wet: look up what local code allows in tub and shower spaces before fitting "
    "anything.",
    "NEC 404.4 (from memory)",
)
HEATERS = frozenset(
    {
        Purpose.HEATER_PORTABLE,
        Purpose.HEATER_RADIANT,
        Purpose.HEATER_FIXED,
        Purpose.WATER_HEATER,
        Purpose.SAUNA,
        Purpose.COOKING,
    }
)
WET_TAGS = frozenset({"bath", "bathroom", "shower", "wet"})


def cautions_for(schedule: Schedule, device_id: str) -> tuple[Caution, ...]:
    """The cautions of one device where it stands, most pressing first; not those of every job.

    Not stated and not known count as the worse answer. A battery or plug-in device away from
    conductors has those of its loads and its room only.
    """
    return tuple(_cautions(schedule, device_id))


def _cautions(schedule: Schedule, device_id: str) -> Iterator[Caution]:
    house = schedule.house
    place = schedule.place_of_device(device_id)
    wired = is_wired(schedule, device_id)
    if wired:
        yield from _of_front(schedule, device_id)
        yield from _of_feed(schedule, place)
    box = house.boxes.get(place)
    if wired and box:
        yield from _of_box(house, box)
    for channel in schedule.channels_of[device_id]:
        if channel.load_id:
            yield from _of_load(channel.number, house.loads[channel.load_id])
    if WET_TAGS & set(house.rooms[schedule.room_of_device(device_id)].tags):
        yield _BATHROOM_NEC if is_nec(house) else _BATHROOM


_MODULES = {Form.IN_BOX_MODULE, Form.LUMINAIRE_MODULE, Form.CEILING_MODULE, Form.BOARD_MODULE}
_ELECTRONIC = {Output.DIMMER, Output.FAN_CONTROL}
_BOARD = Caution(
    "board",
    "At the distribution board the incoming side, and every other circuit, stays live while one circuit is "
    "off: isolate the whole board, prove dead, and mind what cannot be isolated.",
    CP,
)


def _of_front(schedule: Schedule, device_id: str) -> Iterator[Caution]:
    house = schedule.house
    from_sheet = schedule.model_of(device_id)
    if from_sheet is None or from_sheet.live_parts_front_off is Stated.NOT_STATED:
        yield _said(house, _LIVE_NOT_STATED)
    elif from_sheet.live_parts_front_off is Stated.YES:
        yield _said(house, _LIVE)
    if joined_on_bench(from_sheet):
        yield _said(house, _BENCH)
    if from_sheet and (from_sheet.form in _MODULES or from_sheet.output in _ELECTRONIC):
        yield next(c for c in before_boxes(house) if c.id == "stored_charge")
    if from_sheet and from_sheet.form is Form.BOARD_MODULE:
        yield _said(house, _BOARD)


def _said(house: House, caution: Caution) -> Caution:
    """A caution in which no name stands, in the words of the house."""
    return replace(caution, words=said(caution.words, nec=is_nec(house)))


def _of_feed(schedule: Schedule, place: str) -> Iterator[Caution]:
    feed, nec = feed_of(schedule, place), is_nec(schedule.house)
    if len(feed.circuits) > 1:
        yield Caution(
            "two_circuits",
            f"More than one circuit is in this box: {circuits_words(schedule.house, feed.circuits)}. "
            + said("Isolate all of them, and prove dead between them too.", nec=nec),
            "NEC 404.8(B) (secondary)" if nec else "BS 7671 514.10.1 (from memory)",
        )
    if feed.open_ends:
        what = "The circuit" if feed.unknown else "Not every circuit"
        known = "here is not known" if feed.unknown else "here is known"
        yield Caution(
            "unknown_circuit", f"{what} {known}: {said(LIVE_UNTIL_PROVED, nec=nec)} at this place.", CP
        )


def _of_box(house: House, box: Box) -> Iterator[Caution]:
    if any(settled(m.neutral) == EARTH for m in box.mounts.values()):
        yield Caution(
            "earth_as_neutral",
            said(
                "A protective conductor is used as neutral in this box: danger. It may carry current; "
                "have it put right before anything is fitted.",
                nec=is_nec(house),
            ),
            "NEC 404.22 (secondary)" if is_nec(house) else "IEC 60364-5-54 (from memory)",
        )
    metal = settled(box.shell) is ShellMaterial.METAL or settled(box.plate) is PlateMaterial.METAL
    if metal:
        yield next(c for c in to_mind(house) if c.id == "earth_metal")


def _of_load(number: int, load: Load) -> Iterator[Caution]:
    feeds = f"Gang {number} feeds {load.name}"
    if load.purpose is None:
        yield Caution(
            "load", f"{feeds}, whose purpose is not stated: ask before it is switched from afar.", CP
        )
        return
    policy = PURPOSES[load.purpose]
    if load.purpose not in HEATERS:
        if policy.hazard:
            yield Caution("load", f"{feeds} ({policy.label}): {policy.hazard}.", policy.source)
        return
    if policy.unattended_on is UnattendedOn.NEVER:
        rule = "No scene switches it on; off only."
    else:
        rule = "It needs its own thermostat, a time limit, and must come back off after a power loss."
    yield Caution("heater", f"{feeds} ({policy.label}): it {policy.hazard}. {rule}", policy.source)
