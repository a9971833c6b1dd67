"""What may go, trip, move or be added, as choices of the form; and what then falls, in words."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from secondfix.house import House
from secondfix.radio import Case, CaseKind, Foreseen, NetworkForeseen, Word
from secondfix.web.radio.words import listed, thing_called

GROUPS = {
    CaseKind.REPEATER_GONE: "A device is gone",
    CaseKind.PULLED: "A plug is pulled out",
    CaseKind.ALL_PULLED: "A plug is pulled out",
    CaseKind.TRIPPED: "A circuit trips",
    CaseKind.CONTROLLER_MOVED: "The controller stands elsewhere",
    CaseKind.SOCKET_HELPS: "A repeater is plugged in",
}
_SAID = {
    CaseKind.REPEATER_GONE: "{} gone",
    CaseKind.PULLED: "{} pulled out",
    CaseKind.TRIPPED: "circuit {} tripped",
    CaseKind.CONTROLLER_MOVED: "controller at {}",
    CaseKind.SOCKET_HELPS: "repeater at {}",
}
LOSSES = (CaseKind.REPEATER_GONE, CaseKind.PULLED, CaseKind.ALL_PULLED, CaseKind.TRIPPED)
MOST_LISTED = 12


@dataclass(frozen=True, slots=True)
class Choice:
    """One case to choose: ``value`` stands in the address."""

    value: str
    words: str


@dataclass(frozen=True, slots=True)
class Chosen:
    """The case that was chosen. Of a device that repeats nothing ``case`` is None: it alone is gone.

    ``elsewhere`` are the cases of the same circuit in the other networks, ``untold`` the devices of
    which facts are missing, so that nothing can be told of them in any case.
    """

    value: str
    words: str
    case: Case | None
    gone: tuple[str, ...]
    elsewhere: tuple[Case, ...] = ()
    untold: tuple[str, ...] = ()

    @property
    def falls(self) -> tuple[str, ...]:
        """Devices that were likely and are not likely any more."""
        return self.case.falls if self.case else ()

    @property
    def rises(self) -> tuple[str, ...]:
        """Devices that become likely."""
        return self.case.rises if self.case else ()

    @property
    def adds(self) -> bool:
        """Whether something moves or comes instead of going."""
        return self.case is not None and self.case.kind not in LOSSES


def value_of(case: Case) -> str:
    """How an address names a case: a device that is gone is a device, whether it repeats or not."""
    return f"{case.kind.value}:{case.id}"


def choices_of(house: House, network: NetworkForeseen) -> dict[str, list[Choice]]:
    """Every case of a network under its head, by id; every device of it among those that may be gone."""
    groups: dict[str, list[Choice]] = {head: [] for head in GROUPS.values()}
    members = (i for i, d in house.devices.items() if d.network == network.network)
    groups[GROUPS[CaseKind.REPEATER_GONE]] = [
        Choice(f"{CaseKind.REPEATER_GONE.value}:{i}", f"{thing_called(house, i)} gone") for i in members
    ]
    for case in sorted(network.cases, key=lambda c: c.id):
        if case.kind is CaseKind.ALL_PULLED:
            groups[GROUPS[case.kind]].insert(0, Choice(value_of(case), "all of them together"))
        elif case.kind is not CaseKind.REPEATER_GONE:
            words = _SAID[case.kind].format(thing_called(house, case.id))
            groups[GROUPS[case.kind]].append(Choice(value_of(case), words))
    return {head: listed for head, listed in groups.items() if listed}


def chosen(house: House, foreseen: Foreseen, network_id: str, value: str) -> Chosen | None:
    """The case that an address names; None where it names none of this network."""
    network = foreseen.networks[network_id]
    case = next((c for c in network.cases if value_of(c) == value), None)
    if case is not None:
        others = (n for key, n in foreseen.networks.items() if key != network_id)
        same = (c for n in others for c in n.of_kind(CaseKind.TRIPPED) if c.id == case.id)
        elsewhere = tuple(same) if case.kind is CaseKind.TRIPPED else ()
        return Chosen(value, _capital(case.words), case, case.gone, elsewhere, _untold(network, case.gone))
    kind, _, device = value.partition(":")
    known = house.devices.get(device)
    if kind != CaseKind.REPEATER_GONE.value or known is None or known.network != network_id:
        return None
    words = _SAID[CaseKind.REPEATER_GONE].format(thing_called(house, device))
    return Chosen(value, words, None, (device,), untold=_untold(network, (device,)))


def _untold(network: NetworkForeseen, gone: Sequence[str]) -> tuple[str, ...]:
    """Devices that no case can speak of: missing data is never a pass."""
    lacking = [d for d, word in network.words.items() if word is Word.NOT_KNOWN]
    return tuple(d for d in dict.fromkeys((*lacking, *network.not_known)) if d not in gone)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


@dataclass(frozen=True, slots=True)
class Costs:
    """Cases in which somebody falls, those that cost most first, and how many of each kind cost nothing."""

    listed: tuple[tuple[str, Case], ...]
    more: int
    quiet: str


_KINDS = {
    CaseKind.REPEATER_GONE: ("repeater", "repeaters"),
    CaseKind.PULLED: ("plug", "plugs"),
    CaseKind.TRIPPED: ("circuit", "circuits"),
}


def costs_of(network: NetworkForeseen) -> Costs:
    """What costs most if it goes."""
    falling = sorted((c for c in network.of_kind(*LOSSES) if c.falls), key=lambda c: -len(c.falls))
    shown = tuple((value_of(c), c) for c in falling[:MOST_LISTED])
    return Costs(shown, max(len(falling) - MOST_LISTED, 0), listed(list(_quiet(network))))


def _quiet(network: NetworkForeseen) -> Iterator[str]:
    for kind, (one, several) in _KINDS.items():
        count = sum(not c.falls for c in network.of_kind(kind))
        if count:
            yield f"{count} {one if count == 1 else several}"


def helps_of(network: NetworkForeseen) -> Mapping[str, tuple[tuple[str, Case], ...]]:
    """Under a head each: sockets that would help, and better places for the controller; the best first."""
    return {
        head: tuple((value_of(c), c) for c in network.of_kind(kind)[:5] if c.helps)
        for kind, head in (
            (CaseKind.SOCKET_HELPS, "A device that repeats, plugged in at"),
            (CaseKind.CONTROLLER_MOVED, "The controller at"),
        )
        if network.of_kind(kind)
    }
