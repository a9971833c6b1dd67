"""Who has a parent, kept up as one device after the other joins: no search anew each time."""

from collections import deque
from copy import copy

from secondfix.joining.readings import Reach, bits


class Growing:
    """The answer of `Reach.ready` for a set of joined devices that only grows.

    ``found`` are the devices, joined or not, with a parent among the joined that is not too deep. A device
    that joins may bring others nearer to the controller: only those are looked at again.
    """

    def __init__(self, reach: Reach, joined: int) -> None:
        self._reach = reach
        self._joined = joined
        self._depth = {n: k for k, level in enumerate(reach.levels(joined), 1) for n in bits(level)}
        self._carrying = 0
        self.found = reach.roots
        for number, depth in self._depth.items():
            self._carry(number, depth)

    def again(self) -> "Growing":
        """The same once more, to be grown apart."""
        other = copy(self)
        other._depth = dict(self._depth)
        return other

    def join(self, number: int) -> None:
        """Join one more, whether it has a parent or not."""
        self._joined |= 1 << number
        depth = self._behind(number)
        if depth is not None and depth < self._depth.get(number, depth + 1):
            self._nearer(number, depth)

    def _behind(self, number: int) -> int | None:
        """How deep a device stands behind its shallowest parent; None without one or where too deep."""
        reach = self._reach
        if reach.roots >> number & 1:
            return 1
        parents = bits(reach.near[number] & self._carrying)
        depth = 1 + min((self._depth[n] for n in parents), default=-1)
        return depth if depth and reach.admits(number, depth) else None

    def _nearer(self, number: int, depth: int) -> None:
        """Take down the depth of a device and of all that this brings nearer, the nearest first."""
        reach = self._reach
        self._depth[number] = depth
        waiting = deque([number])
        while waiting:
            one = waiting.popleft()
            depth = self._depth[one]
            self._carry(one, depth)
            if not reach.carriers >> one & 1:
                continue
            for other in bits(reach.near[one] & self._joined & reach.deep(depth + 1)):
                if depth + 1 < self._depth.get(other, depth + 2):
                    self._depth[other] = depth + 1
                    waiting.append(other)

    def _carry(self, number: int, depth: int) -> None:
        if self._reach.carriers >> number & 1:
            self._carrying |= 1 << number
            self.found |= self._reach.near[number] & self._reach.deep(depth + 1)
