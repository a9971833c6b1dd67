"""Radio on the plan of a storey: who is carried and by which links, where one more device would be."""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from secondfix.house import Schedule, is_nec
from secondfix.papers.drawing.canvas import Canvas, Rect, Xy, wrapped
from secondfix.papers.drawing.cover_zones import (
    HERE,
    draw_margin_words,
    draw_zone_hatches,
    draw_zone_words,
    draw_zones,
)
from secondfix.papers.drawing.elevation import Drawing
from secondfix.papers.drawing.labels import Label, Taken, draw_labels
from secondfix.papers.drawing.legend import draw_rows, draw_scale_bar
from secondfix.papers.drawing.radio_legend import radio_rows
from secondfix.papers.drawing.radio_links import Shown, draw_link, links_shown
from secondfix.papers.drawing.radio_marks import (
    Stand,
    draw_crossed,
    draw_far_end,
    draw_ring,
    draw_ring_hatch,
    stands_of,
)
from secondfix.papers.drawing.storey import (
    clear_of_others,
    draw_room_name,
    extent,
    fitted,
    into_room,
    middle,
    own_room,
    take_structure,
)
from secondfix.papers.drawing.structure import View, draw_hatches, draw_openings, draw_walls, wall_class
from secondfix.papers.drawing.symbols import draw_symbol, footprint
from secondfix.papers.palette import DAY, LABEL, Palette
from secondfix.radio import Case, Cover, Reach, Word
from secondfix.terms import drawn_length

_HIT = 15.0
_OTHERS, _FEW = 2, 45  # links beside those of routes, on a storey of so many stations
_CLEAR = "transparent"


@dataclass(frozen=True, slots=True, eq=False)
class RadioShown:
    """What a picture of one network is drawn of.

    ``answer`` is that of `reach`; ``cover`` of the same network and the storey drawn, None: no zones.
    ``words`` take the place of the answer's where given (of draws), by device. ``case``: something gone,
    moved or added; with ``numbers`` lines of equal margin too.
    """

    answer: Reach
    network: str
    cover: Cover | None = None
    words: Mapping[str, Word] = field(default_factory=dict)
    case: Case | None = None
    numbers: bool = False


def radio_svg(
    schedule: Schedule,
    storey_id: str,
    shown: RadioShown,
    *,
    palette: Palette = DAY,
    width: float = 1016.0,
    height: float = 600.0,
) -> str:
    """Radio on one storey as an SVG picture with its legend and remarks; sizes as `plan_svg`.

    KeyError for a storey or network that is not in the house.
    """
    return draw_radio(schedule, storey_id, shown, palette=palette, width=width, height=height, words=True).svg


def draw_radio(
    schedule: Schedule,
    storey_id: str,
    shown: RadioShown,
    *,
    palette: Palette,
    width: float,
    height: float,
    words: bool,
    ways: Mapping[str, str] | None = None,
) -> Drawing:
    """The same, with the remarks apart where they are set elsewhere (``words`` False).

    On a screen a symbol leads to the address that ``ways`` has for its box or place, else for its device.
    """
    canvas = Canvas(palette, ways=ways or {})
    sheet = _Sheet(schedule, storey_id, shown, canvas)
    bottom, scale = sheet.draw(width, height)
    remarks = sheet.remarks
    if words:
        for line in wrapped(" ".join(remarks), width=width - 8, size=LABEL):
            canvas.text((4, bottom + 12), line, size=LABEL, colour=palette.soft)
            bottom += 14
    house = schedule.house
    title = f"{house.storeys[storey_id].name}, radio of {house.networks[shown.network].name}"
    says = f"{title}. {' '.join([*remarks, *sheet.said])}"
    svg = canvas.svg(width=width, height=bottom + 4, title=title, says=says)
    return Drawing(svg, width, bottom + 4, scale, tuple(remarks))


class _Sheet:
    """One picture while it is drawn."""

    def __init__(self, schedule: Schedule, storey_id: str, shown: RadioShown, canvas: Canvas) -> None:
        self.schedule, self.storey, self.shown, self.canvas = schedule, storey_id, shown, canvas
        self.house = schedule.house
        self.remarks: list[str] = []
        self.said: list[str] = []
        self.stands = stands_of(schedule, shown.answer, shown.network, shown.words, shown.case)
        self.here = [s for s in self.stands if s.storey == storey_id and s.spot.position]

    def draw(self, width: float, height: float) -> tuple[float, int | None]:
        """Everything but the remarks; gives how far down it reaches, and the scale."""
        first = what_first(self.schedule, self.shown.network, self.storey)
        points = extent(self.schedule, self.storey, [s.spot for s in self.here])
        self.remarks += first
        if not points or self.shown.network not in self.shown.answer.networks:
            return 20.0, None
        nec, links = is_nec(self.house), self._links()
        walls = {wall_class(w) for w in self.house.walls.values() if w.storey == self.storey}
        rows = radio_rows(self.here, walls, links, self.shown.cover, numbers=self.shown.numbers, nec=nec)
        scale, view, field_, legend = fitted(points, len(rows), width=width, height=height)
        self.remarks.append(f"Scale 1:{scale} at the size of this sheet. North is at the top.")
        self._draw_ground(view)
        taken, swept = Taken(field_), Taken(field_)
        at = self._draw_stations(view, links, taken, swept)
        take_structure(taken, swept, self.house, self.storey, view)
        for room in self.house.rooms.values():
            if room.storey == self.storey and room.outline_mm:
                draw_room_name(self.canvas, taken, room.name, [view(*p) for p in room.outline_mm])
        self._draw_labels(view, at, taken, swept)
        self._draw_words(view, taken, swept)
        draw_scale_bar(self.canvas, scale, (field_.left + 4, field_.bottom + 14), nec=nec)
        self._remark(nec)
        return max(height, draw_rows(self.canvas, rows, legend) + 8), scale

    def _stations_here(self) -> set[str]:
        return {key for s in self.here for key in s.stations}

    def _few_enough(self) -> bool:
        return len(self._stations_here()) <= _FEW

    def _links(self) -> list[Shown]:
        gone = self.shown.case.gone if self.shown.case else ()
        links = links_shown(
            self.shown.answer,
            self.shown.network,
            self._stations_here(),
            gone,
            others=_OTHERS if self._few_enough() else 0,
        )
        placed = {key for s in self.stands if s.spot.position for key in s.stations}
        return [x for x in links if x.a in placed and x.b in placed]

    def _draw_ground(self, view: View) -> None:
        draw_hatches(self.canvas)
        draw_zone_hatches(self.canvas)
        draw_ring_hatch(self.canvas)
        outlines = {
            n: [view(*p) for p in room.outline_mm]
            for n, room in enumerate(self.house.rooms.values())
            if room.storey == self.storey and room.outline_mm
        }
        if self.shown.cover:
            key = f"rooms-{self.shown.network}-{self.storey}"
            draw_zones(self.canvas, self.shown.cover, view, outlines, key=key, numbers=self.shown.numbers)
        draw_walls(self.canvas, self.house, self.storey, view)
        draw_openings(self.canvas, self.house, self.storey, view)

    def _draw_stations(self, view: View, links: Sequence[Shown], taken: Taken, swept: Taken) -> dict[str, Xy]:
        """Links beneath, symbols and marks over them; gives where each place of the storey stands."""
        at: dict[str, Xy] = {}
        toward: dict[str, Xy] = {}
        where: dict[str, Xy] = {}
        for s in self.stands:
            if not s.spot.position:
                continue
            on_sheet = view(s.spot.position.x_mm, s.spot.position.y_mm)
            if s.storey == self.storey:
                turn = toward[s.id] = into_room(self.house.rooms[s.spot.room].outline_mm, s.spot.position)
                at[s.id] = clear_of_others(on_sheet, turn, s.spot.symbol, taken)
                taken.take(footprint(s.spot.symbol, at[s.id], turn))
                on_sheet = middle(footprint(s.spot.symbol, at[s.id], turn))
            where |= dict.fromkeys(s.stations, on_sheet)
        self._draw_links(links, where, taken, swept)
        for s in self.here:
            spot = middle(footprint(s.spot.symbol, at[s.id], toward[s.id]))
            key = next((k for k in (s.id, *s.stations) if k in self.canvas.ways), s.id)
            says = f"{s.named} {self.house.rooms[s.spot.room].name}: {s.tells}"
            self.said.append(f"{says}.")
            with self.canvas.linked(key, says):
                draw_ring(self.canvas, spot, s)
                if key in self.canvas.ways:
                    hit = Rect(spot[0] - _HIT, spot[1] - _HIT, spot[0] + _HIT, spot[1] + _HIT)
                    self.canvas.rect(hit, weight=0, fill=_CLEAR)
                draw_symbol(self.canvas, s.spot.symbol, at[s.id], toward[s.id])
                draw_crossed(self.canvas, spot, s)
        return {s.id: middle(footprint(s.spot.symbol, at[s.id], toward[s.id])) for s in self.here}

    def _draw_links(
        self, links: Sequence[Shown], where: Mapping[str, Xy], taken: Taken, swept: Taken
    ) -> None:
        here, level = self._stations_here(), {k: s for s in self.stands for k in s.stations}
        ends: dict[str, Stand] = {}
        for link in links:
            away = [key for key in (link.a, link.b) if key not in here]
            a, b = where[link.a], where[link.b]
            if a != b:
                draw_link(self.canvas, link, a, b, other_storey=bool(away))
                _sweep(swept, a, b)
            ends |= {level[key].id: level[key] for key in away}
        mine = self.house.storeys[self.storey].level_mm
        for stand in ends.values():
            spot = where[stand.stations[0]]
            above = self.house.storeys[stand.storey or self.storey].level_mm > mine
            draw_far_end(self.canvas, spot, above=above)
            taken.take(Rect(spot[0] - 6, spot[1] - 6, spot[0] + 6, spot[1] + 6))
        self._far = {s.id: (where[s.stations[0]], s) for s in ends.values()}

    def _draw_labels(self, view: View, at: Mapping[str, Xy], taken: Taken, swept: Taken) -> None:
        own = [
            Label(
                at[s.id],
                (s.named, *s.beside),
                strong=True,
                toward=into_room(self.house.rooms[s.spot.room].outline_mm, s.spot.position),
                room=own_room(at[s.id], [view(*p) for p in self.house.rooms[s.spot.room].outline_mm or ()]),
            )
            for s in sorted(self.here, key=lambda s: not s.beside)
            if s.spot.position
        ]
        far = [Label(spot, (s.named,)) for spot, s in self._far.values()]
        lost = [x.lines[0] for x in draw_labels(self.canvas, taken, swept, [*own, *far])]
        self.remarks += [f"No room for the label of {', '.join(lost)}."] if lost else []

    def _draw_words(self, view: View, taken: Taken, swept: Taken) -> None:
        cover = self.shown.cover
        if cover is None:
            return
        if self.shown.numbers:
            draw_margin_words(self.canvas, cover, view, taken)
        lost = draw_zone_words(self.canvas, cover, view, taken, swept)
        if lost:
            self.remarks.append(
                f"No room for the words {', '.join(repr(HERE[w]) for w in lost)}: see the legend."
            )

    def _remark(self, nec: bool) -> None:
        shown = self.shown
        if shown.cover is not None:
            height = drawn_length(shown.cover.height_mm, nec=nec)
            self.remarks.append(
                f"A device put there: in a plastic box, {height} above the floor, of the power assumed. "
                f"{how_much(shown.cover)}"
            )
        if shown.case:
            self.remarks.append(f"In this case: {shown.case.words}.")
            if shown.case.gone:
                self.remarks.append("Links and routes of what has no power are left out.")
        few = self._few_enough()
        others = "the two best of each device are drawn" if few else "none is drawn: there are too many"
        self.remarks.append(f"Of links that no route takes {others}.")
        lost = [s.named for s in self.stands if not s.spot.position]
        self.remarks += [f"Position not known: {', '.join(lost)}."] if lost else []
        if not shown.answer.measured:
            self.remarks.append("Nothing is measured: a picture of what is likely, not of what is.")


def _sweep(swept: Taken, a: Xy, b: Xy) -> None:
    """Where a link runs, words keep away if they can."""
    steps = max(int(math.dist(a, b) / 8), 1)
    for n in range(steps + 1):
        x, y = a[0] + (b[0] - a[0]) * n / steps, a[1] + (b[1] - a[1]) * n / steps
        swept.take(Rect(x - 1, y - 1, x + 1, y + 1))


def how_much(cover: Cover) -> str:
    """In words, how much of the storey is likely."""
    inside = cover.inside
    share = float((cover.likely & inside).sum() / max(int(inside.sum()), 1))
    for least, words in (
        (0.995, "everywhere on"),
        (0.9, "nearly everywhere on"),
        (0.5, "on more than half of"),
        (0.005, "on less than half of"),
    ):
        if share >= least:
            return f"Likely {words} this storey."
    return "Likely nowhere on this storey."


def what_first(schedule: Schedule, network: str, storey: str | None = None) -> list[str]:
    """What the survey lacks before radio can be drawn, or drawn well on a storey: a sentence each."""
    house = schedule.house
    one = house.networks[network]
    if one.controller_place is None:
        return [f"State where the controller of {one.name} stands; radio is drawn from there."]
    spot = house.boxes.get(one.controller_place) or house.places[one.controller_place]
    if spot.position is None or house.rooms[spot.room].storey is None:
        lacking = "the position" if spot.position is None else f"the storey of room {spot.room}"
        return [f"State {lacking} of {one.controller_place}, where the controller of {one.name} stands."]
    if storey is None:
        return []
    rooms = [r for r in house.rooms.values() if r.storey == storey]
    walls = [w for w in house.walls.values() if w.storey == storey]
    if not walls and not any(r.outline_mm for r in rooms):
        return ["State outlines and walls of this storey; until then little can be told of it."]
    if not walls:
        return ["State the walls of this storey; until then they count as anything from none to no link."]
    return []
