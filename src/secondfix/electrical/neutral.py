"""Neutral: a device that needs one must find one at its mount."""

from collections.abc import Iterator

from secondfix.catalogue import Model, NeutralNeed, Supply
from secondfix.electrical.case import Case, mounts_of
from secondfix.electrical.printed import sheet_look
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import ABSENT, EARTH, Box, Device, neutral_look, settled

RULE = Rule(
    "neutral",
    "Does a neutral reach the device, where its model needs one?",
    "the model's data sheet; common practice, no source: no IEC rule puts a neutral at the switch",
)


def answers(case: Case) -> Iterator[Finding]:
    """One answer per mains device of a decided model in a wall box."""
    for device_id, device in case.house.devices.items():
        model = case.schedule.model_of(device_id)
        if model is not None and device.box and model.supply is Supply.MAINS:
            yield _answer(device_id, device, model, case.house.boxes[device.box])


def _answer(device_id: str, device: Device, model: Model, box: Box) -> Finding:
    assert device.box is not None
    mounts = mounts_of(device, box)
    found = {number: settled(box.mounts[number].neutral) for number in mounts}
    there = [v for v in found.values() if v not in {None, ABSENT, EARTH}]
    seen = ", ".join(v or "not seen" for v in found.values())
    value = "none is needed" if model.neutral in _WITHOUT else seen
    # Without stated mounts a neutral must reach every gang's; with them, one of the device's own will do.
    enough = bool(there) if device.mounts else len(there) == len(found)
    if model.neutral in _WITHOUT or enough:
        return passes(RULE, device_id, value=value, limit=_LIMIT, also=(device.box,))
    if model.neutral is None:
        looks = [sheet_look(model, "neutral", "whether it needs a neutral")]
        says = "The data sheet does not say whether the device needs a neutral."
    elif unseen := [number for number, neutral in found.items() if neutral is None]:
        looks = [neutral_look(device.box, number) for number in unseen]
        says = f"The device needs a neutral; whether one reaches it in box {device.box} is not known."
    else:
        return _absent(device_id, device.box, value)
    return cannot_tell(
        RULE, Severity.DANGER, device_id, says, looks=looks, value=value, limit=_LIMIT, also=(device.box,)
    )


_WITHOUT = {NeutralNeed.NOT_NEEDED, NeutralNeed.EITHER}
_LIMIT = "a neutral where the model needs one"


def _absent(device_id: str, box_id: str, value: str) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        device_id,
        f"The device needs a neutral and none reaches it in box {box_id}.",
        value=value,
        limit=_LIMIT,
        remedy="Pull a neutral of the same circuit, or take a device that needs none.",
        also=(box_id,),
    )
