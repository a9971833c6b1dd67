"""Calls about radio with what the journal tells. The answers are parts of those of `reach` with --json."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponse
from ninja import Router

from secondfix.actions.channels import channels_as_json
from secondfix.actions.measured import learned_as_json
from secondfix.house import Fault
from secondfix.radio import Foreseen, foreseen_as_json
from secondfix.web.access import person
from secondfix.web.api.reading import HouseId, Numbers
from secondfix.web.api.refusing import ASKED_WRONG, encoded, sent, told
from secondfix.web.api.shapes import radio as shapes
from secondfix.web.frame import jobs
from secondfix.web.radio.asking import RadioAsked, radio_asked

router = Router(tags=["Radio, with what the journal tells"])
LONGEST_S = 300


@router.get("/houses/{house_id}/foresee", url_name="foresee", response={200: shapes.Foreseen, **ASKED_WRONG})
def foresee_(request: HttpRequest, house_id: HouseId, numbers: Numbers = False) -> HttpResponse:
    """Who is reached in draws of the mesh, and who falls when something goes, trips, moves or is added."""
    air = radio_asked(house_id)
    try:
        job = air.foreseen(person(request).username, again=True)
    except jobs.TooManyError:
        return told([Fault("call", "", "many questions of yours", "one of them answered first")], status=422)
    jobs.wait(job, most_s=LONGEST_S)
    answer = job.result
    if not isinstance(answer, Foreseen):
        return told([Fault("call", "", f"work that is {job.state}", "the same call again")], status=422)
    return _once(air, f"foresee {numbers}", lambda: foreseen_as_json(answer, numbers=numbers))


@router.get("/houses/{house_id}/measured", url_name="measured", response={200: shapes.Learned, **ASKED_WRONG})
def measured(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """What the measured links of the journal teach of the house, and which link to measure next."""
    air = radio_asked(house_id)
    return _once(air, "measured", lambda: learned_as_json(air.learned, notes=air.links.notes))


@router.get(
    "/houses/{house_id}/channels", url_name="channels", response={200: shapes.Channels, **ASKED_WRONG}
)
def channels(request: HttpRequest, house_id: HouseId, numbers: Numbers = False) -> HttpResponse:
    """What those heard by the channel survey cost each network on every channel, and which is better."""
    air = radio_asked(house_id)
    shown = numbers or air.enough
    return _once(air, f"channels {shown}", lambda: channels_as_json(air.channels, air.survey, numbers=shown))


def _once(air: RadioAsked, name: str, make: Callable[[], dict[str, object]]) -> HttpResponse:
    """The answer as bytes, made once for every edit, measured link and survey."""
    return sent(air.once(f"JSON of {name}", lambda: encoded(make())))
