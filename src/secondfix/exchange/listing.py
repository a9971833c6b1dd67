"""A device list, whatever its file is."""

from secondfix.exchange.csv_list import read_csv
from secondfix.exchange.table import LARGEST_LIST_BYTES, Table
from secondfix.exchange.xlsx_list import read_xlsx
from secondfix.house import Fault

_ZIP, _OLE = b"PK\x03\x04", b"\xd0\xcf\x11\xe0"


def read_list(
    data: bytes,
    *,
    where: str,
    delimiter: str | None = None,
    encoding: str | None = None,
    sheet: str | None = None,
) -> Table | list[Fault]:
    """The table of a CSV or XLSX file, told apart by how it begins and never by its name."""
    if len(data) > LARGEST_LIST_BYTES:
        return [Fault(where, "", f"{len(data):,} bytes", f"at most {LARGEST_LIST_BYTES:,} bytes")]
    if data[:4] in {_ZIP, _OLE}:
        return read_xlsx(data, where=where, sheet=sheet)
    return read_csv(data, where=where, delimiter=delimiter, encoding=encoding)
