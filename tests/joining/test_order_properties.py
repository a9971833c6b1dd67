"""The walk on random small houses, against a search that tries everything in plain terms."""

from collections.abc import Iterator
from itertools import pairwise, permutations
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.joining import CONTROLLER, Links, Mark, StepKind, Walk, WalkStep, walk
from tests.joining.houses import a_box, a_house, a_model, links, with_front_off

DEFAULTS = default_assumptions()
RELAY, BACK, DEAF = a_model(), with_front_off(), a_model(name="deaf", repeats="no")
MODELS = [RELAY, BACK, DEAF]
Edges = set[tuple[str, str]]
House = tuple[Schedule, Edges, list[str], list[str], list[tuple[int, int]]]


@st.composite
def houses(draw: st.DrawFn, most: int = 5, circuits: int = 3) -> House:
    """Devices one to a box, a circuit each, random links good or absent, positions in millimetres."""
    count = draw(st.integers(1, most))
    ids = [f"D{n}" for n in range(1, count + 1)]
    of_circuit = [f"C{draw(st.integers(1, circuits))}" for _ in ids]
    models = [draw(st.sampled_from(MODELS)) for _ in ids]
    spot = st.tuples(st.integers(0, 9), st.integers(0, 9))
    spots = [(1000 * x, 1000 * y) for x, y in (draw(spot) for _ in ids)]
    pairs = [(a, b) for i, a in enumerate([CONTROLLER, *ids]) for b in ids[i:]]
    edges = {pair for pair in pairs if draw(st.integers(0, 9)) < 4}
    house = a_house(
        MODELS,
        boxes={
            f"B{n}": a_box("R1", lines=[c], at=at)
            for n, (c, at) in enumerate(zip(of_circuit, spots, strict=True), 1)
        },
        devices={
            d: {"model": m.key, "network": "N1", "box": f"B{d[1:]}", "mounts": ["1"], "gangs": ["1"]}
            for d, m in zip(ids, models, strict=True)
        },
    )
    return house, edges, ids, of_circuit, spots


def heard(case: House) -> Links:
    return {"N1": links(case[2], dict.fromkeys(case[1], 20.0))}


class Plain:
    """The rules of the walk once more, in sets and dicts, for a search that tries everything."""

    def __init__(self, case: House) -> None:
        self.house, edges, self.ids, circuits, spots = case
        self.near: dict[str, set[str]] = {d: set() for d in [CONTROLLER, *self.ids]}
        for a, b in edges:
            self.near[a].add(b)
            self.near[b].add(a)
        self.circuit = dict(zip(self.ids, circuits, strict=True))
        self.spot = dict(zip(self.ids, spots, strict=True))
        self.model = {d: self.house.house.devices[d].model for d in self.ids}

    def has_parent(self, device: str, joined: set[str]) -> bool:
        level, depth, seen = {CONTROLLER}, 0, {CONTROLLER}
        while level and depth < 5:
            if any(device in self.near[p] for p in level):
                return True
            heard = {d for p in level for d in self.near[p] if d in joined} - seen
            seen |= heard
            level = {d for d in heard if self.model[d] != DEAF.key}
            depth += 1
        return False

    def joinable(self, joined: set[str], candidates: set[str]) -> set[str]:
        """What can be joined of the candidates, one after the other."""
        done = set(joined)
        while more := {d for d in candidates - done if self.has_parent(d, done)}:
            done |= more
        return done

    @property
    def orphans(self) -> set[str]:
        return set(self.ids) - self.joinable(set(), set(self.ids))

    def after_stage(self, joined: set[str], fitted: set[str]) -> set[str]:
        stand = {d for d in self.ids if self.circuit[d] in fitted}
        return self.joinable(joined, stand - self.orphans) | (stand & self.orphans)

    def plans(self) -> Iterator[tuple[str, ...]]:
        """Every order of isolating each circuit once."""
        yield from permutations(sorted(set(self.circuit.values())))

    def length(self, a: str, b: str) -> int:
        (x1, y1), (x2, y2) = self.spot[a], self.spot[b]
        return round(((x1 - x2) ** 2 + (y1 - y2) ** 2) ** 0.5)

    def shortest(self, plan: tuple[str, ...]) -> int:
        """The shortest way through one order of isolations: every order of fitting and joining is tried."""
        ends: dict[str, int] = {}
        fitted: set[str] = set()
        joined: set[str] = set()
        for c in plan:
            fit = [d for d in self.ids if self.circuit[d] == c]
            fitted |= {c}
            after = self.after_stage(joined, fitted)
            ends = self.through(fit, ends, None)
            ends = self.through(sorted(after - joined), ends, joined)
            joined = after
        return min(ends.values())

    def through(self, stops: list[str], ends: dict[str, int], joined: set[str] | None) -> dict[str, int]:
        if not stops:
            return ends
        found: dict[str, int] = {}
        for path in permutations(stops):
            if joined is not None and not self.in_turn(path, joined):
                continue
            inner = sum(self.length(a, b) for a, b in pairwise(path))
            to_first = min((n + self.length(e, path[0]) for e, n in ends.items()), default=0)
            found[path[-1]] = min(found.get(path[-1], 1 << 60), to_first + inner)
        return found

    def in_turn(self, path: tuple[str, ...], joined: set[str]) -> bool:
        done = set(joined)
        for d in path:
            if d not in self.orphans and not self.has_parent(d, done - self.orphans):
                return False
            done.add(d)
        return True


def parents_stand(case: House, found: Walk) -> None:
    """Each device in its place: its parent joined before, its circuit on again, its link there.

    What is joined with its front off is joined on a bench before anything is isolated or fitted, and
    heard in its place at its function test.
    """
    plain = Plain(case)
    isolated: set[str] = set()
    energised: set[str] = set()
    joined: set[str] = set()
    fitted: set[str] = set()
    benched: set[str] = set()
    for step in found.steps:
        device = step.device or ""
        on_bench = plain.model.get(device) == BACK.key
        if step.kind is StepKind.ISOLATE:
            assert not isolated
            isolated = set(step.circuits)
        elif step.kind is StepKind.FIT:
            assert plain.circuit[device] in isolated
            assert on_bench == (device in benched)
            fitted.add(device)
        elif step.kind is StepKind.ENERGISE:
            assert isolated == set(step.circuits)
            energised, isolated = energised | isolated, set()
        elif step.kind is StepKind.JOIN and on_bench:
            assert (step.stage, step.marks, step.parent) == (0, (Mark.BENCH,), CONTROLLER)
            assert not energised | isolated
            benched.add(device)
        elif step.kind is (StepKind.FUNCTION_TEST if on_bench else StepKind.JOIN):
            assert not isolated
            assert device in fitted
            assert plain.circuit[device] in energised
            if device in plain.orphans:
                assert step.marks == (Mark.NO_GOOD_PARENT,)
            else:
                assert step.parent is not None
                assert step.parent == CONTROLLER or step.parent in joined
                assert device in plain.near[step.parent]
                assert step.parent == CONTROLLER or plain.model[step.parent] != DEAF.key
                assert plain.has_parent(device, joined)
                assert (CONTROLLER, device) not in case[1] or step.parent == CONTROLLER
            joined.add(device)
    assert joined == set(plain.ids)


@given(houses(most=8, circuits=4))
def test_every_parent_is_joined_and_powered_before_its_child(case: House) -> None:
    parents_stand(case, walk(case[0], heard(case), DEFAULTS))


@given(houses(most=7, circuits=6))
def test_each_circuit_is_isolated_once(case: House) -> None:
    assert walk(case[0], heard(case), DEFAULTS).isolations == len(set(case[3]))


@given(houses(most=5, circuits=3))
def test_the_way_is_as_short_as_any(case: House) -> None:
    found, plain = walk(case[0], heard(case), DEFAULTS), Plain(case)
    assert found.exact
    assert found.walked_mm == min(plain.shortest(p) for p in plain.plans())


@given(houses(most=9, circuits=4))
def test_the_same_house_gives_the_same_walk(case: House) -> None:
    assert walk(case[0], heard(case), DEFAULTS) == walk(case[0], heard(case), DEFAULTS)


@pytest.mark.deep
@given(houses(most=7, circuits=3))
@settings(max_examples=300)
def test_the_way_is_shortest_up_to_seven_stops(case: House) -> None:
    found, plain = walk(case[0], heard(case), DEFAULTS), Plain(case)
    assert found.exact
    assert found.walked_mm == min(plain.shortest(p) for p in plain.plans())


def large(count: int, circuits: int) -> tuple[Schedule, Links]:
    """Boxes on a grid, circuits in strips, links to neighbours only."""
    ids = [f"D{n}" for n in range(count)]
    side = max(4, round(count**0.5))
    spots = {d: (3000 * (n % side), 3000 * (n // side)) for n, d in enumerate(ids)}
    house: dict[str, Any] = {
        "boxes": {
            f"B{d[1:]}": a_box("R1", lines=[f"C{n * circuits // count}"], at=spots[d])
            for n, d in enumerate(ids)
        },
        "devices": {
            d: {
                "model": (BACK if n % 5 == 0 else RELAY).key,
                "network": "N1",
                "box": f"B{d[1:]}",
                "mounts": ["1"],
                "gangs": ["1"],
            }
            for n, d in enumerate(ids)
        },
    }
    near = {
        (a, b): 20.0
        for i, a in enumerate(ids)
        for b in ids[:i]
        if abs(spots[a][0] - spots[b][0]) + abs(spots[a][1] - spots[b][1]) <= 9000
    }
    middle = ids[count // 2]
    return a_house(MODELS, **house), {"N1": links(ids, {**near, (CONTROLLER, middle): 20.0})}


def in_place(found: Walk) -> Iterator[WalkStep]:
    """Each device's step in its place: its join, or the function test of what was joined on a bench."""
    bench = {s.device for s in found.joins() if Mark.BENCH in s.marks}
    for step in found.steps:
        if step.kind is (StepKind.FUNCTION_TEST if step.device in bench else StepKind.JOIN):
            yield step


def test_many_circuits_get_a_valid_order() -> None:
    house, heard_ = large(64, 16)
    found = walk(house, heard_, DEFAULTS)
    seen: set[str | None] = {CONTROLLER}
    for step in in_place(found):
        assert step.parent in seen
        seen.add(step.device)
    assert len(seen) == 65
    assert found.isolations == 16


def test_a_larger_house_gets_a_valid_order_near_the_least_that_its_grid_allows() -> None:
    house, heard_ = large(60, 6)
    found = walk(house, heard_, DEFAULTS)
    seen: set[str | None] = {CONTROLLER}
    for step in in_place(found):
        assert step.marks or step.parent in seen
        seen.add(step.device)
    assert len(seen) == 61
    assert not found.exact
    assert found.isolations == 6
    least = 2 * (60 - 6) * 3000  # each stage passes its ten boxes twice, one grid step apart at the least
    assert least <= found.walked_mm < least * 1.35  # a third more for the way between stages and detours
