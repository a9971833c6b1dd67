"""What is known of every link of a network after the measured ones: samples of the house, side by side."""

from dataclasses import dataclass

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.radio.crossing import Bools, Floats
from secondfix.radio.learning.columns import BLANK_MOST_DB, NINETY, Columns, Entries, mids, readings_of
from secondfix.radio.learning.making import Made
from secondfix.radio.learning.regression import Problem, sampled
from secondfix.radio.learning.rows import Rows
from secondfix.radio.learning.spreads import before


@dataclass(frozen=True, slots=True, eq=False)
class House:
    """Equally likely houses of one band: ``weights`` (samples, columns) and ``spread_db`` (samples,).

    ``loss`` (samples, rows) is what each row of the regression lost, also where nothing was heard;
    ``learned`` tells which columns a measured link speaks of. Of the others, what surrounds a device is
    left at 0: it is drawn later.
    """

    weights: Floats
    spread_db: Floats
    loss: Floats
    learned: Bools


@dataclass(frozen=True, slots=True, eq=False)
class Net:
    """One network in these houses: a row a link, a column a sample.

    ``loss_db`` without what nobody surveyed and no link measured, which is ``blank_db`` in three rows
    (lightest, heaviest, heaviest) and ``blank_sample_db`` as it may be; ``power_db`` (stations, samples)
    above what is assumed; ``own_db`` the spread that is left of each link's own part, ``around_db``
    (stations, samples) of its stations' parts. ``measured`` and ``in_vain`` are links.
    """

    loss_db: Floats
    blank_db: Floats
    blank_sample_db: Floats
    power_db: Floats
    own_db: Floats
    around_db: Floats
    measured: Bools
    in_vain: Bools


def houses(rows: Rows, columns: Columns, assumptions: Assumptions, *, samples: int, seed: int) -> House:
    """Sample houses of one band from what its measured links say; from the assumptions alone if none."""
    sd = np.array([c.sd for c in columns.all], np.float64)
    with_spread = np.array([c.with_spread for c in columns.all], np.bool_)
    learned: Bools = (rows.parts != 0).sum(axis=0) > 0
    possible = before(assumptions)
    used = np.flatnonzero(learned)
    problem = Problem(
        rows.loss,
        rows.beyond,
        rows.parts[:, used],
        rows.own,
        rows.noise2,
        sd[used],
        with_spread[used],
        possible.spreads,
        possible.widths,
        possible.chances,
    )
    found = sampled(problem, chains=samples, seed=seed)
    draw = np.random.default_rng([seed, 1])
    weights = draw.standard_normal((samples, len(sd))) * np.where(with_spread, 0.0, sd)
    weights *= found.width[:, None]
    weights[:, used] = found.weights
    return House(weights, found.spread, found.loss, learned)


def net_of(one: Made, house: House, rows: Rows, columns: Columns, *, shared: float, seed: int) -> Net:
    """One network in each of the sampled houses.

    A measured link keeps what its own readings say of it: its part is drawn towards the reading as far as
    a reading of one day may be trusted, and little of its spread is left.
    """
    stations = len(one.links.stations)
    middle, learned = _learned_blanks(one, house.learned)
    loss = (one.known_db + middle)[:, None] + _times(one.parts, len(one.links.a), house.weights)
    loss += _times(learned, len(one.links.a), house.weights)
    power = _times(one.power, stations, house.weights)
    own = np.tile(house.spread_db * np.sqrt(1 - shared), (len(loss), 1))
    measured, in_vain = np.zeros(len(loss), np.bool_), np.zeros(len(loss), np.bool_)
    left = house.loss - house.weights @ rows.parts.T
    for n, (network, link) in enumerate(zip(rows.network, rows.link.tolist(), strict=True)):
        if network == one.network and rows.own[n]:
            trust = own[link] ** 2 / (own[link] ** 2 + rows.noise2[n])
            loss[link] += trust * left[:, n]
            own[link] *= np.sqrt(1 - trust)
            measured[link], in_vain[link] = not rows.beyond[n], rows.beyond[n]
    around = house.spread_db * np.sqrt(shared / 2) * _strangers(one, house, columns)[:, None]
    blank, sample = _open_blanks(one, house.learned, len(house.spread_db), seed)
    return Net(loss, blank, sample, power, own, around, measured, in_vain)


def _strangers(one: Made, house: House, columns: Columns) -> Floats:
    """1 for each station that no measured link touches, else 0."""
    numbers = [columns.numbers.get(f"around:{one.network}/{s.id}", -1) for s in one.links.stations]
    return np.array([float(n < 0 or not house.learned[n]) for n in numbers])


def _times(entries: Entries, rows: int, weights: Floats) -> Floats:
    from scipy.sparse import csr_matrix  # noqa: PLC0415 - a cold `check` must not load it

    shape = rows, weights.shape[1]
    out: Floats = csr_matrix((entries.value, (entries.row, entries.column)), shape=shape) @ weights.T
    return out


def _learned_blanks(one: Made, learned: Bools) -> tuple[Floats, Entries]:
    """What nobody surveyed but a measured link touches: its middle, and its columns."""
    b = one.blanks
    here = learned[b.column]
    middle, half = mids(b.light_db[here], b.heavy_db[here])
    add = np.zeros(len(one.links.a))
    np.add.at(add, b.link[here], middle)
    return add, Entries(b.link[here], b.column[here], half)


def _open_blanks(one: Made, learned: Bools, samples: int, seed: int) -> tuple[Floats, Floats]:
    """What nobody surveyed and nobody measured: lightest, heaviest, heaviest; and as it may be."""
    b, links = one.blanks, len(one.links.a)
    here = ~learned[b.column]
    link, light, heavy = b.link[here], b.light_db[here], b.heavy_db[here]
    out = np.zeros((3, links))
    np.add.at(out[0], link, light)
    np.add.at(out[1], link, heavy)
    out[2] = out[1]
    column, at = np.unique(b.column[here], return_inverse=True)
    share = np.random.default_rng([seed, 2]).random((len(column), samples))
    top = np.minimum(heavy, np.maximum(BLANK_MOST_DB, light))
    entries = Entries(link, at.astype(np.int64).ravel(), top - light)
    return out, out[0][:, None] + _times(entries, links, share.T)


def margins(one: Made, net: Net, assumptions: Assumptions, *, seed: int) -> tuple[Floats, Floats]:
    """Margins from a to b and back in dB, open blanks not taken off: a row a link, a column a sample.

    What no link's level tells is drawn from its assumption: fading, and sensitivities that no sheet states.
    """
    samples = net.loss_db.shape[1]
    draw = np.random.default_rng([seed, 3])
    fading = assumptions.value("radio_fading_db") + _sd(
        assumptions, "radio_fading_db"
    ) * draw.standard_normal(samples)
    floor = readings_of(one.links.stations, "sensitivity_dbm")
    open_ = (floor[:, 0] != floor[:, 2])[:, None]
    sd = _sd(assumptions, "radio_sensitivity_dbm") / 2**0.5
    house, each = draw.standard_normal(samples), draw.standard_normal((len(floor), samples))
    least = floor[:, 1, None] + np.where(open_, sd * (house + each), 0.0)
    sent = readings_of(one.links.stations, "power_dbm")[:, 1, None] + net.power_db
    borne = net.loss_db + fading
    a, b = one.links.a, one.links.b
    return sent[a] - borne - least[b], sent[b] - borne - least[a]


def _sd(assumptions: Assumptions, name: str) -> float:
    low, _, high = assumptions.span(name)
    return (high - low) / (2 * NINETY)


def levels(one: Made, net: Net) -> tuple[Floats, Floats]:
    """Level that a reading finds from a to b and back in dBm, open blanks as they may be."""
    sent = readings_of(one.links.stations, "power_dbm")[:, 1, None] + net.power_db
    loss = net.loss_db + net.blank_sample_db
    return sent[one.links.a] - loss, sent[one.links.b] - loss
