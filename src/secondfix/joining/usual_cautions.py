"""The cautions of every job: what to do before hands go into a wall box, and what to mind.

The words tell what to do; none of them calls anything free of danger. Sources as named beside each;
the wording is ours. Local code and a licensed person always decide.
"""

from dataclasses import dataclass

from secondfix.house import House, is_nec

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

_70E = "NFPA 70E article 120 (secondary)"
_1910 = "29 CFR 1910.333(b)(2), read as WAC 296-24-975"

ISOLATION_NEC: tuple[Caution, ...] = (
    ISOLATION[0],
    Caution(
        "every_source",
        "Get leave, and find the branch circuit and every other source in the box: a second branch circuit, "
        "the neutral of another, solar panels, a battery, a generator.",
        _70E,
    ),
    Caution(
        "isolate",
        "Switch the load off, then open the disconnecting means. A press on a button, an app, a scene or a "
        "smart switch opens none.",
        f"{_1910}; {_70E}",
    ),
    Caution(
        "lock_off",
        "Lock out with a key that only you have, and hang a tag. Every further person adds a lock.",
        "29 CFR 1910.147 (secondary)",
    ),
    Caution(
        "prove_tester",
        "Check a two-pole voltage tester on a source known to be live. A non-contact tester does not count.",
        _70E,
    ),
    Caution(
        "prove_dead",
        "Test for absence of voltage at the point of work, every pair of conductors: line to neutral, "
        "line to ground, neutral to ground, and between circuits.",
        _70E,
    ),
    Caution(
        "prove_again",
        "Check the tester once more afterwards. After every break, test for absence of voltage anew.",
        _70E,
    ),
    Caution(
        "stored_charge",
        "Modules and drivers keep a charge after the supply is off: wait, or discharge, before touching.",
        _70E,
    ),
)

_GENERAL = {c.id: c for c in GENERAL}
GENERAL_NEC: tuple[Caution, ...] = (
    Caution(
        "lamps_live_when_off",
        "A lamp may be live while it is dark, for an electronic switch lets a little through: de-energize "
        "before changing lamps.",
        "EN 60669-2-1 scope note (read)",
    ),
    Caution(
        "rated_load",
        _GENERAL["rated_load"].words,
        "NEC 110.3(B), 110.14(D) (from memory)",
    ),
    _GENERAL["insulation_test"],
    Caution(
        "own_neutral",
        "Never feed a switch from a borrowed neutral, never feed a circuit backwards, and never use the "
        "equipment grounding conductor as neutral.",
        "NEC 404.2(C), 404.22 (secondary)",
    ),
    Caution(
        "bathroom_zones",
        "In tub and shower spaces local code decides what may be fitted, and where.",
        "NEC 404.4 (from memory)",
    ),
    _GENERAL["not_through_module"],
    Caution(
        "earth_metal",
        "Metal boxes and metal plates are connected to the equipment grounding conductor.",
        "NEC 404.9(B), 250.148 (from memory)",
    ),
)


def before_boxes(house: House) -> tuple[Caution, ...]:
    """Step by step, before hands go into a wall box: in the words of the rules that the house follows."""
    return ISOLATION_NEC if is_nec(house) else ISOLATION


def to_mind(house: House) -> tuple[Caution, ...]:
    """What holds for every job beside that, likewise."""
    return GENERAL_NEC if is_nec(house) else GENERAL
