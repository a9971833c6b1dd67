"""Zone: no switch on mains within reach of a bath or shower."""

from collections.abc import Iterator

from secondfix.electrical.case import Case
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Box, settled
from secondfix.terms import WiringRules

RULE = Rule(
    "bath_zone",
    "Does no mains device stand in a zone of a bathroom?",
    "IEC 60364-7-701 (from memory): zones 0, 1 and 2",
)
BATHROOM = "bathroom"  # the tag of a room that makes this rule ask
_LIMIT = "outside the zones"


def answers(case: Case) -> Iterator[Finding]:
    """One answer per wall box with a mains device whose zone is known, or whose room is a bathroom.

    The zones are of IEC 60364, so nobody asks for one in NEC houses. Their limits are from memory: advice
    at most.
    """
    iec = case.house.wiring_rules is not WiringRules.NEC
    for box_id, box in case.house.boxes.items():
        bathroom = iec and BATHROOM in case.house.rooms[box.room].tags
        if case.wired_into(box_id) and (bathroom or settled(box.zone) is not None):
            yield _answer(case, box_id, box)


def _answer(case: Case, box_id: str, box: Box) -> Finding:
    zone, also = settled(box.zone), case.devices_in.get(box_id, ())
    if zone is None:
        look = Look(box_id, "zone", f"measure whether box {box_id} lies in a zone of the bath or shower")
        says = f"Whether box {box_id} lies in a zone of the bathroom is not known."
        return cannot_tell(RULE, Severity.ADVICE, box_id, says, looks=[look], limit=_LIMIT, also=also)
    if zone == "outside":
        return passes(RULE, box_id, value=_LIMIT, limit=_LIMIT, also=also)
    return fails(
        RULE,
        Severity.ADVICE,
        box_id,
        f"Box {box_id} lies in zone {zone} of the bathroom: a mains switch does not belong there.",
        value=f"zone {zone}",
        limit=_LIMIT,
        remedy="Move the switch outside the zones, or take a battery button and switch elsewhere; a licensed "
        "person decides.",
        also=also,
    )
