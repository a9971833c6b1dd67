"""The decision for one load once every fact is supposed: what rules and direct commands come to.

There is no order among rules. A rule that names the load itself silences general rules there. What the
policy of the purpose keeps out or refuses does not speak. What still speaks must say the same.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from secondfix.house import SceneRule
from secondfix.scenes.crossing import CrossingKind, Reason, To
from secondfix.scenes.permitting import Permit, permit
from secondfix.scenes.reaching import Via
from secondfix.scenes.selecting import Seen, left_out, names_itself, selects

Demand = tuple[To, int | None]


@dataclass(frozen=True, slots=True)
class Supposed:
    """Facts supposed for one load: as selectors see it, whether it may heat unattended, what reaches it."""

    seen: Seen
    fit: bool
    reached: frozenset[tuple[Via, To]]


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the scene does under the facts supposed.

    ``hazard``: a whole-device entry says to a load what its purpose refuses whoever asks.
    """

    kind: CrossingKind
    reason: Reason
    demand: Demand | None = None
    refused: tuple[To, ...] = ()
    hazard: bool = False

    @property
    def answer(self) -> tuple[CrossingKind, Demand | None, tuple[To, ...]]:
        """What must not depend on an unknown."""
        return self.kind, self.demand, self.refused


@dataclass(frozen=True, slots=True)
class _Heard:
    """Demands let through, demands refused, and whether a policy or an exception kept a rule out."""

    demands: frozenset[Demand]
    refused: tuple[To, ...]
    kept: bool
    excepted: bool
    spoken: bool


def speaking(rules: Iterable[SceneRule], seen: Seen) -> tuple[list[SceneRule], bool]:
    """The rules that speak of a load, and whether some rule takes it out by an exception."""
    selecting = [rule for rule in rules if selects(rule.select, seen)]
    stated = [rule for rule in selecting if not left_out(rule, seen)]
    named = [rule for rule in stated if names_itself(rule)]
    return named or stated, len(stated) < len(selecting)


def decide(rules: Iterable[SceneRule], supposed: Supposed) -> Verdict:
    """Exactly one verdict; the same whatever the order of the rules."""
    heard = _rules(rules, supposed)
    direct = frozenset(to for via, to in supposed.reached if via is Via.GANG)
    whole = frozenset(to for via, to in supposed.reached if via is Via.WHOLE)
    permits = {to: _permit(supposed, to, named=True) for to in direct}
    denied = {to for to, p in permits.items() if p is Permit.REFUSED}
    refused = tuple(sorted({*heard.refused, *denied}))
    obeyed: frozenset[Demand] = frozenset((to, None) for to, p in permits.items() if p is Permit.ALLOWED)
    if obeyed and heard.excepted and not heard.spoken:
        return Verdict(CrossingKind.CONFLICT, Reason.DIRECT_LEFT_OUT, None, refused)
    demands = heard.demands | obeyed
    if len(demands) > 1:
        reason = Reason.RULES_DIFFER if len(heard.demands) > 1 else Reason.DIRECT_DIFFERS
        return Verdict(CrossingKind.CONFLICT, reason, None, refused)
    if whole:
        return _with_whole(whole, demands, heard, supposed, refused)
    if demands:
        reason = Reason.RULE if heard.demands else Reason.DIRECT_COMMAND
        return Verdict(CrossingKind.SWITCHED, reason, next(iter(demands)), refused)
    return Verdict(CrossingKind.LEFT_ALONE, _why_alone(heard, refused), None, refused)


def _rules(rules: Iterable[SceneRule], supposed: Supposed) -> _Heard:
    active, excepted = speaking(rules, supposed.seen)
    demands: set[Demand] = set()
    refused: set[To] = set()
    kept = False
    for rule in active:
        answer = _permit(supposed, rule.to, named=names_itself(rule))
        if answer is Permit.ALLOWED:
            demands.add((rule.to, rule.level_pct))
        elif answer is Permit.REFUSED:
            refused.add(rule.to)
        else:
            kept = True
    return _Heard(frozenset(demands), tuple(sorted(refused)), kept, excepted, bool(active))


def _with_whole(
    whole: frozenset[To],
    demands: frozenset[Demand],
    heard: _Heard,
    supposed: Supposed,
    refused: tuple[To, ...],
) -> Verdict:
    """A whole-device entry doubles what a rule says, differs from it, or reaches what no rule named."""
    said: frozenset[Demand] = frozenset((to, None) for to in whole)
    hazard = any(_permit(supposed, to, named=True) is Permit.REFUSED for to in whole)
    if demands:
        if said == demands:
            reason = Reason.RULE if heard.demands else Reason.DIRECT_COMMAND
            return Verdict(CrossingKind.SWITCHED, reason, next(iter(demands)), refused)
        return Verdict(CrossingKind.CONFLICT, Reason.WHOLE_DIFFERS, None, refused, hazard)
    general = {_permit(supposed, to, named=False) for to in whole}
    if general != {Permit.ALLOWED} or heard.excepted or heard.spoken:
        return Verdict(CrossingKind.CONFLICT, Reason.WHOLE_LEFT_OUT, None, refused, hazard)
    if len(said) > 1:
        return Verdict(CrossingKind.CONFLICT, Reason.WHOLE_DIFFERS, None, refused)
    return Verdict(CrossingKind.SWITCHED, Reason.WHOLE_ENTRY, next(iter(said)), refused)


def _permit(supposed: Supposed, to: To, *, named: bool) -> Permit:
    return permit(supposed.seen.purpose, to, named=named, fit=supposed.fit)


def _why_alone(heard: _Heard, refused: tuple[To, ...]) -> Reason:
    if refused:
        return Reason.REFUSED
    if heard.kept:
        return Reason.POLICY
    return Reason.EXCEPTION if heard.excepted else Reason.NO_RULE
