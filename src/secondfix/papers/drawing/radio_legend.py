"""The legend of a picture of radio: only what stands on it."""

from collections.abc import Collection, Iterator, Sequence
from functools import partial

from secondfix.papers.drawing.canvas import Canvas, Xy
from secondfix.papers.drawing.cover_zones import HERE, STEP_DB, UNLIKELY_DASH
from secondfix.papers.drawing.legend import Row, plan_row
from secondfix.papers.drawing.radio_links import Shown, draw_link
from secondfix.papers.drawing.radio_marks import (
    FALLS,
    GONE,
    RING,
    RISES,
    Stand,
    draw_cross,
    draw_disc,
    draw_far_end,
)
from secondfix.papers.drawing.structure import WALL_WORDS
from secondfix.papers.drawing.symbols import SYMBOL_WORDS
from secondfix.papers.palette import LEADER, PLATE, WALL
from secondfix.radio import Cover, Word


def radio_rows(
    here: Sequence[Stand],
    walls: Collection[str],
    links: Sequence[Shown],
    cover: Cover | None,
    *,
    numbers: bool,
    nec: bool,
) -> list[Row]:
    """Zones, links, marks of a case, then symbols and walls as on a plan; ``here`` stand on the storey."""
    symbols = {s.spot.symbol for s in here}
    keys = [k for k in (*SYMBOL_WORDS, *WALL_WORDS) if k in symbols or k in walls]
    marks = {mark for s in here for mark in s.marks}
    return [
        *(_zone_rows(cover, numbers=numbers) if cover else ()),
        *_link_rows(links, {key for s in here for key in s.stations}),
        *_mark_rows(marks),
        *(plan_row(key, nec=nec) for key in keys),
    ]


def _zone_rows(cover: Cover, *, numbers: bool) -> Iterator[Row]:
    inside = cover.inside
    unlikely, likely = cover.unlikely & inside, cover.likely & inside
    if likely.any():
        yield partial(_patch, fills=()), "likely here: radio is likely to carry a device put there"
    if (inside & ~unlikely & ~likely).any():
        yield partial(_patch, fills=("doubtful",)), f"{HERE[Word.DOUBTFUL]}: it may or may not"
    if unlikely.any():
        words = f"{HERE[Word.UNLIKELY]}: it is not likely to"
        yield partial(_patch, fills=("doubtful", "unlikely"), dash=UNLIKELY_DASH), words
    if numbers:
        yield _level, f"line of equal margin as assumed, every {STEP_DB} dB"


def _link_rows(links: Sequence[Shown], here: Collection[str]) -> Iterator[Row]:
    kinds = {(x.on_route, x.word) for x in links}
    for on_route, name in ((True, "link of a route, towards the controller"), (False, "another link")):
        for word in (Word.LIKELY, Word.DOUBTFUL):
            if (on_route, word) in kinds:
                yield partial(_line, link=Shown("", "", word, on_route)), f"{name}: {word.value}"
    if any(x.a not in here or x.b not in here for x in links):
        yield _far, "link to another storey; it ends above or below"


def _mark_rows(marks: Collection[str]) -> Iterator[Row]:
    if GONE in marks:
        yield (lambda canvas, at: draw_cross(canvas, (at[0] + 12, at[1] - 1))), "has no power in this case"
    if FALLS in marks:
        yield (lambda canvas, at: draw_disc(canvas, (at[0] + 12, at[1] - 1))), "falls in this case"
    if RISES in marks:
        yield (
            (lambda canvas, at: canvas.circle((at[0] + 12, at[1] - 1), RING, weight=PLATE)),
            "becomes likely in this case",
        )


def _patch(canvas: Canvas, at: Xy, *, fills: Sequence[str], dash: str = "") -> None:
    left, y = at
    corners = [(left, y - 8), (left + 24, y - 8), (left + 24, y + 6), (left, y + 6)]
    for fill in fills:
        canvas.polygon(corners, weight=0, fill=f"url(#{fill})")
    canvas.polygon(corners, weight=WALL, dash=dash)


def _level(canvas: Canvas, at: Xy) -> None:
    canvas.line((at[0], at[1] - 1), (at[0] + 24, at[1] - 1), weight=LEADER, colour=canvas.palette.soft)


def _line(canvas: Canvas, at: Xy, *, link: Shown) -> None:
    draw_link(canvas, link, (at[0], at[1] - 1), (at[0] + 24, at[1] - 1), other_storey=False)


def _far(canvas: Canvas, at: Xy) -> None:
    link = Shown("", "", Word.LIKELY, on_route=False)
    draw_link(canvas, link, (at[0], at[1] - 1), (at[0] + 14, at[1] - 1), other_storey=True)
    draw_far_end(canvas, (at[0] + 19, at[1] - 1), above=True)
