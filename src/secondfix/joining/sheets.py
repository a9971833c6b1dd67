"""One worksheet for each device, in walk order."""

from dataclasses import dataclass

from secondfix.catalogue import CodeKind, Model, Removal
from secondfix.house import Schedule, is_nec
from secondfix.joining.cautions import cautions_for
from secondfix.joining.circuits import Group, is_wired
from secondfix.joining.entry_rows import entries_words, entry_rows, function_test_rows, tell_apart
from secondfix.joining.extending import extending_sentences
from secondfix.joining.fronts import body_of, joined_on_bench
from secondfix.joining.links import CONTROLLER
from secondfix.joining.sentences import procedure_sentences, seconds_words
from secondfix.joining.settings import power_loss_words, time_limit_words
from secondfix.joining.site import groups_of
from secondfix.joining.steps import Mark, StepKind, Walk, WalkStep
from secondfix.joining.when_nothing import WHEN_NOTHING
from secondfix.joining.whereabouts import whereabouts
from secondfix.joining.wording import (
    device_title,
    isolate_words,
    named,
    place_title,
    protocol_of,
    protocol_words,
)
from secondfix.joining.worksheet import CodeLine, Worksheet
from secondfix.naming import Names
from secondfix.terms import PROTOCOLS, Protocol

CODE_WORDS: dict[CodeKind, str] = {
    CodeKind.ZIGBEE_INSTALL_CODE: "install code, with the address beside it",
    CodeKind.ZWAVE_DSK: "DSK, or the square code that holds it",
    CodeKind.MATTER: "setup code, or the square code that holds it",
}

# How long the network stays open. Zigbee: at least 180 s (Base Device Behavior 16-02828, secondary), at most
# 254 s (chip makers' manuals, secondary). Z-Wave: add and remove end after 60 s (Z-Wave Alliance, secondary).
WINDOW_NOTES: dict[Protocol, str] = {
    Protocol.ZIGBEE: "It closes by itself after 180 s to 254 s.",
    Protocol.ZWAVE: "It ends by itself after about 60 s.",
    Protocol.MATTER_THREAD: "The device's own window closes too: have its code at hand.",
}


@dataclass(frozen=True, slots=True)
class _Turn:
    """One device's steps in the walk: where it is fitted, joined, and heard in its place.

    One without a radio is fitted and tested: its test stands for the other two.
    """

    fit: WalkStep
    join: WalkStep
    seat: WalkStep

    @property
    def marks(self) -> tuple[Mark, ...]:
        """What is not as it should be, each once."""
        return tuple(dict.fromkeys((*self.fit.marks, *self.join.marks, *self.seat.marks)))


def worksheets(schedule: Schedule, walk: Walk, names: Names) -> tuple[Worksheet, ...]:
    """A worksheet for each device, in the order in which the walk joins them, or tests what has no radio.

    What the model does not state is said to be not stated, never left out. Holds the key ring's
    reference of a code, never the code itself.
    """
    by_kind = {(step.kind, step.device): step for step in walk.steps}
    grouped = groups_of(schedule, tuple(schedule.house.devices))
    group_at = {place: group for group in grouped for place in group.places}
    sheets = []
    for number, join in enumerate(filter(lambda step: _own_turn(schedule, step), walk.steps), 1):
        test = by_kind[StepKind.FUNCTION_TEST, join.device]
        seat = test if Mark.BENCH in join.marks else join
        turn = _Turn(by_kind[StepKind.FIT, join.device], join, seat)
        sheets.append(_worksheet(schedule, names, number, turn, group_at.get(join.place)))
    return tuple(sheets)


def _own_turn(schedule: Schedule, step: WalkStep) -> bool:
    """Whether a worksheet begins at this step: a join, or the test of a device without a radio."""
    if step.kind is StepKind.FUNCTION_TEST:
        return step.device is not None and not schedule.on_radio(step.device)
    return step.kind is StepKind.JOIN


def _worksheet(schedule: Schedule, names: Names, number: int, turn: _Turn, group: Group | None) -> Worksheet:
    step = turn.join
    device_id = step.device or ""
    model = schedule.model_of(device_id)
    protocol = protocol_of(schedule, device_id)
    opened = group if group and is_wired(schedule, device_id) else None
    joins, nec = schedule.on_radio(device_id), is_nec(schedule.house)
    return Worksheet(
        number=number,
        stage=step.stage,
        device=device_id,
        device_title=device_title(schedule, device_id),
        place=step.place,
        place_title=place_title(schedule.house, step.place),
        where=whereabouts(schedule.house, step.place),
        circuits=opened.circuits if opened else (),
        isolate=_isolate(schedule, turn, opened) if opened else "",
        cautions=cautions_for(schedule, device_id),
        code=code_line(schedule, device_id),
        joins=joins,
        extending=extending_sentences(schedule, device_id),
        removal=removal_sentences(model, protocol, nec=nec) if joins else (),
        window=_window(protocol) if joins else (),
        procedure=_procedure(model, nec=nec) if joins else (),
        through=_through(schedule, turn) if joins else "",
        time=_time(model, step) if joins else "",
        entries_expected=model.entries if model else None,
        entries_words=entries_words(model) if joins else "",
        entries=entry_rows(names, device_id),
        tell_apart=tell_apart(schedule, device_id, protocol) if joins else (),
        power_loss=power_loss_words(schedule, device_id),
        time_limits=time_limit_words(schedule, device_id),
        when_nothing=WHEN_NOTHING[protocol] if protocol else (),
        tests=function_test_rows(schedule, device_id),
        marks=turn.marks,
    )


def _isolate(schedule: Schedule, turn: _Turn, group: Group) -> str:
    """The whole group of the stage in which it is fitted, for a joint in one box serves others too."""
    words = isolate_words(schedule.house, group, (turn.fit.place,))
    other = turn.fit.stage != turn.join.stage
    return f"{words} It is fitted in stage {turn.fit.stage}." if other else words


def _procedure(model: Model | None, *, nec: bool) -> tuple[str, ...]:
    if model is None or model.join is None:
        return ("Not known: the model is not known.",)
    return procedure_sentences(model.join, body_of(model), bench=joined_on_bench(model), nec=nec)


def code_line(schedule: Schedule, device_id: str) -> CodeLine | None:
    """The code to capture, None where the model carries none or is not known."""
    model = schedule.model_of(device_id)
    if model is None or model.code is CodeKind.NONE:
        return None
    ref = schedule.house.devices[device_id].code_ref
    where = model.code_printed_at or "not stated: look on the device, its carton and its card"
    kept = f"kept in the key ring as {ref}" if ref else "not captured yet: capture it before fitting"
    words = f"{CODE_WORDS[model.code][0].upper()}{CODE_WORDS[model.code][1:]}: {kept}."
    return CodeLine(model.code, words, where, ref)


def removal_sentences(
    model: Model | None, protocol: Protocol | None, *, nec: bool = False
) -> tuple[str, ...]:
    """What comes before joining: removal, always, where it was used, or where it is not stated.

    First when it is asked for; then the steps; then, where there is one, a lead for the reset and its steps.
    """
    if model is None or model.removal_before_join is Removal.NEVER:
        return ()
    word = PROTOCOLS[protocol].remove if protocol else "remove"
    body, bench = body_of(model), joined_on_bench(model)
    how = procedure_sentences(model.remove, body, bench=bench, nec=nec) if model.remove else ()
    how = how or ("How to remove it is not stated.",)
    if model.reset:
        how = (*how, "Or reset it:", *procedure_sentences(model.reset, body, bench=bench, nec=nec))
    lead = {
        Removal.ALWAYS: "Even when new, remove it first ({}): have a controller in that mode at hand.",
        Removal.WHEN_USED: "Only if it was in use before: remove it first ({}).",
        Removal.NOT_STATED: "Only if nothing appears: remove it first ({}); whether it must is not stated.",
    }[model.removal_before_join]
    return (lead.format(word), *how)


def _window(protocol: Protocol | None) -> tuple[str, ...]:
    if protocol is None:
        return ("Not known: neither network nor model is stated.",)
    words = PROTOCOLS[protocol].window
    return f"{words[0].upper()}{words[1:]} at the {PROTOCOLS[protocol].controller}.", WINDOW_NOTES[protocol]


def _through(schedule: Schedule, turn: _Turn) -> str:
    step = turn.seat
    words = protocol_words(schedule, step.device or "")
    if words is None or step.parent is None:
        return "No good parent is known for this place."
    text = f"Parent: {named(step.parent, words)}, which must be {words.joined} and have power."
    if step.parent == CONTROLLER:
        text = f"Parent: {named(step.parent, words)}."
    spare = f" In reserve: {named(step.spare, words)}." if step.spare else " None in reserve."
    doubt = " This link is not known: try it with the plate fitted." if step.margin_db is None else ""
    if turn.join is not turn.seat:
        text = f"On the bench, parent: the {words.controller}. Once fitted, p{text[1:]}"
    return text + spare + doubt


def _time(model: Model | None, step: WalkStep) -> str:
    """Usual time here: near behind one link, far behind more (common practice, no source)."""
    near, far = (model.join.near_s, model.join.far_s) if model and model.join else (None, None)
    if near is None and far is None:
        return "Usual time: not stated."
    close = f"Near the controller about {seconds_words(1000 * near)}" if near is not None else ""
    away = f"up to {seconds_words(1000 * far)}" if far is not None else "longer, how long is not stated"
    if step.links is None:
        return f"{close or 'Usual time'}; far from it {away}."
    if step.links == 1:
        return f"{close}." if close else f"Usual time: {away}."
    return f"{close or 'Usual time'}; here, {step.links} links away, {away}."
