"""Pack: every paper and picture of a house, made of the same answers that the other verbs print."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from secondfix.actions.check import Checked, check
from secondfix.actions.scenes import scenes
from secondfix.actions.settle import settled_assumptions
from secondfix.actions.walk import Walked, walk
from secondfix.assumptions import Assumptions
from secondfix.house import House, Schedule, schedule
from secondfix.papers import (
    Key,
    Setting,
    TextFault,
    elevations_svg,
    findings_pdf,
    key_ring_pdf,
    pack_pdf,
    plan_svg,
    worksheets_pdf,
)

_RING = "key-ring.pdf"


@dataclass(frozen=True, slots=True)
class Packed:
    """File names to bytes, and the answers they were made of.

    ``key_ring`` is apart from ``files``, so that nobody writes it where others read: None unless codes were
    given that the house refers to.
    """

    files: Mapping[str, bytes]
    key_ring: bytes | None
    checked: Checked
    walked: Walked


def pack(
    house: House, *, assumptions: Assumptions, setting: Setting, codes: Mapping[str, str] | None = None
) -> Packed | list[TextFault]:
    """Handover pack, findings, worksheets, plans and elevations; or every text that cannot be printed.

    ``codes`` (reference to code) come only from a key ring that somebody opened for this: they make a paper
    of their own, and no other paper holds one. The same arguments give the same bytes.
    """
    checked, walked = check(house, assumptions=assumptions), walk(house, assumptions=assumptions)
    rows, settled = schedule(house, house.models), settled_assumptions(house, assumptions)
    times = scenes(house, assumptions=assumptions).times
    keys = keys_of(rows, codes or {})
    papers = {
        "handover-pack.pdf": pack_pdf(rows, checked.findings, settled, setting=setting, times=times),
        "findings.pdf": findings_pdf(rows, checked.findings, settled, setting=setting),
        "worksheets.pdf": worksheets_pdf(rows, walked.walk, setting=setting),
        **({_RING: key_ring_pdf(house, keys, setting=setting)} if keys else {}),
    }
    made: dict[str, bytes] = {}
    faults: list[TextFault] = []
    for name, paper in papers.items():
        if isinstance(paper, bytes):
            made[name] = paper
        else:
            faults += paper
    if faults:
        return list(dict.fromkeys(faults))
    ring = made.pop(_RING, None)
    return Packed({**made, **dict(_pictures(rows, checked))}, ring, checked, walked)


def _pictures(rows: Schedule, checked: Checked) -> Iterator[tuple[str, bytes]]:
    for storey in rows.house.storeys:
        yield f"plan-{storey}.svg", plan_svg(rows, storey, checked.findings).encode()
    with_boxes = {box.room for box in rows.house.boxes.values()}
    for room in (r for r in rows.house.rooms if r in with_boxes):
        yield f"elevations-{room}.svg", elevations_svg(rows, room, checked.findings).encode()


def keys_of(rows: Schedule, codes: Mapping[str, str]) -> tuple[Key, ...]:
    """The codes that this house refers to, each with what it opens."""
    house = rows.house
    opens = {n.key_ref: f"network {n.name}" for n in house.networks.values() if n.key_ref}
    for device_id, device in house.devices.items():
        if device.code_ref:
            model = rows.model_of(device_id)
            what = f"{device_id} {model.title if model else 'model not known'}"
            opens[device.code_ref] = f"{what}, {rows.place_of_device(device_id)}"
    return tuple(Key(ref, opens[ref], codes[ref], codes[ref]) for ref in sorted(opens) if ref in codes)
