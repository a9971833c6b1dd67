"""The COST 231 multi-wall model over paths: what counts as a light wall, a heavy one, a floor, or nothing."""

from typing import Any

import numpy as np
import pytest

from secondfix.assumptions import default_assumptions
from secondfix.radio import find_paths, reach, reach_as_json
from secondfix.radio.multiwall import multi_wall_losses_db
from secondfix.radio.openspace import multi_wall_loss_db
from tests.example_house import seen
from tests.radio.houses import brick, row_of_rooms, rows_of

DEFAULTS = default_assumptions()
FLOOR = seen([{"material": "concrete", "thickness_mm": 160}])


def counted(house: dict[str, Any], a: str, b: str) -> tuple[float, float, int]:
    """Loss between two places by the model, their distance, and how many surfaces lie between."""
    paths = find_paths(rows_of(house).house, DEFAULTS)
    ends = {paths.sites.places.index(a), paths.sites.places.index(b)}
    both = zip(paths.first.tolist(), paths.second.tolist(), strict=True)
    pair = next(n for n, found in enumerate(both) if set(found) == ends)
    loss = float(multi_wall_losses_db(paths, frequency_mhz=2440)[pair])
    return loss, float(paths.distance_m[pair]), len(paths.through(pair))


@pytest.mark.parametrize(
    ("layers", "light", "heavy"),
    [
        ([("brick", 100)], 0, 1),
        ([("brick", 90)], 1, 0),
        ([("brick", 60), ("air", 50), ("concrete", 40)], 0, 1),
        ([("plasterboard", 13), ("air", 150), ("plasterboard", 13)], 1, 0),
        ([("wood", 120)], 1, 0),
    ],
)
def test_a_wall_is_heavy_from_ten_centimetres_of_masonry(
    layers: list[tuple[str, int]], light: int, heavy: int
) -> None:
    house = row_of_rooms(2)
    del house["walls"]["W1"]["thickness_mm"]
    house["walls"]["W1"]["layers"] = seen([{"material": m, "thickness_mm": mm} for m, mm in layers])
    loss, far, between = counted(house, "B0", "B1")
    assert between == 1
    expected = multi_wall_loss_db(
        distance_m=far, frequency_mhz=2440, light_walls=light, heavy_walls=heavy, floors=0
    )
    assert loss == pytest.approx(expected)


def test_a_wall_of_unknown_layers_counts_as_the_assumed_one_and_a_door_as_light() -> None:
    house = row_of_rooms(3)
    del house["walls"]["W1"]["layers"]
    house["doors"] = {"D": {"wall": "W2", "along_mm": 0, "width_mm": 3000, "height_mm": 2100}}
    loss, far, between = counted(house, "B0", "B2")
    assert between == 2
    assert loss == pytest.approx(
        multi_wall_loss_db(distance_m=far, frequency_mhz=2440, light_walls=1, heavy_walls=1, floors=0)
    )


def test_floors_lie_on_the_models_curve_whatever_they_are_made_of() -> None:
    house = row_of_rooms(1)
    storeys = {f"S{n}": {"name": str(n), "level_mm": 2800 * n, "height_mm": 2500} for n in (1, 2)}
    house["storeys"] |= {
        key: storey | ({"floor": FLOOR} if key == "S1" else {}) for key, storey in storeys.items()
    }
    house["rooms"]["Up"] = {"name": "Loft", "storey": "S2"}
    house["walls"] |= {
        f"U{n}": {"storey": f"S{n}", "from_mm": [-900, -900], "to_mm": [-900, -800], "layers": brick()}
        for n in (1, 2)
    }
    at = {"x_mm": 2000, "y_mm": 60, "height_mm": 900}
    house["boxes"]["Top"] = house["boxes"]["B0"] | {"room": "Up", "position": at}
    house["devices"]["D9"] = house["devices"]["D0"] | {"box": "Top"}
    loss, far, between = counted(house, "B0", "Top")
    assert between == 2
    assert loss == pytest.approx(
        multi_wall_loss_db(distance_m=far, frequency_mhz=2440, light_walls=0, heavy_walls=0, floors=2)
    )


def test_the_other_models_loss_stands_beside_ours_when_numbers_are_asked_for() -> None:
    rows = rows_of(row_of_rooms(2))
    answer = reach(rows, DEFAULTS)
    told = reach_as_json(answer, numbers=True)["links"]
    bare = reach_as_json(answer)["links"]
    assert isinstance(told, list)
    assert isinstance(bare, list)
    assert [link["cost231_loss_db"] for link in bare] == [None] * len(told)
    link = next(link for link in told if {link["a"], link["b"]} == {"D0", "D1"})
    boxes_db = 2 * DEFAULTS.value("radio_plastic_box_db")
    by_hand = multi_wall_loss_db(distance_m=4, frequency_mhz=2440, light_walls=0, heavy_walls=1, floors=0)
    assert link["cost231_loss_db"] == pytest.approx(by_hand + boxes_db, abs=0.05)
    assert link["cost231_loss_db"] != link["loss_db"]


def test_walls_that_are_not_drawn_cannot_be_counted() -> None:
    house = row_of_rooms(2)
    house["walls"] = {}
    paths = find_paths(rows_of(house).house, DEFAULTS)
    lost = multi_wall_losses_db(paths, frequency_mhz=2440)
    apart = paths.first != paths.second
    assert np.isnan(lost[apart]).all()
    assert np.isfinite(lost[~apart]).all()
    links = list(reach(rows_of(house), DEFAULTS).links())
    assert links
    assert all(link.cost231_loss_db is None for link in links)
