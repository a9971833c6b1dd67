"""The entries that a device must show, how to tell them apart, and its function test."""

from collections.abc import Iterator

from secondfix.catalogue import Form, Model, WholeSwitches
from secondfix.house import Channel, Duty, Schedule, Start
from secondfix.joining.worksheet import EntryRow, FunctionTestRow
from secondfix.naming import Entry, EntryKind, Names
from secondfix.terms import PURPOSES, AllOff, Protocol, UnattendedOn


def entry_rows(names: Names, device_id: str) -> tuple[EntryRow, ...]:
    """Name and purpose of each entry; the whole-device entry without a purpose and out of scenes."""
    entries = names.of_device.get(device_id, ())
    return tuple(_row(e, alone=len(entries) == 1) for e in entries)


def _row(entry: Entry, *, alone: bool) -> EntryRow:
    if entry.kind is EntryKind.WHOLE_DEVICE:
        note = "named after the place; never in a scene"
        if not entry.stands:
            note += "; appears only if the model has one"
        return EntryRow("whole device", entry.endpoint, entry.name, "no purpose", note)
    label = f"gang {entry.number}"
    if entry.kind is not EntryKind.GANG:
        label = "this device" if alone else f"button {entry.number}"
    note = "" if entry.explained else "name for now: nobody knows yet what this gang does"
    return EntryRow(label, entry.endpoint, entry.name, _purpose(entry), note)


def _purpose(entry: Entry) -> str:
    if entry.purpose is not None:
        return PURPOSES[entry.purpose].label
    if entry.load_id:
        return "not stated: ask before setting one"
    if entry.duty is Duty.NOT_KNOWN:
        return "none until it is known"
    return "no purpose"


def entries_words(model: Model | None) -> str:
    """How many entries must appear."""
    if model is None:
        return "How many entries must appear is not known: the model is not known."
    if model.entries == 1:
        return "1 entry must appear."
    if not model.whole_entry:
        word = "button" if model.form is Form.BATTERY_BUTTON else "gang"
        return f"{model.entries} entries must appear, one for each {word}."
    rest = f"{model.gangs} gangs" if model.gangs > 1 else "1 gang" if model.gangs else "the device's own"
    return f"{model.entries} entries must appear: the whole device, and {rest}."


def tell_apart(schedule: Schedule, device_id: str, protocol: Protocol | None) -> tuple[str, ...]:
    """How to know which entry is which: by address or by pressing, never by their order."""
    address = schedule.house.devices[device_id].address
    model = schedule.model_of(device_id)
    known = f"its address is {_grouped(address)}" if address else "write down its address as it appears"
    if model is not None and model.entries == 1:
        first = f"{known[0].upper()}{known[1:]}."
        return (f"{first} Check the address before naming it: others may appear at the same time.",)
    by = {
        Protocol.ZWAVE: "the root device (0) is the whole device, end points 1 and up are the gangs",
        Protocol.ZIGBEE: "endpoints 1 and up are the gangs",
        Protocol.MATTER_THREAD: "endpoint 0 is the root node, endpoints 1 and up are the gangs",
    }
    numbers = f"; within it {by[protocol]}" if protocol else ""
    return (
        f"Tell the entries apart by address: {known}{numbers}.",
        "Or by pressing: press one button and watch which entry changes; one after the other.",
        "Never tell them apart by their order in the list.",
    )


def _grouped(address: str) -> str:
    return ":".join(address[i : i + 2] for i in range(0, len(address), 2))


def function_test_rows(schedule: Schedule, device_id: str) -> tuple[FunctionTestRow, ...]:
    """One row for each gang, and one for the whole-device entry where the model has it."""
    model = schedule.model_of(device_id)
    buttons = model is not None and model.form is Form.BATTERY_BUTTON
    word = "button" if buttons else "gang"
    rows = [_gang_row(schedule, c, f"{word} {c.number}") for c in schedule.channels_of[device_id]]
    if not rows:
        return (
            FunctionTestRow("this device", "Ask it for its state.", "It answers, and its entry shows it."),
        )
    if model is not None and model.whole_entry:
        rows.append(_whole_row(schedule, device_id, model.whole_switches))
    return tuple(rows)


def _gang_row(schedule: Schedule, channel: Channel, label: str) -> FunctionTestRow:
    press = f"Press {label}, twice."
    load = schedule.house.loads[channel.load_id] if channel.load_id else None
    if load:
        room = schedule.house.rooms[load.room].name
        return FunctionTestRow(label, press, f"{load.name} ({room}) changes each time, and nothing else.")
    gang = channel.row.gang if channel.row else None
    if gang and gang.extends:
        return FunctionTestRow(
            label, press, f"What {gang.extends} works answers: {_at_end(schedule, gang.extends)}."
        )
    if gang and gang.duty is Duty.NOT_KNOWN:
        return FunctionTestRow(
            label, press, "Not known: note every load of the house that changes, or that none does."
        )
    if gang and gang.duty is Duty.CAPPED:
        return FunctionTestRow(label, press, "Nothing answers; its conductor is capped.")
    return FunctionTestRow(label, f"Press {label}.", f"Its entry answers. {_scenes_words(schedule, channel)}")


_PRESSES = {"once": "once", "twice": "twice", "three_times": "three times", "held": "held"}


def _scenes_words(schedule: Schedule, channel: Channel) -> str:
    """The scenes that this gang or button starts and by which press; never those of the whole device."""
    started, perhaps = list(_started(schedule, channel)), list(_by_some_button(schedule, channel))
    if started:
        return f"No load of its own; the scenes it starts: {', '.join(started)}."
    text = "No load of its own; nothing assigned that the book knows"
    if perhaps:
        text += f" (one of this device's buttons starts {', '.join(perhaps)}: which one is not stated)"
    return f"{text}."


def _at_end(schedule: Schedule, gang_id: str) -> str:
    row = schedule.rows[gang_id]
    while row.gang.extends:
        row = schedule.rows[row.gang.extends]
    return row.load.name if row.load else "its load is not known"


def _started(schedule: Schedule, channel: Channel) -> Iterator[str]:
    for scene in schedule.house.scenes.values():
        for start in scene.starts:
            by_gang = start.gang is not None and channel.row is not None and start.gang == channel.row.id
            of_device = start.device == channel.device_id and _button(schedule, start) == channel.number
            if by_gang or of_device:
                yield f"{scene.name} ({_PRESSES[start.press]})" if start.press else scene.name


def _by_some_button(schedule: Schedule, channel: Channel) -> Iterator[str]:
    for scene in schedule.house.scenes.values():
        if any(s.device == channel.device_id and _button(schedule, s) is None for s in scene.starts):
            yield scene.name


def _button(schedule: Schedule, start: Start) -> int | None:
    """The button a start names; the only one of a device that has no other; else None."""
    if start.button is None and start.device and len(schedule.channels_of[start.device]) == 1:
        return 1
    return start.button


def _whole_row(schedule: Schedule, device_id: str, switches: WholeSwitches) -> FunctionTestRow:
    kept = [
        schedule.house.loads[c.load_id].name
        for c in schedule.channels_of[device_id]
        if c.load_id and _must_not_be_switched(schedule, c.load_id)
    ]
    if kept:
        return FunctionTestRow(
            "whole device", f"Do not switch it: it may reach {', '.join(kept)}.", "Left untested."
        )
    answer = {
        WholeSwitches.ALL: "Every gang follows.",
        WholeSwitches.FIRST: "Gang 1 follows, and no other.",
        WholeSwitches.NONE: "No gang follows.",
        WholeSwitches.TO_BE_TESTED: "The maker does not say: note which gangs follow.",
    }[switches]
    return FunctionTestRow("whole device", "Switch the whole-device entry on, then off.", answer)


def _must_not_be_switched(schedule: Schedule, load_id: str) -> bool:
    purpose = schedule.house.loads[load_id].purpose
    if purpose is None:
        return True
    policy = PURPOSES[purpose]
    return policy.all_off is AllOff.NEVER or policy.unattended_on is UnattendedOn.NEVER
