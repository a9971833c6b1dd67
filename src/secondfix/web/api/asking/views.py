"""Calls that ask about a house as it is meant. The answers are those of the command line with --json."""

from collections.abc import Callable, Iterable
from datetime import date
from typing import Annotated
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from django.http import HttpRequest, HttpResponse
from ninja import Query, Router, Schema
from pydantic import Field

from secondfix.actions.air import air_of
from secondfix.actions.assumptions import listed, listed_as_json
from secondfix.actions.check import checked_as_json
from secondfix.actions.code import code, code_as_json
from secondfix.actions.leaned import leaned_as_json, leaned_on
from secondfix.actions.names import Named, named_as_json, names, not_asked
from secondfix.actions.reach import reached_as_json
from secondfix.actions.scenes import Resolved, resolved_as_json, scenes
from secondfix.actions.select import leaning, select, selected_as_json
from secondfix.actions.walk import walked_as_json
from secondfix.findings import Finding
from secondfix.house import Fault
from secondfix.joining import CODE_KINDS
from secondfix.scenes import FIRST_DAY, LAST_DAY, coming, coming_as_json
from secondfix.terms import Protocol
from secondfix.web.api.reading import HouseId, Numbers
from secondfix.web.api.refusing import ASKED_WRONG, as_json, encoded, sent, told
from secondfix.web.api.shapes import asked as shapes
from secondfix.web.api.shapes.found import Assumptions, Checked
from secondfix.web.frame.asked import Asked, asked
from secondfix.web.frame.firm import firm
from secondfix.web.joining.asking import walked_of

router = Router(tags=["Questions about a house as it is meant"])

Place = Annotated[str, Query(description="A wall box or another place.", min_length=1, max_length=16)]
OnlyProtocol = Annotated[Protocol | None, Query(description="Only models of this protocol.")]
OnlyScene = Annotated[str | None, Query(description="Only the scene with this id.", max_length=16)]
OnlyDevice = Annotated[str | None, Query(description="Only the device with this id.", max_length=16)]
From = Annotated[
    date | None,
    Query(description="When each start by time or sun comes next, from this day.", ge=FIRST_DAY, le=LAST_DAY),
]


@router.get("/houses/{house_id}/check", url_name="check", response={200: Checked, **ASKED_WRONG})
def check(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """Everything that is wrong, everything that cannot be told, and what to look at on site."""
    return _once(house_id, "check", lambda a: {**checked_as_json(a.checked), "not_asked": not_asked(a.house)})


@router.get("/houses/{house_id}/reach", url_name="reach", response={200: shapes.Reached, **ASKED_WRONG})
def reach_(request: HttpRequest, house_id: HouseId, numbers: Numbers = False) -> HttpResponse:
    """Whether radio is likely to reach every device, and by which way."""

    def answer(about: Asked) -> dict[str, object]:
        made = about.reached
        apart = dict.fromkeys(("foreseen", "measured", "channels"))  # calls of their own
        return {**reached_as_json(made, numbers=numbers), **apart, **_leaned(about, made.findings)}

    return _once(house_id, f"reach {numbers}", answer)


@router.get("/houses/{house_id}/names", url_name="names", response={200: shapes.Named, **ASKED_WRONG})
def names_(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """What every entry is called by the house's policy, and which names clash."""

    def answer(about: Asked) -> dict[str, object]:
        made: Named = about.once("names", lambda a: names(a.house, assumptions=a.firm.assumptions))
        return {
            **named_as_json(made),
            **_leaned(about, made.findings),
            "not_asked": not_asked(about.house),
        }

    return _once(house_id, "names", answer)


@router.get("/houses/{house_id}/scenes", url_name="scenes", response={200: shapes.Scenes, **ASKED_WRONG})
def scenes_(
    request: HttpRequest, house_id: HouseId, scene: OnlyScene = None, on: From = None
) -> HttpResponse:
    """What each scene really switches: every load, switched how or left alone why."""
    about = asked(house_id)
    if scene is not None and scene not in about.house.scenes:
        return told([Fault("query", "scene", f"'{scene}'", "the id of a scene of this house")], status=422)
    made: Resolved = about.once(
        "scenes",
        lambda a: scenes(a.house, assumptions=a.firm.assumptions, air=air_of(a.house, a.reached)),
    )
    if scene is not None:
        kept = tuple(r for r in made.resolutions if r.scene_id == scene)
        times = tuple(t for t in made.times if t.scene_id == scene)
        made = Resolved(kept, times, tuple(f for f in made.findings if f.place == scene))
    next_starts = None
    if on is not None:
        zone = _zone(about)
        if isinstance(zone, Fault):
            return told([zone], status=422)
        starts = coming(about.house, day=on, zone=zone)
        next_starts = coming_as_json(c for c in starts if scene in {None, c.scene_id})
    answer = {**resolved_as_json(made), "coming": next_starts, **_leaned(about, made.findings)}
    return as_json(answer)


@router.get("/houses/{house_id}/walk", url_name="walk", response={200: shapes.Walked, **ASKED_WRONG})
def walk_(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """An order in which every device has a good parent, joined and powered, when its turn comes."""

    def answer(about: Asked) -> dict[str, object]:
        made = walked_of(about)
        return {**walked_as_json(made), **_leaned(about, made.findings)}

    return _once(house_id, "walk", answer)


@router.get(
    "/houses/{house_id}/worksheet", url_name="worksheet", response={200: shapes.Worksheets, **ASKED_WRONG}
)
def worksheet(request: HttpRequest, house_id: HouseId, device: OnlyDevice = None) -> HttpResponse:
    """One sheet for each device, in the order of the walk: cautions, procedure, entries, tests."""
    about = asked(house_id)
    if device is not None and device not in about.house.devices:
        return told([Fault("query", "device", f"'{device}'", "the id of a device of this house")], status=422)
    sheets = [w for w in walked_of(about).worksheets if device in {None, w.device}]
    return as_json(shapes.Worksheets(worksheets=sheets).model_dump(mode="json"))


@router.get("/houses/{house_id}/select", url_name="select", response={200: shapes.Selected, **ASKED_WRONG})
def select_(
    request: HttpRequest, house_id: HouseId, place: Place, protocol: OnlyProtocol = None
) -> HttpResponse:
    """For one place: which models fit, which rule refuses each other one, and what would help."""
    about = asked(house_id)
    if place not in about.house.boxes and place not in about.house.places:
        return told([Fault("query", "place", f"'{place}'", "the id of a box or place")], status=422)
    given = about.firm.assumptions
    choices = select(
        about.house, models=about.firm.models, assumptions=given, places=[place], protocol=protocol
    )
    return as_json(selected_as_json(choices, leaning(about.house, choices, assumptions=given)))


@router.get(
    "/houses/{house_id}/assumptions", url_name="assumptions", response={200: Assumptions, **ASKED_WRONG}
)
def assumptions_of(request: HttpRequest, house_id: HouseId) -> HttpResponse:
    """Every assumption as this house has it: value, range, source, who set it, what leans on it."""
    return as_json(listed_as_json(listed(asked(house_id).settled)))


@router.get("/assumptions", url_name="firm-assumptions", response={200: Assumptions, **ASKED_WRONG})
def assumptions(request: HttpRequest) -> HttpResponse:
    """Every assumption as the firm has it."""
    return as_json(listed_as_json(listed(firm().assumptions)))


class Code(Schema):
    """A code as it was read off a label. It is not kept, and stands in no log."""

    text: Annotated[str, Field(max_length=65_536)]
    address: Annotated[str | None, Field(max_length=200)] = None
    kind: Annotated[str | None, Field(pattern=f"^({'|'.join(CODE_KINDS)})$")] = None
    manual: Annotated[str | None, Field(max_length=65_536)] = None
    reveal: bool = False


@router.post("/code", url_name="code", response={200: shapes.CodeRead, **ASKED_WRONG})
def code_(request: HttpRequest, sent_code: Code) -> HttpResponse:
    """Read an onboarding code or address, and tell what is wrong with it. Nothing is stored."""
    answer = code(
        sent_code.text.strip(), address=sent_code.address, kind=sent_code.kind, manual=sent_code.manual
    )
    return as_json(code_as_json(answer, reveal=sent_code.reveal))


def _once(house_id: str, name: str, make: Callable[[Asked], dict[str, object]]) -> HttpResponse:
    """The answer as bytes, made once for every edit of the house."""
    return sent(asked(house_id).once(f"JSON of {name}", lambda a: encoded(make(a))))


def _leaned(about: Asked, findings: Iterable[Finding]) -> dict[str, object]:
    return leaned_as_json(leaned_on(findings, about.settled))


def _zone(about: Asked) -> ZoneInfo | Fault | None:
    named = about.house.time_zone
    try:
        return ZoneInfo(named) if named else None
    except (ZoneInfoNotFoundError, ValueError, OSError):
        known = "a name of the IANA time zone database that this machine has, such as CET"
        return Fault("the house", "time_zone", f"'{named}'", known)
