"""Assumptions of maintenance: how long it takes to put a network back after its controller was replaced."""

from secondfix.assumptions.assumption import Assumption

_CP = "common practice, no source"

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption("rejoin_near_min", 4, 2, 8, "min", "joining one device again, next to the controller", _CP),
    Assumption("rejoin_far_min", 8, 4, 20, "min", "joining one device again, through others", _CP),
    Assumption("rename_entry_s", 40, 15, 120, "s", "giving one entry its name and purpose again", _CP),
    Assumption("teach_scene_min", 10, 4, 30, "min", "teaching one scene again and trying it", _CP),
    Assumption("retest_gang_s", 30, 15, 90, "s", "function test of one gang", _CP),
    Assumption("restore_backup_min", 40, 15, 120, "min", "a new controller with the backup restored", _CP),
)  # fmt: skip
