"""Text for people on the command line: wrapped, indented, no colour code carries meaning."""

import shutil
import textwrap
from collections.abc import Sequence


def width() -> int:
    """Columns to use: the terminal's, between 60 and 110; 100 where there is none."""
    return max(60, min(110, shutil.get_terminal_size((100, 24)).columns))


def para(text: str, *, indent: int = 0, hang: int = 0) -> str:
    """One paragraph, wrapped; further lines indented by ``hang`` more."""
    return textwrap.fill(
        text, width(), initial_indent=" " * indent, subsequent_indent=" " * (indent + hang),
        break_long_words=False, break_on_hyphens=False,
    )  # fmt: skip


def table(head: Sequence[str], rows: Sequence[Sequence[str]], *, indent: int = 0) -> str:
    """Columns as wide as their widest cell; the last is wrapped to what is left.

    On a page narrower than 80, as on a phone, where less than 20 would be left each row is a paragraph.
    """
    columns = [max(len(str(row[i])) for row in (head, *rows)) for i in range(len(head))]
    room = width() - indent - sum(w + 2 for w in columns[:-1])
    if width() < 80 and room < min(20, columns[-1]):
        return "\n".join(_row_alone(head, row, indent) for row in rows)
    room = max(20, room)
    lines: list[str] = []
    for row in (head, *rows):
        last = textwrap.wrap(str(row[-1]), room, break_long_words=False, break_on_hyphens=False) or [""]
        front = "".join(f"{cell:<{w + 2}}" for cell, w in zip(row[:-1], columns, strict=False))
        lines.append(" " * indent + front + last[0])
        lines += [" " * (indent + len(front)) + more for more in last[1:]]
    return "\n".join(line.rstrip() for line in lines)


def _row_alone(head: Sequence[str], row: Sequence[str], indent: int) -> str:
    """One row in words: its first cell, then each filled cell after the head of its column."""
    cells = [f"{h}: {c}" for h, c in zip(head[1:], row[1:], strict=True) if str(c)]
    return para(f"{row[0]}  {'; '.join(cells)}", indent=indent, hang=4)


def percent(chance: float) -> str:
    """A chance that never reads as certainty."""
    return "over 99 %" if chance > 0.99 else "under 1 %" if chance < 0.01 else f"{chance * 100:.0f} %"


def counted(n: int, one: str, many: str | None = None) -> str:
    """``3 faults``, ``1 fault``, ``no fault``."""
    return f"{n or 'no'} {one if n in {0, 1} else many or one + 's'}"
