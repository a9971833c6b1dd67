"""How long each scene takes, one command after the other and as a group."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Stated
from secondfix.findings import Look
from secondfix.house import Schedule, model_look
from secondfix.scenes.air import Air
from secondfix.scenes.crossing import Planned, Resolution
from secondfix.scenes.exchanging import Exchanging, grouped
from secondfix.scenes.span import NOTHING, Span
from secondfix.terms import Protocol


class Group(StrEnum):
    """Whether group commands can carry what a scene says on one network."""

    YES = "yes"
    NOT_STATED = "not_stated"
    NOT_TAKEN = "not_taken"
    NOTHING_SHARED = "nothing_shared"


@dataclass(frozen=True, slots=True)
class NetworkTime:
    """One scene on one network; times in ms.

    ``as_group_ms`` is None unless ``group`` is yes; ``why`` then says why in a sentence, and ``looks`` what
    would settle it. ``devices`` are those that leave it open or take no group command.
    """

    network_id: str
    protocol: Protocol
    commands: int
    one_by_one_ms: Span
    group: Group
    as_group_ms: Span | None
    why: str
    devices: tuple[str, ...] = ()
    looks: tuple[Look, ...] = ()

    @property
    def open(self) -> bool:
        """Whether something not stated decides if group commands save time."""
        return self.saves is None and self.as_group_ms is None

    @property
    def saves(self) -> bool | None:
        """Whether group commands take less time whatever is assumed; None where that cannot be told.

        On Z-Wave never: they save nothing of the commands that follow.
        """
        if self.protocol is Protocol.ZWAVE or self.group in {Group.NOT_TAKEN, Group.NOTHING_SHARED}:
            return False
        if self.as_group_ms is None:
            return None
        if self.as_group_ms.low >= self.one_by_one_ms.high:
            return False
        return True if self.as_group_ms.high < self.one_by_one_ms.low else None


@dataclass(frozen=True, slots=True)
class SceneTime:
    """One scene: its networks work side by side, so it takes as long as the slowest.

    ``loose`` are devices of no network, whose commands have no time: then ``one_by_one_ms`` and
    ``as_group_ms`` are None; ``most_loose_ms`` is the most that their commands could take on one network.
    ``as_group_ms`` takes each network by group commands where these take less time, else one by one; None
    where it cannot be told or where the slowest network gains nothing. ``why`` says which.
    """

    scene_id: str
    networks: tuple[NetworkTime, ...]
    one_by_one_ms: Span | None
    as_group_ms: Span | None
    why: str
    loose: tuple[str, ...] = ()
    most_loose_ms: float = 0.0

    @property
    def group_open(self) -> bool:
        """Whether it cannot be told how long the scene takes as a group."""
        return bool(self.loose) or any(n.open for n in self.networks)


def scene_times(
    schedule: Schedule, resolutions: Iterable[Resolution], assumptions: Assumptions, air: Air
) -> tuple[SceneTime, ...]:
    """How long the commands of each scene take, in ms, in the order of the resolutions.

    Equation, one by one: Σ links × (command + its device + answer + its device) + (n − 1) × controller,
    each frame with mean back-off and acknowledgement; see docs/methods-names-scenes.md. Source: frames as
    `Air.sending` says; octets from memory; what devices and controllers spend are assumptions. Leaves out:
    retries, traffic of others, routed acknowledgements, fades and dimming ramps, what starts the scene.
    """
    return tuple(_scene(schedule, r, assumptions, air) for r in resolutions)


def _scene(schedule: Schedule, resolution: Resolution, assumptions: Assumptions, air: Air) -> SceneTime:
    by_network: dict[str | None, list[Planned]] = {}
    for command in resolution.commands:
        network = schedule.house.devices[command.device_id].network
        by_network.setdefault(network, []).append(command)
    loose = by_network.pop(None, [])
    networks = []
    for network_id in schedule.house.networks:
        if network_id in by_network:
            protocol = schedule.house.networks[network_id].protocol
            exchanging = Exchanging(schedule, assumptions, air, protocol)
            networks.append(_network(exchanging, network_id, by_network[network_id]))
    if loose:
        names = tuple(dict.fromkeys(one.device_id for one in loose))
        why = f"{', '.join(names)} {'is' if len(names) == 1 else 'are'} on no network yet."
        most = max(
            Exchanging(schedule, assumptions, air, p).one_by_one([*loose, loose[0]]).high for p in Protocol
        )
        return SceneTime(resolution.scene_id, tuple(networks), None, None, why, names, most)
    return _summed(resolution.scene_id, tuple(networks))


def _summed(scene_id: str, networks: tuple[NetworkTime, ...]) -> SceneTime:
    one_by_one = as_group = NOTHING
    for network in networks:
        one_by_one = one_by_one.or_longer(network.one_by_one_ms)
        quicker = network.as_group_ms
        gains = quicker is not None and quicker.value < network.one_by_one_ms.value
        as_group = as_group.or_longer(quicker if quicker and gains else network.one_by_one_ms)
    open_ones = [n.why for n in networks if n.open]
    if open_ones:
        return SceneTime(scene_id, networks, one_by_one, None, " ".join(open_ones))
    if as_group.value >= one_by_one.value:
        why = " ".join(dict.fromkeys(n.why for n in networks if n.why)) or "It sends no command."
        return SceneTime(scene_id, networks, one_by_one, None, why)
    return SceneTime(scene_id, networks, one_by_one, as_group, "")


def _network(exchanging: Exchanging, network_id: str, commands: list[Planned]) -> NetworkTime:
    protocol = exchanging.protocol
    groups, alone = grouped(protocol, commands)
    one_by_one = exchanging.one_by_one(commands)

    def answer(
        group: Group,
        why: str,
        as_group: Span | None = None,
        devices: tuple[str, ...] = (),
        looks: tuple[Look, ...] = (),
    ) -> NetworkTime:
        return NetworkTime(
            network_id, protocol, len(commands), one_by_one, group, as_group, why, devices, looks
        )

    if not groups:
        return answer(Group.NOTHING_SHARED, "No two commands say the same.")
    refusing, silent = _unable(exchanging.schedule, commands)
    if refusing:
        verb = "takes" if len(refusing) == 1 else "take"
        return answer(Group.NOT_TAKEN, f"{', '.join(refusing)} {verb} no group command.", devices=refusing)
    if silent:
        why = f"Whether {', '.join(silent)} can take a group command is not stated."
        looks = tuple(_look(exchanging.schedule, device) for device in silent)
        return answer(Group.NOT_STATED, why, devices=silent, looks=looks)
    own = "After a Z-Wave multicast each device still gets its own command."
    why = own if protocol is Protocol.ZWAVE else ""
    return answer(Group.YES, why, exchanging.as_group(groups, alone))


def _unable(schedule: Schedule, commands: list[Planned]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Devices that take no group command, and those of which it is not stated."""
    refusing, silent = [], []
    for device in dict.fromkeys(one.device_id for one in commands):
        model = schedule.model_of(device)
        if model is None or model.group_commands is Stated.NOT_STATED:
            silent.append(device)
        elif model.group_commands is Stated.NO:
            refusing.append(device)
    return tuple(refusing), tuple(silent)


def _look(schedule: Schedule, device: str) -> Look:
    if schedule.model_of(device) is None:
        return model_look(device)
    return Look(device, "group_commands", "try whether it obeys a command sent to a group")
