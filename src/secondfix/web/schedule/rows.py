"""The rows of the switch schedule as the page has them, each made once for every edit.

A sheet of a large house has ten thousand cells: they are put together here rather than by a template.
"""

from collections import defaultdict
from collections.abc import Iterator
from html import escape

from secondfix.exchange import Column, columns_of, shown_row
from secondfix.findings import Finding
from secondfix.house import House, Row
from secondfix.papers import SHAPE_WORDS, shape_of
from secondfix.web.frame.asked import Asked
from secondfix.web.frame.softened import softened
from secondfix.web.templatetags.words import mark

_MOST_ANSWERS = 2
ANSWERS_AFTER = "load"
"""The column behind which the answers stand: what a gang is for is read first, on a phone too."""


def heads(about: Asked) -> tuple[Column, ...]:
    """The columns that can be filled in."""
    return columns_of(about.house)


def rows_of(about: Asked, like: Asked | None = None) -> dict[str, str]:
    """The markup of every gang's row by its id; those as they stood in ``like`` are taken over."""
    return about.once("schedule rows", lambda house: _rows(house, like))


def changed_rows(before: Asked, after: Asked) -> dict[str, str]:
    """Rows of ``after`` that are new or not as they were."""
    was = rows_of(before)
    return {place: row for place, row in rows_of(after, before).items() if was.get(place) != row}


def _rows(about: Asked, like: Asked | None) -> dict[str, str]:
    answers = _answers_by_row(about)
    stood = {}
    if like is not None and _named_alike(about.house, like.house):
        was, answered = rows_of(like), _answers_by_row(like)
        stood = {
            place: was[place]
            for place, row in about.rows.rows.items()
            if _same(about, row, like, like.rows.rows.get(place)) and answers[place] == answered[place]
        }
    return {
        place: stood[place] if place in stood else _row(about, row, *answers[place])
        for place, row in about.rows.rows.items()
    }


def _answers_by_row(about: Asked) -> dict[str, tuple[bool, list[Finding]]]:
    """By gang: whether it is the first of its box, and the findings that its row shows."""
    return about.once("answers by row", _sorted_to_rows)


def _sorted_to_rows(about: Asked) -> dict[str, tuple[bool, list[Finding]]]:
    at: defaultdict[str, list[Finding]] = defaultdict(list)
    for finding in about.checked.findings:
        if finding.severity is not None:
            at[finding.place].append(finding)
    before = ""
    found = {}
    for place, row in about.rows.rows.items():
        first = row.box_id != before
        before = row.box_id
        found[place] = (first, [*at[place], *(at[row.box_id] if first else ()), *_of_parts(row, at)])
    return found


def _named_alike(one: House, other: House) -> bool:
    """Whether both houses have the same columns, and the same rooms and circuits to name in them."""
    return (
        columns_of(one) == columns_of(other) and one.rooms == other.rooms and one.circuits == other.circuits
    )


def _same(about: Asked, row: Row, like: Asked, was: Row | None) -> bool:
    """Whether a row shows what it showed, its answers aside: an edit shares all that it leaves alone."""
    return (
        was is not None
        and row.box is was.box
        and row.mount is was.mount
        and row.gang is was.gang
        and row.load is was.load
        and row.model is was.model
        and row.device_id == was.device_id
        and about.house.loads.get(row.gang.load or "") is like.house.loads.get(row.gang.load or "")
    )


def _of_parts(row: Row, at: defaultdict[str, list[Finding]]) -> Iterator[Finding]:
    """Findings at the load of the gang; at the device, on its first gang."""
    if row.load_id:
        yield from at[row.load_id]
    if row.device_id and row.channel == 1:
        yield from at[row.device_id]


def _row(about: Asked, row: Row, first: bool, findings: list[Finding]) -> str:
    texts = shown_row(about.house, row)
    told = f'<td role="gridcell" class="answers">{_answers(findings)}</td>'
    cells = "".join(
        f'<td role="gridcell" tabindex="-1" data-key="{key}">{softened(text)}</td>'
        f"{told if key == ANSWERS_AFTER else ''}"
        for key, text in texts.items()
    )
    box = f' id="{row.box_id}"' if first else ""
    anchor = f'<span id="{row.id}"></span>'
    device = (
        escape(f"{row.device_id} {row.model.title if row.model else 'model not chosen'}")
        if row.device_id
        else ""
    )
    return (
        f'<tr role="row" data-place="{row.id}"{box}{" class=box" if first else ""}>'
        f'<th role="rowheader" scope="row">{anchor}<a href="box/{row.box_id}">{row.id}</a></th>'
        f'{cells}<td role="gridcell" class="soft">{device}</td></tr>'
    )


def _answers(findings: list[Finding]) -> str:
    shown = "".join(
        f"<p>{mark(shape_of(f))} <strong>{SHAPE_WORDS[shape_of(f)]}</strong> {escape(f.says)}</p>"
        for f in findings[:_MOST_ANSWERS]
    )
    more = len(findings) - _MOST_ANSWERS
    return shown + (f"<p>and {more} more</p>" if more > 0 else "")
