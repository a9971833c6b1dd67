"""ITU-R P.2040 slab losses against figures that this code did not compute."""

import math

import pytest

from secondfix.radio.material import TABLE, Constants, Validity, permittivity, validity
from secondfix.radio.openspace import free_space_loss_db, multi_wall_loss_db
from secondfix.radio.slab import Layer, Polarisation, Wave, coherent_loss_db, incoherent_loss_db
from secondfix.terms import LayerMaterial

# Source: ITU-R P.2040-4 Table 3 as held by sionna-rt 2.2.0, an independent open-source ray tracer (read
# there, not in the Recommendation). Exact: the rows are compared as printed.
TABLE_OF_THE_RAY_TRACER = {
    LayerMaterial.CONCRETE: (5.24, 0.0462, 0.7822),
    LayerMaterial.BRICK: (3.91, 0.0238, 0.16),
    LayerMaterial.PLASTERBOARD: (2.73, 0.0085, 0.9395),
    LayerMaterial.WOOD: (1.99, 0.0047, 1.0718),
    LayerMaterial.GLASS: (6.31, 0.0036, 1.3394),
    LayerMaterial.CEILING_BOARD: (1.48, 0.0011, 1.0750),
    LayerMaterial.CHIPBOARD: (2.58, 0.0217, 0.7800),
    LayerMaterial.PLYWOOD: (2.71, 0.33, 0.0),
    LayerMaterial.FLOORBOARD: (3.66, 0.0044, 1.3515),
    LayerMaterial.MARBLE: (7.074, 0.0055, 0.9262),
    LayerMaterial.METAL: (1.0, 1e7, 0.0),
}

# Normal-incidence losses in dB at 868.4, 908.4 and 2440 MHz. Source: computed apart from this code from
# the same table; that computation agreed with the slab function of sionna-rt 2.2.0 within 5.8e-5 dB over
# 20 layers, three frequencies, 0/30/60 degrees and both polarisations. Printed with three decimals, so
# the tolerance is half of the last digit and that agreement.
COHERENT = {
    (LayerMaterial.PLASTERBOARD, 12.5): (0.299, 0.318, 1.088),
    (LayerMaterial.PLASTERBOARD, 25): (0.761, 0.804, 1.215),
    (LayerMaterial.BRICK, 100): (2.647, 2.858, 3.213),
    (LayerMaterial.BRICK, 200): (5.014, 5.209, 5.842),
    (LayerMaterial.CONCRETE, 100): (4.846, 5.089, 8.069),
    (LayerMaterial.CONCRETE, 150): (5.377, 5.680, 11.484),
    (LayerMaterial.CONCRETE, 200): (7.491, 7.445, 14.760),
    (LayerMaterial.GLASS, 6): (0.369, 0.400, 1.946),
    (LayerMaterial.WOOD, 40): (0.582, 0.609, 0.614),
    (LayerMaterial.CHIPBOARD, 22): (0.941, 0.981, 1.745),
    (LayerMaterial.PLYWOOD, 18): (6.481, 6.477, 6.235),
    (LayerMaterial.CEILING_BOARD, 15): (0.041, 0.043, 0.171),
    (LayerMaterial.FLOORBOARD, 22): (1.000, 1.063, 1.486),
}
THREE_DECIMALS_DB = 0.0005 + 5.8e-5

# The same with the interference fringes averaged out, at 868.4 and 2440 MHz; source as above. Printed
# with two decimals.
INCOHERENT = {
    (LayerMaterial.PLASTERBOARD, 12.5): (0.62, 0.77),
    (LayerMaterial.PLASTERBOARD, 25): (0.71, 1.02),
    (LayerMaterial.BRICK, 100): (2.91, 3.25),
    (LayerMaterial.BRICK, 200): (4.84, 5.53),
    (LayerMaterial.CONCRETE, 100): (4.41, 8.09),
    (LayerMaterial.CONCRETE, 150): (5.89, 11.40),
    (LayerMaterial.CONCRETE, 200): (7.38, 14.71),
    (LayerMaterial.GLASS, 6): (1.64, 1.68),
    (LayerMaterial.WOOD, 40): (0.44, 0.82),
    (LayerMaterial.CHIPBOARD, 22): (0.93, 1.46),
    (LayerMaterial.PLYWOOD, 18): (7.39, 6.67),
    (LayerMaterial.CEILING_BOARD, 15): (0.10, 0.14),
    (LayerMaterial.FLOORBOARD, 22): (0.93, 1.14),
}
TWO_DECIMALS_DB = 0.005 + 5.8e-5


@pytest.mark.parametrize("material", TABLE_OF_THE_RAY_TRACER)
def test_the_constants_are_those_of_the_current_table(material: LayerMaterial) -> None:
    row = TABLE[material]
    assert (row.a, row.c, row.d) == TABLE_OF_THE_RAY_TRACER[material]
    assert row.b == 0


@pytest.mark.parametrize(("material", "thickness_mm"), COHERENT)
def test_coherent_loss_at_normal_incidence(material: LayerMaterial, thickness_mm: float) -> None:
    layers = [Layer(material, thickness_mm)]
    found = [coherent_loss_db(layers, Wave(mhz)) for mhz in (868.4, 908.4, 2440)]
    assert found == pytest.approx(COHERENT[material, thickness_mm], abs=THREE_DECIMALS_DB)


@pytest.mark.parametrize(("material", "thickness_mm"), INCOHERENT)
def test_incoherent_loss_at_normal_incidence(material: LayerMaterial, thickness_mm: float) -> None:
    layers = [Layer(material, thickness_mm)]
    found = [incoherent_loss_db(layers, Wave(mhz)) for mhz in (868.4, 2440)]
    assert found == pytest.approx(INCOHERENT[material, thickness_mm], abs=TWO_DECIMALS_DB)


@pytest.mark.parametrize(
    ("layers", "expected"),
    [
        (
            [
                Layer(LayerMaterial.PLASTERBOARD, 12.5),
                Layer(LayerMaterial.AIR, 75),
                Layer(LayerMaterial.PLASTERBOARD, 12.5),
            ],
            (0.35, 0.40, 0.95),
        ),
        (
            [Layer(LayerMaterial.GLASS, 4), Layer(LayerMaterial.AIR, 16), Layer(LayerMaterial.GLASS, 4)],
            (0.49, 0.52, 0.16),
        ),
    ],
    ids=["stud wall", "uncoated double glazing"],
)
def test_layers_by_transfer_matrix(layers: list[Layer], expected: tuple[float, ...]) -> None:
    # Source as COHERENT, two decimals.
    found = [coherent_loss_db(layers, Wave(mhz)) for mhz in (868.4, 908.4, 2440)]
    assert found == pytest.approx(expected, abs=TWO_DECIMALS_DB)


@pytest.mark.parametrize(
    ("layer", "te_db", "tm_db"),
    [
        (Layer(LayerMaterial.BRICK, 100), 4.53, 2.53),
        (Layer(LayerMaterial.CONCRETE, 150), 14.84, 10.81),
        (Layer(LayerMaterial.PLASTERBOARD, 12.5), 3.18, 0.29),
    ],
)
def test_loss_at_sixty_degrees(layer: Layer, te_db: float, tm_db: float) -> None:
    # 2440 MHz; source as COHERENT, two decimals.
    assert coherent_loss_db([layer], Wave(2440, 60, Polarisation.TE)) == pytest.approx(te_db, abs=0.0051)
    assert coherent_loss_db([layer], Wave(2440, 60, Polarisation.TM)) == pytest.approx(tm_db, abs=0.0051)


@pytest.mark.parametrize(
    ("constants", "thickness_mm", "expected"),
    [
        (Constants(2.94, 0, 0.0116, 0.7076, 1, 100), 12.5, (0.39, 1.26)),
        (Constants(3.75, 0, 0.038, 0, 1, 10), 100, (3.93, 3.94)),
        (Constants(3.75, 0, 0.038, 0, 1, 10), 200, (7.40, 7.44)),
        (Constants(5.31, 0, 0.0326, 0.8095, 1, 100), 100, (4.07, 6.19)),
        (Constants(5.31, 0, 0.0326, 0.8095, 1, 100), 200, (5.80, 11.14)),
        (Constants(6.27, 0, 0.0043, 1.1925, 0.1, 100), 6, (0.37, 1.93)),
    ],
)
def test_the_older_edition_gives_its_own_figures(
    monkeypatch: pytest.MonkeyPatch,
    constants: Constants,
    thickness_mm: float,
    expected: tuple[float, float],
) -> None:
    # Source: P.2040-1 (2015) constants, the same in several open libraries (secondary); losses as COHERENT.
    monkeypatch.setitem(TABLE, LayerMaterial.MARBLE, constants)
    found = [
        coherent_loss_db([Layer(LayerMaterial.MARBLE, thickness_mm)], Wave(mhz)) for mhz in (868.4, 2440)
    ]
    assert found == pytest.approx(expected, abs=TWO_DECIMALS_DB)


def test_most_rows_are_extrapolated_below_one_gigahertz() -> None:
    # Source: the frequency column of P.2040-4 Table 3 (secondary): only wood and glass reach below 1 GHz.
    below = {m for m in TABLE_OF_THE_RAY_TRACER if validity(m, frequency_mhz=868.4) is Validity.INSIDE}
    at_2440 = {m for m in TABLE_OF_THE_RAY_TRACER if validity(m, frequency_mhz=2440) is Validity.EXTRAPOLATED}
    assert below == {LayerMaterial.WOOD, LayerMaterial.GLASS}
    assert at_2440 == {LayerMaterial.FLOORBOARD}


def test_free_space_loss() -> None:
    # Source: computed apart from this code, 10 m: 60.20 dB at 2.44 GHz, 51.22 dB at 868.4 MHz; two decimals.
    assert free_space_loss_db(distance_m=10, frequency_mhz=2440) == pytest.approx(60.20, abs=0.005)
    assert free_space_loss_db(distance_m=10, frequency_mhz=868.4) == pytest.approx(51.22, abs=0.005)


@pytest.mark.parametrize(
    ("frequency_mhz", "floors", "expected_db"),
    [(1800, 0, 71.25), (1800, 1, 89.55), (2440, 0, 73.90), (2440, 1, 92.20)],
)
def test_multi_wall_model(frequency_mhz: float, floors: int, expected_db: float) -> None:
    # Source: COST 231 Final Report 4.7.2 with the constants of 3GPP TR 25.952 5.1.1 (secondary); 10 m, two
    # light walls and one heavy; computed apart from this code, two decimals.
    found = multi_wall_loss_db(
        distance_m=10, frequency_mhz=frequency_mhz, light_walls=2, heavy_walls=1, floors=floors
    )
    assert found == pytest.approx(expected_db, abs=0.006)


@pytest.mark.parametrize(("floors", "expected_db"), [(1, 18.30), (2, 33.52), (3, 43.59)])
def test_floor_term_of_the_multi_wall_model(floors: int, expected_db: float) -> None:
    # Source as above.
    without = multi_wall_loss_db(distance_m=5, frequency_mhz=1800, light_walls=0, heavy_walls=0, floors=0)
    with_floors = multi_wall_loss_db(
        distance_m=5, frequency_mhz=1800, light_walls=0, heavy_walls=0, floors=floors
    )
    assert with_floors - without == pytest.approx(expected_db, abs=0.005)


def test_a_whole_link_by_hand() -> None:
    """2.44 GHz, 8 m, 200 mm brick, 200 mm concrete, one plastic and one metal box, +8 dBm: −83.5 dBm.

    Source: the sum worked by hand from the figures above, one decimal each:
      sent                                    +8.0 dBm
      free space, 20 log10(4 pi 8 f/c)       -58.3 dB    (32.45 + 20 log10(2440) + 20 log10(0.008))
      200 mm brick, fringes averaged          -5.5 dB    (P.2040-4)
      200 mm concrete, fringes averaged      -14.7 dB    (P.2040-4)
      plastic box                             -3.0 dB    (engineering judgement, no source)
      metal box, plastic plate               -10.0 dB    (engineering judgement, no source)
      received                               -83.5 dBm
    Tolerance: five rounded terms, 0.05 dB each at worst.
    """
    received_dbm = 8.0
    received_dbm -= free_space_loss_db(distance_m=8, frequency_mhz=2440)
    received_dbm -= incoherent_loss_db([Layer(LayerMaterial.BRICK, 200)], Wave(2440))
    received_dbm -= incoherent_loss_db([Layer(LayerMaterial.CONCRETE, 200)], Wave(2440))
    received_dbm -= 3.0 + 10.0
    assert received_dbm == pytest.approx(-83.5, abs=0.15)


def test_permittivity_of_concrete() -> None:
    # By hand from P.2040-4: σ = 0.0462·2.44^0.7822 = 0.09281 S/m; σ/(2πfε₀) = 0.6837. Four digits.
    eta = permittivity(TABLE[LayerMaterial.CONCRETE], frequency_mhz=2440)
    assert eta.real == pytest.approx(5.24)
    assert eta.imag == pytest.approx(-0.6837, abs=5e-4)
    assert not math.isnan(abs(eta))
