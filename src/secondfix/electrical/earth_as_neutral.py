"""Earth as neutral: a protective conductor never carries the current of a device."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import EARTH, neutral_look, settled

RULE = Rule(
    "earth_as_neutral",
    "Is no protective conductor used as neutral?",
    "NEC 404.22 (secondary): no current on the equipment grounding conductor; elsewhere "
    "common practice, no source",
)


def answers(case: Case) -> Iterator[Finding]:
    """One answer per wall box that was looked into, or into which a device is wired."""
    for box_id, box in case.house.boxes.items():
        found = {number: settled(mount.neutral) for number, mount in box.mounts.items()}
        earthed = [number for number, neutral in found.items() if neutral == EARTH]
        unseen = [number for number, neutral in found.items() if neutral is None]
        also = case.devices_in.get(box_id, ())
        if earthed:
            yield _danger(box_id, earthed, also)
        elif not unseen:
            yield passes(RULE, box_id, value="no earth in place of a neutral", also=also)
        elif case.wired_into(box_id):
            looks = [neutral_look(box_id, number) for number in unseen]
            says = f"What stands as neutral in box {box_id} has not been seen."
            yield cannot_tell(RULE, Severity.DANGER, box_id, says, looks=looks, also=also)


def _danger(box_id: str, earthed: list[str], also: tuple[str, ...]) -> Finding:
    where = "mount " + ", ".join(earthed)
    return fails(
        RULE,
        Severity.DANGER,
        box_id,
        f"In box {box_id} a protective conductor is used as neutral: earthed metal may become live.",
        value=f"earth at {where}",
        limit="never",
        remedy="Isolate, disconnect it, restore the protective conductor and test its continuity; pull a "
        "neutral or take a device that needs none.",
        also=also,
    )
