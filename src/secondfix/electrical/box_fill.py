"""Box fill, NEC 314.16: the volume that conductors, clamps and devices count for, against the box."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal

from secondfix.catalogue import Model, Supply
from secondfix.electrical.case import Case, mounts_of
from secondfix.electrical.supply import may_be_nec, of_the_nec
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Box, Duty, dead_first, model_look, settled, volume_look

RULE = Rule(
    "box_fill",
    "Is the box large enough for its conductors, clamps and devices?",
    "NEC 314.16(B) and table 314.16(B) (secondary, four quotations agree)",
)
Awg = Literal["18", "16", "14", "12", "10", "8", "6"]
MM3_OF_IN3 = Fraction("16387.064")
# Table 314.16(B): cubic inches for each conductor, in hundredths.
_OF_SIZE: dict[Awg, int] = {"18": 150, "16": 175, "14": 200, "12": 225, "10": 250, "8": 300, "6": 500}
_GROUNDS_AS_ONE = 4  # up to four count as one; a quarter for each further one (edition 2020 on)


@dataclass(frozen=True, slots=True)
class Fill:
    """What is counted in one box; sizes are AWG as text, ``mounts`` the size at each yoke's mount."""

    conductors: Mapping[Awg, int]
    loops: Mapping[Awg, int]
    grounds: Mapping[Awg, int]
    clamps: bool
    fittings: int
    mounts: tuple[Awg, ...] = ()

    def volume_in3(self) -> Fraction:
        """Cubic inches by 314.16(B)(1) to (5): conductors, clamps, fittings, devices, grounds."""
        total = sum(_OF_SIZE[size] * n for size, n in self.conductors.items())
        total += sum(_OF_SIZE[size] * 2 * n for size, n in self.loops.items())
        total += sum(_OF_SIZE[size] * 2 for size in self.mounts)
        if self.clamps or self.fittings:
            largest = max(map(_largest, (self.conductors, self.loops, self.grounds)))
            total += largest * (self.clamps + self.fittings)
        return Fraction(4 * total + self._quarters_of_grounds(), 400)

    def _quarters_of_grounds(self) -> int:
        count = sum(self.grounds.values())
        return _largest(self.grounds) * (4 + max(0, count - _GROUNDS_AS_ONE)) if count else 0


def _largest(counts: Mapping[Awg, int]) -> int:
    return max((_OF_SIZE[size] for size, n in counts.items() if n), default=0)


def answers(case: Case) -> Iterator[Finding]:
    """In NEC houses, one answer per wall box into which a device is wired, or may be."""
    if may_be_nec(case):
        boxes = case.house.boxes.items()
        found = (_answer(case, box_id, box) for box_id, box in boxes if case.wired_into(box_id))
        yield from of_the_nec(case, RULE, found)


def _answer(case: Case, box_id: str, box: Box) -> Finding:
    low, high, looks = _bounds(case, box_id, box)
    volume, also = settled(box.volume_mm3), case.devices_in.get(box_id, ())
    value = f"box of {in3(volume / MM3_OF_IN3)}" if volume else "box not known"
    limit = f"needs {in3(high) if high is not None else f'at least {in3(low)}'}"
    if volume is not None and not holds(volume, low):
        return fails(
            RULE,
            Severity.FAULT,
            box_id,
            f"Box {box_id} is too small for what it holds.",
            value=value,
            limit=limit,
            remedy="Fit a larger box or an extension ring, or take conductors out of it.",
            also=also,
        )
    if volume is not None and high is not None and holds(volume, high):
        return passes(RULE, box_id, value=value, limit=limit, also=also)
    undecided = [d for d in also if case.schedule.model_of(d) is None]
    looks += [model_look(d) for d in undecided]
    if volume is None:
        looks.append(volume_look(box_id))
    says = f"Whether box {box_id} is large enough for what it holds is not known."
    return cannot_tell(
        RULE,
        Severity.FAULT,
        box_id,
        says,
        looks=looks,
        value=value,
        limit=limit,
        also=also,
    )


def holds(volume_mm3: int, needed_in3: Fraction) -> bool:
    """Whether a box is as large: its whole cubic millimetres may lie one below the marked cubic inches."""
    return volume_mm3 + 1 >= needed_in3 * MM3_OF_IN3


def _bounds(case: Case, box_id: str, box: Box) -> tuple[Fraction, Fraction | None, list[Look]]:
    """Cubic inches at least and at most; what has not been counted is at least nothing."""
    conductors, loops, grounds = settled(box.conductors), settled(box.loops), settled(box.grounds)
    clamps, fittings = settled(box.clamps), settled(box.fittings)
    missing = {
        "conductors": (conductors, "count the conductors that enter, by size"),
        "loops": (loops, "count the conductors that are looped through unbroken, by size"),
        "grounds": (grounds, "count the equipment grounding conductors, by size"),
        "clamps": (clamps, "see whether there are cable clamps inside"),
        "fittings": (fittings, "count the kinds of stud or hickey inside"),
    }
    looks = [
        Look(box_id, key, dead_first(f"{w}, in box {box_id}")) for key, (v, w) in missing.items() if v is None
    ]
    # A size with a count of nothing is one that only tails inside have: it may end at a device.
    sizes = sorted({*(conductors or {}), *(loops or {})}, key=_OF_SIZE.__getitem__)
    whole = bool(sizes) and conductors is not None and loops is not None
    low_at: list[Awg] = []
    high_at: list[Awg] = []
    for number in _yokes(case, box_id, box):
        size = settled(box.mounts[number].largest_awg)
        low_at += [size] if size else sizes[:1] if whole else []
        high_at += [size] if size else sizes[-1:]
        if size is None and len(sizes) != 1:
            words = f"see the largest conductor that ends at the device of mount {number}, box {box_id}"
            looks.append(Look(box_id, f"mounts.{number}.largest_awg", dead_first(words)))
    low = Fill(conductors or {}, loops or {}, grounds or {}, clamps=bool(clamps), fittings=fittings or 0)
    low = replace(low, mounts=tuple(low_at))
    uncounted = any(v is None for v, _ in missing.values()) or (not sizes and bool(looks))
    least = low.volume_in3()
    if uncounted or low_at == high_at:
        return least, None if uncounted else least, looks
    return least, replace(low, mounts=tuple(high_at)).volume_in3(), looks


def _yokes(case: Case, box_id: str, box: Box) -> list[str]:
    """The mounts whose yoke counts: each that a device takes, or that an old switch is left at."""
    taken: dict[str, Model | None] = {}
    for device_id in case.devices_in.get(box_id, ()):
        model = case.schedule.model_of(device_id)
        if model is None or model.mounts:
            taken |= dict.fromkeys(mounts_of(case.house.devices[device_id], box), model)
    left = {gang.mount for gang in box.gangs.values() if gang.duty is not Duty.CAPPED}
    return [n for n in box.mounts if (_on_a_yoke(taken[n]) if n in taken else n in left)]


def _on_a_yoke(model: Model | None) -> bool:
    return model is None or (model.yokes != 0 and model.supply is Supply.MAINS)


def in3(volume: Fraction) -> str:
    """Cubic inches with at least one place: '18.0 in³'."""
    text = f"{float(volume):.3f}".rstrip("0")
    return f"{text}0 in³" if text.endswith(".") else f"{text} in³"
