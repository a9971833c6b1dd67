"""Procedures in sentences: what hands and eyes do, from a model's steps.

A maker's indicator is printed as written, after *Watch for:*. No sentence lets a front come off in a
wall box while power is on and live parts can be touched: first isolate, or else go to the bench.
"""

from collections.abc import Iterator

from secondfix.catalogue import Act, Procedure, Step
from secondfix.joining.fronts import Body, Fed, wants_bench
from secondfix.terms import said

BENCH = (
    "Not where it is fitted: on a bench, before fitting, by a person authorised for live work under local "
    "code, from a lead with a switch and protection of its own. If it is fitted already: isolate, lock off, "
    "prove dead, and take it out first."
)
_FRONT = {Act.RELEASE_FRONT: "Release the front.", Act.REFIT_FRONT: "Fit the front again."}
_ON: dict[Fed, str] = {
    Fed.CIRCUIT: "See that the circuit is on.",
    Fed.SOCKET: "Plug it in.",
    Fed.BATTERY: "Put the battery in.",
}
_OFF: dict[Fed, str] = {
    Fed.CIRCUIT: "Switch the circuit off at the board.",
    Fed.SOCKET: "Pull it out of its socket.",
    Fed.BATTERY: "Take the battery out.",
}
_AGAIN: dict[Fed, str] = {
    Fed.CIRCUIT: "Switch the circuit on again at the board.",
    Fed.SOCKET: "Plug it in again.",
    Fed.BATTERY: "Put the battery in again.",
}
_DEAD_FIRST: dict[Fed, str] = {
    Fed.CIRCUIT: "Isolate, lock off and prove dead; only then release the front.",
    Fed.SOCKET: "Pull it out of its socket; only then release the front.",
}
_POWER_AFTER: dict[Fed, str] = {
    Fed.CIRCUIT: "Fit the front again; only then energise the circuit.",
    Fed.SOCKET: "Fit the front again; only then plug it in.",
}


def procedure_sentences(
    procedure: Procedure, body: Body, *, bench: bool = False, nec: bool = False
) -> tuple[str, ...]:
    """Each step as one sentence, then the maker's note where there is one.

    ``Press 3 times within 1.5 s: the hidden button.`` ``Hold for 10 s: any button. Watch for: blinks
    green twice.`` On the bench, by ``bench`` or because the gesture wants it, the first sentence says so.
    In NEC houses (``nec``) our own sentences are in their words; the maker's stay as written.
    """
    on_bench = bench or wants_bench(body, procedure)
    told = tuple(_on_bench(procedure, nec=nec) if on_bench else _in_place(procedure, body, nec=nec))
    note = procedure.note.strip()
    return (*told, note) if note else told


def seconds_words(milliseconds: int) -> str:
    """``10 s``, ``1.5 s``: whole seconds without a point."""
    return f"{milliseconds / 1000:g} s"


def _in_place(procedure: Procedure, body: Body, *, nec: bool) -> Iterator[str]:
    power, was_off, open_ = True, False, False
    for step in procedure.steps:
        if step.act is Act.RELEASE_FRONT:
            open_ = True
            yield _then(said(_DEAD_FIRST[body.fed] if body.live else _FRONT[step.act], nec=nec), step)
        elif step.act is Act.REFIT_FRONT:
            open_ = False
            after = _POWER_AFTER[body.fed] if body.live and power else _FRONT[step.act]
            yield _then(said(after, nec=nec), step)
        elif step.act is Act.POWER_OFF:
            power, was_off = False, True
            yield _then(said(_OFF[body.fed], nec=nec), step)
        elif step.act is Act.POWER_ON:
            power = True
            yield _then(said(_AGAIN[body.fed] if was_off else _ON[body.fed], nec=nec), step)
        else:
            yield _sentence(step)
    if open_ and body.live:
        yield "Fit the front again before power returns."


def _on_bench(procedure: Procedure, *, nec: bool) -> Iterator[str]:
    """The lead is dead whenever the front comes off or goes on."""
    yield said(BENCH, nec=nec)
    lead, wanted, open_ = False, True, False
    for step in procedure.steps:
        if step.act in _FRONT or step.act is Act.POWER_OFF:
            if lead:
                yield "Switch the bench lead off."
            lead = False
            if step.act in _FRONT:
                open_ = step.act is Act.RELEASE_FRONT
                yield _then(_FRONT[step.act], step)
            else:
                wanted = False
                yield from _watch(step)
            continue
        wanted = wanted or step.act is Act.POWER_ON
        if step.act is Act.POWER_ON and not step.indicator:
            continue  # the lead is switched on for the first step that needs it
        if wanted and not lead:
            lead = True
            mind = "; touch nothing but what the next step names" if open_ else ""
            yield f"Switch the bench lead on{mind}."
        yield from (_watch(step) if step.act is Act.POWER_ON else (_sentence(step),))
    if lead:
        yield "Switch the bench lead off."
    if open_:
        yield "Fit the front again before it goes to its place."


def _sentence(step: Step) -> str:
    if step.act is Act.PRESS:
        return _then(f"Press {_times(step)}: {step.button}.", step)
    if step.act is Act.HOLD:
        return _then(f"Hold for {seconds_words(step.hold_ms or 0)}: {step.button}.", step)
    if step.act is Act.PRESS_THEN_HOLD:
        held = f"then hold for {seconds_words(step.hold_ms or 0)}"
        return _then(f"Press {_times(step)}, {held}: {step.button}.", step)
    if step.act is Act.WAIT:
        return _then(f"Wait {seconds_words(step.wait_ms or 0)}.", step)
    return " ".join(_watch(step))


def _times(step: Step) -> str:
    times = "once" if step.times == 1 else f"{step.times} times"
    return f"{times} within {seconds_words(step.within_ms)}" if step.within_ms else times


def _then(words: str, step: Step) -> str:
    return " ".join((words, *_watch(step)))


def _watch(step: Step) -> tuple[str, ...]:
    """The indicator in the maker's own words: some begin with what is seen, some with who shows it."""
    return (f"Watch for: {step.indicator.rstrip('.')}.",) if step.indicator else ()
