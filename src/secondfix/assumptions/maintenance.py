"""Assumptions of maintenance: how long it takes to put a network back after its controller was replaced."""

from secondfix.assumptions.assumption import Assumption

_CP = "common practice, no source"
_MOST = {"min": 24 * 60, "s": 60 * 60}


def _time(name: str, span: tuple[int, int, int], unit: str, means: str) -> Assumption:
    low, value, high = span
    return Assumption(name, value, low, high, unit, means, _CP, least=0, most=_MOST[unit])


ASSUMPTIONS: tuple[Assumption, ...] = (
    _time("rejoin_near_min", (2, 4, 8), "min", "joining one device again, next to the controller"),
    _time("rejoin_far_min", (4, 8, 20), "min", "joining one device again, through others"),
    _time("rename_entry_s", (15, 40, 120), "s", "giving one entry its name and purpose again"),
    _time("teach_scene_min", (4, 10, 30), "min", "teaching one scene again and trying it"),
    _time("retest_gang_s", (15, 30, 90), "s", "function test of one gang"),
    _time("restore_backup_min", (15, 40, 120), "min", "a new controller with the backup restored"),
)
