"""The question: who is reached, how surely, and what happens when something goes, trips or moves?"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from secondfix.assumptions import Assumptions
from secondfix.house import House, Schedule
from secondfix.radio.answers import Chances, Reach, Scale, Word
from secondfix.radio.crossing import Floats
from secondfix.radio.engine.chances import DeviceChance, Drawn, wilson
from secondfix.radio.engine.drawing import Ends
from secondfix.radio.engine.gone import Gone, without_each
from secondfix.radio.engine.searching import steps_of
from secondfix.radio.foresight.answers import Foreseen, NetworkForeseen
from secondfix.radio.foresight.cases import LEAST_CHANGE, Cases, Progress
from secondfix.radio.foresight.circuits import fed_by
from secondfix.radio.foresight.drawn import Network, draw_ends, draw_network, whole_words
from secondfix.radio.foresight.staging import Staged, empty_sockets, spots_for_controller, staged
from secondfix.radio.g9959 import PLANS, Rate
from secondfix.radio.learning.fitting import learn
from secondfix.radio.learning.learned import Learned
from secondfix.radio.learning.measured import Measured
from secondfix.radio.packets.curves import slower_gain_db
from secondfix.radio.packets.delivery import raised_db, works_at_db
from secondfix.radio.packets.interference import Interference
from secondfix.radio.stations import Station
from secondfix.terms import Protocol

DRAWS = 10_000
MOST_DRAWS = 1_000_000
WAYS = 53  # three words of draws in each are 10,000 draws and a few
MOST_NAMED = 12
_SHARED = "radio_shared_pct"

Heard = Callable[[str, Sequence[Station]], Interference | None]
"""What others send into the channel of a network, at each of these stations."""


def foresee(
    rows: Schedule,
    assumptions: Assumptions,
    answer: Reach,
    *,
    measured: Sequence[Measured] = (),
    heard: Heard | None = None,
    draws: int = DRAWS,
    seed: int = 1,
    moves: Sequence[str] | None = None,
    progress: Progress = lambda _: None,
) -> Foreseen:
    """Draw each network of ``answer`` (that of `reach`) ``draws`` times or a few more, whole and by case.

    Meaning: a device is reached in a draw if some route within the protocol's links works; a link works
    where nine in ten frames are acknowledged within the tries, both ways, its shadowing one number for both
    directions and partly its ends' own (`draw_way`). The draws are split over 53 ways that the house may be
    (`learn`), in which ``measured`` links take the place of what is assumed. ``heard`` tells of others on
    the channel; ``moves`` are the places that a controller may be moved to (left out: every controller spot
    and socket on the plan). ``progress`` is told each step in words. The same seed gives the same answer.
    ValueError outside 1 to a million draws, KeyError for a place that is not there. Source: see `draw_way`,
    `delivered`, `wilson`. Leaves out: traffic, two failures at once but those of one circuit, whether the
    protocol finds the route that works.
    """
    if not 1 <= draws <= MOST_DRAWS:
        raise ValueError(f"1 to {MOST_DRAWS} draws, not {draws}")
    house = rows.house
    progress("paths")
    moves = spots_for_controller(house) if moves is None else moves
    wide, stages = staged(rows, assumptions, answer, moves=moves, sockets=empty_sockets(house))
    progress("measured links" if measured else "what is assumed")
    learned = learn(rows, assumptions, wide, measured, samples=WAYS, seed=seed)
    circuits, no_circuit = fed_by(rows)
    out = {}
    for key, stage in stages.items():
        progress(f"network {house.networks[key].name}")
        gain = _gain_db(stage, house.networks[key].protocol, heard)
        network = draw_network(stage, learned.ways(key), gain_db=gain, draws=draws, seed=seed)
        margin_db = _margins_db(stage, learned, assumptions)[:, : stage.base] + gain[: stage.base]
        margin_db[0] += _slower_db(house, key)
        ends = draw_ends(
            stage,
            learned.scale,
            margin_db=margin_db,
            shared=assumptions.value(_SHARED) / 100,
            draws=draws,
            seed=seed,
        )
        drawn = _Drawn(network, *ends, learned.scale)
        out[key] = _foreseen(rows, answer, drawn, circuits=circuits, progress=progress)
    lost = [key for key in house.networks if key not in stages]
    for key in lost:
        members = tuple(d.id for d in answer.devices if d.network == key)
        out[key] = NetworkForeseen(key, (), {}, members, ())
    count = learned.count
    leans = tuple(dict.fromkeys((_SHARED, *(name for d in answer.devices for name in d.assumptions))))
    notes = tuple(_notes(rows, draws, no_circuit, interfered=heard is not None))
    return Foreseen(out, draws, seed, learned.scale.likely[1], count, notes, leans)


def _margins_db(stage: Staged, learned: Learned, assumptions: Assumptions) -> Floats:
    """Margins of all links on the stage in three readings, as learned, else with the house's offset."""
    links = learned.links(stage.network)
    margin_db: Floats = links.margin_db
    if any(stage.network in p.networks for p in learned.parameters):
        return margin_db
    offset_db: Floats = np.array(assumptions.span("radio_house_offset_db"), np.float64).reshape(3, 1)
    out: Floats = margin_db - offset_db
    return out


def _slower_db(house: House, network: str) -> float:
    """How many dB weaker a link may be at the most favourable end, where the region has slower rates."""
    if house.networks[network].protocol is not Protocol.ZWAVE:
        return 0.0
    plans = [PLANS[house.radio_region]] if house.radio_region else PLANS.values()
    return slower_gain_db(Rate.R1) if any(plan.slow_mhz for plan in plans) else 0.0


def _gain_db(stage: Staged, protocol: Protocol, heard: Heard | None) -> Floats:
    """How far below its threshold each link still works, in dB: tries help, others on the air hurt."""
    links = stage.links
    found = heard(stage.network, links.stations) if heard else None
    if found is None or not found.duty.size:
        return -works_at_db(links.margin_ab_db, links.margin_ba_db, protocol=protocol)
    sensitivity = np.array([s.sensitivity_dbm[1] for s in links.stations])
    raised = raised_db(found, sensitivity)
    return -works_at_db(
        links.margin_ab_db,
        links.margin_ba_db,
        protocol=protocol,
        at_a=(raised[links.a], found.duty),
        at_b=(raised[links.b], found.duty),
    )


def _foreseen(
    rows: Schedule,
    answer: Reach,
    drawn: "_Drawn",
    *,
    circuits: Mapping[str, tuple[str, ...]],
    progress: Progress,
) -> NetworkForeseen:
    network, scale = drawn.network, drawn.scale
    stage = network.staged
    ends = Ends(stage.real, stage.links.a[: stage.base], stage.links.b[: stage.base])
    steps = steps_of(ends, network.forwards[: stage.real])
    progress("every repeater gone")
    gone = without_each(steps, network.bits[: stage.base], most_links=stage.most_links)
    needs = {d.id: bool(d.needs) for d in answer.devices}
    placed = set(answer.paths.sites.places)
    known = [n for n in range(1, stage.real) if stage.links.stations[n].place in placed]
    scatter = network.scatter()
    devices = tuple(_device(drawn, gone, n, float(scatter[n])) for n in known)
    words = {}
    for d in devices:
        word = scale.word(Chances(d.model_low, d.reached.share, d.model_high))
        words[d.id] = Word.NOT_KNOWN if word is not Word.LIKELY and needs.get(d.id) else word
    told = np.array([words.get(key, Word.NOT_KNOWN) is not Word.NOT_KNOWN for key in stage.ids], np.bool_)
    cases = Cases(rows, network, gone, scale, told, circuits, progress).all()
    hidden = tuple(key for n, key in enumerate(stage.ids) if n and n not in set(known))
    return NetworkForeseen(stage.network, devices, words, hidden, cases)


@dataclass(frozen=True, slots=True, eq=False)
class _Drawn:
    """A network as drawn, and the least and greatest share of each station over the ends of everything."""

    network: Network
    low: Floats
    high: Floats
    scale: Scale


def _device(drawn: _Drawn, gone: Gone, number: int, scatter: float) -> DeviceChance:
    network = drawn.network
    draws, whole = network.draws, int(gone.whole[number])
    ids = network.staged.ids
    left = {
        ids[gone.repeaters[r]]: wilson(hits=whole - int(gone.lost[r, number]), draws=draws)
        for r in np.flatnonzero(gone.lost[:, number] >= LEAST_CHANGE * draws).tolist()
    }
    share, one = whole / draws, wilson(hits=whole, draws=draws)
    return DeviceChance(
        ids[number],
        Drawn(min(one.low, max(share - scatter, 0.0)), share, max(one.high, min(share + scatter, 1.0))),
        min(float(drawn.low[number]), share),
        max(float(drawn.high[number]), share),
        wilson(hits=int(gone.safe[number]), draws=draws),
        left,
    )


def _notes(rows: Schedule, draws: int, no_circuit: Sequence[str], *, interfered: bool) -> Iterator[str]:
    drawn = whole_words(draws, WAYS) * WAYS
    yield (
        f"A chance is the share of {drawn} draws, over {WAYS} ways that the house may be, "
        "in which some route works; its interval is what so few draws leave open. Apart from it stands what "
        "the model leaves open: the chance at the ends of everything assumed or unknown, all together."
    )
    if not interfered:
        yield "Nothing is counted of others on the air: survey the channel to know."
    if no_circuit:
        networks = rows.house.networks
        named = [f"the controller of {networks[k].name}" if k in networks else k for k in no_circuit]
        more = f" and {len(named) - MOST_NAMED} more" if len(named) > MOST_NAMED else ""
        told = ", ".join(named[:MOST_NAMED])
        yield f"On which circuit they hang is not known, so no tripped circuit takes them: {told}{more}."
    if any(_slower_db(rows.house, key) for key in rows.house.networks):
        yield (
            "Z-Wave is drawn at 100 kbit/s. That the slower rates may carry a link that is 3 to 6 dB too "
            "weak (from memory) counts at the most favourable end alone."
        )
