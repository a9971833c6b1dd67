"""What joining asks of a house before anybody drives there."""

from collections.abc import Iterator

from secondfix.assumptions import OF_LINKS, Assumptions
from secondfix.catalogue import CodeKind, Removal, Stated
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import (
    Schedule,
    circuit_look,
    line_look,
    model_look,
    network_look,
    neutral_look,
    position_look,
)
from secondfix.joining.circuits import feed_of, is_wired, natural
from secondfix.joining.fronts import joined_on_bench
from secondfix.joining.links import Links
from secondfix.joining.parents import Mesh, Standing, mesh
from secondfix.joining.readings import bits
from secondfix.joining.sheets import CODE_WORDS
from secondfix.radio import MOST_HOPS, link_look
from secondfix.terms import Protocol

_CP = "common practice, no source"

NO_PARENT = Rule(
    "no_parent",
    "Will each device find a good parent, already joined and powered, on some order of joining?",
    f"{_CP}; depth: Zigbee R22 3.5.1 (secondary), routes of ITU-T G.9959 (secondary, from memory)",
    ("parent_margin_db", *OF_LINKS),
)
CIRCUIT_KNOWN = Rule(
    "circuit_known",
    "Is every circuit known that reaches a place where hands go among conductors?",
    "Electricity at Work Regulations 1989 reg. 13; HSE HSG85 (secondary)",
)
REMOVAL = Rule(
    "removal_first",
    "Where a device must be removed before it can join, is it known how?",
    _CP,
)
CODE = Rule(
    "code_captured",
    "Is the code of each device that carries one in the key ring before the device goes into the wall?",
    _CP,
)
FRONT_ON = Rule(
    "front_on",
    "Can each device be joined where it is fitted, its front on whenever there is power?",
    f"{_CP}; whether live parts can be touched: the maker's data sheet",
)
RULES: tuple[Rule, ...] = (NO_PARENT, CIRCUIT_KNOWN, REMOVAL, CODE, FRONT_ON)


def check(schedule: Schedule, links: Links, assumptions: Assumptions) -> list[Finding]:
    """Every rule of ``RULES`` at every device or place it applies to; quadratic in a network's devices."""
    return [
        *_parents(schedule, mesh(schedule, links, assumptions), assumptions),
        *_circuits(schedule),
        *(f for d in filter(schedule.on_radio, schedule.house.devices) for f in _before(schedule, d)),
    ]


def _parents(schedule: Schedule, webbed: Mesh, assumptions: Assumptions) -> Iterator[Finding]:
    everyone = (1 << len(webbed.ids)) - 1
    if_deeper = webbed.endless.closure(everyone)
    limit = f"{assumptions.value('parent_margin_db')} dB after spread"
    for n, device_id in enumerate(webbed.ids):
        place = schedule.place_of_device(device_id)
        if not schedule.on_radio(device_id):
            continue
        if not schedule.house.devices[device_id].network:
            look = network_look(device_id)
            says = f"{device_id} is on no network yet, so nobody can say who its parent is."
            yield cannot_tell(
                NO_PARENT, Severity.FAULT, place, says, looks=[look], limit=limit, also=[device_id]
            )
        elif webbed.standing[n] is Standing.GOOD:
            yield passes(NO_PARENT, place, value="a chain of good links", limit=limit, also=[device_id])
        elif webbed.standing[n] is Standing.NOT_KNOWN:
            yield _perhaps(schedule, device_id, place, limit)
        else:
            yield _none(webbed, n, place, limit, too_deep=bool(if_deeper >> n & 1))


def _perhaps(schedule: Schedule, device_id: str, place: str, limit: str) -> Finding:
    position = (schedule.house.boxes.get(place) or schedule.house.places[place]).position
    looks = [position_look(place)]
    if position is not None:
        looks = [link_look(place)]
    if schedule.house.devices[device_id].model is None:
        looks.append(model_look(device_id))
    return cannot_tell(
        NO_PARENT,
        Severity.FAULT,
        place,
        f"Whether {device_id} finds a good parent hangs on links, or on repeaters, that nobody knows.",
        looks=looks,
        limit=limit,
        also=[device_id],
    )


def _none(webbed: Mesh, n: int, place: str, limit: str, *, too_deep: bool) -> Finding:
    device_id = webbed.ids[n]
    if too_deep:
        return fails(
            NO_PARENT,
            Severity.ADVICE,
            place,
            f"{device_id} is too many links from its controller.",
            value="a chain of good links, too long",
            limit=f"{MOST_HOPS[Protocol.ZWAVE]} links for Z-Wave, {MOST_HOPS[Protocol.ZIGBEE]} for Zigbee",
            remedy="move the controller, or place a repeater that shortens the chain",
            also=[device_id],
        )
    others = [webbed.ids[i] for i in bits(webbed.hoped.near[n] & webbed.hoped.carriers)]
    says = f"{device_id} has no good parent in any order of joining."
    if others:
        says += f" It hears {', '.join(sorted(others, key=natural))}, which have none themselves."
    return fails(
        NO_PARENT,
        Severity.FAULT,
        place,
        says,
        value="no good link to a powered repeater or the controller",
        limit=limit,
        remedy="a repeater between, or the controller nearer; where the protocol allows, join it near the "
        "controller first and then fit it, though it will still lack a good link",
        also=[device_id],
    )


def _circuits(schedule: Schedule) -> Iterator[Finding]:
    wired = {schedule.place_of_device(d) for d in schedule.house.devices if is_wired(schedule, d)}
    for place in sorted(wired, key=natural):
        feed = feed_of(schedule, place)
        if not feed.open_ends:
            yield passes(CIRCUIT_KNOWN, place, value=", ".join(feed.circuits))
            continue
        yield cannot_tell(
            CIRCUIT_KNOWN,
            Severity.DANGER,
            place,
            "Not every circuit at this place is known, so it cannot be told what to isolate.",
            looks=[_trace(place, field) for field in feed.open_ends],
            value=", ".join(feed.circuits) or "not known",
            remedy="trace it and prove it at the board; until then treat it as live",
        )


def _trace(place: str, field: str) -> Look:
    _, _, rest = field.partition(".")
    number = rest.split(".")[0]
    if field.startswith("gangs."):
        return line_look(place, number)
    return neutral_look(place, number) if field.startswith("mounts.") else circuit_look(place)


def _no_model(rule: Rule, schedule: Schedule, device_id: str) -> Finding:
    place = schedule.place_of_device(device_id)
    look = model_look(device_id)
    says = f"The model of {device_id} is not known."
    return cannot_tell(rule, Severity.ADVICE, place, says, looks=[look], also=[device_id])


def _before(schedule: Schedule, device_id: str) -> tuple[Finding, ...]:
    return _removal(schedule, device_id), _code(schedule, device_id), _front(schedule, device_id)


def _removal(schedule: Schedule, device_id: str) -> Finding:
    model = schedule.model_of(device_id)
    if model is None:
        return _no_model(REMOVAL, schedule, device_id)
    place = schedule.place_of_device(device_id)
    when = model.removal_before_join
    how = model.remove or model.reset
    if how or when in {Removal.NEVER, Removal.WHEN_USED}:
        return passes(REMOVAL, place, value=_WHEN[when], also=[device_id])
    if when is Removal.ALWAYS:
        return fails(
            REMOVAL,
            Severity.ADVICE,
            place,
            f"{device_id} must be removed before it can join, even when new, and how is not stated.",
            value=_WHEN[when],
            limit="a way to remove or to reset it",
            remedy="have at hand the controller of the network it is in, and ask the maker",
            also=[device_id],
        )
    look = Look(
        place, f"models.{model.key}.removal_before_join", "in the data sheet: must it be removed first"
    )
    says = f"Neither whether {device_id} must be removed before it can join nor how is stated."
    return cannot_tell(
        REMOVAL, Severity.ADVICE, place, says, looks=[look], value=_WHEN[when], also=[device_id]
    )


_WHEN: dict[Removal, str] = {
    Removal.ALWAYS: "always removed first",
    Removal.WHEN_USED: "removed first when used before",
    Removal.NEVER: "never removed first",
    Removal.NOT_STATED: "not stated",
}


def _code(schedule: Schedule, device_id: str) -> Finding:
    model = schedule.model_of(device_id)
    if model is None:
        return _no_model(CODE, schedule, device_id)
    place = schedule.place_of_device(device_id)
    ref = schedule.house.devices[device_id].code_ref
    if model.code is CodeKind.NONE or ref:
        return passes(CODE, place, value=ref or "carries no code", also=[device_id])
    where = model.code_printed_at or "on the device, its carton or its card"
    return fails(
        CODE,
        Severity.ADVICE,
        place,
        f"The code of {device_id} is not captured, and may be out of sight once it is fitted.",
        value="not captured",
        limit="in the key ring before fitting",
        remedy=f"capture it before fitting: {CODE_WORDS[model.code]}; printed {where}",
        also=[device_id],
    )


def _front(schedule: Schedule, device_id: str) -> Finding:
    model = schedule.model_of(device_id)
    if model is None:
        return _no_model(FRONT_ON, schedule, device_id)
    place = schedule.place_of_device(device_id)
    if not joined_on_bench(model):
        return passes(FRONT_ON, place, value="its front stays on under power", also=[device_id])
    remedy = (
        "join it before fitting, on a bench, by a person authorised for live work under local code; or "
        "choose a model that joins with its front on"
    )
    if model.live_parts_front_off is Stated.NOT_STATED:
        words = "in the data sheet: can live parts be touched with the front off"
        look = Look(place, f"models.{model.key}.live_parts_front_off", words)
        says = f"Whether live parts can be touched while {device_id} is joined, its front off, is not stated."
        return cannot_tell(
            FRONT_ON, Severity.ADVICE, place, says, looks=[look], remedy=remedy, also=[device_id]
        )
    return fails(
        FRONT_ON,
        Severity.ADVICE,
        place,
        f"{device_id} is joined, or first removed, with its front off and power on, and live parts can then "
        "be touched: not in its wall box.",
        value="front off, power on",
        limit="the front on whenever there is power",
        remedy=remedy,
        also=[device_id],
    )
