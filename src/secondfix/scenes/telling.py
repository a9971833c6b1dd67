"""From a verdict to a crossing: the sentence that says why."""

from collections.abc import Mapping

from secondfix.catalogue import Output
from secondfix.findings import Severity
from secondfix.house import Channel, Schedule
from secondfix.scenes.crossing import Crossing, CrossingKind, Reason
from secondfix.scenes.deciding import Verdict
from secondfix.scenes.feeding import feed_of
from secondfix.scenes.looks import feed_look, unknown_looks
from secondfix.scenes.reaching import Reach
from secondfix.scenes.supposing import Unknown, deciding_unknowns
from secondfix.scenes.wording import to_words
from secondfix.terms import PURPOSES

Verdicts = Mapping[tuple[object, ...], Verdict]

_SENTENCES = {
    Reason.RULE: "A rule switches it {to}.",
    Reason.DIRECT_COMMAND: "A direct command switches it {to}.",
    Reason.WHOLE_ENTRY: "The whole-device entry switches it {to}.",
    Reason.NO_RULE: "No rule names it.",
    Reason.EXCEPTION: "A rule leaves it out.",
    Reason.POLICY: "Its purpose, {purpose}, is left alone unless a rule names the load itself.",
    Reason.REFUSED: "Refused: {purpose} is never switched {refused} by a scene{hazard}.",
    Reason.RULES_DIFFER: "Two rules say different things.",
    Reason.DIRECT_DIFFERS: "A direct command says something else.",
    Reason.DIRECT_LEFT_OUT: "A rule leaves it out and a direct command switches it.",
    Reason.WHOLE_DIFFERS: "The whole-device entry says something else.",
    Reason.WHOLE_LEFT_OUT: "The whole-device entry reaches it, which rules and policy leave out.",
    Reason.PURPOSE_NOT_KNOWN: "Its purpose is not known.",
    Reason.STOREY_NOT_KNOWN: "The storey of its room is not known.",
    Reason.FITNESS_NOT_KNOWN: "Its own thermostat or its time limit is not known.",
    Reason.REACH_NOT_KNOWN: "It is not known whether a direct command reaches it.",
    Reason.FED_BY_NOTHING: "To be switched, but nothing known feeds it.",
    Reason.NO_DEVICE: "To be switched, but no device is decided for its gang.",
    Reason.NO_OUTPUT: "To be switched, but its device has no output.",
}
_UNKNOWN_REASONS = {
    Unknown.PURPOSE: Reason.PURPOSE_NOT_KNOWN,
    Unknown.STOREY: Reason.STOREY_NOT_KNOWN,
    Unknown.FITNESS: Reason.FITNESS_NOT_KNOWN,
    Unknown.REACH: Reason.REACH_NOT_KNOWN,
}
_ORDER = list(Reason)


def decided(
    schedule: Schedule, scene_id: str, load_id: str, verdicts: Verdicts, *, by: tuple[str, ...]
) -> Crossing:
    """The crossing on which all verdicts agree; of several reasons the plainest."""
    verdict = min(verdicts.values(), key=lambda v: _ORDER.index(v.reason))
    why = _sentence(schedule, load_id, verdict)
    hazard = any(v.hazard for v in verdicts.values())
    worst = Severity.DANGER if hazard or verdict.refused else None
    if verdict.demand is None:
        return Crossing(
            scene_id, load_id, verdict.kind, verdict.reason, why, by, refused=verdict.refused, worst=worst
        )
    feed = feed_of(schedule, load_id)
    if isinstance(feed, Reason):
        look = feed_look(schedule, load_id, feed)
        return Crossing(
            scene_id, load_id, CrossingKind.CANNOT_TELL, feed, _SENTENCES[feed], by,
            refused=verdict.refused, worst=worst or Severity.FAULT, looks=(look,),
        )  # fmt: skip
    to, asked = verdict.demand
    return Crossing(
        scene_id,
        load_id,
        CrossingKind.SWITCHED,
        verdict.reason,
        why,
        by,
        to,
        asked if _follows(schedule, feed) else None,
        asked,
        feed.device_id,
        feed.number,
        verdict.refused,
        worst,
    )


def undecided(
    schedule: Schedule,
    scene_id: str,
    load_id: str,
    verdicts: Verdicts,
    *,
    reaches: list[Reach],
    by: tuple[str, ...],
) -> Crossing:
    """The crossing that hangs on something unknown; ``worst`` is the worst that it could be."""
    unknowns = deciding_unknowns({values: v.answer for values, v in verdicts.items()})
    reason = _UNKNOWN_REASONS[unknowns[0]]
    danger = any(v.refused or v.hazard for v in verdicts.values())
    return Crossing(
        scene_id,
        load_id,
        CrossingKind.CANNOT_TELL,
        reason,
        " ".join(_SENTENCES[_UNKNOWN_REASONS[u]] for u in unknowns),
        by,
        worst=Severity.DANGER if danger else Severity.FAULT,
        looks=unknown_looks(schedule, load_id, unknowns, reaches),
    )


def _follows(schedule: Schedule, feed: Channel) -> bool:
    """Whether the output can hold a level; one whose model is open keeps the level asked for."""
    model = schedule.model_of(feed.device_id)
    return model is None or model.output is Output.DIMMER


def _sentence(schedule: Schedule, load_id: str, verdict: Verdict) -> str:
    purpose = schedule.house.loads[load_id].purpose
    policy = PURPOSES[purpose] if purpose else None
    return _SENTENCES[verdict.reason].format(
        to=to_words(*verdict.demand) if verdict.demand else "",
        purpose=policy.label if policy else "whatever it may be",
        refused=" or ".join(verdict.refused),
        hazard=f" ({policy.hazard})" if policy and policy.hazard else "",
    )
