"""Which arrangement it is: what a licensed person measures at the boxes, and what the answers tell.

The expected answers are not written down: they are evaluated from the graphs of the arrangements.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache

from secondfix.electrical.multiway.as_found import LAMP, as_found
from secondfix.electrical.multiway.graph import Wiring, circuits, lit, poles, states
from secondfix.house import Arrangement


@dataclass(frozen=True, slots=True)
class Question:
    """One measurement: ``asks`` is answered yes or no, ``how`` says between what, with which levers."""

    id: str
    asks: str
    how: str


_LEVERS = (
    "Take the levers of all places through every combination (four with two places, eight with three), and "
    "note "
    "for each whether the lamp burns and which conductors are live. "
)
_PAIR = (
    "Test from each conductor of this light to the protective conductor, or to a neutral proved to be one, "
    "with "
    "the two-pole indicator. "
)
HERE_PERMANENT = Question(
    "here_permanent",
    "Is one conductor live in every combination of levers, in this end box?",
    _PAIR + _LEVERS + "Yes only if one and the same conductor was live every time.",
)
HERE_SWITCHED = Question(
    "here_switched",
    "Is one conductor live exactly when the lamp burns, in this end box?",
    _PAIR + _LEVERS + "Yes only if it was live each time the lamp burned and dead each time it was dark; a "
    "traveller is live in some combinations in which the lamp is dark.",
)
THERE_PERMANENT = Question(
    "there_permanent",
    "Is one conductor live in every combination of levers, in the other end box?",
    HERE_PERMANENT.how,
)
THERE_SWITCHED = Question(
    "there_switched",
    "Is one conductor live exactly when the lamp burns, in the other end box?",
    HERE_SWITCHED.how,
)
LAMP_PERMANENT = Question(
    "lamp_permanent",
    "Is one conductor live in every combination of levers, where the luminaire's cables end?",
    _PAIR.replace("of this light", "at the luminaire") + _LEVERS + "Count conductors that join cables there "
    "without touching the lamp.",
)
QUESTIONS = (HERE_PERMANENT, HERE_SWITCHED, THERE_PERMANENT, THERE_SWITCHED, LAMP_PERMANENT)
END_BOX = (
    "Dead first: isolate, prove dead, open every box of the light. A switch with three conductors on it "
    "(two-way; "
    "NEC: 3-way) stands at an end, one with four (intermediate; NEC: 4-way) between the ends."
)


@dataclass(frozen=True, slots=True)
class Caution:
    """One sentence that belongs to the test, and where it comes from."""

    words: str
    source: str


LIVE_TEST: tuple[Caution, ...] = (
    Caution(
        "This is work near live parts and it can kill: a licensed person does it, if local code and the "
        "employer "
        "allow it at all; everybody else keeps away.",
        "Electricity at Work Regulations 1989 reg. 14 (from memory); 29 CFR 1910.333 (secondary)",
    ),
    Caution(
        "Use a two-pole voltage indicator with short covered tips, proved on a proving unit before and "
        "after. No "
        "volt stick and no multimeter: a core that hangs free shows a voltage on both.",
        "HSE GS38 (secondary)",
    ),
    Caution(
        "Isolate, lock off, prove dead before any conductor is touched, parted or moved; close the box or "
        "guard "
        "it before the circuit goes on again.",
        "Electricity at Work Regulations 1989 reg. 12-13 (secondary)",
    ),
    Caution(
        "Colours prove nothing: strappers (NEC: travelers) are of any colour, and a blue or white core may "
        "be "
        "line. Each circuit that enters the box counts, not only the one switched off.",
        "IEC 60445, NEC 200.7(C) (secondary)",
    ),
    Caution(
        "A test against the protective conductor may trip a residual-current device: that is an answer too.",
        "common practice, no source",
    ),
)


@dataclass(frozen=True, slots=True)
class Told:
    """The arrangement, and the box at which its order begins: ``here`` or ``there``.

    None where that makes no difference (a switched neutral is put right, not converted).
    """

    arrangement: Arrangement
    line_end: str | None


@dataclass(frozen=True, slots=True)
class Untold:
    """Cannot tell: the next question, and what it still could be. Neither is left where nothing fits."""

    next: Question | None
    could_be: tuple[Arrangement, ...]


_JOINED = (
    Arrangement.TOGETHER,
    Arrangement.OPPOSITE_ENDS,
    Arrangement.SWITCH_LOOP,
    Arrangement.FEED_AT_LUMINAIRE,
    Arrangement.SWITCHED_NEUTRAL,
)
Answers = tuple[bool, ...]
Guess = tuple[Told, Answers]


def tell(answers: Mapping[str, bool]) -> Told | Untold:
    """The arrangement of a light whose places some conductors join, from answers by question id.

    Told only when every question is answered and the answers are exactly those of one arrangement: what
    is merely left over by elimination may be a wiring without a name. As soon as no named arrangement
    agrees, nothing is left to ask: draw what is there. *Not joined* is seen, not measured. Raises
    ``ValueError`` for an unknown question. Source: common practice, no source.
    """
    if unknown := set(answers) - {q.id for q in QUESTIONS}:
        raise ValueError(f"no such question: {', '.join(sorted(unknown))}")
    asked = [(i, answers[q.id]) for i, q in enumerate(QUESTIONS) if q.id in answers]
    left = [guess for guess in hypotheses() if all(guess[1][i] is yes for i, yes in asked)]
    could_be = tuple(dict.fromkeys(told.arrangement for told, _ in left))
    if not left:
        return Untold(None, ())
    if len(asked) < len(QUESTIONS):
        return Untold(next(q for q in QUESTIONS if q.id not in answers), could_be)
    (told,) = {told for told, _ in left}  # no two arrangements give the same five answers
    return told


@cache
def hypotheses() -> tuple[Guess, ...]:
    """Every arrangement, variant and way round, with the answers that its graph gives."""
    found = []
    for arrangement in _JOINED:
        for far in (False, True):
            wiring = as_found(arrangement, 2, line_at_far_end=far)
            for end in ("here", "there"):
                told = Told(arrangement, None if arrangement is Arrangement.SWITCHED_NEUTRAL else end)
                found.append((told, expected(wiring, end)))
    return tuple(dict.fromkeys(found))


def expected(wiring: Wiring, line_end: str, *, last: str = "2") -> Answers:
    """The answers of a graph to all questions, where the order begins ``here`` or ``there``."""
    here, there = ("1", last) if line_end == "here" else (last, "1")
    return (
        _permanent(wiring, here),
        _switched(wiring, here),
        _permanent(wiring, there),
        _switched(wiring, there),
        _permanent(wiring, LAMP),
    )


def _permanent(wiring: Wiring, place: str) -> bool:
    return _some(wiring, place, lambda _: True)


def _switched(wiring: Wiring, place: str) -> bool:
    return _some(wiring, place, lambda burns: burns)


def _some(wiring: Wiring, place: str, wanted: Callable[[bool], bool]) -> bool:
    seen = [(lit(wiring, at), at) for at in (poles(wiring, state) for state in states(wiring))]
    here = [node for node in wiring.nodes() if node[0] == place]
    return any(all(bool(circuits(at[n], "line")) == wanted(burns) for burns, at in seen) for n in here)
