"""The decision page on the loss of a path shows what the three models say today."""

from pathlib import Path

import numpy as np

from secondfix.assumptions import default_assumptions
from secondfix.files import shipped_models
from secondfix.house import House, read_house
from secondfix.radio import find_paths
from secondfix.radio.losses import path_losses_db
from secondfix.radio.multiwall import multi_wall_losses_db
from secondfix.radio.p1238 import DWELLING, dwelling_floors_db, older_site_loss_db

MHZ = 2440.0
BETWEEN = ("nothing", "one wall", "two walls", "three walls")


def rows_now(house: House) -> list[str]:
    """The rows of the table: by floors and walls between."""
    paths = find_paths(house, default_assumptions())
    level = np.array([surface.level for surface in paths.surfaces])[paths.crossed]
    many = len(paths.first)
    floors = np.bincount(paths.at_pair[level], minlength=many)
    walls = np.bincount(paths.at_pair[~level], minlength=many)
    ours = path_losses_db(paths, [MHZ])[1]
    cost231 = multi_wall_losses_db(paths, frequency_mhz=MHZ)
    p1238 = np.array(
        [
            older_site_loss_db(
                distance_m=max(float(far), 1.0),
                frequency_mhz=MHZ,
                power_coefficient=DWELLING,
                floors_db=dwelling_floors_db(floors=int(n)),
            )
            for far, n in zip(paths.distance_m, floors, strict=True)
        ]
    )
    out = []
    for floor in (0, 1):
        for wall, words in enumerate(BETWEEN):
            these = (floors == floor) & (walls == wall) & (paths.first != paths.second)
            figures = (ours[these].mean(), (cost231 - ours)[these].mean(), (p1238 - ours)[these].mean())
            told = " | ".join(f"{figure + 0:.1f}".replace("-", "−") for figure in np.round(figures, 1))
            what = words if not floor else "a floor" if not wall else f"a floor and {words}"
            out.append(f"| {what} | {these.sum()} | {told} |")
    return out


def test_the_page_shows_the_figures_of_today(tree: Path) -> None:
    read = read_house((tree / "demo/house.json").read_bytes(), where="demo", models=shipped_models())
    assert isinstance(read, House)
    page = (tree / "docs/decisions/loss-model.md").read_text(encoding="utf-8")
    shown = [line for line in page.splitlines() if line.startswith("| ") and "between" not in line]
    assert shown == rows_now(read)
