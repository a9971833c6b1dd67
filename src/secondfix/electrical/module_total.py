"""Module total: the currents of all gangs of one device against what the whole device may carry."""

from collections.abc import Iterator
from fractions import Fraction

from secondfix.assumptions import POWER_FACTORS
from secondfix.catalogue import Model, Stated
from secondfix.electrical.case import Case
from secondfix.electrical.figures import amperes, amperes_between
from secondfix.electrical.printed import CARRIES, VOLTAGE_LOOK, carried, holds_at, sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import Channel, Duty, duty_look

RULE = Rule(
    "module_total",
    "Do the gangs of a device together stay within what the whole device may carry?",
    "common practice, no source: the printed total rules; I = ΣP / (U · PF), circuit theory",
    may_lean_on=(*POWER_FACTORS, CARRIES),
)
_REMEDY = "Move a load to another device, or take one with a larger total."


def answers(case: Case) -> Iterator[Finding]:
    """One answer per device with an output and more than one gang, or with a total in its data sheet."""
    for device_id, _, model in case.switching_devices():
        if model.gangs > 1 or model.module_total_ma is not None:
            yield _answer(case, device_id, model)


def _answer(case: Case, device_id: str, model: Model) -> Finding:
    voltage = case.house.mains_voltage_v
    channels = case.schedule.channels_of[device_id]
    also = tuple(c.load_id for c in channels if c.load_id)
    if voltage is None:
        says = "Without the mains voltage no current can be worked out."
        return cannot_tell(RULE, Severity.DANGER, device_id, says, looks=[VOLTAGE_LOOK], also=also)
    low, high, looks, narrower, names = _sum(case, model, channels, voltage)
    names = (*names, *carried(model.ratings, mains_voltage_v=voltage))
    value, total = amperes_between(low, high), model.module_total_ma
    if total is None or not any(
        holds_at(r, mains_voltage_v=voltage, assumptions=case.assumptions) for r in model.ratings
    ):
        look = sheet_look(model, "module_total_ma", f"what the whole device may carry at {voltage} V")
        says = f"The data sheet does not state what all gangs may carry together at {voltage} V."
        return cannot_tell(
            RULE,
            Severity.DANGER,
            device_id,
            says,
            looks=[look, *looks],
            value=value,
            also=also,
            assumptions=names,
        )
    limit = f"{amperes(total)} for the whole device"
    if low > total:
        says = "All gangs together carry more than the device may."
        return fails(
            RULE,
            Severity.DANGER,
            device_id,
            says,
            value=value,
            limit=limit,
            remedy=_REMEDY,
            also=also,
            assumptions=names,
        )
    if high is not None and high <= total:
        return passes(RULE, device_id, value=value, limit=limit, also=also, assumptions=names)
    says = "All gangs together may carry more than the device may."
    return cannot_tell(
        RULE,
        Severity.DANGER,
        device_id,
        says,
        looks=looks or narrower,
        value=value,
        limit=limit,
        also=also,
        assumptions=names,
    )


def _sum(
    case: Case, model: Model, channels: tuple[Channel, ...], voltage: int
) -> tuple[Fraction, Fraction | None, list[Look], list[Look], tuple[str, ...]]:
    """Sums of the lower and upper bounds; the upper is open as soon as one gang's is.

    Of two directions of one motor on an interlocked pair only the larger counts, for one alone can be on;
    where the sheet does not state the interlock, one at least and both at most.
    """
    low, high, open_end = Fraction(0), Fraction(0), False
    looks: list[Look] = []
    narrower: list[Look] = []
    names: dict[str, None] = {}
    for channel in channels:
        if channel.load_id is None:
            unknown = _unknown(channel)
            looks += unknown
            open_end = open_end or bool(unknown)
            continue
        current = case.current(channel.load_id, mains_voltage_v=voltage)
        low += current.low_ma
        open_end = open_end or current.high_ma is None
        high += current.high_ma or 0
        looks += current.looks
        narrower += current.narrower
        names |= dict.fromkeys(current.assumptions)
    for one, other in _pairs(case, channels):
        if model.interlocked is Stated.NO:
            continue
        a, b = (case.current(i, mains_voltage_v=voltage) for i in (one, other))
        low -= min(a.low_ma, b.low_ma)
        if model.interlocked is Stated.YES:
            # The larger bound stays; a bound that is open leaves the whole open, as above.
            high -= min(a.high_ma or 0, b.high_ma or 0)
        else:
            words = "whether its two gangs can never both be on"
            narrower.append(sheet_look(model, "interlocked", words))
    return low, None if open_end else high, looks, narrower, tuple(names)


def _pairs(case: Case, channels: tuple[Channel, ...]) -> Iterator[tuple[str, str]]:
    """Loads of gangs 1 and 2, 3 and 4 … that are the two directions of one motor."""
    for first, second in zip(channels[::2], channels[1::2], strict=False):
        one, other = first.load_id, second.load_id
        if one is not None and other is not None:
            loads = case.house.loads  # the reader sees to it that each names the other
            if loads[one].other_direction == other:
                yield one, other


def _unknown(channel: Channel) -> list[Look]:
    """What must be found out about a gang that may feed something; an output left bare feeds nothing."""
    row = channel.row
    return [duty_look(row)] if row is not None and row.gang.duty is Duty.NOT_KNOWN else []
