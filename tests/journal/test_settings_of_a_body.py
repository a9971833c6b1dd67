"""Settings and codes of devices: said in the visit that fits them, in any order; gone with the body."""

from itertools import permutations
from typing import Any

import pytest

from secondfix.house import as_canonical_json
from secondfix.journal import AsBuilt, Entry, as_built, journal_of
from tests.journal.writing import FIT_D31, HOUSE, write

PATH = "devices.D31.after_power_loss"
FIT = write(1, "fitted", "device:D31", code_ref="K31", **FIT_D31)
JOINED = write(2, "joined", "device:D31", network="N1", address="00124B0000C0FFEE", sees=(1,))


def setting(number: int, found: Any = "off", *, sees: tuple[int, ...] = (), path: str = PATH) -> Entry:
    return write(
        number, "survey_corrected", f"device:{path.split('.')[1]}", path=path, found=found, sees=sees
    )


def built(*entries: Entry) -> AsBuilt:
    return as_built(HOUSE, journal_of(entries), models={})


@pytest.mark.parametrize("sees", [(), (1,), (2,)], ids=["of nothing", "the fitting", "the joining"])
def test_a_setting_of_a_device_fitted_in_the_same_visit_is_taken_up_in_any_order(
    sees: tuple[int, ...],
) -> None:
    entries = (FIT, JOINED, setting(3, sees=sees))
    houses = [built(*order) for order in permutations(entries)]
    assert {as_canonical_json(b.house) for b in houses} == {as_canonical_json(houses[0].house)}
    device = houses[0].house.devices["D31"]
    assert device.after_power_loss == "off"
    assert device.address == "00124B0000C0FFEE"
    assert not [t for t in houses[0].told if t.serious]


def test_a_setting_that_the_model_lacks_is_told_and_leaves_the_fitting_alone() -> None:
    b = built(FIT, JOINED, setting(3, "on"))
    assert b.house.devices["D31"].after_power_loss is None
    assert b.house.devices["D31"].address == "00124B0000C0FFEE"
    assert [t.words for t in b.told] == [f"does not fit {PATH}: 'on'; corvell-pair@1 can be set to off, last"]


def test_a_setting_made_before_another_body_was_fitted_is_not_known_of_the_new_one() -> None:
    again = write(4, "fitted", "device:D31", sees=(3,), **{**FIT_D31, "code_ref": "K32"})
    b = built(FIT, setting(3, sees=(1,)), again)
    assert b.house.devices["D31"].after_power_loss is None
    assert b.house.devices["D31"].code_ref == "K32"
    later = setting(5, "last", sees=(4,))
    assert built(FIT, setting(3, sees=(1,)), again, later).house.devices["D31"].after_power_loss == "last"


def test_a_replacement_of_the_same_model_under_the_failed_ones_id_is_another_body() -> None:
    first = built(FIT, JOINED, setting(3, sees=(2,))).house
    again = write(6, "fitted", "device:D31", model="corvell-pair@1", code_ref="K40")
    device = as_built(first, journal_of([again]), models={}).house.devices["D31"]
    assert (device.code_ref, device.address, device.after_power_loss) == ("K40", None, None)
    assert (device.box, device.gangs) == ("B1", ("1", "2"))


def test_the_house_with_its_setting_is_left_alone_by_the_same_journal() -> None:
    entries = (FIT, JOINED, setting(3, sees=(2,)))
    b = built(*entries)
    again = as_built(b.house, journal_of(entries), models={})
    assert again.differences == ()


def test_two_settings_by_writers_who_did_not_know_of_each_other_are_a_conflict() -> None:
    b = built(FIT, setting(3, sees=(1,)), setting(4, "last", sees=(1,)))
    assert [c.aspect for c in b.folded.conflicts] == [PATH]
    assert b.house.devices["D31"].after_power_loss is None
