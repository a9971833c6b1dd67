"""The words for arrangements, places and conductors: IEC words, with the NEC's beside them."""

from dataclasses import dataclass

from secondfix.electrical.multiway.as_found import LAMP
from secondfix.electrical.multiway.conductors import Role
from secondfix.house import Arrangement
from secondfix.terms import WiringRules, said


@dataclass(frozen=True, slots=True)
class ArrangementWords:
    """Its name, and what it looks like in IEC words with the NEC's in brackets."""

    name: str
    means: str


ARRANGEMENTS: dict[Arrangement, ArrangementWords] = {
    Arrangement.TOGETHER: ArrangementWords(
        "line and load together",
        "supply and luminaire cable both end in the first box; two strappers (NEC: travelers) and a third "
        "core go on "
        "to the last two-way switch (NEC: 3-way)",
    ),
    Arrangement.OPPOSITE_ENDS: ArrangementWords(
        "line and load at opposite ends",
        "supply ends in the first box, the luminaire cable in the last; two strappers (NEC: travelers) "
        "between, "
        "often with a neutral (NEC: grounded conductor) running through",
    ),
    Arrangement.SWITCH_LOOP: ArrangementWords(
        "switch loop",
        "supply ends at the luminaire; line goes down to the first box and comes back switched (NEC: "
        "dead-end "
        "3-way); the other switches lie beyond it",
    ),
    Arrangement.FEED_AT_LUMINAIRE: ArrangementWords(
        "feed at the luminaire",
        "supply ends at the luminaire, between the switches: line goes to the first box, the strappers (NEC: "
        "travelers) pass the luminaire unbroken, the last switch sends back the switched line",
    ),
    Arrangement.SWITCHED_NEUTRAL: ArrangementWords(
        "switched neutral",
        "each two-way switch (NEC: 3-way) chooses between line and neutral for one end of the lamp: the "
        "dark lamp "
        "may be live at both",
    ),
    Arrangement.NOT_JOINED: ArrangementWords(
        "not joined",
        "no conductor joins the places: one box has line and the lamp's core, the others act by radio",
    ),
}
BETWEEN = (
    "intermediate between",
    "every box between the ends holds an intermediate switch (NEC: 4-way), which joins the two travellers "
    "straight "
    "or crossed; once a module feeds the load it goes: its cores join straight through, or are capped",
)

_IEC_MARKS: dict[Role, str] = {
    Role.LINE: "mark it as line (brown, or L) at both ends",
    Role.SWITCHED: "mark it as line (brown, or L) at both ends",
    Role.SIGNAL: "mark it as line (brown, or L) at both ends: it is live while a push is pressed",
    Role.NEUTRAL: "mark it as neutral (blue, or N) at both ends; never a green-and-yellow core",
    Role.CAPPED: "cap it at both ends, one core a cap",
}
_NEC_MARKS: dict[Role, str] = {
    Role.LINE: "a white core is re-identified as ungrounded at both ends",
    Role.SWITCHED: "not a white core: what returns switched is of another colour",
    Role.SIGNAL: "not a white core, unless it is re-identified at both ends; it is live while a push is "
    "pressed",
    Role.NEUTRAL: "only a white or grey core; never a bare or green one",
    Role.CAPPED: "cap it at both ends, one core a cap",
}
MARK_SOURCE = {
    WiringRules.IEC: "IEC 60445 (secondary); BS 7671 514 (from memory)",
    WiringRules.NEC: "NEC 200.6, 200.7(C) (secondary)",
}


def mark_words(role: Role, rules: WiringRules) -> str:
    """What is marked, or capped, on a conductor that takes up this role."""
    return (_IEC_MARKS if rules is WiringRules.IEC else _NEC_MARKS)[role]


def point_words(point: str, names: dict[str, str]) -> str:
    """A point of the row as sentences name it: the gang's id where one is known."""
    if point == LAMP:
        return "the luminaire"
    return names.get(point, f"box {point}")


# What stands in the sentences above and in the questions of the test, in each house's own words.
_SPOKEN: tuple[tuple[str, str, str], ...] = (
    ("two-way switches (NEC: 3-way)", "two-way switches", "3-way switches"),
    ("two-way switch (NEC: 3-way)", "two-way switch", "3-way switch"),
    ("(two-way; NEC: 3-way)", "(two-way)", "(3-way)"),
    ("intermediate ones (NEC: 4-way)", "intermediate ones", "4-way ones"),
    ("intermediate switch (NEC: 4-way)", "intermediate switch", "4-way switch"),
    ("(intermediate; NEC: 4-way)", "(intermediate)", "(4-way)"),
    ("strappers (NEC: travelers)", "strappers", "travelers"),
    ("neutral (NEC: grounded conductor)", "neutral", "neutral (grounded conductor)"),
    ("comes back switched (NEC: dead-end 3-way)", "comes back switched", "comes back switched"),
    ("two-way", "two-way", "3-way"),
    ("intermediate", "intermediate", "4-way"),
    ("traveller", "strapper", "traveler"),
    ("residual-current device", "residual-current device", "ground-fault interrupter"),
    ("Colours", "Colours", "Colors"),
    ("colour", "colour", "color"),
    ("grey", "grey", "gray"),
)


def spoken(words: str, rules: WiringRules | None) -> str:
    """A sentence of multi-way wiring in the words of one house: IEC words, or the NEC's."""
    follows_nec = rules is WiringRules.NEC
    for both, iec, nec in _SPOKEN:
        words = words.replace(both, nec if follows_nec else iec)
    return said(words, nec=follows_nec)
