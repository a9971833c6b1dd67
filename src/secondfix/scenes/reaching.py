"""Which loads a direct command reaches, by what the model states and the survey knows."""

from dataclasses import dataclass
from enum import StrEnum

from secondfix.catalogue import Model, Output, WholeSwitches
from secondfix.house import Channel, Command, Duty, Scene, Schedule
from secondfix.scenes.natural import natural


class Via(StrEnum):
    """How a direct command comes to a load."""

    GANG = "gang"
    WHOLE = "whole"


@dataclass(frozen=True, slots=True)
class Reach:
    """Loads that one command surely reaches and loads that it may; gangs that leave it open.

    ``open_gangs`` are gangs nobody can explain or extensions, by id; ``to_be_tested``: what the
    whole-device entry switches is not stated.
    """

    command: Command
    surely: tuple[str, ...] = ()
    perhaps: tuple[str, ...] = ()
    open_gangs: tuple[str, ...] = ()
    to_be_tested: bool = False

    @property
    def via(self) -> Via:
        """Through a gang's entry or the whole-device entry."""
        return Via.WHOLE if self.command.entry == 0 else Via.GANG

    @property
    def idle(self) -> bool:
        """Whether it surely switches nothing."""
        return not (self.surely or self.open_gangs or self.to_be_tested)


def unfed(schedule: Schedule) -> tuple[str, ...]:
    """Loads that nothing known feeds: a gang that nobody can explain may feed any of them."""
    return tuple(load_id for load_id in schedule.house.loads if load_id not in schedule.fed_by)


def reaches(schedule: Schedule, scene: Scene, loose: tuple[str, ...]) -> tuple[Reach, ...]:
    """What each direct command of a scene reaches; each command once, by device and entry."""
    commands = sorted(set(scene.commands), key=lambda c: (natural(c.device), c.entry, c.to))
    return tuple(reach(schedule, command, loose) for command in commands)


def reach(schedule: Schedule, command: Command, loose: tuple[str, ...]) -> Reach:
    """What one command reaches; ``loose`` are the loads that nothing known feeds.

    A whole-device entry whose effect is to be tested may reach any of the device's gangs. An
    extension may pass a command on to the gang it extends (IEC 60669-2-1, extension unit; that it
    may do so by radio is common practice, no source).
    """
    model = schedule.model_of(command.device)
    channels = schedule.channels_of[command.device]
    if command.entry == 0:
        return _whole(schedule, command, channels, model, loose)
    if command.entry > len(channels):
        if model is not None:
            return Reach(command)
        return Reach(command, perhaps=loose, open_gangs=(f"{command.device}.{command.entry}",))
    return _sum(command, [_channel(schedule, channels[command.entry - 1], model, loose)])


def _whole(
    schedule: Schedule,
    command: Command,
    channels: tuple[Channel, ...],
    model: Model | None,
    loose: tuple[str, ...],
) -> Reach:
    switches = model.whole_switches if model else WholeSwitches.TO_BE_TESTED
    if switches is WholeSwitches.NONE:
        return Reach(command)
    reached = channels[:1] if switches is WholeSwitches.FIRST else channels
    parts = [_channel(schedule, channel, model, loose) for channel in reached]
    whole = _sum(command, parts)
    if switches is not WholeSwitches.TO_BE_TESTED:
        return whole
    maybe = tuple(dict.fromkeys((*whole.surely, *whole.perhaps)))
    return Reach(command, (), maybe, whole.open_gangs, to_be_tested=True)


@dataclass(frozen=True, slots=True)
class _Part:
    surely: tuple[str, ...] = ()
    perhaps: tuple[str, ...] = ()
    open_gang: str | None = None


def _channel(schedule: Schedule, channel: Channel, model: Model | None, loose: tuple[str, ...]) -> _Part:
    if channel.load_id:
        return _Part(surely=(channel.load_id,))
    if channel.row is None:
        silent = model is not None and model.output is Output.NONE
        return _Part() if silent else _Part((), loose, f"{channel.device_id}.{channel.number}")
    duty = channel.row.gang.duty
    if duty is Duty.EXTENDS:
        return _Part((), _extended(schedule, channel.row.id, loose), channel.row.id)
    return _Part((), loose, channel.row.id) if duty is Duty.NOT_KNOWN else _Part()


def _extended(schedule: Schedule, gang_id: str, loose: tuple[str, ...]) -> tuple[str, ...]:
    """The load at the end of a chain of extensions, any unfed load where that end is not known."""
    row = schedule.rows[gang_id]
    while row.gang.extends:
        row = schedule.rows[row.gang.extends]
    return (row.load_id,) if row.load_id else loose


def _sum(command: Command, parts: list[_Part]) -> Reach:
    surely = tuple(load for part in parts for load in part.surely)
    perhaps = dict.fromkeys(load for part in parts for load in part.perhaps)
    return Reach(
        command,
        surely,
        tuple(load for load in perhaps if load not in surely),
        tuple(part.open_gang for part in parts if part.open_gang),
    )


def by_load(found: tuple[Reach, ...]) -> dict[str, list[tuple[Reach, bool]]]:
    """For each load that a command reaches: the commands, each with whether it surely does."""
    out: dict[str, list[tuple[Reach, bool]]] = {}
    for one in found:
        for load_id in one.surely:
            out.setdefault(load_id, []).append((one, True))
        for load_id in one.perhaps:
            out.setdefault(load_id, []).append((one, False))
    return out
