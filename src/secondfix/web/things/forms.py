"""A thing of the house as a form: its fields with what stands or was sent, and what was wrong with it."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from secondfix.exchange import KINDS, Field, SheetRead, ThingKind, fields_of, shown_thing, thing_changes
from secondfix.house import Fault, Gang, House, load_words
from secondfix.terms import Known
from secondfix.web.frame.firm import firm

_TYPED = {"model"}  # fields whose texts to choose from are no closed list


@dataclass(frozen=True, slots=True)
class FormField:
    """One field: ``choices`` are a closed list, ``offers`` texts to begin from, ``wrong`` what was wanted."""

    name: str
    heading: str
    text: str
    hint: str
    wide: bool
    choices: tuple[str, ...]
    offers: tuple[str, ...]
    wrong: str


@dataclass(frozen=True, slots=True)
class FormGroup:
    """Fields under one heading, ``says`` beside it.

    ``out`` is what takes the group out of its thing, empty where it stays.
    """

    legend: str
    fields: tuple[FormField, ...]
    out: str = ""
    says: str = ""


@dataclass(frozen=True, slots=True)
class Part:
    """What one group of fields speaks of: the thing itself, or a mount or gang of a wall box."""

    kind: ThingKind
    path: str
    prefix: str
    legend: str
    out: str = ""
    says: str = ""


def parts_of(house: House, kind: ThingKind, thing_id: str) -> list[Part]:
    """The thing, and within a wall box its mounts and gangs."""
    path = f"{kind.collection}.{thing_id}" if thing_id else ""
    parts = [Part(kind, path, "", f"{kind.one[:1].upper()}{kind.one[1:]} {thing_id}".strip())]
    if kind.name == "box":
        box = house.boxes[thing_id]
        for inner, members in (("mount", box.mounts), ("gang", box.gangs)):
            collection = KINDS[inner].collection
            for number in members:
                at = f"{collection}.{number}"
                legend = f"{inner.capitalize()} {number}"
                says = _does(house, box.gangs[number]) if inner == "gang" else ""
                parts.append(Part(KINDS[inner], f"{path}.{at}", f"{at}:", legend, at, says))
    return parts


def _does(house: House, gang: Gang) -> str:
    """What a gang is there for, in a few words; the whole of it stands on the switch schedule."""
    if gang.load is not None:
        return f"feeds {load_words(house, gang.load)}"
    return f"extends {gang.extends}" if gang.extends else gang.duty.value.replace("_", " ")


def groups_of(
    house: House, parts: Iterable[Part], sent: Mapping[str, str], faults: Sequence[Fault]
) -> list[FormGroup]:
    """Every part as a group of fields, holding what was sent, else what stands."""
    groups = []
    for part in parts:
        stands = shown_thing(house, part.kind, part.path)
        fields = tuple(
            form_field(
                house,
                field,
                name=f"{part.prefix}{field.key}",
                text=sent.get(f"{part.prefix}{field.key}", stands[field.key]),
                wrong=_wrong(f"{part.path}.{field.path}".removeprefix("."), faults),
                offered=_offered(house, part, field),
            )
            for field in fields_of(part.kind, house)
        )
        groups.append(FormGroup(part.legend, fields, part.out, part.says))
    return groups


def form_field(
    house: House, field: Field, *, name: str, text: str, wrong: str = "", offered: Iterable[str] = ()
) -> FormField:
    """One field: a closed list of words is chosen from, whatever carries how it is known is typed."""
    found = tuple(offered) or tuple(field.cell.choices(house))
    closed = bool(found) and not field.fact and field.key not in _TYPED
    choices = found if not closed or not text or text in found else (*found, text)
    return FormField(
        name,
        field.heading,
        text,
        field.hint,
        field.wide,
        choices if closed else (),
        () if closed else found,
        wrong,
    )


def _offered(house: House, part: Part, field: Field) -> tuple[str, ...]:
    if field.key == "model":
        return tuple(sorted({**firm().models, **house.models}))
    if part.kind.name == "gang" and field.key == "mount":
        return tuple(house.boxes[part.path.split(".")[1]].mounts)
    return ()


def _wrong(path: str, faults: Iterable[Fault]) -> str:
    return next((f.expected for f in faults if f"{f.path}.".startswith(f"{path}.")), "")


def read_parts(house: House, parts: Iterable[Part], sent: Mapping[str, str], known: Known) -> SheetRead:
    """The changes that a form asks for, and every fault of it."""
    read = [
        thing_changes(
            house, p.kind, p.path, {f.key: sent[n] for f in p.kind.fields if (n := p.prefix + f.key) in sent},
            known=known,
        )
        for p in parts
    ]  # fmt: skip
    return SheetRead(tuple(c for r in read for c in r.changes), tuple(f for r in read for f in r.faults))
