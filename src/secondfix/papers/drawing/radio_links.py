"""Which links of a network a plan shows, and how: weight for the word, a dash for another storey."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from secondfix.papers.drawing.canvas import Canvas, Xy
from secondfix.papers.palette import LEADER, PLATE
from secondfix.radio import Reach, Word

OTHERS = 2  # links of a device that are drawn beside those of the routes
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
    answer: Reach, network: str, here: Collection[str], gone: Collection[str] = ()
) -> list[Shown]:
    """The links of every route that touch a station of ``here``, and the best others of each of these.

    None that ends at what is gone; of a route that does, the rest is not drawn either.
    """
    routes = _route_links(answer, network, here, set(gone))
    links, scale = answer.networks[network], answer.scale
    ids = [s.id for s in links.stations]
    seat = {key: n for n, key in enumerate(ids)}
    words = {}
    order = np.argsort(-links.margin_db[1], kind="stable")
    used = {frozenset(pair) for pair in routes}
    many = dict.fromkeys(here, 0)
    out = []
    for n in order.tolist():
        a, b = ids[links.a[n]], ids[links.b[n]]
        if not ({a, b} & set(here)) or a in gone or b in gone:
            continue
        pair = frozenset((a, b))
        wanted = pair in used or any(many.get(end, OTHERS) < OTHERS for end in (a, b))
        if not wanted:
            continue
        word = scale.word(scale.chances(*(float(m) for m in links.margin_db[:, n])))
        if pair in used:
            words[pair] = word
        elif word in OTHER_WEIGHTS:
            out.append(Shown(a, b, word, on_route=False))
            for end in (a, b):
                if end in many:
                    many[end] += 1
    found = [
        Shown(a, b, words[frozenset((a, b))], on_route=True) for a, b in routes if frozenset((a, b)) in words
    ]
    known = set(seat)
    return [s for s in (*out, *found) if s.a in known and s.b in known]


def _route_links(answer: Reach, network: str, here: Collection[str], gone: set[str]) -> list[tuple[str, str]]:
    """Steps of the routes, each once, towards the controller."""
    out: dict[tuple[str, str], None] = {}
    for device in answer.devices:
        way = (device.id, *device.route, network)
        if device.network != network or not device.hops or gone & set(way):
            continue
        out |= dict.fromkeys(step for step in pairwise(way) if set(step) & set(here))
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
