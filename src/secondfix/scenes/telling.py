"""From a verdict to a crossing: the sentence that says why."""

from secondfix.catalogue import Output
from secondfix.findings import Severity
from secondfix.house import Channel, Schedule
from secondfix.scenes.crossing import Crossing, CrossingKind, Reason
from secondfix.scenes.deciding import Verdict
from secondfix.scenes.feeding import feed_of
from secondfix.scenes.judging import Judgement
from secondfix.scenes.looks import feed_look, unknown_looks
from secondfix.scenes.reaching import Reach
from secondfix.scenes.supposing import Unknown
from secondfix.scenes.wording import to_words
from secondfix.terms import PURPOSES

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


def decided(
    schedule: Schedule, at: tuple[str, str], judgement: Judgement, *, by: tuple[str, ...]
) -> Crossing:
    """The crossing that stands whatever is unknown; ``at`` is scene and load."""
    verdict = judgement.verdict
    worst = Severity.DANGER if judgement.hazard else None
    why = _sentence(schedule, at[1], verdict)
    if verdict.demand is None:
        return Crossing(*at, verdict.kind, verdict.reason, why, by, refused=verdict.refused, worst=worst)
    feed = feed_of(schedule, at[1])
    if isinstance(feed, Reason):
        looks = (feed_look(schedule, at[1], feed),)
        kind, worst = CrossingKind.CANNOT_TELL, worst or Severity.FAULT
        return Crossing(
            *at, kind, feed, _SENTENCES[feed], by, refused=verdict.refused, worst=worst, looks=looks
        )
    to, asked = verdict.demand
    return Crossing(
        *at,
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
    at: tuple[str, str],
    judgement: Judgement,
    *,
    reaches: list[Reach],
    by: tuple[str, ...],
) -> Crossing:
    """The crossing that hangs on something unknown; ``worst`` is the worst that it could be."""
    reasons = [_UNKNOWN_REASONS[unknown] for unknown in judgement.unknowns]
    return Crossing(
        *at,
        CrossingKind.CANNOT_TELL,
        reasons[0],
        " ".join(_SENTENCES[reason] for reason in reasons),
        by,
        worst=Severity.DANGER if judgement.hazard else Severity.FAULT,
        looks=unknown_looks(schedule, at[1], judgement.unknowns, reaches),
    )


def _follows(schedule: Schedule, feed: Channel) -> bool:
    """Whether the output can hold a level; one whose model is open keeps the level asked for."""
    model = schedule.model_of(feed.device_id)
    return model is None or model.output in {Output.DIMMER, Output.FAN_CONTROL}


def _sentence(schedule: Schedule, load_id: str, verdict: Verdict) -> str:
    purpose = schedule.house.loads[load_id].purpose
    policy = PURPOSES[purpose] if purpose else None
    return _SENTENCES[verdict.reason].format(
        to=to_words(*verdict.demand) if verdict.demand else "",
        purpose=policy.label if policy else "whatever it may be",
        refused=" or ".join(verdict.refused),
        hazard=f" ({policy.hazard})" if policy and policy.hazard else "",
    )
