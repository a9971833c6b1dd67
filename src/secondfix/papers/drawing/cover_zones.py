"""Where a device put on a storey would be likely, doubtful or unlikely: hatching, lines, and their words."""

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, points, text_width
from secondfix.papers.drawing.labels import Taken
from secondfix.papers.drawing.structure import View
from secondfix.papers.palette import FITTING, LABEL, LEADER
from secondfix.radio import Cover, Word

Floats = NDArray[np.float64]

HERE = {Word.LIKELY: "likely here", Word.DOUBTFUL: "doubtful", Word.UNLIKELY: "unlikely"}
UNLIKELY_DASH = "9 3 2 3"
_FAR_DB = 1e6
STEP_DB = 10
_LEAST_STEPS = -5  # below it nobody tells lines apart
_MOST_LABELS, _APART = 5, 150.0
_SMALL_CELLS = 6.0  # a zone smaller than so many places of the grid is not drawn
_LEAST_LINE = 40.0
_BORDER = 3  # places beyond a room that its zones are drawn over, to be cut off at its outline


@dataclass(frozen=True, slots=True)
class _Line:
    """A line on the sheet, and for each point the unit step towards its better side."""

    at: Floats
    better: Floats
    length: float


def draw_zone_hatches(canvas: Canvas) -> None:
    """The two hatches of zones: doubtful one way, and across it what is unlikely."""
    for name, turn in (("doubtful", -45), ("unlikely", 45)):
        stroke = f'<path d="M0 0V9" stroke="{canvas.palette.line}" stroke-width="{FITTING}"/>'
        canvas.parts.append(
            f'<pattern id="{name}" width="9" height="9" patternUnits="userSpaceOnUse" '
            f'patternTransform="rotate({turn})">{stroke}</pattern>'
        )


def draw_zones(
    canvas: Canvas,
    cover: Cover,
    view: View,
    rooms: Mapping[int, Sequence[Xy]],
    *,
    key: str,
    numbers: bool = False,
) -> None:
    """Hatch what is not likely, and across it what is unlikely; a line around each, room by room.

    With ``numbers`` also lines of equal margin at the assumed reading, 10 dB apart.

    ``rooms`` are outlines on the sheet by number (none: nothing is cut off), ``key`` a word of its own for
    the picture. Within a wall nothing is told.
    """
    for field in fields_of(cover):
        if field.room in rooms:
            name = f"{key}-{field.room}"
            outline = points(rooms[field.room])
            canvas.parts.append(f'<clipPath id="{name}"><polygon points="{outline}"/></clipPath>')
            canvas.parts.append(f'<g clip-path="url(#{name})">')
        for word, height in field.borders(cover):
            fill = "doubtful" if word is Word.DOUBTFUL else "unlikely"
            for patch in _patches(field, height, view):
                canvas.path(patch, weight=0, fill=f"url(#{fill})")
            for line in _lines(field, height, view, least=0.0):
                dash = "" if word is Word.DOUBTFUL else UNLIKELY_DASH
                canvas.polyline(_pairs(line.at), weight=FITTING, dash=dash)
        for _, line in _margin_lines(field, view) if numbers else ():
            canvas.polyline(_pairs(line.at), weight=LEADER, colour=canvas.palette.soft)
        if field.room in rooms:
            canvas.parts.append("</g>")


def draw_zone_words(canvas: Canvas, cover: Cover, view: View, taken: Taken, swept: Taken) -> list[Word]:
    """The word of each zone beside its border, where nothing else stands; returns those without room."""
    zones = _Zones(cover, view, taken, swept)
    done: dict[Word, list[Xy]] = {word: [] for word in HERE}
    found = [
        (line, word) for f in fields_of(cover) for word, h in f.borders(cover) for line in _lines(f, h, view)
    ]
    for line, word in sorted(found, key=lambda one: -one[0].length):
        better = Word.LIKELY if word is Word.DOUBTFUL else Word.DOUBTFUL
        for side, own in ((1.0, better), (-1.0, word)):
            spot = _beside(zones, line, side, own) if len(done[own]) < _MOST_LABELS else None
            if spot and not any(math.dist(_middle(spot), other) < _APART for other in done[own]):
                done[own].append(_set(canvas, taken, spot, HERE[own]))
    for word in zones.present():
        if not done[word]:
            spot = next((s for s in zones.spots(word) if zones.free(s, word)), None)
            if spot:
                done[word].append(_set(canvas, taken, spot, HERE[word]))
    return [word for word in zones.present() if not done[word]]


def draw_margin_words(canvas: Canvas, cover: Cover, view: View, taken: Taken) -> None:
    """The number of each line of equal margin, on it."""
    for level, line in (one for field in fields_of(cover) for one in _margin_lines(field, view)):
        words = f"{level} dB"
        wide = text_width(words, LABEL)
        for x, y in line.at[len(line.at) // 2 :: 2].tolist():
            spot = Rect(x - wide / 2, y - 6, x + wide / 2, y + 6)
            if taken.free(spot):
                _set(canvas, taken, spot, words)
                break


def _margin_lines(field: "_Field", view: View) -> Iterator[tuple[int, _Line]]:
    """Lines of equal margin of one room, with their level in dB."""
    margin = field.margin_db[1]
    low, high = (int(edge // STEP_DB) for edge in (np.nanmin(margin), np.nanmax(margin)))
    for level in range(max(low, _LEAST_STEPS) * STEP_DB, high * STEP_DB + 1, STEP_DB):
        yield from ((level, line) for line in _lines(field, margin - level, view))


class _Zones:
    """Which zone a point of the sheet lies in."""

    def __init__(self, cover: Cover, view: View, taken: Taken, swept: Taken) -> None:
        self._cover, self._view, self._taken, self.swept = cover, view, taken, swept
        self._zone = np.where(cover.likely, 0, np.where(cover.unlikely, 2, 1))
        self._zone[~cover.inside] = -1
        self._words = list(HERE)

    def at(self, x: float, y: float) -> Word | None:
        """The zone at a point, None outside the house."""
        v, c = self._view, self._cover
        column = round((v.left_mm + (x - v.left) / v.px_per_mm - c.x_mm[0]) / c.step_mm)
        row = round((v.top_mm - (y - v.top) / v.px_per_mm - c.y_mm[0]) / c.step_mm)
        if not (0 <= row < len(c.y_mm) and 0 <= column < len(c.x_mm)):
            return None
        zone = int(self._zone[row, column])
        return None if zone < 0 else self._words[zone]

    def free(self, r: Rect, word: Word) -> bool:
        """Whether a word may stand there: all of it in its zone, and over nothing else."""
        return self._taken.free(r) and self.holds(r, word)

    def holds(self, r: Rect, word: Word) -> bool:
        """Whether all of a box lies in the zone."""
        xs = np.linspace(r.left, r.right, 4).tolist()
        return all(self.at(x, y) is word for x in xs for y in (r.top, r.bottom))

    def present(self) -> list[Word]:
        """The zones that there are, those of hardly any place left out."""
        return [w for n, w in enumerate(self._words) if (self._zone == n).sum() > _SMALL_CELLS]

    def spots(self, word: Word) -> Iterator[Rect]:
        """Where the word may stand in its zone, from the middle outward."""
        c, wide = self._cover, text_width(HERE[word], LABEL)
        rows, columns = np.nonzero(self._zone == self._words.index(word))
        middle = (rows - rows.mean()) ** 2 + (columns - columns.mean()) ** 2
        for n in np.argsort(middle)[:400:2].tolist():
            x, y = self._view(float(c.x_mm[columns[n]]), float(c.y_mm[rows[n]]))
            spot = Rect(x - wide / 2, y - 6, x + wide / 2, y + 6)
            yield spot


def _beside(zones: _Zones, line: _Line, side: float, word: Word) -> Rect | None:
    """The first free place beside a line for a word, wholly in its zone; clear of links if it can be."""
    wide = text_width(HERE[word], LABEL)
    spots: list[Rect] = []
    third = len(line.at) // 3 if side > 0 else 2 * len(line.at) // 3
    for n in (*range(third, len(line.at)), *range(third)):
        (x, y), (dx, dy) = line.at[n].tolist(), (side * line.better[n]).tolist()
        x, y = x + dx * (wide / 2 + 6), y + dy * 12
        spot = Rect(x - wide / 2, y - 6, x + wide / 2, y + 6)
        if zones.free(spot, word):
            spots.append(spot)
    return next((s for s in spots if zones.swept.free(s)), spots[0] if spots else None)


def _set(canvas: Canvas, taken: Taken, spot: Rect, words: str) -> Xy:
    taken.take(spot)
    at = (spot.left + spot.right) / 2, spot.top + 9.5
    canvas.text(at, words, size=LABEL, anchor="middle", halo=True)
    return _middle(spot)


@dataclass(frozen=True, slots=True)
class _Field:
    """One room (-1: a storey without outlines) with a border of places beyond it, whose margins are those
    of the nearest place within."""

    room: int
    x_mm: Floats
    y_mm: Floats
    margin_db: Floats
    step_mm: int

    def borders(self, cover: Cover) -> Iterator[tuple[Word, Floats]]:
        """Both borders: the word beyond each, and how far each place lies above it."""
        yield Word.DOUBTFUL, self.margin_db[2] - cover.likely_db
        yield Word.UNLIKELY, self.margin_db[0] - cover.unlikely_db


def fields_of(cover: Cover) -> Iterator[_Field]:
    """Every room of a cover by itself: what lies behind its walls does not show in it."""
    inside = cover.inside
    for room in np.unique(cover.room[inside]).tolist():
        rows, columns = np.nonzero(inside & (cover.room == room))
        top, bottom = max(rows.min() - _BORDER, 0), rows.max() + _BORDER + 1
        left, right = max(columns.min() - _BORDER, 0), columns.max() + _BORDER + 1
        own = (inside & (cover.room == room))[top:bottom, left:right]
        margin = np.where(own, cover.margin_db[:, top:bottom, left:right], np.nan)
        for _ in range(_BORDER if room >= 0 else 0):
            margin = _spread(margin)
        x, y = cover.x_mm[left:right].astype(np.float64), cover.y_mm[top:bottom].astype(np.float64)
        yield _Field(room, x, y, margin, cover.step_mm)


def _spread(margin: Floats) -> Floats:
    """Each place without a margin takes one of a neighbour that has one."""
    out = margin
    for axis in (1, 2):
        for step in (1, -1):
            beside = np.roll(out, step, axis=axis)
            edge: list[slice | int] = [slice(None)] * 3
            edge[axis] = 0 if step > 0 else -1
            beside[tuple(edge)] = np.nan
            out = np.where(np.isnan(out), beside, out)
    return out


def _lines(field: _Field, height: Floats, view: View, *, least: float = _LEAST_LINE) -> list[_Line]:
    """Lines along which ``height`` is 0, on the sheet, those of at least so much length."""
    if min(height.shape) < 2:
        return []
    from contourpy import LineType, contour_generator  # noqa: PLC0415 - only those who draw pay for it

    made = contour_generator(
        field.x_mm,
        field.y_mm,
        np.ma.masked_invalid(height),
        line_type=LineType.Separate,
    )
    out: list[_Line] = []
    for found in made.lines(0.0):
        at = _on_sheet(np.asarray(found, np.float64), view)
        step = np.gradient(at, axis=0)
        long = np.maximum(np.hypot(step[:, 0], step[:, 1]), 1e-9)
        # The higher side is on the left as the plan lies, so on the sheet, where y turns over, too.
        better = np.column_stack([step[:, 1], -step[:, 0]]) / long[:, None]
        length = float(np.hypot(*np.diff(at, axis=0).T).sum())
        if length >= least and not _speck(field, at, view):
            out.append(_Line(at, better, length))
    return out


def _patches(field: _Field, height: Floats, view: View) -> Iterator[str]:
    """Paths around all that is below 0, holes left open."""
    if min(height.shape) < 2:
        return
    from contourpy import FillType, contour_generator  # noqa: PLC0415 - as above

    made = contour_generator(
        field.x_mm,
        field.y_mm,
        np.ma.masked_invalid(height),
        fill_type=FillType.OuterOffset,
    )
    for corners, offsets in zip(*made.filled(-_FAR_DB, 0.0), strict=True):
        at = _on_sheet(np.asarray(corners, np.float64), view)
        rings = [at[a:b] for a, b in zip(offsets[:-1].tolist(), offsets[1:].tolist(), strict=True)]
        kept = [ring for n, ring in enumerate(rings) if n == 0 or not _speck(field, ring, view)]
        if not _speck(field, rings[0], view):
            yield "".join(f"M{points(_pairs(ring)).replace(' ', 'L')}Z" for ring in kept)


def _speck(field: _Field, ring: Floats, view: View) -> bool:
    """Whether a closed line holds hardly any place."""
    if not np.allclose(ring[0], ring[-1]):
        return False
    x, y = ring[:-1, 0], ring[:-1, 1]
    area = abs(float(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1)))) / 2
    return area < _SMALL_CELLS * (field.step_mm * view.px_per_mm) ** 2


def _on_sheet(at: Floats, view: View) -> Floats:
    x, y = view(0.0, 0.0)
    out: Floats = np.column_stack([x + at[:, 0] * view.px_per_mm, y - at[:, 1] * view.px_per_mm])
    return out


def _pairs(at: Floats) -> list[Xy]:
    return [(x, y) for x, y in at.tolist()]


def _middle(r: Rect) -> Xy:
    return (r.left + r.right) / 2, (r.top + r.bottom) / 2
