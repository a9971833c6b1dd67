"""Links: what an array of margins must be, and how a radio answer becomes one."""

import numpy as np
import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import schedule
from secondfix.joining import CONTROLLER, NetworkLinks, links_of, walk
from secondfix.radio import reach
from tests import example_house

DEFAULTS = default_assumptions()


def test_margins_that_differ_by_direction_are_refused() -> None:
    with pytest.raises(ValueError, match="weaker direction"):
        NetworkLinks((CONTROLLER, "D1"), np.array([[0.0, 1.0], [2.0, 0.0]]))


@pytest.mark.parametrize("ids", [(CONTROLLER,), ("D1", "D1")])
def test_margins_that_do_not_fit_their_ids_are_refused(ids: tuple[str, ...]) -> None:
    with pytest.raises(ValueError, match="one row and one column"):
        NetworkLinks(ids, np.zeros((2, 2)))


def test_a_radio_answer_gives_links_to_the_controller_and_unplaced_devices_unknown_ones() -> None:
    house = example_house.house()
    rows = schedule(house, house.models)
    found = links_of(reach(rows, DEFAULTS), DEFAULTS)["N1"]
    assert set(found.ids) == {CONTROLLER, "D01", "D02"}
    here, root, bed = (found.ids.index(i) for i in ("D01", CONTROLLER, "D02"))
    assert found.margin_db[here, root] > 10
    assert np.isnan(found.margin_db[bed, root])


def test_the_walk_takes_a_radio_answer() -> None:
    house = example_house.house()
    rows = schedule(house, house.models)
    found = walk(rows, links_of(reach(rows, DEFAULTS), DEFAULTS), DEFAULTS)
    assert (found.joins()[0].device, found.joins()[0].parent) == ("D01", CONTROLLER)
