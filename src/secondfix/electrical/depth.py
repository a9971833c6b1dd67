"""Depth: what stands in a wall box, one behind another, against the depth of the box."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model, Supply
from secondfix.electrical.case import Case, mounts_of
from secondfix.electrical.figures import between
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Box, dead_first, is_nec, model_look, settled
from secondfix.terms import printed_mm

_ALWAYS = ("plate_projection_mm", "cable_allowance_mm")
_PLAIN = "plain_mechanism_depth_mm"
RULE = Rule(
    "depth",
    "Do the device, its plate and the cables fit in the depth of the box?",
    "common practice, no source: box + set-back − plate − device − cables ≥ 0; boxes to EN 60670-1",
    may_lean_on=(*_ALWAYS, _PLAIN),
)
_DEEPEST_SET_BACK_MM = 60  # the most that a document can state


@dataclass(frozen=True, slots=True)
class _Need:
    """Depth that one mount needs; ``high_mm`` None where the depth of a device is not known."""

    low_mm: int
    high_mm: int | None
    looks: tuple[Look, ...]
    assumptions: tuple[str, ...]
    words: str


def answers(case: Case) -> Iterator[Finding]:
    """One answer per wall box with a device of a decided model: the answer of its tightest mount."""
    for box_id, device_ids in case.devices_in.items():
        if any(case.schedule.model_of(d) is not None for d in device_ids):
            box = case.house.boxes[box_id]
            needs = [n for mount in box.mounts if (n := _need(case, box_id, mount)) is not None]
            if needs:
                yield _answer(box_id, box, needs, device_ids, nec=is_nec(case.house))


def _need(case: Case, box_id: str, mount: str) -> _Need | None:
    box, nec = case.house.boxes[box_id], is_nec(case.house)
    here = [
        d
        for d in case.devices_in[box_id]
        if mount in mounts_of(case.house.devices[d], box) and not _on_the_wall(case.schedule.model_of(d))
    ]
    if not here:
        return None
    low, high, names = _sum(case.assumptions, _ALWAYS)
    looks: list[Look] = []
    words: list[str] = []
    front = False
    for device_id in here:
        model = case.schedule.model_of(device_id)
        front = front or model is None or model.mounts > 0
        stated = model.depth_behind_plate_mm if model else None
        if stated is None:
            looks.append(
                sheet_look(model, "depth_behind_plate_mm", "its depth behind the plate")
                if model
                else model_look(device_id)
            )
        low, high = low + (stated or 1), high + (stated or 0)
        words.append(f"{device_id} {_words(stated, nec=nec)}")
    if not front:
        plain_low, plain_high, plain = _sum(case.assumptions, (_PLAIN,))
        low, high, names = low + plain_low, high + plain_high, (*names, *plain)
        words.append(f"the switch in front {_between(plain_low, plain_high, nec=nec)}")
    return _Need(low, None if looks else high, tuple(looks), names, ", ".join(words))


def _on_the_wall(model: Model | None) -> bool:
    """A battery button that takes no mount stands in front of the wall."""
    return model is not None and model.supply is Supply.BATTERY and model.mounts == 0


def _sum(assumptions: Assumptions, names: tuple[str, ...]) -> tuple[int, int, tuple[str, ...]]:
    return sum(assumptions[n].low for n in names), sum(assumptions[n].high for n in names), names


def _answer(box_id: str, box: Box, needs: list[_Need], device_ids: tuple[str, ...], *, nec: bool) -> Finding:
    depth, set_back = settled(box.depth_mm), settled(box.set_back_mm)
    tightest = max(needs, key=lambda n: (n.low_mm, n.high_mm or 0))
    highs = [n.high_mm for n in needs]
    names = tuple(dict.fromkeys(name for n in needs for name in n.assumptions))
    most = None if None in highs else max(h for h in highs if h is not None)
    limit = f"needs {_between(tightest.low_mm, most, nec=nec)}: {tightest.words}, plate and cables"
    value = f"box {_words(depth, nec=nec)}, set back {_words(set_back, nec=nec)}"
    if depth is not None and most is not None and depth + (set_back or 0) >= most:
        return passes(RULE, box_id, value=value, limit=limit, also=device_ids, assumptions=names)
    deepest = _DEEPEST_SET_BACK_MM if set_back is None else set_back
    if depth is not None and depth + deepest < tightest.low_mm:
        return fails(
            RULE,
            Severity.FAULT,
            box_id,
            f"What is to stand in box {box_id} is deeper than the box.",
            value=value,
            limit=limit,
            remedy="Fit a deeper box, take a shallower device, or put a module at the luminaire.",
            also=device_ids,
            assumptions=names,
        )
    return cannot_tell(
        RULE,
        Severity.FAULT,
        box_id,
        f"Whether what is to stand in box {box_id} fits is not known.",
        looks=_looks(box_id, box, needs),
        value=value,
        limit=limit,
        also=device_ids,
        assumptions=names,
    )


def _words(mm: int | None, *, nec: bool) -> str:
    return "not known" if mm is None else printed_mm(mm, nec=nec)


def _between(low_mm: int, high_mm: int | None, *, nec: bool) -> str:
    """'5 mm to 15 mm', in NEC houses with inches beside."""
    if not nec:
        return between(low_mm, high_mm, "mm")
    low = printed_mm(low_mm, nec=nec)
    if high_mm is None:
        return f"at least {low}"
    return low if low_mm == high_mm else f"{low} to {printed_mm(high_mm, nec=nec)}"


def _looks(box_id: str, box: Box, needs: list[_Need]) -> list[Look]:
    looks = list(dict.fromkeys(look for n in needs for look in n.looks))
    if settled(box.depth_mm) is None:
        looks.append(Look(box_id, "depth_mm", dead_first(f"measure how deep box {box_id} is inside")))
    if settled(box.set_back_mm) is None:
        words = dead_first(f"measure how far the finish stands proud of box {box_id}")
        looks.append(Look(box_id, "set_back_mm", words))
    if not looks:
        fold = f"offer the device up to box {box_id} with the cables folded and measure what is left"
        looks.append(Look(box_id, "depth_mm", dead_first(fold)))
    return looks
