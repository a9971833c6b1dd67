"""A lighting circuit worked from several places, as a graph that can be evaluated in every state.

Nodes are joints and terminals, named by place and terminal. Conductors join for ever, levers, pushes
and outputs join in some states; lamps and supplies of modules join nothing.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import product

Node = tuple[str, str]  # the place (a box's number along the conductors, "lamp"), and the terminal there
Tie = tuple[Node, Node]


@dataclass(frozen=True, slots=True)
class Source:
    """Where a conductor of a circuit comes in: ``pole`` is ``line`` or ``neutral``."""

    at: Node
    circuit: str
    pole: str


@dataclass(frozen=True, slots=True)
class Lever:
    """A contact with two positions: the pairs that it joins in the first, and in the second."""

    first: tuple[Tie, ...]
    second: tuple[Tie, ...]


def two_way(common: Node, a: Node, b: Node) -> Lever:
    """A two-way switch (NEC: 3-way): the common terminal to one of two others."""
    return Lever(((common, a),), ((common, b),))


def intermediate(a: Node, b: Node, c: Node, d: Node) -> Lever:
    """An intermediate switch (NEC: 4-way): a to c and b to d, or crossed."""
    return Lever(((a, c), (b, d)), ((a, d), (b, c)))


def one_way(a: Node, b: Node) -> Lever:
    """A plain contact: open, closed."""
    return Lever((), ((a, b),))


@dataclass(frozen=True, slots=True)
class Module:
    """An electronic switch: supplied between line and neutral, or through its load without a neutral.

    ``inputs`` hear a push that brings line of the module's own circuit.
    """

    line: Node
    out: Node
    neutral: Node | None = None
    inputs: tuple[Node, ...] = ()


@dataclass(frozen=True, slots=True)
class Push:
    """A push of an extension unit: open at rest, joins line to signal while pressed."""

    line: Node
    signal: Node


@dataclass(frozen=True, slots=True)
class Wiring:
    """The whole circuit with one lamp, whose ends are ``lamp``."""

    sources: tuple[Source, ...]
    ties: tuple[Tie, ...]
    lamp: Tie
    levers: tuple[Lever, ...] = ()
    modules: tuple[Module, ...] = ()
    pushes: tuple[Push, ...] = ()

    def nodes(self) -> set[Node]:
        """Every node that anything touches."""
        found = {s.at for s in self.sources} | {n for tie in (*self.ties, self.lamp) for n in tie}
        found |= {n for v in self.levers for tie in (*v.first, *v.second) for n in tie}
        for m in self.modules:
            found |= {m.line, m.out, *m.inputs, *([m.neutral] if m.neutral else [])}
        return found | {n for p in self.pushes for n in (p.line, p.signal)}


@dataclass(frozen=True, slots=True)
class State:
    """Positions of levers (True: the second), outputs (True: on), pushes (True: pressed)."""

    levers: tuple[bool, ...]
    outputs: tuple[bool, ...]
    pushes: tuple[bool, ...]


Poles = frozenset[tuple[str, str]]  # the (circuit, pole) pairs that reach a node
NOTHING: Poles = frozenset()


def states(wiring: Wiring) -> Iterator[State]:
    """Every state: levers and outputs in all positions, at most one push pressed."""
    at_rest = (False,) * len(wiring.pushes)
    pressed = [at_rest] + [tuple(i == j for j in range(len(at_rest))) for i in range(len(at_rest))]
    levers = product((False, True), repeat=len(wiring.levers))
    outputs = list(product((False, True), repeat=len(wiring.modules)))
    yield from (State(v, o, p) for v in levers for o in outputs for p in pressed)


def poles(wiring: Wiring, state: State) -> dict[Node, Poles]:
    """What reaches every node in a state: union of all that is joined, then the sources of each union."""
    parent = {node: node for node in wiring.nodes()}

    def root(node: Node) -> Node:
        while parent[node] != node:
            parent[node] = parent[parent[node]]
            node = parent[node]
        return node

    for a, b in _joined(wiring, state):
        parent[root(a)] = root(b)
    reach: dict[Node, set[tuple[str, str]]] = {}
    for source in wiring.sources:
        reach.setdefault(root(source.at), set()).add((source.circuit, source.pole))
    return {node: frozenset(reach.get(root(node), ())) for node in parent}


def _joined(wiring: Wiring, state: State) -> Iterable[Tie]:
    yield from wiring.ties
    for lever, second in zip(wiring.levers, state.levers, strict=True):
        yield from lever.second if second else lever.first
    yield from ((m.line, m.out) for m, on in zip(wiring.modules, state.outputs, strict=True) if on)
    yield from ((p.line, p.signal) for p, on in zip(wiring.pushes, state.pushes, strict=True) if on)


def circuits(found: Poles, pole: str) -> set[str]:
    """The circuits whose line, or neutral, reaches a node."""
    return {circuit for circuit, p in found if p == pole}


def lit(wiring: Wiring, at: dict[Node, Poles]) -> bool:
    """Whether the lamp burns: line of some circuit at one end, a neutral at the other, no short."""
    a, b = (at[end] for end in wiring.lamp)
    return any(
        circuits(x, "line") and circuits(y, "neutral") and x.isdisjoint(y) for x, y in ((a, b), (b, a))
    )
