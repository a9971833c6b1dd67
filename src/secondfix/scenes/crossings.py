"""Crossings that are refused, in conflict, or cannot be told."""

from collections.abc import Iterator

from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.scenes.asked import Asked
from secondfix.scenes.crossing import Crossing, CrossingKind, Reason, Resolution
from secondfix.terms import PURPOSES

_CP = "common practice, no source"
REFUSED = Rule(
    "scenes.refused",
    "Does the purpose of every load let the scene switch it so?",
    "policy of purposes: EN 60335-2-53, Electrical Safety First 2014 (secondary), IEC 60335-1 (from memory), "
    "else common practice, no source",
)
CONFLICT = Rule("scenes.conflict", "Do the rules and direct commands of a scene agree on every load?", _CP)
DECIDED = Rule("scenes.decided", "Is it known for every load what the scene does to it?", _CP)
RULES = (REFUSED, CONFLICT, DECIDED)

_WHOLE = {Reason.WHOLE_DIFFERS, Reason.WHOLE_LEFT_OUT}  # told by scenes.whole_entry


def check(asked: Asked) -> Iterator[Finding]:
    """One answer per scene and rule, or one per load that is refused, in conflict, not told."""
    for resolution in asked.resolutions:
        crossings = list(resolution.crossings.values())
        refused = [_refused(asked, c) for c in crossings if c.refused]
        yield from asked.or_passes(refused, REFUSED, resolution)
        conflicts = [c for c in crossings if c.kind is CrossingKind.CONFLICT and c.reason not in _WHOLE]
        yield from asked.or_passes([_conflict(asked, c) for c in conflicts], CONFLICT, resolution)
        yield from _decided(asked, resolution)


def _also(asked: Asked, crossing: Crossing) -> tuple[str, ...]:
    feed = asked.schedule.fed_by.get(crossing.load_id)
    gang = getattr(feed, "place", None) or getattr(feed, "id", None)
    return (crossing.load_id, gang) if gang else (crossing.load_id,)


def _refused(asked: Asked, crossing: Crossing) -> Finding:
    load = asked.schedule.house.loads[crossing.load_id]
    policy = PURPOSES[load.purpose] if load.purpose else None
    label = policy.label if policy else "whatever its purpose"
    hazard = f": {policy.hazard}" if policy and policy.hazard else ""
    asks = " and ".join(crossing.refused)
    return fails(
        REFUSED,
        Severity.DANGER,
        crossing.scene_id,
        f"The scene would switch {asked.load_words(crossing.load_id)} {asks}: refused, left out.",
        value=f"{asks}, by {'; '.join(crossing.by)}",
        limit=f"{label} is never switched {asks} by a scene{hazard}",
        remedy=f"Leave {crossing.load_id} out of the scene; let a person switch it.",
        source=policy.source if policy else "",
        also=_also(asked, crossing),
    )


def _conflict(asked: Asked, crossing: Crossing) -> Finding:
    return fails(
        CONFLICT,
        Severity.FAULT,
        crossing.scene_id,
        f"{asked.load_words(crossing.load_id)}: {crossing.why}",
        value="; ".join(crossing.by),
        limit="one demand per load; there is no order among rules",
        remedy="Leave the load out of all but one, or name the load itself in one rule.",
        also=_also(asked, crossing),
    )


def _decided(asked: Asked, resolution: Resolution) -> Iterator[Finding]:
    if asked.settled(resolution):
        yield passes(DECIDED, resolution.scene_id)
    for crossing in resolution.crossings.values():
        if crossing.kind is CrossingKind.CANNOT_TELL:
            yield cannot_tell(
                DECIDED,
                crossing.worst or Severity.FAULT,
                crossing.scene_id,
                f"{asked.load_words(crossing.load_id)}: {crossing.why}",
                looks=crossing.looks,
                value="; ".join(crossing.by) or "not known",
                also=_also(asked, crossing),
            )
