"""A second opinion, written apart from the judgement: every state's truth table by walking all paths.

It reads the description of a wiring and nothing else: no union of nets, no shared function.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from secondfix.electrical.multiway.graph import Module, Node, Wiring

Hit = tuple[str, str]


@dataclass
class Truth:
    """Lamp and reach in one state, and the state as plain tuples."""

    levers: tuple[int, ...]
    outputs: tuple[int, ...]
    pushed: int | None
    reach: dict[Node, set[Hit]]
    lamp: bool


def walk(start: Node, ways: dict[Node, set[Node]]) -> set[Node]:
    """All nodes that some path leads to."""
    seen, todo = {start}, [start]
    while todo:
        for there in ways.get(todo.pop(), ()):
            if there not in seen:
                seen.add(there)
                todo.append(there)
    return seen


def ways_of(
    w: Wiring, levers: tuple[int, ...], outputs: tuple[int, ...], pushed: int | None
) -> dict[Node, set[Node]]:
    """Neighbours of every node in a state."""
    pairs = list(w.ties)
    for i, lever in enumerate(w.levers):
        pairs += (lever.first, lever.second)[levers[i]]
    pairs += [(m.line, m.out) for i, m in enumerate(w.modules) if outputs[i]]
    if pushed is not None:
        pairs.append((w.pushes[pushed].line, w.pushes[pushed].signal))
    ways: dict[Node, set[Node]] = {}
    for a, b in pairs:
        ways.setdefault(a, set()).add(b)
        ways.setdefault(b, set()).add(a)
    return ways


def table(w: Wiring) -> Iterator[Truth]:
    """Every state, one after the other: most wirings fail in the first."""
    for levers in product((0, 1), repeat=len(w.levers)):
        for outputs in product((0, 1), repeat=len(w.modules)):
            for pushed in (None, *range(len(w.pushes))):
                ways = ways_of(w, levers, outputs, pushed)
                reach: dict[Node, set[Hit]] = {}
                for s in w.sources:
                    for node in walk(s.at, ways):
                        reach.setdefault(node, set()).add((s.circuit, s.pole))
                yield Truth(levers, outputs, pushed, reach, burns(w, reach))


def burns(w: Wiring, reach: dict[Node, set[Hit]]) -> bool:
    """A path from a line to one end and from a neutral to the other, neither shorted."""
    x, y = (reach.get(end, set()) for end in w.lamp)
    for p, q in ((x, y), (y, x)):
        line = {c for c, pole in p if pole == "line"}
        neutral = {c for c, pole in q if pole == "neutral"}
        if line and neutral and not (p & q):
            return True
    return False


def of(hits: set[Hit], pole: str) -> set[str]:
    return {c for c, p in hits if p == pole}


def dangerous(w: Wiring) -> bool:
    """Whether anything in it can hurt somebody."""
    if len({s.circuit for s in w.sources if s.pole == "line"}) > 1:
        return True
    for row in table(w):
        for hits in row.reach.values():
            lines, neutrals = of(hits, "line"), of(hits, "neutral")
            if (lines and neutrals) or len(lines) > 1 or len(neutrals) > 1:
                return True
        ends = [row.reach.get(end, set()) for end in w.lamp]
        if not row.lamp and any(of(end, "line") for end in ends):
            return True
        if row.lamp and of(ends[0] | ends[1], "line") != of(ends[0] | ends[1], "neutral"):
            return True
        for m in w.modules:
            own = of(row.reach.get(m.line, set()), "line")
            if own and m.neutral and own != of(row.reach.get(m.neutral, set()), "neutral") != set():
                return True
            if any(of(row.reach.get(i, set()), "line") - own for i in m.inputs):
                return True
    return False


def works(w: Wiring) -> bool:
    """Whether each place works the lamp in every state: parity for levers, command for a module."""
    lamp = {}
    for row in table(w):
        lamp[row.levers] = row.lamp
        if any(of(h, "line") and of(h, "neutral") for h in row.reach.values()):
            return False
        for m, on in zip(w.modules, row.outputs, strict=True):
            if not supplied(w, m, row) or heard(m, row) != (row.pushed is not None):
                return False
            if m is w.modules[0] and row.lamp != bool(on):
                return False
    if w.modules:
        return True
    odd = {levers: sum(levers) % 2 for levers in lamp}
    return len({lamp[levers] ^ bool(odd[levers]) for levers in lamp}) == 1


def heard(m: Module, row: Truth) -> bool:
    return any(of(row.reach.get(i, set()), "line") for i in m.inputs)


def supplied(w: Wiring, m: Module, row: Truth) -> bool:
    """Line at the module, and a neutral: its own, or through the lamp while it is off."""
    if not of(row.reach.get(m.line, set()), "line"):
        return False
    if m.neutral:
        return bool(of(row.reach.get(m.neutral, set()), "neutral"))
    closed = walk(m.out, ways_of(w, row.levers, (0,) * len(w.modules), row.pushed))
    return any(a in closed and of(row.reach.get(b, set()), "neutral") for a, b in (w.lamp, w.lamp[::-1]))
