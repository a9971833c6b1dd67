"""ITU-R P.1238, both forms, against figures that this code did not compute."""

import pytest

from secondfix.radio.openspace import free_space_loss_db
from secondfix.radio.p1238 import (
    DWELLING,
    FITS,
    OFFICE_900_MHZ,
    Site,
    dwelling_floors_db,
    older_site_loss_db,
    site_loss_db,
)

# Each row: a, b, g, spread. Source: P.1238-13 (09/2025), same floor, as one open implementation holds it
# (secondary). Exact: compared as printed.
ROWS = {
    Site.OFFICE_SEEN: (1.47, 34.17, 2.08, 3.68),
    Site.OFFICE_UNSEEN: (2.39, 30.13, 2.40, 5.01),
    Site.CORRIDOR_SEEN: (1.57, 29.46, 2.24, 3.77),
    Site.CORRIDOR_UNSEEN: (2.78, 28.62, 2.54, 7.58),
    Site.INDUSTRIAL_SEEN: (2.27, 24.79, 2.10, 2.62),
    Site.INDUSTRIAL_UNSEEN: (2.80, 23.55, 2.16, 5.70),
    Site.CONFERENCE_SEEN: (1.56, 30.47, 2.23, 2.92),
    Site.CONFERENCE_UNSEEN: (1.40, 39.53, 2.37, 3.33),
}


@pytest.mark.parametrize("site", Site)
def test_the_rows_are_those_of_the_present_edition(site: Site) -> None:
    fit = FITS[site]
    assert (fit.a, fit.b, fit.g, fit.spread_db) == ROWS[site]


@pytest.mark.parametrize(
    ("site", "metres", "at_2440", "at_868"),
    [
        (Site.OFFICE_SEEN, 10, 56.93, 47.60),
        (Site.OFFICE_UNSEEN, 10, 63.33, 52.56),
        (Site.OFFICE_UNSEEN, 20, 70.52, 59.75),
        (Site.CORRIDOR_UNSEEN, 10, 66.26, 54.86),
    ],
)
def test_the_present_form(site: Site, metres: float, at_2440: float, at_868: float) -> None:
    # Source: computed apart from this code, 2440 and 868.4 MHz; two decimals.
    assert site_loss_db(site, distance_m=metres, frequency_mhz=2440) == pytest.approx(at_2440, abs=0.0051)
    assert site_loss_db(site, distance_m=metres, frequency_mhz=868.4) == pytest.approx(at_868, abs=0.0051)


@pytest.mark.parametrize(
    ("coefficient", "metres", "mhz", "expected_db"),
    [
        (DWELLING, 10, 2440, 67.75),
        (DWELLING, 10, 868.4, 58.77),
        (DWELLING, 20, 2440, 76.18),
        (DWELLING, 20, 868.4, 67.20),
        (OFFICE_900_MHZ, 10, 868.4, 63.77),
    ],
)
def test_the_older_form(coefficient: float, metres: float, mhz: float, expected_db: float) -> None:
    # Source: computed apart from this code; two decimals.
    found = older_site_loss_db(distance_m=metres, frequency_mhz=mhz, power_coefficient=coefficient)
    assert found == pytest.approx(expected_db, abs=0.0051)


def test_the_older_form_with_twenty_is_free_space() -> None:
    # Source: 32.45 dB of ITU-R P.525 with f in MHz and d in km (from memory) is -27.55 with d in m; the
    # older form rounds it to -28, so 0.45 dB apart.
    older = older_site_loss_db(distance_m=10, frequency_mhz=2440, power_coefficient=20)
    assert free_space_loss_db(distance_m=10, frequency_mhz=2440) - older == pytest.approx(0.45, abs=0.005)


def test_floors_of_a_dwelling() -> None:
    # Source: 4n at 1.8 to 2 GHz (secondary): exact.
    assert [dwelling_floors_db(floors=n) for n in range(4)] == [0, 4, 8, 12]
    ground = older_site_loss_db(distance_m=6, frequency_mhz=2000, power_coefficient=DWELLING)
    above = older_site_loss_db(
        distance_m=6, frequency_mhz=2000, power_coefficient=DWELLING, floors_db=dwelling_floors_db(floors=2)
    )
    assert above - ground == pytest.approx(8)


@pytest.mark.parametrize(("metres", "mhz"), [(1.9, 2440), (27.1, 2440), (10, 299)])
def test_outside_a_rows_range_nothing_is_told(metres: float, mhz: float) -> None:
    with pytest.raises(ValueError, match="is stated from"):
        site_loss_db(Site.OFFICE_SEEN, distance_m=metres, frequency_mhz=mhz)


def test_outside_the_older_form_nothing_is_told() -> None:
    with pytest.raises(ValueError, match="beyond 1 m"):
        older_site_loss_db(distance_m=0.9, frequency_mhz=2440, power_coefficient=DWELLING)
    with pytest.raises(ValueError, match="counted from 0"):
        dwelling_floors_db(floors=-1)
