"""Whether a wiring works, and what is wrong with it, over all of its states."""

from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import combinations

from secondfix.electrical.multiway.graph import (
    NOTHING,
    Module,
    Node,
    Poles,
    Source,
    State,
    Wiring,
    circuits,
    lit,
    poles,
    states,
)


class Trouble(StrEnum):
    """What can be wrong. The first six are dangers, the rest faults."""

    SHORT = "line and neutral joined"
    CIRCUITS_JOINED = "conductors of two circuits joined"
    BORROWED_NEUTRAL = "line of one circuit, neutral of another"
    LIVE_LAMP = "line at a dark lamp"
    OTHER_CIRCUIT = "an extension brings line of another circuit"
    LIVE_WHEN_ISOLATED = "live while the lamp's circuit is isolated"
    FLOATING_NEUTRAL = "the lamp loses its neutral"
    SUPPLY_LOST = "a module loses its supply"
    SERIES = "two modules in series"
    PARALLEL = "an output is fed from elsewhere"
    DEAD_INPUT = "a push is not heard, or heard at rest"


DANGERS = frozenset(
    {
        Trouble.SHORT,
        Trouble.CIRCUITS_JOINED,
        Trouble.BORROWED_NEUTRAL,
        Trouble.LIVE_LAMP,
        Trouble.OTHER_CIRCUIT,
        Trouble.LIVE_WHEN_ISOLATED,
    }
)


@dataclass(frozen=True, slots=True)
class Judgement:
    """``works``: every place changes the lamp in every state. ``troubles``: what is wrong anyway."""

    works: bool
    troubles: frozenset[Trouble]

    @property
    def dangers(self) -> frozenset[Trouble]:
        """The troubles that can hurt somebody."""
        return self.troubles & DANGERS


def judge(wiring: Wiring) -> Judgement:
    """The judgement over all states.

    Legal range: one lamp, up to some ten levers, outputs and pushes together (time doubles with each
    lever). Left out: currents, voltage drop, capacitance of cables, leakage of electronic outputs.
    Source: circuit theory; which troubles count is common practice, no source, but for a switched
    neutral (NEC 404.2(B), secondary: only line conductors are switched).
    """
    seen = {state: poles(wiring, state) for state in states(wiring)}
    troubles = {t for state, at in seen.items() for t in _of_state(wiring, state, at)}
    troubles |= _of_series(wiring, seen)
    troubles |= _of_isolation(wiring)
    lamp = {state: lit(wiring, at) for state, at in seen.items()}
    return Judgement(_works(wiring, lamp, troubles), frozenset(troubles))


def _of_state(wiring: Wiring, state: State, at: dict[Node, Poles]) -> set[Trouble]:
    found = set()
    for reach in set(at.values()):
        lines, neutrals = circuits(reach, "line"), circuits(reach, "neutral")
        if lines and neutrals:
            found.add(Trouble.SHORT)
        if len(lines) > 1 or len(neutrals) > 1:
            found.add(Trouble.CIRCUITS_JOINED)
    ends = [at[end] for end in wiring.lamp]
    burns = lit(wiring, at)
    if not burns and any(circuits(end, "line") for end in ends):
        found.add(Trouble.LIVE_LAMP)
    if not any(circuits(end, "neutral") for end in ends):
        found.add(Trouble.FLOATING_NEUTRAL)
    if burns and _unlike(*ends):
        found.add(Trouble.BORROWED_NEUTRAL)
    for module, on in zip(wiring.modules, state.outputs, strict=True):
        found |= _of_module(wiring, module, on, state, at)
    outs = [at_out for m in wiring.modules for at_out in [_net(wiring, state, m.out)]]
    if any(a & b for a, b in combinations(outs, 2)):
        found.add(Trouble.PARALLEL)
    return found


def _unlike(a: Poles, b: Poles) -> bool:
    """Whether line and neutral come from two circuits."""
    lines = circuits(a, "line") | circuits(b, "line")
    neutrals = circuits(a, "neutral") | circuits(b, "neutral")
    return bool(lines and neutrals) and lines != neutrals


def _net(wiring: Wiring, state: State, out: Node) -> frozenset[Node]:
    """All that is joined to an output while every output is off."""
    off = replace(state, outputs=(False,) * len(state.outputs))
    probe = replace(wiring, sources=(Source(out, "probe", "line"),))
    return frozenset(node for node, reach in poles(probe, off).items() if reach)


def _of_module(wiring: Wiring, m: Module, on: bool, state: State, at: dict[Node, Poles]) -> set[Trouble]:
    found = set()
    line = circuits(at[m.line], "line")
    returns = _other_end(wiring, m, state, at) if m.neutral is None else at[m.neutral]
    neutrals = circuits(returns, "neutral")
    if not line or not neutrals:
        found.add(Trouble.SUPPLY_LOST)
    elif line != neutrals:
        found.add(Trouble.BORROWED_NEUTRAL)
    if not on and circuits(at[m.out], "line"):
        found.add(Trouble.PARALLEL)
    heard = {circuit for node in m.inputs for circuit in circuits(at[node], "line")}
    if heard - line:
        found.add(Trouble.OTHER_CIRCUIT)
    if bool(heard) != any(state.pushes):
        found.add(Trouble.DEAD_INPUT)
    return found


def _other_end(wiring: Wiring, m: Module, state: State, at: dict[Node, Poles]) -> Poles:
    """What a module without neutral finds beyond the lamp, where its output reaches the lamp."""
    net = _net(wiring, state, m.out)
    return next((at[b] for a, b in (wiring.lamp, wiring.lamp[::-1]) if a in net), NOTHING)


def _of_series(wiring: Wiring, seen: dict[State, dict[Node, Poles]]) -> set[Trouble]:
    """A module whose line comes and goes with the output of another."""
    for state, at in seen.items():
        for i, on in enumerate(state.outputs):
            if not on:
                continue
            less = seen[replace(state, outputs=(*state.outputs[:i], False, *state.outputs[i + 1 :]))]
            others = (m for j, m in enumerate(wiring.modules) if j != i)
            if any(circuits(at[m.line], "line") != circuits(less[m.line], "line") for m in others):
                return {Trouble.SERIES}
    return set()


def _of_isolation(wiring: Wiring) -> set[Trouble]:
    """Nodes that another circuit keeps live, or joins to its neutral, while one is off."""
    owners = {s.circuit for s in wiring.sources if s.pole == "line"}
    return {Trouble.LIVE_WHEN_ISOLATED} if len(owners) > 1 else set()


def _works(wiring: Wiring, lamp: dict[State, bool], troubles: set[Trouble]) -> bool:
    if troubles & {Trouble.SHORT, Trouble.SUPPLY_LOST, Trouble.DEAD_INPUT}:
        return False
    if wiring.modules:
        return all(burns == state.outputs[0] for state, burns in lamp.items())
    return all(
        lamp[replace(state, levers=_flipped(state.levers, i))] != burns
        for state, burns in lamp.items()
        for i in range(len(state.levers))
    )


def _flipped(levers: tuple[bool, ...], i: int) -> tuple[bool, ...]:
    return (*levers[:i], not levers[i], *levers[i + 1 :])
