"""The rows of the switch schedule as the page has them, each made once for every edit.

A sheet of a large house has ten thousand cells: they are put together here rather than by a template.
"""

from collections import defaultdict
from collections.abc import Iterator
from html import escape

from secondfix.exchange import Column, columns_of, shown_row
from secondfix.findings import Finding
from secondfix.house import Row
from secondfix.papers import SHAPE_WORDS, shape_of
from secondfix.web.frame.asked import Asked
from secondfix.web.frame.softened import softened
from secondfix.web.templatetags.words import mark

_MOST_ANSWERS = 2


def heads(about: Asked) -> tuple[Column, ...]:
    """The columns that can be filled in."""
    return columns_of(about.house)


def rows_of(about: Asked) -> dict[str, str]:
    """The markup of every gang's row by its id."""
    return about.once("schedule rows", _rows)


def changed_rows(before: Asked, after: Asked) -> dict[str, str]:
    """Rows of ``after`` that are new or not as they were."""
    was = rows_of(before)
    return {place: row for place, row in rows_of(after).items() if was.get(place) != row}


def _rows(about: Asked) -> dict[str, str]:
    at: defaultdict[str, list[Finding]] = defaultdict(list)
    for finding in about.checked.findings:
        if finding.severity is not None:
            at[finding.place].append(finding)
    before = ""
    made = {}
    for place, row in about.rows.rows.items():
        first = row.box_id != before
        before = row.box_id
        own = [*at[place], *(at[row.box_id] if first else ()), *_of_parts(row, at)]
        made[place] = _row(about, row, own, first=first)
    return made


def _of_parts(row: Row, at: defaultdict[str, list[Finding]]) -> Iterator[Finding]:
    """Findings at the load of the gang; at the device, on its first gang."""
    if row.load_id:
        yield from at[row.load_id]
    if row.device_id and row.channel == 1:
        yield from at[row.device_id]


def _row(about: Asked, row: Row, findings: list[Finding], *, first: bool) -> str:
    texts = shown_row(about.house, row)
    cells = "".join(
        f'<td role="gridcell" tabindex="-1" data-key="{key}">{softened(text)}</td>'
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
        f'<td role="gridcell" class="answers">{_answers(findings)}</td>{cells}'
        f'<td role="gridcell" class="soft">{device}</td></tr>'
    )


def _answers(findings: list[Finding]) -> str:
    shown = "".join(
        f"<p>{mark(shape_of(f))} <strong>{SHAPE_WORDS[shape_of(f)]}</strong> {escape(f.says)}</p>"
        for f in findings[:_MOST_ANSWERS]
    )
    more = len(findings) - _MOST_ANSWERS
    return shown + (f"<p>and {more} more</p>" if more > 0 else "")
