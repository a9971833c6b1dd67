"""One reading of the links of a house: who hears whom, as bit sets over device numbers."""

from collections.abc import Iterator
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Reach:
    """One reading of the links as bit sets over device numbers.

    ``roots`` hear their controller well; ``near[i]`` are those that hear device ``i`` well;
    ``carriers`` repeat; ``within[k]`` may stand ``k`` links deep or deeper.
    """

    roots: int
    near: tuple[int, ...]
    carriers: int
    within: tuple[int, ...]

    def deep(self, links: int) -> int:
        """Those that may stand ``links`` from the controller."""
        return self.within[min(links, len(self.within) - 1)]

    def admits(self, number: int, links: int) -> bool:
        """Whether this device may stand ``links`` from the controller."""
        return bool(self.deep(links) >> number & 1)

    def levels(self, allowed: int) -> Iterator[int]:
        """Devices of ``allowed`` by number of links to the controller: 1, 2, … . All within the depth."""
        seen, level, depth = 0, self.roots & allowed, 1
        while level:
            yield level
            seen |= level
            around = 0
            for number in bits(level & self.carriers):
                around |= self.near[number]
            depth += 1
            level = around & allowed & ~seen & self.deep(depth)

    def closure(self, allowed: int) -> int:
        """All of ``allowed`` that can be joined through one another, one after the other."""
        joined = 0
        for level in self.levels(allowed):
            joined |= level
        return joined

    def ready(self, joined: int) -> int:
        """Devices, joined or not, that have a parent in ``joined`` and are not too deep behind it."""
        found, depth = self.roots, 1
        for level in self.levels(joined):
            depth += 1
            for number in bits(level & self.carriers):
                found |= self.near[number] & self.deep(depth)
        return found


def bits(mask: int) -> Iterator[int]:
    """Numbers of the bits that are set, lowest first."""
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low
