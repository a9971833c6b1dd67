"""The forms of the journal: one for each kind of entry, and from what was typed to the kind's own keys."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from secondfix.actions.record import AS_IT_SHOULD, own_keys
from secondfix.findings import Severity
from secondfix.house import Fault, House
from secondfix.journal import COLLECTION_OF, KINDS
from secondfix.terms import PURPOSES
from secondfix.web.frame.firm import firm

Plain = dict[str, Any]
MOST_TYPED = 2000


@dataclass(frozen=True, slots=True)
class Ask:
    """One field: ``how`` is text, number, list, pairs, value or the name of a list of choices."""

    key: str
    label: str
    how: str = "text"
    hint: str = ""


@dataclass(frozen=True, slots=True)
class KindForm:
    """One kind of entry as people are asked for it."""

    title: str
    asks: tuple[Ask, ...]
    opens_box: bool = False


_NOTE = Ask("note", "Note")
_NETWORK = Ask("network", "Network", "networks")
FORMS: dict[str, KindForm] = {
    "fitted": KindForm(
        "A device was fitted",
        (
            Ask("model", "Model, if not that of the book", "models"),
            Ask("box", "Wall box", "boxes"),
            Ask("mounts", "Mounts", "list", "1, 2"),
            Ask("gangs", "Gangs, its own first one first", "list", "1, 2"),
            Ask("place", "or place", "places"),
            Ask("outputs", "Outputs at a place", "pairs", "1 L04, 2 L05"),
            Ask("code_ref", "Code, its reference on the key ring", "text", "K07; never the code itself"),
            Ask("replaces", "In the place of", "devices"),
            Ask("takes_over", "Entries it takes over", "pairs", "1 1, 2 3: that one's entry, its own"),
            _NOTE,
        ),
        opens_box=True,
    ),
    "removed": KindForm("A device was taken off", (_NOTE,), opens_box=True),
    "joined": KindForm(
        "A device joined its network",
        (
            _NETWORK,
            Ask("address", "Address", "text", "sixteen hex digits in capitals"),
            Ask("node", "Node number", "number"),
            Ask("entries", "Entries that appeared", "number"),
            _NOTE,
        ),
    ),
    "join_failed": KindForm("A device did not join", (_NETWORK, Ask("note", "What was seen"))),
    "excluded": KindForm("A device was taken off its network", (_NETWORK, _NOTE)),
    "named": KindForm("A thing or an entry was named", (Ask("name", "Name"), _NOTE)),
    "purpose_set": KindForm("A purpose was set", (Ask("purpose", "Purpose", "purposes"), _NOTE)),
    "function_tested": KindForm(
        "A gang, an entry or a scene was tested",
        (
            Ask("as_it_should", "Every load did what it should, and no other", "yes"),
            Ask("answered", "else what answered", "pairs", "L04, L05 on, L07 off; empty: nothing"),
            Ask("also_answered", "What answered and stands in no book"),
            _NOTE,
        ),
    ),
    "measured": KindForm(
        "A link was measured",
        (
            Ask("rssi_dbm", "Level received (RSSI), dBm", "number"),
            Ask("lqi", "Link quality (LQI) as the radio gives it", "number", "0 to 255"),
            Ask("not_heard", "Listened for, and not heard", "yes"),
            _NOTE,
        ),
    ),
    "air_heard": KindForm(
        "Who sends at 2.4 GHz was heard",
        (
            Ask(
                "transmitters",
                "Who was heard, as a list",
                "value",
                '[{"channel": 6, "level_dbm": -61, "duty_permille": 80}]; [] for nobody',
            ),
            _NOTE,
        ),
    ),
    "survey_corrected": KindForm(
        "The survey was wrong",
        (
            Ask("path", "What, as in the house document", "text", "boxes.B07.depth_mm"),
            Ask("found", "Found there", "value", '{"value": 47, "known": "measured"}; null: not known'),
            _NOTE,
        ),
        opens_box=True,
    ),
    "snag_raised": KindForm(
        "A snag",
        (Ask("words", "What is not as it should be"), Ask("severity", "How bad", "severities"), _NOTE),
    ),
    "snag_cleared": KindForm(
        "A snag is put right",
        (
            Ask("words", "How it was put right"),
            Ask("clears", "Entry that raised it", "text", "empty: the one that is open there"),
            _NOTE,
        ),
    ),
    "skipped": KindForm("A step was not done", (Ask("deed", "Step", "deeds"), Ask("reason", "Why"), _NOTE)),
    "withdrawn": KindForm(
        "An entry is withdrawn",
        (
            Ask("reason", "Why"),
            Ask("of", "Entry", "text", "empty: the latest there, where it is one alone"),
            _NOTE,
        ),
    ),
    "signed": KindForm(
        "Somebody put their name to something",
        (Ask("name", "Name"), Ask("paper", "What was signed"), _NOTE),
    ),
}  # fmt: skip
assert FORMS.keys() | {"adopted"} == KINDS.keys()  # adopting is done on the as-built sheet

DEEDS = {
    "fit": "fit", "join": "join", "name": "name", "purpose": "set the purpose", "test": "test",
    "measure": "measure",
}  # fmt: skip


def choices(house: House) -> dict[str, dict[str, str]]:
    """What may be chosen, by the name of the list: value to words."""
    models = {**firm().models, **house.models}
    return {
        "networks": {i: f"{i} {n.name}" for i, n in house.networks.items()},
        "models": {key: m.title for key, m in sorted(models.items(), key=lambda item: item[1].title)},
        "boxes": {i: f"{i} {house.rooms[b.room].name}" for i, b in house.boxes.items()},
        "places": {i: f"{i} {p.name}" for i, p in house.places.items()},
        "devices": {i: i for i in house.devices},
        "purposes": {p.value: policy.label for p, policy in PURPOSES.items()},
        "severities": {s.value: s.value for s in Severity},
        "deeds": DEEDS,
    }


def subjects(house: House, kind: str) -> dict[str, str]:
    """Everything of the house that an entry of this kind may speak of: the subject and its words."""
    speaks_of = KINDS[kind].speaks_of
    found: dict[str, str] = {}
    if "house" in speaks_of:
        found[f"house:{house.id}"] = "the house"
    for of, collection in COLLECTION_OF.items():
        if of in speaks_of:
            for i, thing in getattr(house, collection).items():
                found[f"{of}:{i}"] = getattr(thing, "name", "") or ""
    if "gang" in speaks_of:
        found |= {f"gang:{b}.{g}": house.rooms[o.room].name for b, o in house.boxes.items() for g in o.gangs}
    return found


def own_of(kind: str, typed: Mapping[str, str]) -> Plain | Fault:
    """The kind's own keys from its form, or the first field that cannot be read."""
    own: Plain = {}
    for ask in FORMS[kind].asks:
        text = typed.get(ask.key, "").strip()
        if len(text) > MOST_TYPED:
            return Fault("form", ask.key, f"{len(text):,} characters", f"at most {MOST_TYPED:,}")
        value = _value(ask, text)
        if isinstance(value, Fault):
            return value
        if value is not None:
            own[ask.key] = value
    if own.pop("as_it_should", None):
        own["answered"] = AS_IT_SHOULD
    elif kind == "function_tested":
        own.setdefault("answered", {})
    if "not_heard" in own:
        own["not_heard"] = True
    return own


def _value(ask: Ask, text: str) -> Any:
    if not text:
        return None
    if ask.how == "number":
        minus, digits = text[:1] == "-", text.removeprefix("-")
        if not (digits.isascii() and digits.isdigit() and len(digits) < 10):
            return Fault("form", ask.key, f"'{text[:60]}'", "a whole number")
        return -int(digits) if minus else int(digits)
    if ask.how == "list":
        return text.replace(",", " ").split()
    if ask.how == "pairs":
        return _pairs(ask, text)
    if ask.how == "value":
        given = own_keys([f"{ask.key}={text}"])  # as the verb reads it
        return given if isinstance(given, Fault) else given[ask.key]
    return text


def _pairs(ask: Ask, text: str) -> Plain | Fault:
    made: Plain = {}
    for pair in filter(str.strip, text.replace(";", ",").split(",")):
        words = pair.split()
        if len(words) == 1 and ask.key == "answered":
            words.append("changed")
        if len(words) != 2 or words[0] in made:
            return Fault("form", ask.key, f"'{pair.strip()[:60]}'", f"pairs, each once, such as {ask.hint}")
        number = ask.key == "takes_over" and words[1].isascii() and words[1].isdigit()
        made[words[0]] = int(words[1][:9]) if number else words[1]
    return made
