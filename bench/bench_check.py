"""What a person waits for: `check` from a cold start, and how it grows with the house.

The terrace is the demo house over and over, with all its trouble: findings are dear, not only boxes.
"""

from __future__ import annotations

import json
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

from bench.figures import Pair, figure, process, seconds_side_by_side
from bench.terrace import terrace

DEMO = Path(__file__).parents[1] / "demo" / "house.json"
SECONDFIX = str(Path(sys.executable).with_name("secondfix"))
READ = """
import sys, pathlib
from secondfix.files import shipped_models
from secondfix.house import House, read_house
read = read_house(pathlib.Path(sys.argv[1]).read_bytes(), where="terrace", models=shipped_models())
sys.exit(not isinstance(read, House))
"""


def check(folder: str, boxes: int) -> Callable[[], None]:
    """A cold `check` of a terrace; faults are found (1) or cannot be told (3), but it must answer."""
    return process([SECONDFIX, "check", written(folder, boxes), "--json"], stands=(0, 1, 3))


def written(folder: str, boxes: int) -> str:
    target = Path(folder) / f"terrace-{boxes}.json"
    if not target.exists():
        house = json.loads(DEMO.read_text(encoding="utf-8"))
        target.write_text(json.dumps(terrace(house, boxes=boxes)), encoding="utf-8")
    return str(target)


@figure("check of 300 boxes, cold process, against reading the same house alone", unit="s")
def three_hundred() -> Pair:
    with tempfile.TemporaryDirectory() as folder:
        reading = process([sys.executable, "-c", READ, written(folder, 300)])
        return seconds_side_by_side(check(folder, 300), reading)


@figure("check of 3000 boxes, cold process, against 300", unit="s")
def ten_times() -> Pair:
    with tempfile.TemporaryDirectory() as folder:
        return seconds_side_by_side(check(folder, 3000), check(folder, 300), rounds=3)
