"""Networks and devices; and for one place, which models fit."""

from collections.abc import Sequence

from django.contrib import messages
from django.http import HttpRequest, HttpResponse
from django.urls import reverse
from django.views.decorators.http import require_http_methods

from secondfix.actions.choice_words import BEST_FIRST
from secondfix.actions.choose import choose as choosing
from secondfix.actions.select import select
from secondfix.exchange import KINDS, next_id
from secondfix.house import Fault
from secondfix.selection import Doubt, Fit, PlaceChoice
from secondfix.store import door
from secondfix.terms import PROTOCOLS, Protocol
from secondfix.web.changing import answered, number_of, take
from secondfix.web.frame.asked import Asked, asked, asked_at
from secondfix.web.frame.sheets import SHEETS
from secondfix.web.frame.showing import show
from secondfix.web.networks.answers import answer_of
from secondfix.web.networks.tables import carriers, points, reached, tables_of, without_device
from secondfix.web.things.adding import KNOWNS, add, quick_row
from secondfix.web.things.ids import largest_used


@require_http_methods(["GET", "POST"])
def networks(request: HttpRequest, house_id: str) -> HttpResponse:
    """Networks, devices with their reach, and where none stands yet."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        made = add(request, house_id, to=reverse("networks", args=[house_id]))
        if isinstance(made, HttpResponse):
            return made
        faults = made
    about = asked(house_id)
    answer = reached(about)
    tables = about.once("tables of networks", tables_of)
    context = {
        "about": about,
        "tables": [(t, quick_row(about.house, t.kind, request, faults)) for t in tables],
        "carriers": carriers(answer.devices),
        "notes": answer.notes,
        "without": without_device(about),
        "points": points(about),
        "knowns": KNOWNS,
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "networks", "networks/networks.html", context, house_id=house_id, status=status)


@require_http_methods(["GET", "POST"])
def choose(request: HttpRequest, house_id: str, place_id: str) -> HttpResponse:
    """For one place: what fits, what cannot be told, what is refused and what would help; choosing one."""
    faults: tuple[Fault, ...] = ()
    if request.method == "POST":
        made = _chosen(request, house_id, place_id)
        if isinstance(made, HttpResponse):
            return made
        faults = made
    about = asked(house_id)
    if place_id not in about.house.boxes and place_id not in about.house.places:
        raise door.UnknownError(f"no {place_id[:20]} in this house")
    wanted = _protocol(request)
    models = {**about.firm.models, **about.house.models}
    choices = _choices(about, place_id, wanted)
    context = {
        "about": about,
        "place_id": place_id,
        "answers": [answer_of(about.house, models, n, choice) for n, choice in enumerate(choices)],
        "protocols": [(p.value, w.label) for p, w in PROTOCOLS.items()],
        "protocol": wanted.value if wanted else "",
        "order": BEST_FIRST,
        "swaps": "swap" in SHEETS,
        "faults": faults,
    }
    status = 422 if faults else 200
    return show(request, "choose", "networks/choose.html", context, house_id=house_id, status=status)


def _protocol(request: HttpRequest) -> Protocol | None:
    sent = request.POST.get("protocol", request.GET.get("protocol", ""))
    return Protocol(sent) if sent in set(Protocol) else None


def _choices(about: Asked, place_id: str, protocol: Protocol | None) -> tuple[PlaceChoice, ...]:
    return about.once(
        f"select {place_id} {protocol}",
        lambda a: select(
            a.house,
            models=a.firm.models,
            assumptions=a.firm.assumptions,
            places=[place_id],
            protocol=protocol,
        ),
    )


def _chosen(request: HttpRequest, house_id: str, place_id: str) -> HttpResponse | tuple[Fault, ...]:
    base = number_of(request)
    seen = asked_at(house_id, base) if base is not None else asked(house_id)
    choices = _choices(seen, place_id, _protocol(request))
    number, key = request.POST.get("spot", ""), request.POST.get("model", "")
    if not (number.isascii() and number.isdecimal() and len(number) < 4 and int(number) < len(choices)):
        return (Fault("form", "spot", f"'{number[:10]}'", "a spot of this place"),)
    choice = choices[int(number)]
    one = next((o for o in _offered(choice) if o.model == key), None)
    if one is None:
        return (Fault("form", "model", f"'{key[:60]}'", "a model that fits here, or may"),)
    now = asked(house_id).house
    device_id = choice.spot.device_id or next_id(KINDS["device"], now, largest_used(house_id).get)
    standing = seen.house.devices.get(device_id)
    if standing is not None and standing.address is not None:
        fault = Fault("form", device_id, "a device that has joined", "a swap, which keeps what uses it")
        return (fault,)
    model = {**seen.firm.models, **seen.house.models}[key]
    changes = choosing(seen.house, choice.spot, model, set_to=one.set_to, device_id=device_id)
    answer = take(request, house_id, changes, words=f"{key} chosen at {place_id}")
    if isinstance(answer, door.Saved):
        messages.success(request, f"{device_id} at {place_id} is to be {model.title}, edit {answer.number}.")
        joins = asked_at(house_id, answer.number).house.devices[device_id].network
        if model.protocol is not None and joins is None:
            messages.info(request, f"Which network {device_id} joins is still open: state it on its form.")
    gone = answered(request, house_id, answer, to=reverse("networks", args=[house_id]) + f"#{device_id}")
    if gone is not None:
        return gone
    assert isinstance(answer, door.Refused)  # the others were answered
    return answer.faults


def _offered(choice: PlaceChoice) -> Sequence[Fit | Doubt]:
    return (*choice.fits, *choice.doubts)
