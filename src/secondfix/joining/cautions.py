"""Cautions that papers and worksheets print: what to do before hands go into a wall box, and what to mind.

The words tell what to do; none of them calls anything free of danger. Sources as named beside each;
the wording is ours. Local code and a licensed person always decide.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.catalogue import Form, Output, Stated
from secondfix.house import EARTH, Box, Load, Schedule, settled
from secondfix.joining.circuits import feed_of, is_wired
from secondfix.joining.fronts import joined_on_bench
from secondfix.joining.wording import LIVE_UNTIL_PROVED, circuits_words
from secondfix.terms import PURPOSES, PlateMaterial, Purpose, ShellMaterial, UnattendedOn

CP = "common practice, no source"
_UK = "Electricity at Work Regulations 1989 reg. 12-14; HSE GS38, HSG85 (secondary)"
_BS7671 = "BS 7671 chapter 46, 537.2, table 537.4 (secondary)"


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution: a stable id, one or two sentences, and where they come from."""

    id: str
    words: str
    source: str


ISOLATION: tuple[Caution, ...] = (
    Caution(
        "licensed_person",
        "Work on mains can kill. A licensed person does it; local code decides who that is and what must be "
        "notified. This paper advises and decides nothing.",
        CP,
    ),
    Caution(
        "every_source",
        "Get leave, and find the circuit and every other source in the box: a second circuit, the neutral of "
        "another circuit, solar panels, a battery, a generator.",
        _UK,
    ),
    Caution(
        "isolate",
        "Switch the load off, then open the isolating device. A press on a button, an app, a scene "
        "or a smart switch is not isolation.",
        f"29 CFR 1910.333(b)(2), read as WAC 296-24-975; {_BS7671}",
    ),
    Caution(
        "lock_off",
        "Lock off with a key that only you have, and hang a notice. Every further person adds a lock.",
        f"{_UK}; 29 CFR 1910.147 (secondary)",
    ),
    Caution(
        "prove_tester",
        "Prove a two-pole voltage indicator on a proving unit or a source known to be live. Not with a volt "
        "stick, not with a multimeter.",
        "HSE GS38 (secondary)",
    ),
    Caution(
        "prove_dead",
        "Prove dead at the point of work, every pair of conductors: line to neutral, line to earth, "
        "neutral to earth, and between circuits.",
        _UK,
    ),
    Caution(
        "prove_again",
        "Prove the indicator once more afterwards. After every break, prove dead anew.",
        "HSE GS38 (secondary)",
    ),
    Caution(
        "stored_charge",
        "Modules and drivers keep a charge after the supply is off: wait, or discharge, before touching.",
        _UK,
    ),
)

GENERAL: tuple[Caution, ...] = (
    Caution(
        "lamps_live_when_off",
        "A lamp may be live while it is dark, for an electronic switch lets a little through: isolate before "
        "changing lamps.",
        f"EN 60669-2-1 scope note (read); {_BS7671}",
    ),
    Caution(
        "rated_load",
        "Do not go past the load printed for its kind, and tighten terminals to the printed torque.",
        CP,
    ),
    Caution(
        "insulation_test",
        "Disconnect modules before an insulation test: it destroys them, and its reading through them is "
        "worth nothing.",
        CP,
    ),
    Caution(
        "own_neutral",
        "Never feed a switch from a borrowed neutral, never feed a circuit backwards, and never use the "
        "protective conductor as neutral.",
        CP,
    ),
    Caution(
        "bathroom_zones",
        "In rooms with a bath or shower the zones decide what may be fitted, and where.",
        "IEC 60364-7-701; BS 7671 section 701 (secondary)",
    ),
    Caution(
        "not_through_module",
        "Emergency lighting, fire alarm and medical supplies do not go through a switch module.",
        CP,
    ),
    Caution(
        "earth_metal",
        "Metal boxes and metal plates are connected to the protective conductor.",
        "IEC 60364-4-41 (from memory)",
    ),
)

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
        yield from _of_box(box)
    for channel in schedule.channels_of[device_id]:
        if channel.load_id:
            yield from _of_load(channel.number, house.loads[channel.load_id])
    if WET_TAGS & set(house.rooms[schedule.room_of_device(device_id)].tags):
        yield _BATHROOM


_MODULES = {Form.IN_BOX_MODULE, Form.LUMINAIRE_MODULE, Form.CEILING_MODULE, Form.BOARD_MODULE}
_ELECTRONIC = {Output.DIMMER, Output.FAN_CONTROL}
_BOARD = Caution(
    "board",
    "At the distribution board the incoming side, and every other circuit, stays live while one circuit is "
    "off: isolate the whole board, prove dead, and mind what cannot be isolated.",
    CP,
)


def _of_front(schedule: Schedule, device_id: str) -> Iterator[Caution]:
    from_sheet = schedule.model_of(device_id)
    if from_sheet is None or from_sheet.live_parts_front_off is Stated.NOT_STATED:
        yield _LIVE_NOT_STATED
    elif from_sheet.live_parts_front_off is Stated.YES:
        yield _LIVE
    if joined_on_bench(from_sheet):
        yield _BENCH
    if from_sheet and (from_sheet.form in _MODULES or from_sheet.output in _ELECTRONIC):
        yield next(c for c in ISOLATION if c.id == "stored_charge")
    if from_sheet and from_sheet.form is Form.BOARD_MODULE:
        yield _BOARD


def _of_feed(schedule: Schedule, place: str) -> Iterator[Caution]:
    feed = feed_of(schedule, place)
    if len(feed.circuits) > 1:
        yield Caution(
            "two_circuits",
            f"More than one circuit is in this box: {circuits_words(schedule.house, feed.circuits)}. "
            "Isolate all of them, and prove dead between them too.",
            "BS 7671 514.10.1 (from memory); NEC 404.8(B) (secondary)",
        )
    if feed.open_ends:
        what = "The circuit" if feed.unknown else "Not every circuit"
        known = "here is not known" if feed.unknown else "here is known"
        yield Caution("unknown_circuit", f"{what} {known}: {LIVE_UNTIL_PROVED} at this place.", CP)


def _of_box(box: Box) -> Iterator[Caution]:
    if any(settled(m.neutral) == EARTH for m in box.mounts.values()):
        yield Caution(
            "earth_as_neutral",
            "A protective conductor is used as neutral in this box: danger. It may carry current; "
            "have it put right before anything is fitted.",
            "IEC 60364-5-54 (from memory)",
        )
    metal = settled(box.shell) is ShellMaterial.METAL or settled(box.plate) is PlateMaterial.METAL
    if metal:
        yield next(c for c in GENERAL if c.id == "earth_metal")


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
