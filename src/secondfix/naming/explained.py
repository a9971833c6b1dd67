"""What every entry is for is known, so that a worksheet can say which purpose to set for it."""

from collections.abc import Iterator

from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, passes
from secondfix.naming.entries import Entry
from secondfix.naming.named import Called, place_of

RULE = Rule(
    "names.explained",
    "Is it known what every entry is for?",
    "common practice, no source",
)


def check(called: Called) -> Iterator[Finding]:
    """One answer per gang that is not known or feeds a load."""
    for entry in called.names.entries():
        if not entry.explained:
            yield _gang(entry)
        elif entry.load_id:
            yield _load(entry)


def _gang(entry: Entry) -> Finding:
    return cannot_tell(
        RULE,
        Severity.ADVICE,
        place_of(entry),
        f"Nobody knows what gang {entry.place} is for; '{entry.name}' is a provisional name.",
        looks=[Look(entry.place, "duty", "open the box and find what this gang is for")],
        also=(entry.device_id,),
    )


def _load(entry: Entry) -> Finding:
    place = place_of(entry)
    if entry.purpose is None:
        return cannot_tell(
            RULE,
            Severity.ADVICE,
            place,
            f"The purpose of '{entry.name}' is not known.",
            looks=[Look(place, "purpose", "ask what this load is for")],
            also=(entry.place, entry.device_id),
        )
    return passes(RULE, place, value=entry.purpose.value, also=(entry.place, entry.device_id))
