"""One judgement for all loads that the rules of a scene cannot tell apart."""

from dataclasses import dataclass

from secondfix.house import House, SceneRule
from secondfix.scenes.crossing import Reason
from secondfix.scenes.deciding import Verdict, decide, speaking
from secondfix.scenes.selecting import Seen, selects
from secondfix.scenes.supposing import Known, Mentioned, Unknown, deciding_unknowns, suppositions
from secondfix.scenes.wording import rule_words

_ORDER = list(Reason)


@dataclass(frozen=True, slots=True)
class Judgement:
    """The verdict, of several reasons the plainest, and the unknowns on which it hangs (none: it stands).

    ``hazard``: some way, a whole-device entry says what the purpose refuses, or a demand is refused.
    ``rules``: those that speak, or leave the load out, some way, in words.
    """

    verdict: Verdict
    unknowns: tuple[Unknown, ...]
    hazard: bool
    rules: tuple[str, ...]


def judged(house: House, rules: tuple[SceneRule, ...], one: Known, told: Mentioned) -> Judgement:
    """Every supposition decided; the answer stands where all agree."""
    supposed = suppositions(one, told)
    verdicts = {values: decide(rules, s) for values, s in supposed.items()}
    heard = [
        rule for seen in dict.fromkeys(s.seen for s in supposed.values()) for rule in _heard(rules, seen)
    ]
    return Judgement(
        min(verdicts.values(), key=lambda v: _ORDER.index(v.reason)),
        deciding_unknowns({values: v.answer for values, v in verdicts.items()}),
        any(v.hazard or v.refused for v in verdicts.values()),
        tuple(sorted({rule_words(house, rule) for rule in dict.fromkeys(heard)})),
    )


def _heard(rules: tuple[SceneRule, ...], seen: Seen) -> list[SceneRule]:
    active, _ = speaking(rules, seen)
    return active or [rule for rule in rules if selects(rule.select, seen)]
