"""One assumption, a resolved set of them, and answers that must hold over a range."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from typing import TypeVar

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Assumption:
    """A value that stands in where no standard and no survey speaks.

    ``low <= value <= high`` in ``unit``; ``means`` says in words what it stands for; ``source``
    is a source or 'common practice, no source' or 'engineering judgement, not sourced';
    ``set_by`` tells whose value it is: default, firm, house, command line; ``least`` and ``most``
    bound what anyone may set, where a value beyond them has no meaning.
    """

    name: str
    value: int
    low: int
    high: int
    unit: str
    means: str
    source: str
    set_by: str = "default"
    least: int | None = None
    most: int | None = None


@dataclass(frozen=True, slots=True)
class Override:
    """A firm's or a house's own value; without low and high it is taken as certain."""

    value: int
    low: int | None = None
    high: int | None = None
    source: str | None = None


class Assumptions(Mapping[str, Assumption]):
    """The resolved set: defaults, overridden by firm, then house. Immutable."""

    def __init__(self, items: Mapping[str, Assumption]) -> None:
        self._items = dict(items)

    def __getitem__(self, name: str) -> Assumption:
        return self._items[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._items)

    def __len__(self) -> int:
        return len(self._items)

    def value(self, name: str) -> int:
        """The value in the assumption's own unit."""
        return self._items[name].value

    def span(self, name: str) -> tuple[int, int, int]:
        """``(low, value, high)`` in the assumption's own unit."""
        a = self._items[name]
        return a.low, a.value, a.high

    def overridden(self, overrides: Mapping[str, Override], *, set_by: str) -> "Assumptions":
        """A new set; KeyError for an unknown name, ValueError where low <= value <= high fails.

        ValueError too where an end lies beyond the assumption's ``least`` or ``most``.
        """
        items = dict(self._items)
        for name, o in overrides.items():
            low = o.value if o.low is None else o.low
            high = o.value if o.high is None else o.high
            if not low <= o.value <= high:
                raise ValueError(f"{name}: {low} <= {o.value} <= {high} does not hold")
            least, most, unit = items[name].least, items[name].most, items[name].unit
            if (least is not None and low < least) or (most is not None and high > most):
                raise ValueError(f"{name}: {low} to {high} {unit} lies beyond {least} to {most} {unit}")
            items[name] = replace(
                items[name],
                value=o.value,
                low=low,
                high=high,
                set_by=set_by,
                source=o.source or f"set by the {set_by}",
            )
        return Assumptions(items)


def over_range(assumption: Assumption, answer: Callable[[int], T]) -> T | None:
    """The answer if it is the same at the low end, the value and the high end, else None.

    Sound for answers that are monotone in the assumption, as thresholds of sums and products are.
    """
    at_value = answer(assumption.value)
    ends = (answer(assumption.low), answer(assumption.high))
    return at_value if all(end == at_value for end in ends) else None
