"""What the data sheet prints, read at the voltage of the house.

A rating is amperes at a voltage. Its amperes carry over downwards only, and only to a mains voltage near
the printed one (assumption ``rating_carries_down_to_pct``): a sheet for 230 V does not say that the
device works at 120 V, and a contact breaks less current at a higher voltage.
"""

from collections.abc import Iterable

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model, Rating
from secondfix.findings import Look
from secondfix.terms import RatingKind

RATING_WORDS: dict[RatingKind, str] = {
    RatingKind.RESISTIVE: "resistive loads",
    RatingKind.TUNGSTEN: "tungsten filament lamps",
    RatingKind.SELF_BALLASTED: "self-ballasted lamps",
    RatingKind.EXTERNALLY_BALLASTED: "externally ballasted lamps",
    RatingKind.IRON_TRANSFORMER: "iron-core transformers",
    RatingKind.ELECTRONIC_TRANSFORMER: "electronic transformers",
    RatingKind.MOTOR: "motors",
}

VOLTAGE_LOOK = Look("house", "mains_voltage_v", "state the mains voltage of the house")


CARRIES = "rating_carries_down_to_pct"


def carried(ratings: Iterable[Rating | None], *, mains_voltage_v: int) -> tuple[str, ...]:
    """The assumption that an answer leans on where a rating is printed at a higher voltage, else none."""
    return (CARRIES,) if any(r and r.at_voltage_v > mains_voltage_v for r in ratings) else ()


def holds_at(rating: Rating, *, mains_voltage_v: int, assumptions: Assumptions) -> bool:
    """Whether the printed amperes say something at this mains voltage, over the assumption's range."""
    strictest = assumptions[CARRIES].high
    return strictest * rating.at_voltage_v <= 100 * mains_voltage_v <= 100 * rating.at_voltage_v


def rating_look(model: Model, kind: RatingKind, *, mains_voltage_v: int) -> Look:
    """The look at the data sheet for a rating of a kind at this voltage."""
    words = f"ask the maker of {model.title} for its rating for {RATING_WORDS[kind]} at {mains_voltage_v} V"
    return Look(model.key, f"ratings.{kind.value}", words)


def sheet_look(model: Model, field: str, what: str) -> Look:
    """The look at the data sheet for one statement."""
    return Look(model.key, field, f"find in the data sheet of {model.title} {what}")
