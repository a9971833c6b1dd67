"""Questions asked of a house as it stands, each worked out once for every edit of it.

Answers are kept in memory for the houses last looked at: a page after the first costs no second check.
"""

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property
from threading import Lock, RLock
from typing import Any, TypeVar

from secondfix.actions.check import Checked, check
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.files import Firm
from secondfix.house import House, Schedule, Written, read_house, schedule
from secondfix.store import door
from secondfix.web.frame.firm import firm

MOST_HOUSES = 24
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

    @cached_property
    def working(self) -> RLock:
        """Held by whoever works an answer out, so that two who ask at once do not work it out twice."""
        return RLock()

    @cached_property
    def _made(self) -> dict[str, Any]:
        return {}

    def once(self, name: str, make: Callable[["Asked"], T]) -> T:
        """What ``make`` makes of this house, made once and kept under ``name``."""
        with self.working:
            if name not in self._made:
                self._made[name] = make(self)
            made: T = self._made[name]
            return made

    @cached_property
    def settled(self) -> Assumptions:
        """Defaults, the firm's and the house's own values."""
        return settled_assumptions(self.house, self.firm.assumptions)

    @cached_property
    def rows(self) -> Schedule:
        """The switch schedule."""
        return schedule(self.house, self.house.models)

    @property
    def checked(self) -> Checked:
        """Every finding."""
        with self.working:
            return self._checked

    @cached_property
    def _checked(self) -> Checked:
        made = check(self.house, assumptions=self.firm.assumptions)
        if self.counted:
            counts = {k: made.counts[k] for k in ("danger", "fault", "cannot_tell", "advice")}
            door.keep_counts(self.house.id, door.OpenCounts(self.number, **counts))
        return made


_kept: OrderedDict[tuple[str, int], Asked] = OrderedDict()
_keeping = Lock()


def asked(house_id: str) -> Asked:
    """The house as it stands now. Raises door.UnknownError."""
    return asked_at(house_id, door.house_row(house_id).number)


def asked_at(house_id: str, number: int) -> Asked:
    """The house as an edit of it left it, the current one or an earlier. Raises door.UnknownError."""
    with _keeping:
        held = _kept.get((house_id, number))
        if held is not None:
            _kept.move_to_end((house_id, number))
            return held
    text = door.edit_bytes(house_id, number).decode()
    house = read_house(text.encode(), where="store", models={})
    if not isinstance(house, House):  # an edit set aside for its faults
        raise door.UnknownError(f"edit {number} never stood")
    return _held(house_id, Asked(house, text, number, firm()))


def keep(house_id: str, number: int, made: Written) -> None:
    """Know what an edit that was just saved made of the house, without reading it from the store."""
    _held(house_id, Asked(made.house, made.text, number, firm()))


def _held(house_id: str, fresh: Asked) -> Asked:
    with _keeping:
        held = _kept.setdefault((house_id, fresh.number), fresh)
        while len(_kept) > MOST_HOUSES:
            _kept.popitem(last=False)
    return held


def forget() -> None:
    """Keep no answers: the store is another one now."""
    with _keeping:
        _kept.clear()
