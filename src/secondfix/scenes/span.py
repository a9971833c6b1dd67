"""A figure with its range."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Span:
    """The low end, the value and the high end of one figure; all three are of one unit."""

    low: float
    value: float
    high: float

    def __add__(self, other: "Span") -> "Span":
        """End by end."""
        return Span(self.low + other.low, self.value + other.value, self.high + other.high)

    def times(self, other: "Span | float") -> "Span":
        """End by end; both are 0 or more."""
        o = other if isinstance(other, Span) else Span(other, other, other)
        return Span(self.low * o.low, self.value * o.value, self.high * o.high)

    def or_longer(self, other: "Span") -> "Span":
        """The longer one at each end: of two things that go on at the same time."""
        return Span(max(self.low, other.low), max(self.value, other.value), max(self.high, other.high))


NOTHING = Span(0.0, 0.0, 0.0)
