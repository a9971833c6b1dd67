"""What starts a scene can start it, and starts no other."""

from collections.abc import Iterator

from secondfix.catalogue import Form
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Duty, Row, Start, duty_look, model_look
from secondfix.scenes.asked import Asked
from secondfix.scenes.sun import ALWAYS_BELOW_MDEG
from secondfix.scenes.wording import PRESS_WORDS, start_words

_CP = "common practice, no source"
START = Rule("scenes.start", "Can each start of a scene start it?", _CP)
TWICE = Rule("scenes.start_twice", "Does each press of a gang start one scene only?", _CP)
RULES = (START, TWICE)
_SILENT_SHEET = "its sheet does not state which presses it reports"
_TELLS_OF_ITSELF = {Form.SENSOR, Form.BATTERY_BUTTON}


def check(asked: Asked) -> Iterator[Finding]:
    """One answer per start; and one per gang and press that starts scenes."""
    for scene_id, scene in asked.schedule.house.scenes.items():
        for start in dict.fromkeys(scene.starts):
            yield _start(asked, scene_id, start)
    yield from _twice(asked)


def _start(asked: Asked, scene_id: str, start: Start) -> Finding:
    if start.gang:
        return _by_gang(asked, scene_id, start, start.gang)
    if start.device:
        return _by_device(asked, scene_id, start, start.device)
    return _by_clock_or_sun(asked, scene_id, start)


def _by_clock_or_sun(asked: Asked, scene_id: str, start: Start) -> Finding:
    house = asked.schedule.house
    lacking = {"time_zone": "time zone"}
    if start.sun:
        lacking |= {"latitude_mdeg": "latitude", "longitude_mdeg": "longitude"}
    lacking = {field: words for field, words in lacking.items() if getattr(house, field) is None}
    words = start_words(start)
    if lacking:
        return cannot_tell(
            START,
            Severity.FAULT,
            scene_id,
            f"Without {' and '.join(lacking.values())} nobody can say when '{words}' is.",
            looks=[Look("house", field, f"state the {what} of the house") for field, what in lacking.items()],
        )
    latitude = abs(house.latitude_mdeg or 0)
    if start.sun and latitude > ALWAYS_BELOW_MDEG:
        return fails(
            START,
            Severity.ADVICE,
            scene_id,
            f"Some days of the year have no {start.sun} there: on these '{words}' does not come.",
            value=f"{latitude / 1000:.1f}° of latitude",
            limit=f"{ALWAYS_BELOW_MDEG / 1000:.1f}° of latitude",
            remedy="Add a start by a time of day.",
            source="U.S. Naval Observatory, low-precision formulas (secondary)",
        )
    return passes(START, scene_id, value=words)


def _by_gang(asked: Asked, scene_id: str, start: Start, gang_id: str) -> Finding:
    row = asked.schedule.rows[gang_id]
    words = start_words(start)
    duty = row.gang.duty
    if duty is Duty.CAPPED:
        return fails(
            START,
            Severity.FAULT,
            scene_id,
            f"Gang {gang_id} is capped: nobody can press it.",
            value=words,
            limit="a gang that can be pressed",
            remedy="Start the scene from another gang, or give this one the duty 'scene only'.",
            also=(gang_id,),
        )
    stated = row.model.reports_presses if row.model else None
    if row.model and row.model.protocol is None:
        stated = ()  # an extension unit tells the gang that it is wired to, and nobody else
    if stated is not None and start.press not in stated:
        also = (row.id, row.device_id or "")
        return _not_reported(scene_id, start, f"The device of {row.id}", stated, also=also)
    if stated is not None and duty is not Duty.NOT_KNOWN:
        return passes(START, scene_id, value=words, also=(gang_id,))
    look, says = _open(row)
    text = f"Whether a press of {gang_id} can start the scene is not known: {says}."
    return cannot_tell(START, Severity.FAULT, scene_id, text, looks=[look], value=words, also=(gang_id,))


def _not_reported(
    scene_id: str, start: Start, who: str, stated: tuple[str, ...], *, also: tuple[str, ...]
) -> Finding:
    told = ", ".join(PRESS_WORDS[press] for press in stated)
    return fails(
        START,
        Severity.FAULT,
        scene_id,
        f"{who} does not tell the controller when it is pressed {PRESS_WORDS[start.press or 'once']}.",
        value=start_words(start),
        limit=f"a press that its sheet states: {told}" if told else "a device that tells of presses",
        remedy="Start the scene by another press or another gang.",
        also=also,
    )


def _open(row: Row) -> tuple[Look, str]:
    if row.device_id is None:
        return Look(row.id, "device", "decide which device works this gang"), "no device is decided there"
    if row.model is None:
        look = model_look(row.device_id)
        return look, "its model is not decided"
    if row.gang.duty is Duty.NOT_KNOWN:
        return duty_look(row), "nobody knows what it is for"
    return _press_look(row.id), _SILENT_SHEET


def _press_look(place: str) -> Look:
    return Look(place, "press", "press it and see whether the controller is told of the press")


def _by_device(asked: Asked, scene_id: str, start: Start, device_id: str) -> Finding:
    model = asked.schedule.model_of(device_id)
    if model is None:
        return cannot_tell(
            START,
            Severity.FAULT,
            scene_id,
            f"Whether {device_id} can start the scene is not known: its model is not decided.",
            looks=[model_look(device_id)],
            also=(device_id,),
        )
    if model.form not in _TELLS_OF_ITSELF:
        return fails(
            START,
            Severity.FAULT,
            scene_id,
            f"{device_id} is neither a sensor nor a battery button.",
            value=model.form.value.replace("_", " "),
            limit="a sensor or a battery button",
            remedy="Start the scene by a gang of the device, or by a sensor.",
            also=(device_id,),
        )
    buttons = max(model.gangs, 1)
    if start.button is not None and start.button > buttons:
        return fails(
            START,
            Severity.FAULT,
            scene_id,
            f"{device_id} has no button {start.button}.",
            value=start_words(start),
            limit=f"buttons 1 to {buttons}",
            remedy="Name a button that the device has.",
            also=(device_id,),
        )
    stated = model.reports_presses
    if start.press is not None and stated is None:
        text = f"Whether a press of {device_id} can start the scene is not known: {_SILENT_SHEET}."
        looks = [_press_look(device_id)]
        return cannot_tell(
            START, Severity.FAULT, scene_id, text, looks=looks, value=start_words(start), also=(device_id,)
        )
    if start.press is not None and stated is not None and start.press not in stated:
        return _not_reported(scene_id, start, device_id, stated, also=(device_id,))
    return passes(START, scene_id, value=start_words(start), also=(device_id,))


def _twice(asked: Asked) -> Iterator[Finding]:
    """At the gang, since that is where the hand is."""
    scenes: dict[tuple[str, str], list[str]] = {}
    for scene_id, scene in asked.schedule.house.scenes.items():
        for start in dict.fromkeys(scene.starts):
            at = start.gang or (start.button and asked.schedule.place_of_device(start.device or ""))
            if at and start.press:
                scenes.setdefault((at, start_words(start)), []).append(scene_id)
    for (gang, words), ids in scenes.items():
        if len(ids) == 1:
            yield passes(TWICE, gang, value=words, also=ids)
            continue
        yield fails(
            TWICE,
            Severity.FAULT,
            gang,
            f"'{words}' starts {len(ids)} scenes: {', '.join(ids)}.",
            value=f"{len(ids)} scenes",
            limit="1 scene",
            remedy="Give each scene a press or a gang of its own.",
            also=ids,
        )
