"""Slab losses: limits, symmetry, and the average over interference fringes."""

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.radio.material import TABLE, permittivity
from secondfix.radio.openspace import free_space_loss_db, multi_wall_loss_db
from secondfix.radio.slab import Layer, Polarisation, Wave, coherent_loss_db, incoherent_loss_db
from secondfix.terms import LayerMaterial

SOLID = [m for m in LayerMaterial if m not in (LayerMaterial.AIR, LayerMaterial.METAL)]
layers = st.lists(
    st.builds(Layer, st.sampled_from(SOLID), st.integers(1, 400).map(float)), min_size=1, max_size=4
)
waves = st.builds(
    Wave, st.sampled_from([868.4, 908.4, 2440.0]), st.floats(0, 85), st.sampled_from(Polarisation)
)


@given(layers, waves)
def test_no_layer_ever_amplifies(build_up: list[Layer], wave: Wave) -> None:
    assert coherent_loss_db(build_up, wave) >= -1e-9
    assert incoherent_loss_db(build_up, wave) >= -1e-9


@given(layers, waves)
def test_a_wall_loses_as_much_from_either_side(build_up: list[Layer], wave: Wave) -> None:
    turned = build_up[::-1]
    assert coherent_loss_db(turned, wave) == pytest.approx(coherent_loss_db(build_up, wave), abs=1e-6)
    assert incoherent_loss_db(turned, wave) == pytest.approx(incoherent_loss_db(build_up, wave), abs=1e-6)


@given(layers, waves)
def test_cutting_a_layer_in_two_changes_nothing(build_up: list[Layer], wave: Wave) -> None:
    first = build_up[0]
    halves = [Layer(first.material, first.thickness_mm / 2)] * 2
    cut = [*halves, *build_up[1:]]
    assert coherent_loss_db(cut, wave) == pytest.approx(coherent_loss_db(build_up, wave), abs=1e-6)
    assert incoherent_loss_db(cut, wave) == pytest.approx(incoherent_loss_db(build_up, wave), abs=1e-6)


@given(st.sampled_from(SOLID), st.integers(1, 300), st.integers(1, 100), waves)
def test_a_thicker_layer_never_lets_more_through(
    material: LayerMaterial, thin_mm: int, more_mm: int, wave: Wave
) -> None:
    thin = incoherent_loss_db([Layer(material, thin_mm)], wave)
    assert incoherent_loss_db([Layer(material, thin_mm + more_mm)], wave) >= thin - 1e-9


@pytest.mark.parametrize("material", [LayerMaterial.GLASS, LayerMaterial.WOOD, LayerMaterial.BRICK])
def test_averaging_the_coherent_loss_over_thickness_gives_the_incoherent_one(material: LayerMaterial) -> None:
    # Over one fringe (half a wavelength inside the material) around 150 mm; absorption changes a little
    # over that stretch, hence 0.1 dB.
    wave = Wave(2440.0)
    inside = 299_792.458 / 2440.0 / math.sqrt(permittivity(TABLE[material], frequency_mhz=2440.0).real)
    steps = [150 + inside / 2 * (n / 200 - 0.5) for n in range(200)]
    mean = sum(10 ** (-coherent_loss_db([Layer(material, t)], wave) / 10) for t in steps) / 200
    expected = incoherent_loss_db([Layer(material, 150)], wave)
    assert -10 * math.log10(mean) == pytest.approx(expected, abs=0.1)


def test_air_loses_nothing_and_metal_lets_nothing_through() -> None:
    assert coherent_loss_db([Layer(LayerMaterial.AIR, 100)], Wave(2440)) == pytest.approx(0)
    assert incoherent_loss_db([Layer(LayerMaterial.METAL, 1)], Wave(2440)) > 1000
    assert coherent_loss_db([Layer(LayerMaterial.METAL, 9)], Wave(868.4)) == math.inf


@pytest.mark.parametrize("thickness_mm", [0.0, -5.0, math.nan, math.inf])
def test_a_layer_without_a_real_thickness_is_refused(thickness_mm: float) -> None:
    with pytest.raises(ValueError, match="thicker than 0"):
        coherent_loss_db([Layer(LayerMaterial.BRICK, thickness_mm)], Wave(2440))


@pytest.mark.parametrize("incidence_deg", [-1.0, 90.0, 120.0])
def test_an_angle_beyond_the_surface_is_refused(incidence_deg: float) -> None:
    with pytest.raises(ValueError, match="angle of incidence"):
        incoherent_loss_db([Layer(LayerMaterial.BRICK, 100)], Wave(2440, incidence_deg))


def test_a_frequency_of_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="above 0 MHz"):
        coherent_loss_db([Layer(LayerMaterial.BRICK, 100)], Wave(0.0))


def test_multi_wall_loss_rises_with_every_wall_and_floor() -> None:
    losses = [
        multi_wall_loss_db(distance_m=6, frequency_mhz=868.4, light_walls=lw, heavy_walls=hw, floors=k)
        for lw, hw, k in [(0, 0, 0), (1, 0, 0), (1, 1, 0), (1, 1, 1), (1, 1, 2)]
    ]
    assert all(more > less for less, more in pairwise(losses))
    assert losses[0] == free_space_loss_db(distance_m=6, frequency_mhz=868.4)


def test_impossible_counts_and_distances_are_refused() -> None:
    with pytest.raises(ValueError, match="counted from 0"):
        multi_wall_loss_db(distance_m=6, frequency_mhz=2440, light_walls=-1, heavy_walls=0, floors=0)
    with pytest.raises(ValueError, match="above 0"):
        free_space_loss_db(distance_m=0, frequency_mhz=2440)
