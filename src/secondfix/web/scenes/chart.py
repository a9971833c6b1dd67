"""The scene schedule as markup, its crossings made once for every edit: a large house has thousands."""

from html import escape

from secondfix.actions.air import air_of
from secondfix.actions.scenes import Resolved, scenes
from secondfix.house import House, Load
from secondfix.scenes import Air, Cell, SceneSchedule, by_room, scene_schedule
from secondfix.terms import PURPOSES
from secondfix.web.frame.asked import Asked
from secondfix.web.templatetags.words import mark

Row = tuple[str, tuple[str, ...]]


def resolved_of(about: Asked) -> Resolved:
    """What every scene does, how long it takes, and what is wrong with it."""
    return about.once("scenes", lambda a: scenes(a.house, assumptions=a.firm.assumptions, air=_air_of(a)))


def tried_of(about: Asked, made: House) -> Resolved:
    """The same of a house that differs from this one in its scenes alone."""
    return scenes(made, assumptions=about.firm.assumptions, air=_air_of(about))


def _air_of(about: Asked) -> Air:
    return about.once("air", lambda a: air_of(a.house, a.reached))


def chart_of(about: Asked) -> SceneSchedule:
    """The same as a chart."""
    resolved = resolved_of(about)
    return about.once("scene chart", lambda _: scene_schedule(resolved.resolutions, resolved.times))


def body_of(about: Asked, shown: str) -> str:
    """Every load a row; ``shown`` is the scene that a narrow screen has alone."""
    at = next((n for n, c in enumerate(chart_of(about).columns) if c.scene_id == shown), -1)
    return "\n".join(f"<tr>{head}{_cells(cells, at)}</tr>" for head, cells in about.once("scene rows", _rows))


def _cells(cells: tuple[str, ...], at: int) -> str:
    return "".join(
        f'<td class="{"crossing here" if n == at else "crossing"}">{c}</td>' for n, c in enumerate(cells)
    )


def _rows(about: Asked) -> list[Row]:
    chart, house = chart_of(about), about.house
    ids = [c.scene_id for c in chart.columns]
    made, before = [], ""
    for load_id, cells in by_room(house, chart):
        load = house.loads[load_id]
        head = _head(house, load_id, load, first=load.room != before)
        before = load.room
        made.append((head, tuple(_crossing(f"{s}.{load_id}", c) for s, c in zip(ids, cells, strict=True))))
    return made


def _head(house: House, load_id: str, load: Load, *, first: bool) -> str:
    room, name = escape(house.rooms[load.room].name), escape(load.name)
    purpose = PURPOSES[load.purpose].label if load.purpose else "not known"
    begins = ' class="room begins"' if first else ' class="room"'
    shown = room if first else f'<span class="apart">{room}</span>'
    return (
        f'<td{begins}>{shown}</td><th scope="row"><span class="soft">{load_id}</span> {name}'
        f'<small class="in-room">{room}</small></th>'
        f'<td class="purpose soft">{purpose}</td>'
    )


def _crossing(at: str, cell: Cell) -> str:
    return f'<a href="?at={at}#crossing" data-at="{at}">{words_of(cell)}</a>'


def words_of(cell: Cell) -> str:
    """A crossing as the chart has it: the strong face for what is switched, its shape for what is noted."""
    words = escape(cell.words)
    if cell.noted:
        face = "word act" if cell.shape in {"danger", "fault"} else "word"
        return f'{mark(cell.shape)} <strong class="{face}">{words}</strong>'
    if not cell.named:
        return f'<span aria-hidden="true">{words}</span><span class="apart">not named</span>'
    return (
        f"<strong>{words}</strong>"
        if words.startswith(("on", "off"))
        else f'<span class="soft">{words}</span>'
    )
