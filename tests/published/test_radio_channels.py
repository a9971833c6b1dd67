"""Wireless LAN against IEEE 802.15.4: overlap, clear channels, packets lost, by figures worked apart."""

import numpy as np
import pytest

from secondfix.radio import Interference, Sends, Transmitter
from secondfix.radio.channels.losing import lost, routes_of
from secondfix.radio.channels.overlap import MASKS, MESH_CHANNELS, centre_mhz, is_clear, mask_share_db
from secondfix.radio.links import Links
from secondfix.radio.packets.delivery import raised_db


def wifi(channel: int, *, width_mhz: int = 20, second: int | None = None) -> Transmitter:
    return Transmitter(Sends.WIFI, channel, width_mhz, -50, second_channel=second)


@pytest.mark.parametrize(
    ("there", "clear"),
    [((1, 6, 11), [15, 20, 25, 26]), ((1, 7, 13), [15, 16, 21, 22])],
)
def test_the_channels_that_the_annex_recommends_are_clear(there: tuple[int, ...], clear: list[int]) -> None:
    # Source: the coexistence annex of IEEE 802.15.4 (from memory): beside 1/6/11 as in North America, beside
    # 1/7/13 as in Europe. Equality: both sets exactly, no other channel.
    assert [c for c in MESH_CHANNELS if all(is_clear(c, wifi(n)) for n in there)] == clear


@pytest.mark.parametrize(
    ("offset_mhz", "share_db"),
    [
        (2, -9.8), (8, -9.8), (12, -30.6), (13, -31.5), (17, -35.1), (18, -36.0),
        (22, -40.1), (23, -41.3), (27, -46.1), (28, -47.3),
    ],
)  # fmt: skip
def test_the_share_of_an_ofdm_mask_within_two_megahertz(offset_mhz: float, share_db: float) -> None:
    # Worked apart (computed) from the mask of 20 MHz OFDM, from memory: 0 dB to 9 MHz, -20 at 11, -28 at 20,
    # -40 at 30. Told to 0.1 dB.
    assert mask_share_db(offset_mhz=offset_mhz, width_mhz=20) == pytest.approx(share_db, abs=0.06)


def test_far_out_the_share_of_an_ofdm_mask_stays_near_minus_50() -> None:
    assert mask_share_db(offset_mhz=45, width_mhz=20) == pytest.approx(-50, abs=0.5)


def test_a_flat_dsss_signal_has_two_of_its_22_mhz_in_the_channel() -> None:
    # By hand: 10 log(2/22) = -10.41 dB; the skirts of the mask hold 0.1 % of the power, 0.005 dB.
    assert mask_share_db(offset_mhz=3, width_mhz=22) == pytest.approx(10 * np.log10(2 / 22), abs=0.03)


def test_the_masks_are_as_remembered() -> None:
    # Sources: IEEE 802.11 OFDM and 802.11b DSSS (from memory): where the skirts begin and how deep they are.
    assert MASKS[20] == ((0, 0), (9, 0), (11, -20), (20, -28), (30, -40))
    assert (MASKS[22][1], MASKS[22][3]) == ((11, 0), (22, -30))


@pytest.mark.parametrize(
    ("one", "mhz"),
    [
        (wifi(1), 2412), (wifi(6), 2437), (wifi(11), 2462), (wifi(13), 2472), (wifi(14), 2484),
        (wifi(1, width_mhz=40, second=5), 2422),
        (Transmitter(Sends.MESH, 11, 2, -60), 2405), (Transmitter(Sends.MESH, 26, 2, -60), 2480),
    ],
)  # fmt: skip
def test_centres(one: Transmitter, mhz: float) -> None:
    # Source: IEEE 802.11 and IEEE 802.15.4-2006 6.1.2 (from memory).
    assert centre_mhz(one) == mhz


@pytest.mark.parametrize(
    ("sinr_db", "pb", "per_20"),
    [(0.0, 1.615267e-4, 2.551520e-2), (-1.0, 1.148944e-3, 0.168012), (1.0, 1.291187e-5, 2.063779e-3)],
)
def test_under_a_source_that_never_stops_frames_are_lost_by_the_standards_curve(
    sinr_db: float, pb: float, per_20: float
) -> None:
    # Source: IEEE 802.15.4-2006 E.4.1.7 (secondary), bit errors and 20 octets evaluated apart. The receiver
    # at the device hears the source, the controller does not: one way the frame of 20 octets meets it, the
    # other way the acknowledgement of 5. Lost is the mean of both. The table is read in steps of 0.01 dB:
    # 2 % of the rate.
    sensitivity, signal_dbm = -95.0, -60.0
    noise = 10 ** ((sensitivity - 0.4035) / 10)
    source_dbm = 10 * np.log10(10 ** ((signal_dbm - sinr_db) / 10) - noise)
    margin = np.array([signal_dbm - sensitivity])
    links = Links(
        (), np.array([0]), np.array([1]), np.array([0]), np.tile(margin, (3, 1)), margin, margin, margin
    )
    found = lost(
        links,
        routes_of(links, [("D1", [1, 0])]),
        reading=1,
        spread_db=1e-6,
        sensitivity_dbm=np.array([sensitivity, sensitivity]),
        among=Interference(np.array([[-np.inf], [source_dbm]]), np.array([1.0])),
    )
    assert found[0] == pytest.approx((per_20 + 1 - (1 - pb) ** 40) / 2, rel=0.02)


def test_a_source_as_loud_as_the_floor_raises_it_by_three_decibels() -> None:
    # Textbook: two equal noise powers add to 10 log 2 = 3.01 dB.
    found = raised_db(Interference(np.array([[-95.4035]]), np.array([1.0])), np.array([-95.0]))
    assert found[0, 0] == pytest.approx(10 * np.log10(2), abs=1e-6)
