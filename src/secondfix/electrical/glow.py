"""Glow: what a switch without neutral leaves across lamps that are switched off."""

from collections.abc import Iterator
from math import pi

from secondfix.catalogue import NeutralNeed
from secondfix.electrical.case import Case, Contact
from secondfix.electrical.demand import power_of
from secondfix.electrical.figures import watts
from secondfix.electrical.printed import VOLTAGE_LOOK, sheet_look
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails, passes
from secondfix.house import ABSENT, EARTH, settled
from secondfix.terms import Kind

_GLOW = "glow_voltage_v"
RULE = Rule(
    "glow",
    "Do the lamps stay dark while a switch without neutral feeds itself through them?",
    "U = I / (2πfC), I = P / U, circuit theory: the capacitor alone, a sinusoid; common practice, no source",
    may_lean_on=(_GLOW,),
)
_GEAR = frozenset({Kind.LED_LAMP, Kind.LED_DRIVER, Kind.FLUORESCENT_ELECTRONIC, Kind.ELECTRONIC_TRANSFORMER})
LADDER = (
    "In this order: pull a neutral; put a module at the luminaire; fit the maker's listed bypass across the "
    "lamps; other lamps."
)


def standby_current_ma(standby_mw: int, *, mains_voltage_v: int) -> float:
    """I = P / U: the least current that a device of this standby power draws, in milliamperes."""
    return standby_mw / mains_voltage_v


def voltage_left_v(current_ma: float, *, bypass_nf: int, frequency_hz: int) -> float:
    """U = I / (2πfC) across a bypass capacitor (1 nF and more) that carries the whole standby current."""
    return current_ma * 1e-3 / (2 * pi * frequency_hz * bypass_nf * 1e-9)


def bypass_current_ma(*, bypass_nf: int, mains_voltage_v: int, frequency_hz: int) -> float:
    """I = U · 2πfC: what the bypass draws while the lamps are on."""
    return mains_voltage_v * 2 * pi * frequency_hz * bypass_nf * 1e-9 * 1e3


def answers(case: Case) -> Iterator[Finding]:
    """One answer per contact that feeds itself through lamps with gear.

    Where the printed least load is met the maker answers for it. Silent where it is not met, or not
    printed, and no bypass is fitted: the rule of the least load speaks of glow there.
    """
    for contact in case.contacts:
        kind, bypass = settled(contact.load.kind), settled(contact.load.bypass_nf)
        if kind is None or kind not in _GEAR or not _through_the_load(contact):
            continue
        if _least_met(contact):
            yield _met(contact)
        elif bypass:
            yield _with_bypass(case, contact, bypass)


def _through_the_load(contact: Contact) -> bool:
    neutral = settled(contact.row.mount.neutral) if contact.row else None
    if contact.model.neutral is NeutralNeed.EITHER:
        return neutral in {ABSENT, EARTH}
    return contact.model.neutral is NeutralNeed.NOT_NEEDED


def _least_met(contact: Contact) -> bool:
    least = contact.model.least_load_mw
    return least is not None and power_of(contact.load_id, contact.load, "").low_mw >= least


def _met(contact: Contact) -> Finding:
    value = watts(power_of(contact.load_id, contact.load, "").low_mw)
    limit = f"at least {watts(contact.model.least_load_mw or 0)}, printed"
    return passes(RULE, contact.place, value=value, limit=limit, also=(contact.device_id, contact.load_id))


def _with_bypass(case: Case, contact: Contact, bypass_nf: int) -> Finding:
    voltage, frequency = case.house.mains_voltage_v, case.house.mains_frequency_hz
    standby, also = contact.model.standby_mw, (contact.device_id, contact.load_id)
    limit_low, _, limit_high = case.assumptions.span(_GLOW)
    limit = f"{limit_low} V to {limit_high} V"
    looks = []
    if voltage is None:
        looks.append(VOLTAGE_LOOK)
    if frequency is None:
        looks.append(Look("house", "mains_frequency_hz", "state the mains frequency of the house"))
    if standby is None:
        looks.append(sheet_look(contact.model, "standby_mw", "its standby power"))
    if voltage is None or frequency is None or standby is None:
        says = f"What is left across {contact.load_words} while it is off cannot be worked out."
        return cannot_tell(
            RULE,
            Severity.ADVICE,
            contact.place,
            says,
            looks=looks,
            limit=limit,
            also=also,
            assumptions=(_GLOW,),
        )
    current = standby_current_ma(standby, mains_voltage_v=voltage)
    left = voltage_left_v(current, bypass_nf=bypass_nf, frequency_hz=frequency)
    value = f"{left:.0f} V at {current:.1f} mA through {bypass_nf} nF"
    if left <= limit_low:
        return passes(RULE, contact.place, value=value, limit=limit, also=also, assumptions=(_GLOW,))
    if left > limit_high:
        return fails(
            RULE,
            Severity.ADVICE,
            contact.place,
            f"{contact.load_words} may glow while it is off: the bypass leaves {left:.0f} V across it.",
            value=value,
            limit=limit,
            remedy=LADDER,
            also=also,
            assumptions=(_GLOW,),
        )
    words = (
        f"watch {contact.load_words} in the dark while it is off; the voltage across it is for a "
        "licensed person to measure"
    )
    return cannot_tell(
        RULE,
        Severity.ADVICE,
        contact.place,
        f"Whether {contact.load_words} glows while it is off is not known.",
        looks=[Look(contact.load_id, "bypass_nf", words)],
        value=value,
        limit=limit,
        remedy=LADDER,
        also=also,
        assumptions=(_GLOW,),
    )
