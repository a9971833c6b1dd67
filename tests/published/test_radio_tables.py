"""Tables of the radio standards as the code holds them, against the figures as they were read."""

import pytest

from secondfix.radio import MOST_HOPS, g9959, ieee802154
from secondfix.radio.g9959 import MOST_REPEATERS, PLANS, SENSITIVITY_DBM, Rate
from secondfix.radio.losses import BAND_2400_MHZ, band_mhz
from secondfix.radio.material import TABLE
from secondfix.radio.openspace import free_space_loss_db
from secondfix.terms import LayerMaterial, Protocol, RadioRegion

# MHz: R3, then R1 and R2 (None: the region has three channels of R3 only). Source: web texts on ITU-T G.9959
# (secondary), but R3 of the Americas' and India's plans, Israel, Japan and Korea from memory. Exact.
FREQUENCIES = {
    RadioRegion.EU: ((869.85,), 868.40),
    RadioRegion.US: ((916.00,), 908.40),
    RadioRegion.ANZ: ((919.80,), 921.40),
    RadioRegion.CN: ((868.40,), 868.40),
    RadioRegion.HK: ((919.80,), 919.80),
    RadioRegion.IN: ((865.20,), 865.20),
    RadioRegion.IL: ((916.00,), 916.00),
    RadioRegion.JP: ((922.50, 923.90, 926.30), None),
    RadioRegion.KR: ((920.90, 921.70, 923.10), None),
}


@pytest.mark.parametrize("region", RadioRegion)
def test_frequencies_of_each_region(region: RadioRegion) -> None:
    assert (PLANS[region].fast_mhz, PLANS[region].slow_mhz) == FREQUENCIES[region]
    assert band_mhz(Protocol.ZWAVE, region) == FREQUENCIES[region][0]


@pytest.mark.parametrize("region", [RadioRegion.IL, RadioRegion.JP, RadioRegion.KR])
def test_a_plan_that_nobody_could_read_says_so(region: RadioRegion) -> None:
    assert PLANS[region].source == "from memory"


def test_sensitivities_of_the_three_rates() -> None:
    # Source: from memory, unverified; that a quicker rate needs more is plain.
    assert SENSITIVITY_DBM == {Rate.R1: -95, Rate.R2: -92, Rate.R3: -89}


def test_a_route_passes_four_repeaters_and_so_five_links() -> None:
    # Source: web texts (secondary) and from memory: "four hops" is said of repeaters, so five links.
    assert MOST_REPEATERS == 4
    assert MOST_HOPS[Protocol.ZWAVE] == 5


def test_a_zigbee_network_is_fifteen_deep() -> None:
    # Source: nwkcMaxDepth 15, Zigbee R22 3.5.1 (secondary).
    assert MOST_HOPS[Protocol.ZIGBEE] == 15


# Octets: whole frame of no payload, most payload, longest frame. Source: an open capture format for R3
# (secondary); longest payloads secondary, the sums computed from them.
@pytest.mark.parametrize(
    ("rate", "three", "empty", "most", "longest"),
    [
        (Rate.R1, False, 10, 54, 64),
        (Rate.R2, False, 10, 54, 64),
        (Rate.R3, False, 11, 158, 169),
        (Rate.R3, True, 12, 158, 170),
    ],
)
def test_octets_of_a_frame(rate: Rate, three: bool, empty: int, most: int, longest: int) -> None:
    assert g9959.mpdu_octets(rate=rate, payload_octets=0, three_channels=three) == empty
    assert g9959.mpdu_octets(rate=rate, payload_octets=most, three_channels=three) == longest
    with pytest.raises(ValueError, match="octets"):
        g9959.mpdu_octets(rate=rate, payload_octets=most + 1, three_channels=three)


def test_times_of_ieee_802_15_4() -> None:
    # Source: IEEE 802.15.4-2006 through an open network simulator (secondary): symbol 16 us, octet 32 us,
    # aUnitBackoffPeriod 20 symbols, CCA 8, aTurnaroundTime 12, macAckWaitDuration 20 + 12 + 10 + 12 = 54;
    # macMinBE 3, macMaxBE 5, macMaxCSMABackoffs 4; acknowledgement 5 octets, 352 us; longest packet 4256 us.
    symbol = ieee802154.SYMBOL_US
    assert (symbol, ieee802154.OCTET_US) == (16, 32)
    assert ieee802154.BACKOFF_US / symbol == 20
    assert ieee802154.CCA_US / symbol == 8
    assert ieee802154.TURNAROUND_US / symbol == 12
    assert ieee802154.ACK_WAIT_US / symbol == 20 + 12 + 10 + 12
    assert (ieee802154.LEAST_BACKOFF_EXPONENT, ieee802154.MOST_BACKOFF_EXPONENT) == (3, 5)
    assert ieee802154.BACKOFFS_BEFORE_FAILURE == 1 + 4
    assert ieee802154.airtime_us(psdu_octets=ieee802154.ACK_OCTETS) == 352
    assert ieee802154.airtime_us(psdu_octets=127) == 4256
    assert ieee802154.REQUIRED_SENSITIVITY_DBM == -85


def test_the_middle_of_the_band_stands_for_all_of_it() -> None:
    # Source: channels 11 to 26 are 2405 to 2480 MHz (the formula secondary); free space changes with
    # 20 log f, so by 0.13 dB and 0.14 dB to the edges (computed).
    edges = (ieee802154.channel_mhz(11), ieee802154.channel_mhz(26))
    middle = free_space_loss_db(distance_m=5, frequency_mhz=BAND_2400_MHZ)
    assert max(abs(free_space_loss_db(distance_m=5, frequency_mhz=mhz) - middle) for mhz in edges) < 0.15
    assert band_mhz(Protocol.ZIGBEE, None) == band_mhz(Protocol.MATTER_THREAD, None) == (BAND_2400_MHZ,)


# GHz. Source: the frequency column of ITU-R P.2040-4 table 3 (secondary). Exact.
@pytest.mark.parametrize(
    ("material", "low", "high"),
    [
        (LayerMaterial.CONCRETE, 1, 100),
        (LayerMaterial.BRICK, 1, 40),
        (LayerMaterial.PLASTERBOARD, 1, 100),
        (LayerMaterial.WOOD, 0.001, 100),
        (LayerMaterial.GLASS, 0.1, 100),
        (LayerMaterial.CEILING_BOARD, 1, 100),
        (LayerMaterial.CHIPBOARD, 1, 100),
        (LayerMaterial.PLYWOOD, 1, 40),
        (LayerMaterial.FLOORBOARD, 50, 100),
        (LayerMaterial.MARBLE, 1, 60),
        (LayerMaterial.METAL, 1, 100),
    ],
)
def test_where_each_material_is_stated(material: LayerMaterial, low: float, high: float) -> None:
    assert (TABLE[material].low_ghz, TABLE[material].high_ghz) == (low, high)
