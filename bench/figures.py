"""The register of figures: a bench file marks a function, and the run asks every function marked.

A figure is never alone: the function measures a baseline in the same run and returns both, so that
the ratio holds on any machine. The name says what was measured and against what.
"""

from __future__ import annotations

import statistics
import subprocess
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass

Pair = tuple[float, float]


@dataclass(frozen=True)
class Figure:
    name: str
    value: float
    unit: str
    baseline: float

    @property
    def ratio(self) -> float:
        """Value over baseline; a baseline of nothing is our own fault and raises."""
        return self.value / self.baseline

    def as_json(self) -> dict[str, str | float]:
        numbers = {"value": self.value, "baseline": self.baseline, "ratio": self.ratio}
        rounded = {key: float(f"{number:.4g}") for key, number in numbers.items()}
        return {
            "name": self.name,
            "value": rounded["value"],
            "unit": self.unit,
            "baseline": rounded["baseline"],
            "ratio": rounded["ratio"],
        }


class Register:
    """The marked functions in the order of their files; a name stands once."""

    def __init__(self) -> None:
        self._measures: dict[str, tuple[str, Callable[[], Pair]]] = {}

    def figure(self, name: str, *, unit: str) -> Callable[[Callable[[], Pair]], Callable[[], Pair]]:
        """Mark a function that returns (value, baseline), both in `unit`."""

        def mark(measure: Callable[[], Pair]) -> Callable[[], Pair]:
            if name in self._measures:
                raise ValueError(f"two figures are called {name!r}")
            self._measures[name] = (unit, measure)
            return measure

        return mark

    def names(self) -> tuple[str, ...]:
        return tuple(self._measures)

    def measure(self, name: str) -> Figure:
        unit, measure = self._measures[name]
        value, baseline = measure()
        return Figure(name=name, value=value, unit=unit, baseline=baseline)


REGISTER = Register()
figure = REGISTER.figure


def seconds_side_by_side(
    value: Callable[[], object], baseline: Callable[[], object], *, rounds: int = 7
) -> Pair:
    """Median wall seconds of each, taken in turn so that a busy machine slows both; one round warms up."""
    pairs = [(_seconds(value), _seconds(baseline)) for _ in range(rounds + 1)][1:]
    values, baselines = zip(*pairs, strict=True)
    return statistics.median(values), statistics.median(baselines)


def process(command: Sequence[str], *, stands: Sequence[int] = (0,)) -> Callable[[], None]:
    """A cold process to be timed; an exit outside `stands` raises: a crash is no quick answer."""

    def start() -> None:
        ended = subprocess.run(command, capture_output=True, text=True, check=False)
        if ended.returncode not in stands:
            raise RuntimeError(f"{' '.join(command)} ended with {ended.returncode}: {ended.stderr[-2000:]}")

    return start


def _seconds(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start
