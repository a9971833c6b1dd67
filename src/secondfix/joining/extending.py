"""What the worksheet of an extension unit says: which gang it extends, by which core, and when to test it.

An extension unit (IEC 60669-2-1) has no radio: nothing is joined. Terminals are those of its own sheet; that
the core is found by continuity, both boxes dead, is common practice, no source.
"""

from collections.abc import Iterator

from secondfix.house import Channel, Duty, Row, Schedule, is_nec, settled
from secondfix.terms import said


def extending_sentences(schedule: Schedule, device_id: str) -> tuple[str, ...]:
    """Sentence by sentence what the device extends and how it is wired; empty for one that has a radio."""
    if schedule.on_radio(device_id):
        return ()
    model = schedule.model_of(device_id)
    told = [s for c in schedule.channels_of[device_id] for s in _gang(schedule, c)]
    if model:
        told.append(f"Terminals as on its sheet: {model.sheet}.")
    return (*told, "It has no radio: nothing is joined, and no entry appears.")


def _gang(schedule: Schedule, channel: Channel) -> Iterator[str]:
    row, gang = channel.row, f"Gang {channel.number}"
    if row is None or row.gang.duty is not Duty.EXTENDS or row.gang.extends not in schedule.rows:
        yield f"{gang}: which gang it extends is not stated; cap its core until it is known."
        return
    target = schedule.rows[row.gang.extends]
    works = f", which works {target.load.name} ({target.load_id})" if target.load else ""
    yield f"{gang} extends {target.id}{works}: {_unit(target)} in {target.box_id}."
    yield _core(schedule, row, target)
    yield _line(row, target)
    yield f"Test it once {target.device_id or target.id} is fitted and has power."


def _unit(target: Row) -> str:
    if target.device_id is None:
        return "no device is chosen yet"
    title = f" ({target.model.title})" if target.model else ""
    return f"{target.device_id}{title}, gang {target.channel}"


def _core(schedule: Schedule, row: Row, target: Row) -> str:
    core = "traveler" if is_nec(schedule.house) else "signal core"
    if row.box_id == target.box_id:
        return f"Its {core}: a tail within {row.box_id} to the extension terminal of {target.id}."
    dead = said("both boxes isolated and proved dead", nec=is_nec(schedule.house))
    return (
        f"Its {core}: the one that ends at the extension terminal of {target.id} in {target.box_id}. Find it "
        f"by continuity, {dead}; mark it at both ends; no load hangs on it."
    )


def _line(row: Row, target: Row) -> str:
    own, other = settled(row.gang.line), settled(target.gang.line)
    if own is None or other is None:
        return f"Whether {row.id} and {target.id} hang on one circuit is not known: find out first."
    if own != other:
        return f"Stop: {row.id} hangs on {own}, {target.id} on {other}. One circuit must feed both."
    return f"Both hang on circuit {own}: its line is of no other."
