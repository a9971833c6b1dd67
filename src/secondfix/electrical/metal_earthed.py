"""Metal and earth: whatever of a box and its plate is metal is joined to the protective conductor."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Box, dead_first, plate_look, settled, shell_look
from secondfix.terms import PlateMaterial, ShellMaterial

RULE = Rule(
    "metal_earthed",
    "Is a metal box or plate joined to the protective conductor?",
    "common practice, no source: metal that a hand can reach and a fault can make live is earthed",
)
_LIMIT = "metal joined to the protective conductor"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per wall box that has metal or is said to be earthed, or, where a device is wired, may."""
    for box_id, box in case.house.boxes.items():
        metal, unseen = _metal(box), _unseen(box)
        earthed = settled(box.earthed)
        if metal or earthed or (unseen and case.wired_into(box_id)):
            yield _answer(box_id, box, metal, unseen)


def _metal(box: Box) -> str:
    shell = settled(box.shell) is ShellMaterial.METAL
    plate = settled(box.plate) is PlateMaterial.METAL
    return " and ".join(word for word, so in (("box", shell), ("plate", plate)) if so)


def _unseen(box: Box) -> list[str]:
    return [part for part in ("shell", "plate") if settled(getattr(box, part)) is None]


def _answer(box_id: str, box: Box, metal: str, unseen: list[str]) -> Finding:
    earthed = settled(box.earthed)
    value = f"metal {metal}" if metal else "metal not known" if unseen else "no metal"
    if earthed:
        return passes(RULE, box_id, value=f"{value}, earthed", limit=_LIMIT)
    if metal and earthed is False:
        return fails(
            RULE,
            Severity.DANGER,
            box_id,
            f"The metal {metal} of box {box_id} is not joined to the protective conductor.",
            value=f"{value}, not earthed",
            limit=_LIMIT,
            remedy="Isolate and prove dead; join it to the protective conductor and test the continuity, or "
            "fit a plastic one.",
        )
    looks = []
    if not metal:
        looks += [_LOOKS[part](box_id) for part in unseen]
    if earthed is None:
        words = f"see whether the metal of box {box_id} is joined to the protective conductor"
        looks.append(Look(box_id, "earthed", dead_first(words)))
    says = f"Whether box {box_id} has metal that is not earthed is not known."
    return cannot_tell(RULE, Severity.DANGER, box_id, says, looks=looks, value=value, limit=_LIMIT)


_LOOKS = {"shell": shell_look, "plate": plate_look}
