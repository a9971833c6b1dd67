"""Channels: the survey written down, and what each network loses on every channel."""

from typing import Any

from django.contrib import messages
from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.views.decorators.http import require_http_methods

from secondfix.actions.channels import OnAir, as_transmitters, heard_in_file
from secondfix.exchange import LARGEST_SURVEY_BYTES
from secondfix.findings import Outcome
from secondfix.house import Fault, House
from secondfix.radio import Sends
from secondfix.web.frame.showing import show
from secondfix.web.frame.site import shown_at
from secondfix.web.journal.writing import write
from secondfix.web.radio.asking import RadioAsked, radio_asked
from secondfix.web.radio.surveying import (
    MOST_ROWS,
    WHERE,
    WIDTHS,
    WORDS_OF_KIND,
    Typed,
    heard_in_rows,
    rows_of,
    told_of,
    typed_rows,
    with_fresh,
)


@require_http_methods(["GET", "POST"])
def channels(request: HttpRequest, house_id: str) -> HttpResponse:
    """Every network at 2.4 GHz, channel by channel; the survey as rows and as a file."""
    faults: tuple[Fault, ...] = ()
    sent = {k: v for k, v in request.POST.items() if isinstance(v, str)}
    typed = typed_rows(sent) if "typed" in sent else None
    more = sent.get("act") == "more"
    if request.method == "POST" and not more:
        faults = _taken(request, house_id, typed)
        if not faults:
            return redirect("channels", house_id)
    air = radio_asked(house_id)
    standing = air.survey.heard
    rows = rows_of(standing) if typed is None else with_fresh(typed) if more else typed
    context: dict[str, Any] = {
        "about": air.about,
        "air": air,
        "numbers": air.enough or "numbers" in request.GET,
        "asked_numbers": "numbers" in request.GET,
        "rows": rows,
        "kinds": [(kind.value, WORDS_OF_KIND[kind]) for kind in Sends],
        "widths": WIDTHS,
        "too_many": len(standing) > MOST_ROWS,
        "heard": standing,
        "more": more,
        "text": sent.get("text", ""),
        "shown": sent.get("shown") or shown_at(),
        "faults": faults,
        **(_told(air) if air.about.house.networks else {}),
    }
    status = 422 if faults else 200
    return show(request, "channels", "radio/channels.html", context, house_id=house_id, status=status)


def _told(air: RadioAsked) -> dict[str, Any]:
    answer = air.channels
    advice = {f.also[0]: f for f in answer.findings if f.outcome is Outcome.FAILS and f.also}
    return {
        "told": [(told_of(one), advice.get(key)) for key, one in answer.networks.items()],
        "notes": (*air.survey.notes, *answer.notes),
    }


def _taken(request: HttpRequest, house_id: str, typed: list[Typed] | None) -> tuple[Fault, ...]:
    """Write the survey of either form into the journal; or every fault of it."""
    house = radio_asked(house_id).about.house
    read = _read(request, house, typed)
    if isinstance(read, list):
        return tuple(read)
    subject = f"house:{house.id}"
    plain = as_transmitters(subject, read.heard)
    if isinstance(plain, Fault):
        return (plain,)
    made = write(request, house_id, [("air_heard", subject, {"transmitters": plain})])
    for _ in made.taken:
        count = f"{len(plain)} heard" if plain else "nobody was heard"
        notes = read.notes if typed is None else ()  # of a file alone: how its columns are parted
        messages.success(request, " ".join((f"The survey is written down: {count}.", *notes, *made.told)))
    return made.faults


def _read(request: HttpRequest, house: House, typed: list[Typed] | None) -> OnAir | list[Fault]:
    nobody = "nobody" in request.POST
    if typed is not None:
        filled = any(not row.empty for row in typed)
        if nobody and not filled:
            return OnAir((), (), surveyed=True)
        if nobody or not filled:
            stands = "rows, and that nobody was heard" if filled else "nothing"
            return [Fault(WHERE, "", stands, "a row for each that was heard; or a tick that nobody was")]
        return heard_in_rows(house, typed)
    sent = request.FILES.get("file")
    data = request.POST.get("text", "").encode()
    if isinstance(sent, UploadedFile):
        if data.strip():
            return [Fault(WHERE, "", "a file, and text pasted", "one of them")]
        data = sent.read(LARGEST_SURVEY_BYTES + 1)
    if not data.strip():
        return [Fault(WHERE, "", "nothing", "rows with a head, pasted or in a file")]
    return heard_in_file(house, data, where=WHERE)
