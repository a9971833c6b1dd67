"""Names of our own making stay within what the tightest protocol stores, for rooms of ordinary names."""

from secondfix.house import Duty
from secondfix.naming import names
from secondfix.naming.limits import LEAST_BYTES
from secondfix.naming.policy import TIGHT_BYTES
from tests.demo.test_demo_houses import TROUBLED, house_of, schedule


def test_the_tight_limit_is_that_of_the_tightest_place() -> None:
    assert TIGHT_BYTES == LEAST_BYTES


def test_gangs_that_feed_nothing_have_names_that_fit_and_differ() -> None:
    house = house_of(TROUBLED)
    idle = [e for e in names(schedule(house, house.models)).entries() if e.duty not in {None, Duty.FEEDS}]
    assert {e.name for e in idle} >= {"Hall B11.1", "Landing B12.3", "Kitchen B02.4", "Utility B07.3"}
    assert len({e.name for e in idle}) == len(idle)
    assert max(len(e.name.encode()) for e in idle) <= LEAST_BYTES
