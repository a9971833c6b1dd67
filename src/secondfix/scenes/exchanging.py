"""How long the commands of one network take, one by one and as a group."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule
from secondfix.scenes.air import Air
from secondfix.scenes.crossing import Planned
from secondfix.scenes.frames import answer_octets, command_octets, group_octets
from secondfix.scenes.span import NOTHING, Span
from secondfix.terms import Protocol

# A device that passes on a frame to many waits for a random time first. Zigbee: nwkcMaxBroadcastJitter,
# 64 ms (R22 3.5.1, secondary). Thread: the first interval of multicast forwarding (RFC 7731), 64 ms
# (from memory). The mean at the value.
_JITTER_MS = Span(0.0, 32.0, 64.0)


@dataclass(frozen=True, slots=True)
class Exchanging:
    """One protocol in one house."""

    schedule: Schedule
    assumptions: Assumptions
    air: Air
    protocol: Protocol

    def links(self, device_id: str) -> Span:
        """Links to a device: of its route, else as assumed."""
        known = self.air.links.get(device_id)
        return self._assumed("scene_links") if known is None else Span(known, known, known)

    def one_by_one(self, commands: Sequence[Planned]) -> Span:
        """Command, answer, the next command: the sum of all exchanges and of what the controller spends."""
        total = self._assumed("scene_controller_ms").times(max(len(commands) - 1, 0))
        for command in commands:
            total += self.exchange(command)
        return total

    def exchange(self, command: Planned) -> Span:
        """One command and its answer, over all links, each with its acknowledgement."""
        links = self.links(command.device_id)
        model = self.schedule.model_of(command.device_id)
        most = round(links.high)
        several = model is None or model.gangs > 1
        out = command_octets(
            self.protocol, level=command.level_pct is not None, links=most, several_gangs=several
        )
        back = answer_octets(self.protocol, links=most, several_gangs=several)
        one_way = self._acknowledged(out) + self._assumed("scene_device_ms")
        return (one_way + self._acknowledged(back) + self._assumed("scene_device_ms")).times(links)

    def as_group(self, groups: Sequence[Sequence[Planned]], alone: Sequence[Planned]) -> Span:
        """A command to each group, one after the other, and one by one what stands alone.

        Zigbee and Thread: each is passed on from device to device; nobody answers. Z-Wave: heard in
        direct range only and not acknowledged, so each device gets its own command after it.
        """
        if self.protocol is Protocol.ZWAVE:
            every = [*(one for group in groups for one in group), *alone]
            return self._sent(groups) + self.one_by_one(every)
        end = NOTHING
        for n, group in enumerate(groups):
            end = end.or_longer(self._sent(groups[:n]) + self._spread(group))
        return end.or_longer(self._sent(groups) + self.one_by_one(alone)) if alone else end

    def _sent(self, groups: Iterable[Sequence[Planned]]) -> Span:
        """How long the controller is busy with commands to groups."""
        total = NOTHING
        for group in groups:
            total += self._to_many(group) + self._assumed("scene_controller_ms")
        return total

    def _spread(self, group: Sequence[Planned]) -> Span:
        """Until the farthest device has it: a frame each link, and before each but the first a wait."""
        links = NOTHING
        for one in group:
            links = links.or_longer(self.links(one.device_id))
        waits = Span(links.low - 1, links.value - 1, links.high - 1)
        step = self._to_many(group) + self._assumed("scene_device_ms")
        return step.times(links) + _JITTER_MS.times(waits)

    def _to_many(self, group: Sequence[Planned]) -> Span:
        octets = group_octets(self.protocol, level=group[0].level_pct is not None)
        return self.air.one_link(self.protocol, octets=octets, acknowledged=False)

    def _acknowledged(self, octets: int) -> Span:
        return self.air.one_link(self.protocol, octets=octets, acknowledged=True)

    def _assumed(self, name: str) -> Span:
        return Span(*map(float, self.assumptions.span(name)))


def grouped(
    protocol: Protocol, commands: Iterable[Planned]
) -> tuple[tuple[tuple[Planned, ...], ...], tuple[Planned, ...]]:
    """Groups of two or more entries that are told the same, and what stands alone.

    Zigbee and Matter groups hold entries; Z-Wave multicast addresses devices, so that one command names
    the same end point of each.
    """
    same: dict[object, list[Planned]] = {}
    for one in commands:
        entry = one.entry if protocol is Protocol.ZWAVE else None
        same.setdefault((one.to, one.level_pct, entry), []).append(one)
    groups = tuple(tuple(group) for group in same.values() if len(group) > 1)
    return groups, tuple(group[0] for group in same.values() if len(group) == 1)
