"""Box as asked: the volume that makers ask for their devices, in NEC houses."""

from collections.abc import Iterator
from fractions import Fraction

from secondfix.catalogue import Model, Supply
from secondfix.electrical.box_fill import MM3_OF_IN3, holds, in3
from secondfix.electrical.case import Case
from secondfix.electrical.printed import sheet_look
from secondfix.electrical.supply import may_be_nec, of_the_nec
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import model_look, settled, volume_look

RULE = Rule(
    "box_asked",
    "Is the box as large as the makers of its devices ask?",
    "the models' data sheets; NEC 110.3(B) (from memory): equipment is used as its instructions say",
)


def answers(case: Case) -> Iterator[Finding]:
    """In NEC houses, one answer per wall box with a device whose sheet asks for a volume per yoke."""
    if may_be_nec(case):
        yield from of_the_nec(case, RULE, _answers(case))


def _answers(case: Case) -> Iterator[Finding]:
    for box_id, device_ids in case.devices_in.items():
        models = {d: case.schedule.model_of(d) for d in device_ids}
        if any(m is not None and m.box_volume_per_yoke_mm3 is not None for m in models.values()):
            yield _answer(case, box_id, {d: _asked_mm3(m) for d, m in models.items()})


def _asked_mm3(model: Model | None) -> int | None:
    """What one device asks for, nothing without a yoke; None where its sheet, or its model, is silent."""
    if model is None:
        return None
    yokes = model.mounts if model.yokes is None else model.yokes
    if not yokes or model.supply is Supply.BATTERY:
        return 0
    return None if model.box_volume_per_yoke_mm3 is None else yokes * model.box_volume_per_yoke_mm3


def _answer(case: Case, box_id: str, asked_mm3: dict[str, int | None]) -> Finding:
    volume = settled(case.house.boxes[box_id].volume_mm3)
    needed = Fraction(sum(mm3 or 0 for mm3 in asked_mm3.values())) / MM3_OF_IN3
    silent, device_ids = [d for d, mm3 in asked_mm3.items() if mm3 is None], tuple(asked_mm3)
    limit = f"{in3(needed)} asked"
    if volume is None or (silent and holds(volume, needed)):
        looks = [_silent_look(case, device_id) for device_id in silent]
        if volume is None:
            looks.append(volume_look(box_id))
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


def _silent_look(case: Case, device_id: str) -> Look:
    model = case.schedule.model_of(device_id)
    if model is None:
        return model_look(device_id)
    return sheet_look(model, "box_volume_per_yoke_mm3", "the volume of box that it asks for")
