"""One thing of a house as a form: changed, taken out, and what a wall box has of mounts and gangs."""

from collections.abc import Sequence

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from secondfix.exchange import ThingKind, kind_of
from secondfix.house import Change, Fault, House
from secondfix.store import door
from secondfix.web.changing import answered, number_of, take
from secondfix.web.frame.asked import Asked, asked, asked_at
from secondfix.web.frame.places import way_to
from secondfix.web.frame.showing import show
from secondfix.web.things.adding import KNOWNS, known_of
from secondfix.web.things.forms import groups_of, parts_of, read_parts

NUMBERED = {"mounts", "gangs"}


@require_http_methods(["GET", "POST"])
def thing(request: HttpRequest, house_id: str, thing_id: str) -> HttpResponse:
    """Everything that may be stated of one thing."""
    about = asked(house_id)
    faults: tuple[Fault, ...] = ()
    out = request.POST.get("act") == "out"
    if request.method == "POST":
        answer = _changed(request, about, thing_id)
        here = reverse("thing", args=[house_id, thing_id])
        listed = reverse("networks" if _on_networks(about.house, thing_id) else "building", args=[house_id])
        gone = answered(request, house_id, answer, to=_next(request, thing_id, here=here, listed=listed))
        if gone is not None:
            _tell(request, answer, thing_id)
            return gone
        assert isinstance(answer, door.Refused)  # the others were answered
        faults = answer.faults
    about = asked(house_id)
    kind = _kind(about.house, thing_id)
    parts = parts_of(about.house, kind, thing_id)
    context = {
        "about": about,
        "kind": kind,
        "thing_id": thing_id,
        "groups": groups_of(about.house, parts, request.POST, faults),
        "knowns": KNOWNS,
        "known": known_of(request),
        "faults": faults,
        "leaning": _leaning(about.house, faults) if out else (),
        "choosing": _choosing(about, kind, thing_id),
        "has_gangs": kind.name == "box" and bool(about.house.boxes[thing_id].gangs),
        "findings": [f for f in about.checked.findings if f.severity and f.place.split(".")[0] == thing_id],
    }
    return show(
        request, "thing", "things/thing.html", context, house_id=house_id, status=422 if faults else 200
    )


def _choosing(about: Asked, kind: ThingKind, thing_id: str) -> str:
    """The box or place at which a model is to be chosen; empty where nothing is."""
    if kind.name == "device":
        return about.rows.place_of_device(thing_id)
    return thing_id if kind.name in {"box", "place"} else ""


def _kind(house: House, thing_id: str) -> ThingKind:
    kind = kind_of(house, thing_id)
    if kind is None:
        raise door.UnknownError(f"no {thing_id[:20]} in this house")
    return kind


def _on_networks(house: House, thing_id: str) -> bool:
    return any(thing_id in those for those in (house.networks, house.devices, house.outside_uses))


def _changed(request: HttpRequest, now: Asked, thing_id: str) -> door.Saved | door.Conflicting | door.Refused:
    """What the form asks for, made on the edit that it was made from."""
    base = number_of(request)
    seen = asked_at(now.house.id, base) if base is not None else now
    kind = _kind(seen.house, thing_id)
    parts = parts_of(seen.house, kind, thing_id)
    path, act = f"{kind.collection}.{thing_id}", request.POST.get("act", "")
    if act == "out":
        return take(request, seen.house.id, [Change(path, None)], words=f"{thing_id} taken out")
    gone = act.removeprefix("out ") if act.startswith("out ") else ""
    if gone and gone not in {p.out for p in parts}:
        raise door.UnknownError(f"no {gone[:20]} in {thing_id}")
    kept = [p for p in parts if not gone or p.out != gone]
    read = read_parts(seen.house, kept, request.POST, known_of(request))
    if read.faults:
        return door.Refused(read.faults)
    more = [Change(f"{path}.{gone}", None)] if gone else []
    if act in NUMBERED and kind.name == "box" and thing_id in now.house.boxes:
        more.append(_another(now.house, thing_id, act))
    return take(request, seen.house.id, [*read.changes, *more])


def _another(house: House, box_id: str, collection: str) -> Change:
    """One more mount or gang, with the next number."""
    box = house.boxes[box_id]
    members = box.mounts if collection == "mounts" else box.gangs
    number = max((int(n) for n in members), default=0) + 1
    value = {"mount": next(reversed(box.mounts))} if collection == "gangs" else {}
    return Change(f"boxes.{box_id}.{collection}.{number}", value)


def _next(request: HttpRequest, thing_id: str, *, here: str, listed: str) -> str:
    act = request.POST.get("act", "")
    if act == "out":
        return listed
    return here if act else f"{listed}#{thing_id}"


def _tell(request: HttpRequest, answer: object, thing_id: str) -> None:
    if isinstance(answer, door.Saved) and answer.new:
        done = "taken out" if request.POST.get("act") == "out" else "saved"
        messages.success(request, f"{thing_id} {done}, edit {answer.number}.")


def _leaning(house: House, faults: Sequence[Fault]) -> list[tuple[str, str]]:
    """What speaks of a thing that was to be taken out, each with the way to where that is changed."""
    heads = dict.fromkeys(f.path.split(".")[1] for f in faults if "." in f.path)
    return [(head, way_to(house, head)) for head in heads if kind_of(house, head) or head in house.scenes]
