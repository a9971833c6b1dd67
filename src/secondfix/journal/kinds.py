"""All kinds of entry, and one entry from a plain object."""

from typing import Any

from pydantic import ValidationError

from secondfix.journal.air import AirHeard
from secondfix.journal.deeds import (
    Excluded,
    Fitted,
    Joined,
    JoinFailed,
    Named,
    PurposeSet,
    Removed,
    Skipped,
)
from secondfix.journal.entry import FORMAT, Entry, Unknown
from secondfix.journal.facts import FunctionTested, Measured, SurveyCorrected
from secondfix.journal.marks import Adopted, Signed, SnagCleared, SnagRaised, Withdrawn

KINDS: dict[str, type[Entry]] = {
    "joined": Joined,
    "join_failed": JoinFailed,
    "excluded": Excluded,
    "named": Named,
    "purpose_set": PurposeSet,
    "function_tested": FunctionTested,
    "measured": Measured,
    "air_heard": AirHeard,
    "fitted": Fitted,
    "removed": Removed,
    "survey_corrected": SurveyCorrected,
    "snag_raised": SnagRaised,
    "snag_cleared": SnagCleared,
    "skipped": Skipped,
    "withdrawn": Withdrawn,
    "adopted": Adopted,
    "signed": Signed,
}


_UUID_WORDS = "a UUID of version 7, in small letters"
_PATTERNS = {
    **dict.fromkeys(("id", "house", "sees", "of", "clears", "took_in"), _UUID_WORDS),
    "subject": "kind:id, such as gang:B07.2, device:D01 or scene:S2",
    "link": "link:D01>P1",
    "at": "a time with its offset from UTC, such as 2031-05-06T09:40+02:00",
    "revision": "letters, digits, '.', '_' and '-', at most 64",
    "model": "a model's key, such as ostrabeck-heron@1",
    "address": "sixteen hex digits in capitals",
    "code_ref": "a reference of the key ring, such as K07",
}
_OTHER_PATTERN = "an id of this house, such as B07, D01 or N2"


def read_entry(plain: Any, *, line: str = "") -> Entry | tuple[str, str, str]:
    """The entry, or its first fault as (path, what stands, what was expected).

    ``line`` is the text as it stands, kept for a kind that is not known here.
    """
    if not isinstance(plain, dict):
        return "", _noun(plain), "an object that holds an entry"
    version = plain.get("format")
    if isinstance(version, int) and version > FORMAT:
        return "format", str(version), f"format {FORMAT}: this entry was made by a newer Secondfix"
    kind = plain.get("kind")
    model = KINDS.get(kind) if isinstance(kind, str) else None
    try:
        if model is None:
            known = {k: v for k, v in plain.items() if k in Entry.model_fields}
            return Unknown.model_validate({**known, "line": line})
        entry = model.model_validate(plain)
    except ValidationError as error:
        return _told(error)
    if entry.subject.partition(":")[0] not in model.speaks_of:
        return "subject", f"'{entry.subject}'", f"for {kind}: {', '.join(sorted(model.speaks_of))}"
    return entry


def _told(error: ValidationError) -> tuple[str, str, str]:
    faults = error.errors(include_url=False)
    first = faults[0]
    path = ".".join(str(p) for p in first["loc"])
    more = f" (and {len(faults) - 1} more)" if len(faults) > 1 else ""
    if first["type"] == "missing":
        return path, "nothing", f"this key, which is required{more}"
    if first["type"] == "extra_forbidden":
        return path, "unknown key", f"a key that the kind knows{more}"
    if first["type"] == "string_pattern_mismatch":
        return path, _short(first["input"]), _PATTERNS.get(str(first["loc"][0]), _OTHER_PATTERN) + more
    if first["type"] == "dict_type":
        return path, _short(first["input"]), f"an object{more}"
    if first["type"] == "tuple_type":
        return path, _short(first["input"]), f"a list{more}"
    message = first["msg"].removeprefix("Value error, ").removeprefix("Input should be ")
    return path, _short(first["input"]), message + more


def _short(value: Any) -> str:
    text = _noun(value) if isinstance(value, dict | list) else repr(value)
    return text if len(text) <= 60 else text[:57] + "..."


def _noun(value: Any) -> str:
    names = {dict: "an object", list: "a list", str: "a text", bool: "a truth value", type(None): "null"}
    return names.get(type(value), "a number")
