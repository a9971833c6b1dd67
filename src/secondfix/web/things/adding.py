"""A new thing from the quick row beneath a table: its id is ours, its fields are those that matter first."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from urllib.parse import urlencode

from django.contrib import messages
from django.http import HttpRequest, HttpResponse

from secondfix.exchange import KINDS, SheetRead, begun, fields_of, next_id
from secondfix.house import Change, Fault, House
from secondfix.store import door
from secondfix.terms import KNOWN_LABELS, Known
from secondfix.web.changing import answered, take
from secondfix.web.frame.asked import asked
from secondfix.web.frame.firm import firm
from secondfix.web.things.forms import FormField, form_field
from secondfix.web.things.ids import largest_used

QUICK: Mapping[str, tuple[str, ...]] = {
    "storey": ("name", "level", "ceiling"),
    "room": ("name", "storey"),
    "box": ("room",),
    "circuit": ("name", "breaker", "curve", "label", "label-rooms"),
    "load": ("name", "room", "purpose", "kind", "power", "count"),
    "place": ("place-kind", "name", "room"),
    "wall": ("storey", "from", "to", "thickness"),
    "door": ("wall", "along", "width", "opening-height"),
    "window": ("wall", "along", "width", "sill", "opening-height"),
    "network": ("name", "protocol", "controller"),
    "device": ("model", "network", "box", "mounts", "gangs", "place"),
    "use": ("use-kind", "device", "entry", "words"),
}
_SAYS = {
    "device": "In a wall box, mounts and gangs may stay empty: it then takes all that no other device has.",
}
MOST_MOUNTS, MOST_GANGS = 6, 24
TRIES = 3
# What is likely to be the same for the next one, and so stays in the row.
STAYS = ("storey", "room", "wall", "place-kind", "network", "known")
_COUNTS = (("mounts", "How many mounts", "1", MOST_MOUNTS), ("gangs", "How many gangs", "1", MOST_GANGS))


@dataclass(frozen=True, slots=True)
class QuickRow:
    """What is asked of a new thing.

    ``facts`` says that some of it carries how it is known, ``at_hand`` that one more is likely to follow.
    """

    kind: str
    one: str
    fields: tuple[FormField, ...]
    facts: bool
    at_hand: bool
    says: str = ""
    known: Known = Known.TOLD

    @property
    def at(self) -> str:
        """What the ids of its fields on the page begin with."""
        return f"{self.kind}-"


def quick_row(house: House, kind_name: str, request: HttpRequest, faults: Sequence[Fault] = ()) -> QuickRow:
    """The row beneath a table, holding what was sent where it was refused."""
    kind = KINDS[kind_name]
    by_key = {f.key: f for f in fields_of(kind, house)}
    own = [by_key[key] for key in QUICK[kind_name]]
    refused = request.POST if request.POST.get("adds") == kind_name else {}
    another = request.GET if not refused and request.GET.get("more") == kind_name else {}
    held = {key: another[key] for key in STAYS if key in another}
    texts = {**held, **dict(refused.items())}
    fields = [
        form_field(
            house,
            f,
            name=f.key,
            text=texts.get(f.key, ""),
            wrong=_wrong(f.path, faults) if refused else "",
            offered=_models(house) if f.key == "model" else (),
        )
        for f in own
    ]  # fmt: skip
    if kind_name == "box":
        fields += [
            FormField(name, heading, texts.get(name, usual), "", wide=False, choices=(), offers=(), wrong="")
            for name, heading, usual, _ in _COUNTS
        ]
    known = Known(texts["known"]) if texts.get("known") in set(Known) else Known.TOLD
    at_hand = bool(another) or bool(refused)
    facts = any(f.fact for f in own)
    return QuickRow(kind_name, kind.one, tuple(fields), facts, at_hand, _SAYS.get(kind_name, ""), known)


def _wrong(path: str, faults: Sequence[Fault]) -> str:
    """What was expected of a field of the new thing, whose path is ``collection.id.field``."""
    within = (("".join(f.path.split(".", 2)[2:]), f.expected) for f in faults)
    return next((expected for at, expected in within if f"{at}.".startswith(f"{path}.")), "")


def _models(house: House) -> tuple[str, ...]:
    return tuple(sorted({**firm().models, **house.models}))


def add(request: HttpRequest, house_id: str, *, to: str) -> HttpResponse | tuple[Fault, ...]:
    """Make the thing that the form asks for; the way to ``to`` once saved, else the faults.

    The id is chosen in the house as it stands now, so that two who add at once add two things; where another
    was quicker by a hair, the next id is tried.
    """
    name = request.POST.get("adds", "")
    if name not in QUICK:
        return (Fault("form", "adds", f"'{name[:40]}'", f"one of {', '.join(QUICK)}"),)
    for _ in range(TRIES):
        house = asked(house_id).house
        thing_id = next_id(KINDS[name], house, largest_used(house_id).get)
        read = _read(house, name, thing_id, request)
        if read.faults:
            return read.faults
        answer = take(request, house_id, read.changes, words=f"{thing_id} added")
        if not isinstance(answer, door.Conflicting):
            break
    if isinstance(answer, door.Saved):
        messages.success(request, f"{thing_id} added, edit {answer.number}.")
    held = urlencode({"more": name, **{k: text for k in STAYS if (text := request.POST.get(k))}})
    gone = answered(request, house_id, answer, to=f"{to}?{held}#more-{name}")
    if gone is not None:
        return gone
    assert isinstance(answer, door.Refused)  # the others were answered
    return answer.faults


def known_of(request: HttpRequest) -> Known:
    """How what is typed is known; *told* where the form does not say."""
    sent = request.POST.get("known", "")
    return Known(sent) if sent in set(Known) else Known.TOLD


KNOWNS = tuple(KNOWN_LABELS.items())


def _read(house: House, name: str, thing_id: str, request: HttpRequest) -> SheetRead:
    texts = {key: request.POST.get(key, "") for key in QUICK[name]}
    read = begun(house, KINDS[name], thing_id, texts, known=known_of(request))
    if name == "box":
        counts = [_count(request, *row) for row in _COUNTS]
        told = tuple(c for c in counts if isinstance(c, Fault))
        if told:
            return SheetRead((), (*read.faults, *told))
        mounts, gangs = (c for c in counts if isinstance(c, int))
        return SheetRead((*read.changes, *_shared_out(thing_id, mounts, gangs)), read.faults)
    if name == "device":
        return SheetRead((*read.changes, *_free(house, thing_id, read.changes)), read.faults)
    return read


def _count(request: HttpRequest, name: str, heading: str, usual: str, most: int) -> int | Fault:
    text = request.POST.get(name, usual).strip()
    if text.isascii() and text.isdecimal() and len(text) < 4 and int(text) <= most:
        return int(text)
    return Fault("form", heading, f"'{text[:40]}'", f"a whole number up to {most}")


def _shared_out(box_id: str, mounts: int, gangs: int) -> Iterator[Change]:
    """The gangs over the mounts, as many on each as goes; a person moves them where it is otherwise."""
    yield Change(f"boxes.{box_id}.mounts", {str(n): {} for n in range(1, mounts + 1)})
    share = (
        {str(n): {"mount": str((n - 1) * mounts // gangs + 1)} for n in range(1, gangs + 1)} if mounts else {}
    )
    yield Change(f"boxes.{box_id}.gangs", share)


def _free(house: House, device_id: str, changes: tuple[Change, ...]) -> Iterator[Change]:
    """In a wall box without mounts or gangs named: all that no device has, as far as the model goes."""
    said = {c.path.rpartition(".")[2]: c.value for c in changes}
    box = house.boxes.get(said.get("box") or "")
    if box is None or "mounts" in said or "gangs" in said:
        return
    model = {**firm().models, **house.models}.get(said.get("model") or "")
    there = [d for d in house.devices.values() if d.box == said["box"]]
    for name, have, most in (
        ("mounts", box.mounts, model.mounts if model else None),
        ("gangs", box.gangs, model.gangs if model else None),
    ):
        taken = {n for d in there for n in getattr(d, name)}
        yield Change(f"devices.{device_id}.{name}", [n for n in have if n not in taken][:most] or None)
