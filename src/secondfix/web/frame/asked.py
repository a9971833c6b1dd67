"""Questions asked of a house as it stands, each worked out once for every edit of it.

Answers are kept in memory for the houses last looked at: a page after the first costs no second check.
"""

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from threading import Lock, RLock
from typing import Any, TypeVar

from secondfix.actions.check import Checked, check
from secondfix.actions.measured import MeasuredLinks, measured_of
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.files import Firm
from secondfix.house import House, Pieces, Schedule, Written, read_house, schedule
from secondfix.radio import Reach
from secondfix.store import door
from secondfix.web.frame.firm import firm

MOST_HOUSES = 24
NONE_MEASURED = MeasuredLinks((), ())
T = TypeVar("T")


@dataclass(frozen=True)
class Asked:
    """A house as edit ``number`` has it, and the answers to what has been asked of it so far."""

    house: House
    text: str
    number: int
    firm: Firm
    counted: bool = True
    """Whether the register keeps the counts of its check: not of an issue, asked as it once was."""

    links: MeasuredLinks = NONE_MEASURED
    """The links that the journal measured, which the check of the radio learns from."""

    pieces: Pieces = field(default_factory=dict, repr=False, compare=False)
    """The text of its members, for the edit that comes next; empty where it was read from the store."""
    _made: dict[str, Any] = field(default_factory=dict, init=False, repr=False, compare=False)
    _making: dict[str, RLock] = field(default_factory=dict, init=False, repr=False, compare=False)

    def once(self, name: str, make: Callable[["Asked"], T]) -> T:
        """What ``make`` makes of this house, made once and kept under ``name``.

        Two who ask for one answer at once do not work it out twice; who asks for another does not wait.
        """
        if name not in self._made:
            with self._making.setdefault(name, RLock()):
                if name not in self._made:
                    self._made[name] = make(self)
        made: T = self._made[name]
        return made

    def made(self, name: str) -> Any | None:
        """What stands under ``name``, None where nobody asked for it yet."""
        return self._made.get(name)

    @property
    def settled(self) -> Assumptions:
        """Defaults, the firm's and the house's own values."""
        return self.once("settled", lambda a: settled_assumptions(a.house, a.firm.assumptions))

    @property
    def rows(self) -> Schedule:
        """The switch schedule."""
        return self.once("rows", lambda a: schedule(a.house, a.house.models))

    @property
    def checked(self) -> Checked:
        """Every finding."""
        return self.once(_CHECKED, _checked)

    @property
    def reached(self) -> Reach:
        """The answer of radio that the check leans on."""
        return self.checked.answers.reached


_CHECKED = "checked"


def _checked(about: Asked) -> Checked:
    earlier = made_before(about, _CHECKED)
    made = check(
        about.house, assumptions=about.firm.assumptions, earlier=earlier, measured=about.links.measured
    )
    if about.counted:
        counts = {k: made.counts[k] for k in ("danger", "fault", "cannot_tell", "advice")}
        door.keep_counts(about.house.id, door.OpenCounts(about.number, **counts))
    return made


def made_before(about: Asked, name: str) -> Any | None:
    """What stands under ``name`` of the nearest edit before this one; None where it is not at hand."""
    with _keeping:
        before = {n: held for (house, n), held in _kept.items() if house == about.house.id}
    made = {n: held.made(name) for n, held in before.items() if n < about.number}
    last = max((n for n, answer in made.items() if answer is not None), default=None)
    return None if last is None else made[last]


_kept: OrderedDict[tuple[str, int], Asked] = OrderedDict()
_links: dict[str, tuple[int, MeasuredLinks]] = {}
"""By house: the size of its journal when it was read last, and the links measured in it."""
_keeping = Lock()


def asked(house_id: str) -> Asked:
    """The house as it stands now. Raises door.UnknownError."""
    return asked_at(house_id, door.house_row(house_id).number)


def asked_at(house_id: str, number: int) -> Asked:
    """The house as an edit of it left it, the current one or an earlier. Raises door.UnknownError.

    Once the journal has measured another link, all answers are worked out anew.
    """
    with _keeping:
        held = _kept.get((house_id, number))
        if held is not None:
            _kept.move_to_end((house_id, number))
    if held is not None:
        links = _measured(held.house)
        if links == held.links:
            return held
        return _held(house_id, replace(held, links=links), instead_of=held)
    text = door.edit_bytes(house_id, number).decode()
    house = read_house(text.encode(), where="store", models={})
    if not isinstance(house, House):  # an edit set aside for its faults
        raise door.UnknownError(f"edit {number} never stood")
    return _held(house_id, Asked(house, text, number, firm(), links=_measured(house)))


def keep(house_id: str, number: int, made: Written) -> None:
    """Know what an edit that was just saved made of the house, without reading it from the store."""
    links = _measured(made.house)
    _held(house_id, Asked(made.house, made.text, number, firm(), links=links, pieces=made.pieces))


def _measured(house: House) -> MeasuredLinks:
    """The links measured so far; the journal is read again once it has grown."""
    size = door.journal_size(house.id)
    with _keeping:
        known = _links.get(house.id)
    if known and known[0] == size:
        return known[1]
    found = measured_of(house, door.journal(house.id)[0]) if size else NONE_MEASURED
    with _keeping:
        _links[house.id] = size, found
    return found


def _held(house_id: str, fresh: Asked, *, instead_of: Asked | None = None) -> Asked:
    with _keeping:
        if instead_of is not None and _kept.get((house_id, fresh.number)) is instead_of:
            del _kept[house_id, fresh.number]
        held = _kept.setdefault((house_id, fresh.number), fresh)
        while len(_kept) > MOST_HOUSES:
            _kept.popitem(last=False)
    return held


def forget() -> None:
    """Keep no answers: the store is another one now."""
    with _keeping:
        _kept.clear()
        _links.clear()
