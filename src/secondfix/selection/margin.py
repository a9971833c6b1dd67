"""How much of what is printed a model would use: what puts one fitting model before another."""

from fractions import Fraction

from secondfix.electrical import current_of
from secondfix.house import settled
from secondfix.selection.suits import Asked
from secondfix.terms import RATING_OF_KIND


def used_permille(asked: Asked) -> int | None:
    """The largest share of a printed current that is used: each gang's rating for its kind, and the total.

    In thousandths, rounded up, of the upper end of each load's current (docs/methods-electrical.md). None
    where a bound, a rating or the mains voltage is missing; 0 where nothing is fed. Leaves out inrush,
    depth and least load, which a model keeps or does not.
    """
    mains, total, shares = asked.ground.house.mains_voltage_v, Fraction(0), [Fraction(0)]
    for gang in asked.spot.outputs:
        load = asked.ground.house.loads[gang.load_id or ""]
        kind = settled(load.kind)
        printed = asked.model.rating_for(RATING_OF_KIND[kind]) if kind else None
        if mains is None or printed is None:
            return None
        current = current_of(
            gang.load_id or "", load, load.name, mains_voltage_v=mains, assumptions=asked.ground.assumptions
        )
        if current.high_ma is None:
            return None
        shares.append(current.high_ma / printed.current_ma)
        total += current.high_ma
    if asked.model.module_total_ma:
        shares.append(total / asked.model.module_total_ma)
    return _up(max(shares) * 1000)


def _up(value: Fraction) -> int:
    return -(-value.numerator // value.denominator)
