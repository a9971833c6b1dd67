"""A channel survey as a table (CSV or XLSX): who was heard on the air at 2.4 GHz, where, and how loud."""

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal

from secondfix.exchange.listing import read_list
from secondfix.exchange.table import Table, TableRow
from secondfix.house import Fault
from secondfix.radio import Sends, Transmitter

LARGEST_SURVEY_BYTES = 1024 * 1024
MOST_HEARD = 500
LONGEST_NAME = 80

_COLUMNS = ("kind", "channel", "second_channel", "width_mhz", "level_dbm", "duty_pct", "place", "name")
_ALSO = {"width": "width_mhz", "level": "level_dbm", "duty": "duty_pct"}
_NEEDED = ("channel", "level_dbm")
_NUMBER = re.compile(r"[-+]?\d{1,6}([.,]\d{1,6})?")


@dataclass(frozen=True, slots=True)
class AirSurvey:
    """Who was heard, in the order of the rows; ``told`` is what a person should know of the reading."""

    heard: tuple[Transmitter, ...]
    told: tuple[str, ...]


def read_air_survey(data: bytes, *, where: str, places: Collection[str]) -> AirSurvey | list[Fault]:
    """The survey, or all of its faults: each with row, column, what stands there and what was expected.

    ``places`` are ids of boxes and places of the house. Columns by name, capitals and spaces of no account:
    `channel` and `level_dbm`; `duty_pct`, `width_mhz`, `kind`, `second_channel`, `place` and `name` may be
    left out or empty. Other columns are not read, and told.
    """
    if len(data) > LARGEST_SURVEY_BYTES:
        return [Fault(where, "", f"{len(data):,} bytes", f"at most {LARGEST_SURVEY_BYTES:,} bytes")]
    table = read_list(data, where=where)
    if isinstance(table, list):
        return table
    if len(table.rows) > MOST_HEARD:
        return [Fault(where, "", f"{len(table.rows):,} rows", f"at most {MOST_HEARD} transmitters")]
    at = _columns(table)
    if isinstance(at, list):
        return at
    unread = [name for n, name in enumerate(table.columns) if n not in at.values()]
    told = [*table.told, *([f"Columns not read: {', '.join(unread)}."] if unread else [])]
    read = [_Row(row, at, where, places) for row in table.rows]
    heard = [row.transmitter() for row in read]
    faults = [fault for row in read for fault in row.faults]
    return faults or AirSurvey(tuple(one for one in heard if one is not None), tuple(told))


def _columns(table: Table) -> dict[str, int] | list[Fault]:
    """Our name for each column to its number."""
    at: dict[str, int] = {}
    for n, name in enumerate(table.columns):
        plain = re.sub(r"[\s_]+", "_", name.strip().casefold())
        ours = _ALSO.get(plain, plain)
        if ours in at:
            return [Fault(table.where, "header", f"'{ours}' twice", "each column once")]
        if ours in _COLUMNS:
            at[ours] = n
    lacking = [name for name in _NEEDED if name not in at]
    stands = ", ".join(table.columns)[:200]
    return [Fault(table.where, "header", stands, f"a column '{name}'") for name in lacking] or at


class _Row:
    """One row as it is read: its faults are gathered."""

    def __init__(self, row: TableRow, at: Mapping[str, int], where: str, places: Collection[str]) -> None:
        self._cells = {name: row.cells[n] for name, n in at.items()}
        self._number, self._where, self._places = row.number, where, places
        self.faults: list[Fault] = []

    def transmitter(self) -> Transmitter | None:
        """Who the row tells of; None where it has a fault."""
        kind = self._kind()
        channel = self._channel("channel", kind)
        width = self._width(kind)
        level = self._whole("level_dbm", -130, 20, "a level in dBm, -130 to 20, such as -67")
        one = (self._second(channel, width), self._duty(), self._place(), self._name())
        if self.faults or channel is None or level is None:
            return None
        second, duty, place, name = one
        return Transmitter(kind, channel, width, level, duty, place, name, second)

    def _fault(self, column: str, expected: str) -> None:
        stands = self._cells.get(column, "")
        shown = f"'{stands[:60]}'" if stands else "nothing"
        self.faults.append(Fault(self._where, f"row {self._number}, {column}", shown, expected))

    def _figure(self, column: str, *, unit: str = "") -> Decimal | None:
        text = self._cells.get(column, "").replace("\u2212", "-").removesuffix(unit).strip()
        return Decimal(text.replace(",", ".")) if _NUMBER.fullmatch(text) else None

    def _whole(self, column: str, least: int, most: int, expected: str) -> int | None:
        figure = self._figure(column)
        if figure is None or not least <= figure <= most:
            self._fault(column, expected)
            return None
        return int(figure.to_integral_value(ROUND_HALF_UP))

    def _kind(self) -> Sends:
        text = self._cells.get("kind", "").casefold().replace("-", "")
        if text in {"", *Sends}:
            return Sends(text or Sends.WIFI)
        self._fault("kind", "wifi or mesh (nothing: wifi)")
        return Sends.WIFI

    def _channel(self, column: str, kind: Sends) -> int | None:
        least, most = (11, 26) if kind is Sends.MESH else (1, 14)
        band = "what sends in another band is not in the way: leave the row out"
        figure = self._figure(column)
        if figure is None or figure % 1 or not least <= figure <= most:
            self._fault(column, f"a channel at 2.4 GHz, {least} to {most}; {band}")
            return None
        return int(figure)

    def _width(self, kind: Sends) -> int:
        widths, usual = ((2,), 2) if kind is Sends.MESH else ((20, 22, 40), 20)
        if not self._cells.get("width_mhz"):
            return usual
        figure = self._figure("width_mhz")
        if figure is None or figure not in widths:
            listed = " or ".join(map(str, widths))
            self._fault("width_mhz", f"{listed} MHz (nothing: {usual})")
            return usual
        return int(figure)

    def _second(self, channel: int | None, width: int) -> int | None:
        """The second channel of one 40 MHz wide: four above or below the first."""
        stands = bool(self._cells.get("second_channel"))
        if width != 40:
            if stands:
                self._fault("second_channel", "nothing, for it is not 40 MHz wide")
            return None
        second = self._figure("second_channel")
        if channel is None:
            return None
        fit = [n for n in (channel - 4, channel + 4) if 1 <= n <= 13]
        if second is None or second not in fit:
            self._fault(
                "second_channel", f"{' or '.join(map(str, fit)) or 'nothing'}, 40 MHz being two channels"
            )
            return None
        return int(second)

    def _duty(self) -> int | None:
        if not self._cells.get("duty_pct"):
            return None
        figure = self._figure("duty_pct", unit="%")
        if figure is None or not 0 <= figure <= 100:
            self._fault(
                "duty_pct", "the share of time that it sends, 0 to 100 %, such as 12.5 (nothing: not known)"
            )
            return None
        return int((figure * 10).to_integral_value(ROUND_HALF_UP))

    def _place(self) -> str | None:
        text = self._cells.get("place", "")
        if text and text not in self._places:
            self._fault("place", "the id of a box or place of the house (nothing: the whole house)")
        return text or None

    def _name(self) -> str:
        text = self._cells.get("name", "")
        if len(text) > LONGEST_NAME or not text.isprintable():
            self._fault("name", f"at most {LONGEST_NAME} characters on one line")
        return text
