"""A controller replaced: what survives, what is done again, in which order, for how long."""

from pathlib import Path

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.joining import links_of, walk
from secondfix.maintenance import Kept, Rebuilt, controller_replaced
from secondfix.naming import names
from secondfix.radio import reach

ASSUMED = default_assumptions()


@pytest.fixture(scope="module")
def rows(tree: Path) -> Schedule:
    house = read_house((tree / "demo/house.json").read_bytes(), where="demo", models=shipped_models())
    assert isinstance(house, House)
    return schedule(house, house.models)


def rebuilt(rows: Schedule, kept: Kept, *, not_in_backup: tuple[str, ...] = ()) -> Rebuilt:
    order = walk(rows, links_of(reach(rows, ASSUMED), ASSUMED), ASSUMED)
    return controller_replaced(
        rows, "N1", kept, walk=order, names=names(rows), assumptions=ASSUMED, not_in_backup=not_in_backup
    )


def test_with_nothing_kept_every_device_joins_again_in_the_order_of_the_walk(rows: Schedule) -> None:
    found = rebuilt(rows, Kept.NOTHING)
    members = [d for d, o in rows.house.devices.items() if o.network == "N1"]
    assert sorted(o.device for o in found.order) == sorted(members)
    order = walk(rows, links_of(reach(rows, ASSUMED), ASSUMED), ASSUMED)
    assert [o.device for o in found.order] == [s.device for s in order.joins() if s.device in members]


def test_a_backup_with_its_keys_leaves_nothing_to_join(rows: Schedule) -> None:
    found = rebuilt(rows, Kept.BACKUP_WITH_KEYS)
    assert found.order == ()
    assert {p.what for p in found.parts if p.count} == {"restore the backup", "function tests"}


def test_what_joined_after_the_backup_joins_again(rows: Schedule) -> None:
    assert [o.device for o in rebuilt(rows, Kept.BACKUP_WITH_KEYS, not_in_backup=("D07",)).order] == ["D07"]


def test_the_hours_are_the_counts_times_the_assumptions(rows: Schedule) -> None:
    found = rebuilt(rows, Kept.NOTHING)
    per = {
        "join again, near": ("rejoin_near_min", 1), "join again, far": ("rejoin_far_min", 1),
        "name and purpose": ("rename_entry_s", 60), "scenes": ("teach_scene_min", 1),
        "function tests": ("retest_gang_s", 60),
    }  # fmt: skip
    for part in found.parts:
        name, divide = per[part.what]
        assert part.minutes == pytest.approx([part.count * v / divide for v in ASSUMED.span(name)])
    low, value, high = found.minutes
    assert low < value < high
    assert value == pytest.approx(sum(p.minutes[1] for p in found.parts))
