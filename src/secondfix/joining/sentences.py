"""Procedures in sentences: what hands and eyes do, from a model's steps."""

from secondfix.catalogue import Act, Procedure, Step

_PLAIN: dict[Act, str] = {
    Act.RELEASE_FRONT: "Release the front",
    Act.REFIT_FRONT: "Fit the front again",
    Act.POWER_ON: "See that the circuit is on",
    Act.POWER_OFF: "Switch the circuit off at the board",
}


def procedure_sentences(procedure: Procedure) -> tuple[str, ...]:
    """Each step as one sentence, then the maker's note where there is one.

    ``Press the hidden button behind the front 3 times within 1.5 s.`` ``Hold any button for 10 s until
    the lamp blinks green twice.``
    """
    sentences: list[str] = []
    was_off = False
    for step in procedure.steps:
        back_on = step.act is Act.POWER_ON and was_off
        sentences.append("Switch the circuit on again at the board." if back_on else _sentence(step))
        was_off = step.act is Act.POWER_OFF or (was_off and step.act is not Act.POWER_ON)
    note = procedure.note.strip()
    return (*sentences, note) if note else tuple(sentences)


def seconds_words(milliseconds: int) -> str:
    """``10 s``, ``1.5 s``: whole seconds without a point."""
    return f"{milliseconds / 1000:g} s"


def _sentence(step: Step) -> str:
    if step.act is Act.PRESS:
        return f"{_press(step)}{_lamp(step, '; the lamp then')}."
    if step.act is Act.HOLD:
        return f"Hold {step.button} for {seconds_words(step.hold_ms or 0)}{_lamp(step, ' until the lamp')}."
    if step.act is Act.PRESS_THEN_HOLD:
        held = f", then hold it for {seconds_words(step.hold_ms or 0)}"
        return f"{_press(step)}{held}{_lamp(step, ' until the lamp')}."
    if step.act is Act.WATCH:
        return f"Watch: the lamp {step.indicator}."
    if step.act is Act.WAIT:
        return f"Wait {seconds_words(step.wait_ms or 0)}{_lamp(step, ' until the lamp')}."
    return f"{_PLAIN[step.act]}{_lamp(step, '; the lamp then')}."


def _press(step: Step) -> str:
    times = "once" if step.times == 1 else f"{step.times} times"
    within = f" within {seconds_words(step.within_ms)}" if step.within_ms else ""
    return f"Press {step.button} {times}{within}"


def _lamp(step: Step, lead: str) -> str:
    return f"{lead} {step.indicator}" if step.indicator else ""
