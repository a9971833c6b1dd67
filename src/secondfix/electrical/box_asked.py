"""Box as asked: the volume that makers ask for their devices, in NEC houses."""

from collections.abc import Iterator
from fractions import Fraction

from secondfix.electrical.box_fill import MM3_OF_IN3, holds, in3
from secondfix.electrical.case import Case
from secondfix.electrical.supply import nec
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import settled

RULE = Rule(
    "box_asked",
    "Is the box as large as the makers of its devices ask?",
    "the models' data sheets; NEC 110.3(B) (from memory): equipment is used as its instructions say",
)


def answers(case: Case) -> Iterator[Finding]:
    """In NEC houses, one answer per wall box with a device whose sheet asks for a volume per yoke."""
    if nec(case):
        for box_id, device_ids in case.devices_in.items():
            asked = sum(_asked_mm3(case, device_id) for device_id in device_ids)
            if asked:
                yield _answer(case, box_id, asked, device_ids)


def _asked_mm3(case: Case, device_id: str) -> int:
    model = case.schedule.model_of(device_id)
    if model is None or model.box_volume_per_yoke_mm3 is None:
        return 0
    yokes = model.mounts if model.yokes is None else model.yokes
    return yokes * model.box_volume_per_yoke_mm3


def _answer(case: Case, box_id: str, asked_mm3: int, device_ids: tuple[str, ...]) -> Finding:
    volume, needed = settled(case.house.boxes[box_id].volume_mm3), Fraction(asked_mm3) / MM3_OF_IN3
    limit = f"{in3(needed)} asked"
    if volume is None:
        looks = [Look(box_id, "volume_mm3", f"read or measure the volume of box {box_id}")]
        says = f"Whether box {box_id} is as large as its devices ask is not known."
        return cannot_tell(RULE, Severity.FAULT, box_id, says, looks=looks, limit=limit, also=device_ids)
    value = f"box of {in3(volume / MM3_OF_IN3)}"
    if holds(volume, needed):
        return passes(RULE, box_id, value=value, limit=limit, also=device_ids)
    return fails(
        RULE,
        Severity.FAULT,
        box_id,
        f"Box {box_id} is smaller than the sheets of its devices ask for.",
        value=value,
        limit=limit,
        remedy="Fit a larger box or an extension ring, or take a device that asks for less.",
        also=device_ids,
    )
