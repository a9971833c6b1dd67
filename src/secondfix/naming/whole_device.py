"""A whole-device entry is not named like one of its gangs: who means the gang must not switch them all."""

from collections.abc import Iterator

from secondfix.findings import Finding, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import duty_look, model_look
from secondfix.naming.entries import Entry, EntryKind
from secondfix.naming.folding import folded
from secondfix.naming.named import Called

RULE = Rule(
    "names.whole_device",
    "Is the whole-device entry named unlike the gangs beside it?",
    "common practice, no source",
)
_LIMIT = "a name after the place, without the name of a load that the device feeds"


def check(called: Called) -> Iterator[Finding]:
    """One answer per whole-device entry, at its device."""
    for entries in called.names.of_device.values():
        for whole in entries:
            if whole.kind is EntryKind.WHOLE_DEVICE:
                yield _one(called, whole, entries)


def _one(called: Called, whole: Entry, entries: tuple[Entry, ...]) -> Finding:
    alike = [e for e in entries if e.load_id and _sounds_like(called, whole.name, e)]
    unexplained = [e for e in entries if not e.explained]
    also = (whole.place, *(e.place for e in alike))
    says = f"The whole-device entry '{whole.name}' reads like '{alike[0].name}' beside it." if alike else ""
    if alike and whole.stands:
        return fails(
            RULE,
            Severity.FAULT,
            whole.device_id,
            says,
            value=whole.name,
            limit=_LIMIT,
            remedy="Name the whole-device entry after its place, or the device otherwise.",
            also=also,
        )
    if alike:
        look = model_look(whole.device_id)
        return cannot_tell(RULE, Severity.FAULT, whole.device_id, says, looks=[look], limit=_LIMIT, also=also)
    if unexplained:
        looks = [duty_look(called.schedule.rows[e.place]) for e in unexplained]
        says = f"The whole-device entry '{whole.name}' may read like a gang that nobody has explained."
        return cannot_tell(RULE, Severity.FAULT, whole.device_id, says, looks=looks, limit=_LIMIT, also=also)
    return passes(RULE, whole.device_id, value=whole.name, limit=_LIMIT, also=also)


def _sounds_like(called: Called, whole: str, gang: Entry) -> bool:
    """The same name, or one that holds the load's name as whole words."""
    load = called.schedule.house.loads[gang.load_id or ""]
    held = f" {folded(load.name)} " in f" {folded(whole)} "
    return held or folded(whole) == folded(gang.name)
