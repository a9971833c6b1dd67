"""What a button does, in the words that every drawing and schedule prints."""

from secondfix.house import Duty, Load, Row, Schedule

PRESS_WORDS = {"once": "once", "twice": "twice", "three_times": "three times", "held": "held"}


def duty_words(schedule: Schedule, row: Row) -> str:
    """What one gang is there for: its load, the gang it extends, or that it is not known."""
    if row.gang.duty is Duty.FEEDS:
        return load_words(schedule, row.box.room, row.load) if row.load else "feeds a load not known"
    if row.gang.duty is Duty.EXTENDS:
        target = row.gang.extends
        fed = _end_of_chain(schedule, row)
        return f"{fed} (extension of {target})" if fed else f"extension of {target or 'a gang not known'}"
    return {Duty.SCENE_ONLY: "scenes only", Duty.CAPPED: "capped", Duty.NOT_KNOWN: "not known"}[row.gang.duty]


def load_words(schedule: Schedule, room_id: str, load: Load) -> str:
    """A load by its name, and by its room where that is another than where one stands."""
    return load.name if load.room == room_id else f"{load.name}, {schedule.house.rooms[load.room].name}"


def button_lines(schedule: Schedule, row: Row) -> list[str]:
    """The duty of a gang, and each scene that one of its presses starts."""
    return [duty_words(schedule, row), *scene_presses(schedule, row.id)]


def scene_presses(schedule: Schedule, gang_id: str) -> list[str]:
    """``held: Goodnight`` for every scene that a press of this gang starts."""
    return [
        f"{PRESS_WORDS[start.press or 'once']}: {scene.name}"
        for scene in schedule.house.scenes.values()
        for start in scene.starts
        if start.by == "gang" and start.gang == gang_id
    ]


def rows_of_box(schedule: Schedule, box_id: str) -> list[Row]:
    """The gangs of a box as they stand on the wall: mount by mount, then by number."""
    rows = [schedule.rows[f"{box_id}.{n}"] for n in schedule.house.boxes[box_id].gangs]
    return sorted(rows, key=lambda r: (int(r.gang.mount), int(r.gang_no)))


def _end_of_chain(schedule: Schedule, row: Row) -> str | None:
    room_id = row.box.room
    seen: set[str] = set()
    while row.gang.duty is Duty.EXTENDS and row.gang.extends in schedule.rows and row.id not in seen:
        seen.add(row.id)
        row = schedule.rows[row.gang.extends]
    return load_words(schedule, room_id, row.load) if row.load else None
