"""What a person waits for years later: a swap worked out, and a device list read and held against a house."""

from __future__ import annotations

import csv
import io
from functools import cache
from pathlib import Path

from bench.figures import Pair, figure, seconds_side_by_side
from secondfix.actions import check, swap
from secondfix.assumptions import default_assumptions
from secondfix.exchange import Table, read_csv
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.journal import Folded, Journal, fold
from secondfix.maintenance import ListRow, Unit, reconcile
from secondfix.naming import Names, names

DEMO = Path(__file__).parents[1] / "demo" / "house-mended.json"
ROWS = 100_000


@cache
def house() -> House:
    read = read_house(DEMO.read_bytes(), where="demo", models=shipped_models())
    assert isinstance(read, House)
    return read


@cache
def asked() -> tuple[Schedule, Folded, Names]:
    rows = schedule(house(), house().models)
    return rows, fold(house(), Journal()), names(rows)


@cache
def listed() -> tuple[ListRow, ...]:
    """The demo house's own entries again and again, under addresses that nobody knows but for the first."""
    return tuple(ListRow(n, address=f"{n:016X}", endpoint=1 + n % 4, name=f"Lamp {n}") for n in range(ROWS))


@cache
def text() -> bytes:
    lines = (f"{n:016X};{n % 4};Lamp {n};Hall;lamp" for n in range(ROWS))
    return ("Body;Part;Called;Where;Use\n" + "\n".join(lines)).encode()


@figure("a swap that loses something, every other model tried too, against one check of the house", unit="s")
def swapping() -> Pair:
    models, assumed = shipped_models(), default_assumptions()

    def one_swap() -> object:
        units = [Unit("plimmet-osier-one@1")]
        return swap.swap(house(), Journal(), "D15", units, models=models, assumptions=assumed)

    return seconds_side_by_side(one_swap, lambda: check.check(house(), assumptions=assumed), rounds=3)


@figure("a device list of 100,000 rows against the demo house, against a look-up of each row alone", unit="s")
def reconciling() -> Pair:
    rows, folded, named = asked()
    known = {d.address for d in house().devices.values()}
    return seconds_side_by_side(
        lambda: reconcile(rows, folded, named, listed()),
        lambda: [row for row in listed() if row.address not in known],
        rounds=3,
    )


@figure("reading a device list of 100,000 rows, against the standard reader of CSV alone", unit="s")
def reading_a_list() -> Pair:
    def read() -> Table:
        table = read_csv(text(), where="bench")
        assert isinstance(table, Table)
        return table

    return seconds_side_by_side(
        read, lambda: list(csv.reader(io.StringIO(text().decode()), delimiter=";")), rounds=3
    )
