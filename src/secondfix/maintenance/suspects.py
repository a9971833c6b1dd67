"""Which device has failed, when its label cannot be read: the one whose entries stopped answering."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from secondfix.house import House, schedule
from secondfix.journal import Folded, Joined, Named, Worked, function_test
from secondfix.naming import Names, names


@dataclass(frozen=True, slots=True)
class Suspect:
    """One device, with what speaks for and against it, in words.

    ``sure``: it alone is silent, nothing of it answers, and more than a name says so.
    """

    device: str
    place: str
    silent: tuple[str, ...]
    answers: tuple[str, ...]
    sure: bool


@dataclass(frozen=True, slots=True)
class Suspects:
    """Devices with something silent, most likely first; ``unknown`` are observations that name nothing."""

    suspects: tuple[Suspect, ...]
    unknown: tuple[str, ...]


@dataclass(slots=True)
class _Told:
    silent: list[str] = field(default_factory=list)
    answers: list[str] = field(default_factory=list)
    by_more_than_name: bool = False


def suspects(
    house: House, folded: Folded, *, silent: Sequence[str], answering: Sequence[str] = ()
) -> Suspects:
    """Hold what was observed against the book.

    An observation is an address (``00:12:..`` or plain, perhaps ``/2`` for the endpoint), ``node 12``, an
    entry (``D08.2``), a gang (``B08.2``), a device, or the name of an entry. Function tests in the journal
    that nothing answered count as silence of that gang. Where several devices are silent, look for what
    they share first (a circuit, a repeater) before a switch is taken out.
    """
    found: dict[str, _Told] = {}
    unknown = []
    book = _Book(house, folded)
    for text, dead in [*((s, True) for s in silent), *((a, False) for a in answering)]:
        hits = [*book.meant(text)]
        if not hits:
            unknown.append(text)
        for device, by_name in hits:
            told = found.setdefault(device, _Told())
            (told.silent if dead else told.answers).append(text)
            told.by_more_than_name |= dead and not by_name
    for press in function_test(house, folded).presses:
        if press.worked is Worked.NOTHING and press.device:
            told = found.setdefault(press.device, _Told())
            told.silent.append(f"the function test of {press.place}")
            told.by_more_than_name = True
    only = [d for d, told in found.items() if told.silent and not told.answers]
    ranked = sorted(
        (d for d, told in found.items() if told.silent),
        key=lambda d: (bool(found[d].answers), -len(found[d].silent), d),
    )
    rows = schedule(house, house.models)
    return Suspects(
        tuple(
            Suspect(
                d,
                rows.place_of_device(d),
                tuple(found[d].silent),
                tuple(found[d].answers),
                only == [d] and found[d].by_more_than_name,
            )
            for d in ranked
        ),
        tuple(unknown),
    )


class _Book:
    """What an observation may name."""

    def __init__(self, house: House, folded: Folded) -> None:
        self._house = house
        self._names: Names = names(schedule(house, house.models))
        self._nodes = {
            e.node: e.subject.partition(":")[2] for e in folded.each("joining", Joined) if e.node is not None
        }
        self._given = recorded_names(folded)

    def meant(self, text: str) -> Iterator[tuple[str, bool]]:
        """The devices it may mean, and whether a name alone says so."""
        address = re.sub(r"[:\-. ]|^0x", "", text.partition("/")[0]).upper()
        head = text.partition(".")[0]
        node = re.fullmatch(r"node (\d+)", text)
        by_address = [d for d, o in self._house.devices.items() if o.address and o.address == address]
        if by_address:
            yield by_address[0], False
        elif node:
            device = self._nodes.get(int(node[1]))
            if device in self._house.devices:
                yield device or "", False
        elif head in self._house.devices:
            yield head, False
        elif head in self._house.boxes:
            slot = text.partition(".")[2]
            for device, o in self._house.devices.items():
                if o.box == head and (not slot or slot in o.gangs):
                    yield device, False
        else:
            yield from self._named(text)

    def _named(self, text: str) -> Iterator[tuple[str, bool]]:
        given = {self._given.get(f"{e.device_id}.{e.number}", e.name): e for e in self._names.entries()}
        if text in given:
            yield given[text].device_id, True


def recorded_names(folded: Folded) -> dict[str, str]:
    """The name that the journal last gave each entry (``D08.2``)."""
    return {
        e.subject.partition(":")[2]: e.name
        for e in folded.each("named", Named)
        if e.subject.startswith("entry:")
    }
