"""What a load asks of its contact: power and current, as far as they are known.

I = ΣP / (U · PF), circuit theory. A bound that no fact gives is left open, never guessed: power, count
and kind are survey facts; only the power factor of a known kind may be assumed, over its range.
Left out: losses of transformers beyond the surveyed power, harmonics, and the vector sum of currents of
unlike power factor (the plain sum is never smaller).
"""

from dataclasses import dataclass
from fractions import Fraction

from secondfix.assumptions import Assumptions
from secondfix.findings import Look
from secondfix.house import Load, settled
from secondfix.terms import Kind


@dataclass(frozen=True, slots=True)
class Power:
    """Power of all lamps on the wire: between the bounds; ``high_mw`` None where nothing bounds it."""

    low_mw: int
    high_mw: int | None
    looks: tuple[Look, ...]


@dataclass(frozen=True, slots=True)
class Current:
    """Current of a load between its bounds; ``high_ma`` None where nothing bounds it.

    ``looks`` would give missing facts; ``narrower`` would replace an assumption by a fact.
    """

    low_ma: Fraction
    high_ma: Fraction | None
    looks: tuple[Look, ...]
    narrower: tuple[Look, ...]
    assumptions: tuple[str, ...]


def power_of(load_id: str, load: Load, called: str) -> Power:
    """ΣP = power of one × count. Unknown count: at least one; unknown power: at least nothing."""
    one, count = settled(load.power_mw), settled(load.count)
    looks = []
    if one is None:
        looks.append(power_look(load_id, load, called))
    if count is None:
        looks.append(count_look(load_id, called))
    low = (one or 0) * (count or 1)
    return Power(low, None if looks else low, tuple(looks))


def current_of(
    load_id: str, load: Load, called: str, *, mains_voltage_v: int, assumptions: Assumptions
) -> Current:
    """I = ΣP / (U · PF), in milliamperes, over the range of what is assumed."""
    power = power_of(load_id, load, called)
    low_pf, high_pf, names = _power_factor(load, assumptions)
    low = Fraction(power.low_mw * 1000, mains_voltage_v * high_pf)
    looks = power.looks
    if low_pf is None:
        looks = (*looks, kind_look(load_id, called))
    bounded = power.high_mw is not None and low_pf is not None
    high = Fraction(power.low_mw * 1000, mains_voltage_v * low_pf) if bounded and low_pf else None
    ask = f"read the power factor of {called}, or have it measured by a licensed person"
    narrower = (Look(load_id, "power_factor_permille", ask),) if names and low_pf != high_pf else ()
    return Current(low, high, looks, narrower, names)


def power_look(load_id: str, load: Load, called: str) -> Look:
    """The look for the power of one: behind a transformer, of the lamps on one transformer."""
    kind = settled(load.kind)
    behind = kind is Kind.IRON_TRANSFORMER or kind is Kind.ELECTRONIC_TRANSFORMER
    one = "the lamps on one transformer" if behind else "one lamp or motor"
    return Look(load_id, "power_mw", f"read the power of {one} of {called}")


def count_look(load_id: str, called: str) -> Look:
    """The look for how many hang on one wire."""
    return Look(load_id, "count", f"count what hangs on the wire of {called}")


def kind_look(load_id: str, called: str) -> Look:
    """The look for the kind of load."""
    return Look(load_id, "kind", f"see what kind of lamp, gear or motor {called} is")


def _power_factor(load: Load, assumptions: Assumptions) -> tuple[int | None, int, tuple[str, ...]]:
    """Lowest (None: not bounded) and highest power factor in thousandths, and the assumption used."""
    surveyed = settled(load.power_factor_permille)
    if surveyed is not None:
        return surveyed, surveyed, ()
    kind = settled(load.kind)
    if kind is None:
        return None, 1000, ()
    name = f"power_factor_{kind.value}_permille"
    low, _, high = assumptions.span(name)
    return low, high, (name,)
