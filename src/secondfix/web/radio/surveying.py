"""A channel survey as rows of a form, and back; and what it says of the channels, as rows of a table."""

import csv
import io
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from secondfix.actions.channels import OnAir, heard_in_file
from secondfix.house import Fault, House
from secondfix.radio import ChannelFigures, NetworkChannels, Sends, Share, Transmitter, cost_words
from secondfix.web.radio.words import percent, spanned

COLUMNS = ("kind", "channel", "width_mhz", "second_channel", "level_dbm", "duty_pct", "place", "name")
FRESH_ROWS = 3
MOST_ROWS = 100
WIDTHS = ("", "20", "22", "40")
WORDS_OF_KIND = {Sends.WIFI: "WLAN", Sends.MESH: "mesh"}
WHERE = "survey"
_AT = re.compile(r"^row (\d+)")


@dataclass(frozen=True, slots=True)
class Typed:
    """One row of the form: ``number`` as it stands there, and its texts by column."""

    number: int
    texts: Mapping[str, str]

    @property
    def empty(self) -> bool:
        """Whether nothing was typed; kind and width stand there from the beginning."""
        return not any(self.texts[c].strip() for c in COLUMNS if c not in {"kind", "width_mhz"})


def typed_rows(sent: Mapping[str, str]) -> list[Typed]:
    """The rows of a form that was sent, the empty ones too."""
    count = max((int(m.group(1)) for key in sent if (m := re.match(r"^channel\.(\d{1,3})$", key))), default=0)
    return [
        Typed(n, {c: sent.get(f"{c}.{n}", "")[:200] for c in COLUMNS})
        for n in range(1, min(count, MOST_ROWS) + 1)
    ]


def rows_of(heard: Sequence[Transmitter]) -> list[Typed]:
    """Who was heard, as rows of the form, and fresh ones after them."""
    return with_fresh([Typed(n, _texts(one)) for n, one in enumerate(heard[:MOST_ROWS], 1)])


def with_fresh(typed: Sequence[Typed]) -> list[Typed]:
    """The rows as they were typed, and fresh ones after them."""
    more = range(len(typed) + 1, min(len(typed) + FRESH_ROWS, MOST_ROWS) + 1)
    return [*typed, *(Typed(n, dict.fromkeys(COLUMNS, "")) for n in more)]


def _texts(one: Transmitter) -> dict[str, str]:
    duty = "" if one.duty_permille is None else f"{one.duty_permille / 10:g}"
    second = "" if one.second_channel is None else str(one.second_channel)
    radio = (one.kind.value, one.channel, one.width_mhz, second, one.level_dbm, duty)
    return dict(zip(COLUMNS, (*map(str, radio), one.place or "", one.name), strict=True))


def heard_in_rows(house: House, rows: Sequence[Typed]) -> OnAir | list[Fault]:
    """Who the typed rows tell of, read as a survey in a file is; faults name the rows of the form."""
    filled = [row for row in rows if not row.empty]
    out = io.StringIO()
    sheet = csv.writer(out)
    sheet.writerow(COLUMNS)
    sheet.writerows([_cell(row, c) for c in COLUMNS] for row in filled)
    read = heard_in_file(house, out.getvalue().encode(), where=WHERE)
    if isinstance(read, OnAir):
        return read
    return [
        replace(fault, path=_AT.sub(lambda m: _row_of(filled, int(m.group(1))), fault.path)) for fault in read
    ]


def _cell(row: Typed, column: str) -> str:
    """A mesh has one width, whatever stands in the field."""
    return "" if column == "width_mhz" and row.texts["kind"] == "mesh" else row.texts[column].strip()


def _row_of(filled: Sequence[Typed], line: int) -> str:
    """The row of the form behind a line of the file, whose first is the head."""
    return f"row {filled[line - 2].number}" if 0 <= line - 2 < len(filled) else f"row {line}"


@dataclass(frozen=True, slots=True)
class ChannelRow:
    """One channel of one network; ``mark`` says whether it is in use or best."""

    channel: int
    mhz: int
    mark: str
    cost: str
    clear: str
    worst: str
    lost: str


@dataclass(frozen=True, slots=True)
class Told:
    """One network: the answer in words, and its channels; ``devices`` are the shares of each device."""

    answer: NetworkChannels
    gain: str
    rows: tuple[ChannelRow, ...]
    heads: tuple[str, ...]
    devices: tuple[tuple[str, tuple[str, ...]], ...]


def told_of(answer: NetworkChannels) -> Told:
    """The answer of one network as tables."""
    now, best = answer.of(answer.in_use), answer.of(answer.best)
    shown = tuple(dict.fromkeys(c.channel for c in (now, best) if c is not None))
    columns = [c for n in shown if (c := answer.of(n)) is not None]
    devices = tuple(
        (device, (_shown(quiet), *(_shown(c.devices[device]) for c in columns)))
        for device, quiet in (answer.quiet or {}).items()
    )
    heads = ("On a quiet channel", *(f"On {c.channel}" for c in columns)) if devices else ()
    rows = tuple(ChannelRow(c.channel, c.mhz, _mark(answer, c), *_cells(c)) for c in answer.channels)
    return Told(answer, _shown(answer.gain) if answer.gain else "", rows, heads, devices)


def _cells(c: ChannelFigures) -> Iterator[str]:
    yield cost_words(c.added)
    yield "yes" if c.clear else "no"
    yield c.worst
    yield _shown(c.lost)


def _mark(answer: NetworkChannels, c: ChannelFigures) -> str:
    marks = (("in use", answer.in_use), ("best", answer.best))
    return ", ".join(word for word, channel in marks if channel == c.channel)


def _shown(share: Share) -> str:
    return f"{percent(share.assumed)} ({spanned(share.low, share.high)})"
