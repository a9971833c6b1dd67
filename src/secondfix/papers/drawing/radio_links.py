"""Which links of a network a plan shows, and how: weight for the word, a dash for another storey."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from secondfix.papers.drawing.canvas import Canvas, Xy
from secondfix.papers.palette import LEADER, PLATE
from secondfix.radio import Reach, Word

WEIGHTS = {Word.LIKELY: 1.8, Word.DOUBTFUL: 0.7}
OTHER_WEIGHTS = {Word.LIKELY: PLATE, Word.DOUBTFUL: LEADER}
STOREY_DASH = "6 4"


@dataclass(frozen=True, slots=True)
class Shown:
    """One link by ids of devices or of the network; on a route ``a`` is farther from the controller."""

    a: str
    b: str
    word: Word
    on_route: bool


def links_shown(
    answer: Reach, network: str, here: Collection[str], gone: Collection[str] = (), *, others: int
) -> list[Shown]:
    """The steps of every route from a station of ``here``, and the best ``others`` among these stations.

    None that ends at what is ``gone``; of a route that does, the rest is not drawn either.
    """
    links, scale = answer.networks[network], answer.scale
    ids = [s.id for s in links.stations]
    routes = _route_steps(answer, network, set(here), set(gone))
    on_route = {frozenset(step) for step in routes}
    words: dict[frozenset[str], Word] = {}
    left = {key: others for key in here if key not in gone}
    out = []
    for n in np.argsort(-links.margin_db[1], kind="stable").tolist():
        a, b = ids[links.a[n]], ids[links.b[n]]
        pair = frozenset((a, b))
        wanted = a in left and b in left and (left[a] > 0 or left[b] > 0)
        if pair in on_route or wanted:
            word = scale.word(scale.chances(*(float(m) for m in links.margin_db[:, n])))
            if pair in on_route:
                words[pair] = word
            elif word in OTHER_WEIGHTS:
                out.append(Shown(a, b, word, on_route=False))
                left[a], left[b] = left[a] - 1, left[b] - 1
    steps = [(a, b, words.get(frozenset((a, b)))) for a, b in routes]
    return [*out, *(Shown(a, b, word, on_route=True) for a, b, word in steps if word)]


def _route_steps(answer: Reach, network: str, here: set[str], gone: set[str]) -> list[tuple[str, str]]:
    """Steps of the routes that begin here, each once, towards the controller."""
    out: dict[tuple[str, str], None] = {}
    for device in answer.devices:
        way = (device.id, *device.route, network)
        if device.network == network and device.hops and not gone & set(way):
            out |= dict.fromkeys(step for step in pairwise(way) if step[0] in here)
    return list(out)


def draw_link(canvas: Canvas, link: Shown, a: Xy, b: Xy, *, other_storey: bool) -> None:
    """A line from ``a`` to ``b``; on a route with an arrowhead towards the controller."""
    p = canvas.palette
    dash = STOREY_DASH if other_storey else ""
    weight = (WEIGHTS if link.on_route else OTHER_WEIGHTS).get(link.word, LEADER)
    canvas.line(a, b, weight=weight, colour=p.ink if link.on_route else p.line, dash=dash)
    if link.on_route:
        canvas.polygon(list(_arrowhead(a, b)), weight=0, fill=p.ink)


def _arrowhead(a: Xy, b: Xy) -> Iterator[Xy]:
    """Three corners, a little past the middle."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    long = max((dx * dx + dy * dy) ** 0.5, 1e-9)
    ux, uy = dx / long, dy / long
    x, y = a[0] + 0.55 * dx, a[1] + 0.55 * dy
    yield x + 5 * ux, y + 5 * uy
    for side in (1, -1):
        yield x - 4 * ux - side * 3.5 * uy, y - 4 * uy + side * 3.5 * ux
