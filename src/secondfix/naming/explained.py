"""What every entry is for is known, so that a worksheet can say which purpose to set for it."""

from collections.abc import Iterator

from secondfix.findings import Finding, Rule, Severity, cannot_tell, passes
from secondfix.house import duty_look, load_words, purpose_look
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
            yield _gang(called, entry)
        elif entry.load_id:
            yield _load(called, entry)


def _gang(called: Called, entry: Entry) -> Finding:
    return cannot_tell(
        RULE,
        Severity.ADVICE,
        place_of(entry),
        f"Nobody knows what gang {entry.place} is for; '{entry.name}' is a provisional name.",
        looks=[duty_look(called.schedule.rows[entry.place])],
        also=(entry.device_id,),
    )


def _load(called: Called, entry: Entry) -> Finding:
    place = place_of(entry)
    if entry.purpose is None:
        return cannot_tell(
            RULE,
            Severity.ADVICE,
            place,
            f"The purpose of '{entry.name}' is not known.",
            looks=[purpose_look(place, load_words(called.schedule.house, place))],
            also=(entry.place, entry.device_id),
        )
    return passes(RULE, place, value=entry.purpose.value, also=(entry.place, entry.device_id))
