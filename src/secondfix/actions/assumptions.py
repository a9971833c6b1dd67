"""Assumptions: every one with value, range and source, who set it, and what leans on it."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from secondfix import joining, maintenance, radio, selection
from secondfix.actions.check import RULES
from secondfix.actions.leaned import assumption_as_json
from secondfix.assumptions import Assumption, Assumptions

# Answers that are no rule's: who works them out says what they lean on.
_ANSWERS: Mapping[str, tuple[str, ...]] = {
    "walk: the way on foot": joining.WAY_LEANS_ON,
    "reach: channels": radio.CHANNEL.leans_on,
    "swap: time after a controller was replaced": maintenance.TIME_LEANS_ON,
}


@dataclass(frozen=True, slots=True)
class Listed:
    """One assumption; ``rules`` are ids of those that may lean on it, ``answers`` what else does."""

    assumption: Assumption
    rules: tuple[str, ...]
    answers: tuple[str, ...]


def listed(settled: Assumptions) -> tuple[Listed, ...]:
    """All of them, in the order of the defaults."""
    rules = (*RULES, *selection.RULES)
    return tuple(
        Listed(
            a,
            tuple(rule.id for rule in rules if name in rule.leans_on),
            tuple(words for words, names in _ANSWERS.items() if name in names),
        )
        for name, a in settled.items()
    )


def listed_as_json(all_of_them: Iterable[Listed]) -> dict[str, object]:
    """``assumptions``: as under check, with legal bounds and what leans on each (docs/json.md)."""
    return {
        "assumptions": [
            {
                **assumption_as_json(one.assumption),
                "least": one.assumption.least,
                "most": one.assumption.most,
                "rules": list(one.rules),
                "answers": list(one.answers),
            }
            for one in all_of_them
        ]
    }
