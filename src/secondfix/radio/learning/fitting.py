"""The question: what do the measured links tell of this house, and of its other links?"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule
from secondfix.radio.answers import Reach, Scale
from secondfix.radio.crossing import Bools, Floats
from secondfix.radio.engine.sampled import Sampled
from secondfix.radio.learning.columns import NINETY, WIDE_NINETY, Columns, told
from secondfix.radio.learning.learned import Learned, OfNetwork, Parameter, Predicted
from secondfix.radio.learning.making import Crossed, Made, made
from secondfix.radio.learning.matching import Matched, matched
from secondfix.radio.learning.measured import Measured
from secondfix.radio.learning.next_links import Drawing
from secondfix.radio.learning.odd import odd_readings
from secondfix.radio.learning.posterior import House, Net, houses, levels, margins, net_of
from secondfix.radio.learning.rows import ONE_WAY_DB, Rows, rows_of
from secondfix.radio.links import Links
from secondfix.radio.losses import band_mhz, crossing_losses_db
from secondfix.radio.network import MOST_HOPS
from secondfix.radio.openspace import free_space_loss_db
from secondfix.radio.paths import Paths
from secondfix.radio.stations import REPEATS, Station

Band = tuple[float, ...]
SAMPLES = 64
_OF_SURROUNDINGS = frozenset({"radio", "shell", "plate", "finish"})


def learn(
    rows: Schedule,
    assumptions: Assumptions,
    answer: Reach,
    measured: Sequence[Measured],
    *,
    samples: int = SAMPLES,
    seed: int = 1,
) -> Learned:
    """Learn what a house adds to what is computed of it: ``answer`` is that of `reach`, nothing measured.

    Meaning: every measured loss is what is computed of the link plus what the house has otherwise (all
    links, distance, each material, kinds of box, powers and surveys that are not stated), plus what
    surrounds either device, plus the link's own part and the day's. All are normal before anything is
    measured, nine in ten within the range of their assumption; the spread too. Networks that share a
    frequency share the house. Links listened for in vain lost at least what they could bear. The same
    seed gives the same answer. Source: Bayesian linear regression, censored as in Tobin 1958 (from
    memory); ranges as the assumptions say. Leaves out: an LQI without a level, that walls differ from
    place to place beyond the spread, and that a reading may be of another day than the house is.
    """
    found = matched(answer.networks, measured)
    bands: dict[Band, list[str]] = {}
    for key in answer.networks:
        band = band_mhz(rows.house.networks[key].protocol, rows.house.radio_region)
        bands.setdefault(band, []).append(key)
    most = {
        key: MOST_HOPS[rows.house.networks[key].protocol] or max(len(links.stations) - 1, 1)
        for key, links in answer.networks.items()
    }
    asked = _Asked(assumptions, answer, found, samples)
    fits = [
        _Fit(asked, band, {key: most[key] for key in keys}, seed + n)
        for n, (band, keys) in enumerate(bands.items())
    ]
    scale = _scale(answer.scale, fits)
    networks = {key: fit.network(key, scale) for fit in fits for key in fit.made}
    parameters = tuple(p for fit in fits for p in fit.parameters())
    notes = (*_notes(found), *(note for fit in fits for note in fit.odd()))
    return Learned(found.count(), found.not_heard(), parameters, scale, networks, notes)


@dataclass(frozen=True, slots=True, eq=False)
class _Asked:
    assumptions: Assumptions
    answer: Reach
    found: Matched
    samples: int

    @property
    def shared(self) -> float:
        """The part of the shadowing that the links of a device share."""
        return self.assumptions.value("radio_shared_pct") / 100

    @property
    def reading_db(self) -> float:
        """How far one reading lies from the level that its link keeps."""
        return float(self.assumptions.value("radio_reading_db"))


class _Fit:
    """One band of a house: its networks taken apart, and houses sampled from its measured links."""

    def __init__(self, asked: _Asked, band: Band, most: Mapping[str, int], seed: int) -> None:
        self._asked, self._most, self._seed = asked, most, seed
        self._keys = tuple(most)
        self.columns = Columns(asked.assumptions)
        crossed, networks = _crossed(asked.answer.paths, band), asked.answer.networks
        self.made: Mapping[str, Made] = {
            key: made(key, networks[key], crossed, self.columns, shared=asked.shared) for key in most
        }
        self.rows: Rows = rows_of(
            self.made,
            {key: asked.found.of[key] for key in most},
            len(self.columns.all),
            shared=asked.shared,
            reading_db=asked.reading_db,
        )
        self.house: House = houses(
            self.rows, self.columns, asked.assumptions, samples=asked.samples, seed=seed
        )

    @property
    def count(self) -> int:
        """How many of its links were measured."""
        return sum(len(self._asked.found.of[key]) for key in self._keys)

    def odd(self) -> Iterator[str]:
        """Readings that the others do not lead to expect."""
        return odd_readings(self.rows, self.house, self.made)

    def network(self, key: str, scale: Scale) -> OfNetwork:
        """What was learned of one network, told on the house's scale."""
        one = self.made[key]
        net = net_of(
            one,
            self.house,
            self.rows,
            self.columns,
            shared=self._asked.shared,
            seed=self._seed,
        )
        forth, back = margins(one, net, self._asked.assumptions, seed=self._seed)
        weaker = np.minimum(forth, back)
        ways = tuple(
            Sampled(weaker[:, k] - net.blank_sample_db[:, k], net.own_db[:, k], net.around_db[:, k])
            for k in range(weaker.shape[1])
        )
        links = self._links(one, net, (forth, back), scale)
        predicted = _predicted(one, net, self._asked.reading_db)
        drawing = Drawing(
            links,
            ways,
            net.loss_db + net.blank_sample_db,
            ~(net.measured | net.in_vain),
            self._asked.reading_db,
            self._most[key],
            self._seed,
        )
        return OfNetwork(links, predicted, drawing)

    def _links(self, one: Made, net: Net, both: tuple[Floats, Floats], scale: Scale) -> Links:
        """The links as learned; where nothing of the band was measured as they were, on the scale at hand."""
        if self.count:
            return _links(one, net, both, scale, known=self._known(one.network))
        stretched = scale.spread_db[1] / self._asked.answer.scale.spread_db[1]
        return replace(one.links, margin_db=one.links.margin_db * stretched)

    def _known(self, key: str) -> Bools:
        """Stations of which a level was heard: nobody need ask any more what surrounds them."""
        links = self._asked.answer.networks[key]
        out = np.zeros(len(links.stations), np.bool_)
        for link, readings in self._asked.found.of[key].items():
            if readings.heard:
                out[[links.a[link], links.b[link]]] = True
        return out

    def parameters(self) -> Iterator[Parameter]:
        """What was learned of the whole house, in the order of the columns, the spread last."""
        if not self.count:
            return
        for n, column in told(self.columns.all):
            weights = self.house.weights[:, n] * column.scale
            half = WIDE_NINETY * column.sd * column.scale
            before = column.middle - half, column.middle, column.middle + half
            yield Parameter(
                column.name, self._keys, column.words, column.unit, before, _three(column.middle + weights)
            )
        low, value, high = (float(s) for s in self._asked.assumptions.span("radio_spread_db"))
        after = _three(self.house.spread_db)
        words = "spread of a link about all this"
        yield Parameter("spread", self._keys, words, "dB", (low, value, high), after)


def _crossed(paths: Paths, band: Band) -> Crossed:
    mhz = max(band)  # as the assumed reading of `path_losses_db`
    open_db = free_space_loss_db(distance_m=1, frequency_mhz=mhz) + 20 * np.log10(paths.distance_m)
    return Crossed(paths, crossing_losses_db(paths, band), open_db)


def _three(values: Floats) -> tuple[float, float, float]:
    low, middle, high = np.quantile(values, [0.05, 0.5, 0.95]).tolist()
    return low, middle, high


def _scale(before: Scale, fits: Sequence[_Fit]) -> Scale:
    """The spread of the band that most links were measured in; thresholds as they were."""
    most = max(fits, key=lambda fit: fit.count, default=None)
    if most is None or not most.count:
        return before
    low, middle, high = (round(s, 1) for s in _three(most.house.spread_db))
    return replace(before, spread_db=(low, middle, high))


def _links(one: Made, net: Net, both: tuple[Floats, Floats], scale: Scale, *, known: Bools) -> Links:
    """The links of a network as learned: middle and ends of the margins, on the spread of ``scale``."""
    forth, back = both
    weaker = np.minimum(forth, back)
    around2 = (net.around_db**2).mean(axis=1)
    left = np.sqrt((net.own_db**2).mean(axis=1) + around2[one.links.a] + around2[one.links.b])
    sure = NINETY * weaker.std(axis=1)
    middle = weaker.mean(axis=1)
    rows = np.stack([middle + sure, middle, middle - sure]) - net.blank_db
    stations = tuple(
        _settled(s) if here else s for s, here in zip(one.links.stations, known.tolist(), strict=True)
    )
    heavy = net.blank_db[1]
    return replace(
        one.links,
        stations=stations,
        margin_db=rows * (scale.spread_db[1] / left),
        loss_db=net.loss_db.mean(axis=1) + heavy,
        margin_ab_db=forth.mean(axis=1) - heavy,
        margin_ba_db=back.mean(axis=1) - heavy,
    )


def _settled(station: Station) -> Station:
    """A station of which a level was heard: what surrounds it need not be looked at any more."""
    looks = (k for k in station.looks if k.field == REPEATS or k.field not in _OF_SURROUNDINGS)
    return replace(station, looks=tuple(looks))


def _predicted(one: Made, net: Net, reading_db: float) -> Predicted:
    forth, back = levels(one, net)
    around2 = (net.around_db**2).mean(axis=1)
    left2 = (net.own_db**2).mean(axis=1) + around2[one.links.a] + around2[one.links.b]
    between2 = np.maximum(forth.var(axis=1), back.var(axis=1))
    spread = np.sqrt(left2 + between2 + reading_db**2 + ONE_WAY_DB**2)
    return Predicted(forth.mean(axis=1), back.mean(axis=1), spread, net.measured, net.in_vain)


def _notes(found: Matched) -> Iterator[str]:
    yield from found.notes
    if found.not_heard():
        yield (
            "A link that was listened for in vain counts as one that loses more than it could bear, by the "
            "least sensitive its receiver may be."
        )
