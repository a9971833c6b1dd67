"""Switches without neutral, NEC: how many a branch circuit and a feeder may have after a retrofit."""

from collections.abc import Iterator

from secondfix.catalogue import NeutralNeed, Supply
from secondfix.electrical.case import Case
from secondfix.electrical.printed import sheet_look
from secondfix.electrical.supply import may_be_nec, of_the_nec
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import ABSENT, EARTH, Row, line_look, model_look, neutral_look, settled

RULE = Rule(
    "nec_no_neutral",
    "Are the electronic switches without neutral few enough for the retrofit exception?",
    "NEC 404.2(C) (secondary): at most 5 on a branch circuit; 25 on a feeder (from memory)",
)
MOST_ON_A_CIRCUIT, MOST_ON_A_FEEDER = 5, 25
_MOST_LOOKS = 3


def answers(case: Case) -> Iterator[Finding]:
    """In NEC houses, one answer per circuit that feeds an electronic switch, and one for the feeders."""
    if may_be_nec(case):
        yield from of_the_nec(case, RULE, _answers(case))


def _answers(case: Case) -> Iterator[Finding]:
    surely: dict[str, list[str]] = {}
    perhaps: dict[str | None, list[Look]] = {}
    for row in _first_rows(case):
        line, (without, look) = settled(row.gang.line), _without_neutral(row)
        if line is not None:
            surely.setdefault(line, [])
        if without and line is not None:
            surely[line].append(row.device_id or "")
        elif without is not False:
            perhaps.setdefault(line, []).append(look or line_look(row.box_id, row.gang_no))
    for circuit_id, ids in surely.items():
        open_ones = [*perhaps.get(circuit_id, ()), *perhaps.get(None, ())]
        yield _circuit(case, circuit_id, ids, open_ones)
    yield from _feeders(case, surely, [look for looks in perhaps.values() for look in looks])


def _first_rows(case: Case) -> Iterator[Row]:
    """The first gang of each device in a wall box that takes mains, or may.

    Not of an extension unit: it tells the switch that it is wired to, and takes no supply of its own.
    """
    for device_id, device in case.house.devices.items():
        model = case.schedule.model_of(device_id)
        rows = [c.row for c in case.schedule.channels_of[device_id] if c.row is not None]
        mains = model is None or model.supply is Supply.MAINS
        if device.box and rows and mains and case.schedule.on_radio(device_id):
            yield rows[0]


def _without_neutral(row: Row) -> tuple[bool | None, Look | None]:
    """Whether it works without a neutral here; None, and the look that would tell, where not known."""
    model, neutral = row.model, settled(row.mount.neutral)
    if model is None:
        device_id = row.device_id or ""
        return None, model_look(device_id)
    if model.neutral is NeutralNeed.NEEDED:
        return False, None
    if model.neutral is NeutralNeed.NOT_NEEDED:
        return True, None
    if model.neutral is None:
        return None, sheet_look(model, "neutral", "whether it needs a neutral")
    if neutral is None:
        return None, neutral_look(row.box_id, row.gang.mount)
    return neutral in {ABSENT, EARTH}, None


def _circuit(case: Case, circuit_id: str, ids: list[str], perhaps: list[Look]) -> Finding:
    name = case.house.circuits[circuit_id].name
    value = f"{len(ids)} surely" + (f", up to {len(ids) + len(perhaps)}" if perhaps else "")
    limit = f"at most {MOST_ON_A_CIRCUIT} on a branch circuit"
    if len(ids) > MOST_ON_A_CIRCUIT:
        return fails(
            RULE,
            Severity.FAULT,
            circuit_id,
            f"{name} ({circuit_id}) feeds more switches without neutral than a retrofit may add.",
            value=value,
            limit=limit,
            remedy="Pull neutrals to some of the boxes, or put modules at their luminaires.",
            also=ids,
        )
    if len(ids) + len(perhaps) <= MOST_ON_A_CIRCUIT:
        return passes(RULE, circuit_id, value=value, limit=limit, also=ids)
    looks = perhaps[:_MOST_LOOKS]
    says = f"How many switches without neutral hang on {name} ({circuit_id}) is not known."
    return cannot_tell(
        RULE, Severity.FAULT, circuit_id, says, looks=looks, value=value, limit=limit, also=ids
    )


def _feeders(case: Case, surely: dict[str, list[str]], perhaps: list[Look]) -> Iterator[Finding]:
    """Advice: the count is from memory. No feeder can have more than the whole house."""
    if sum(map(len, surely.values())) <= MOST_ON_A_FEEDER:
        return
    on: dict[str, int] = {}
    looks: list[Look] = []
    astray = len(perhaps)
    for circuit_id, ids in surely.items():
        feeder = settled(case.house.circuits[circuit_id].feeder)
        if feeder is None:
            astray += len(ids)
            looks.append(Look(circuit_id, "feeder", f"find out which feeder serves {circuit_id}"))
        else:
            on[feeder] = on.get(feeder, 0) + len(ids)
    limit = f"at most {MOST_ON_A_FEEDER} on a feeder"
    value = ", ".join(f"{n} on {feeder}" for feeder, n in on.items()) or "not known"
    most = max(on.values(), default=0)
    if most > MOST_ON_A_FEEDER:
        yield fails(
            RULE,
            Severity.ADVICE,
            "house",
            "A feeder serves more switches without neutral than a retrofit may add.",
            value=value,
            limit=limit,
            remedy="Pull neutrals to some of the boxes, or put modules at their luminaires.",
        )
    elif most + astray > MOST_ON_A_FEEDER:
        says = "How many switches without neutral hang on each feeder is not known."
        looks = [*looks, *perhaps][:_MOST_LOOKS]
        yield cannot_tell(RULE, Severity.ADVICE, "house", says, looks=looks, value=value, limit=limit)
    else:
        yield passes(RULE, "house", value=value, limit=limit)
