"""A frame and its acknowledgement within the tries, against figures worked apart from this code."""

import numpy as np
import pytest

from secondfix.radio.g9959 import Rate
from secondfix.radio.packets.curves import frame_success, slower_gain_db, tries_of
from secondfix.radio.packets.delivery import delivered
from secondfix.terms import Protocol

# SINR at which 1 % of packets of 20 octets are lost: 0.4035 dB (computed, see test_radio_packets.py).
AT_SENSITIVITY_DB = 0.4035


@pytest.mark.parametrize(
    ("sinr_db", "lost"),
    [(-3, 0.929263), (-2, 0.565556), (-1, 0.168012), (0, 2.551520e-2), (1, 2.063779e-3), (2, 8.209892e-5)],
)
def test_frames_of_ieee_802_15_4_are_lost_as_the_standards_curve_says(sinr_db: float, lost: float) -> None:
    # Source: the equation of IEEE 802.15.4-2006 E.4.1.7 (secondary), evaluated apart, 20 octets. The curve is
    # entered from the sensitivity, which is told to 0.0001 dB: 0.1 % of the rate.
    above = np.array([sinr_db - AT_SENSITIVITY_DB])
    found = 1 - frame_success(above, protocol=Protocol.ZIGBEE)
    assert found[0] == pytest.approx(lost, rel=1e-3)


@pytest.mark.parametrize(
    ("above_db", "comes_through"),
    [(0.0, 0.99), (-3.0103, 0.40690), (3.0103, 0.99999874), (-6.0206, 1.663e-4)],
)
def test_frames_of_g9959_follow_the_curve_of_non_coherent_fsk(above_db: float, comes_through: float) -> None:
    # By hand from Pb = exp(-Eb/2N0)/2 (Proakis, from memory): 1 % of frames of 160 bits lost means
    # Pb = 6.2813e-5, so 2 Pb = 1.25625e-4; twice the power squares it, a half takes the root, a quarter the
    # fourth root: (1 - 1.5782e-8/2)^160, (1 - 0.0112083/2)^160, (1 - 0.105869/2)^160. Five digits.
    found = frame_success(np.array([above_db]), protocol=Protocol.ZWAVE)[0]
    assert found == pytest.approx(comes_through, rel=3e-4)


def test_how_often_a_frame_is_sent() -> None:
    # Source: macMaxFrameRetries 3, IEEE 802.15.4 (secondary); aMacMaxFrameRetries 2, G.9959 (from memory).
    assert [tries_of(p) for p in (Protocol.ZIGBEE, Protocol.MATTER_THREAD, Protocol.ZWAVE)] == [4, 4, 3]


def test_a_frame_and_its_acknowledgement_within_four_tries_by_hand() -> None:
    # SINR -1 dB both ways: Pb = 1.148944e-3 (secondary, as above). 20 octets come through with 0.831988, an
    # acknowledgement of 5 with 0.998851^40 = 0.955060, both with 0.794598; four tries leave 0.205402^4.
    above = np.array([-1 - AT_SENSITIVITY_DB])
    found = delivered(above, above, protocol=Protocol.ZIGBEE)[0]
    assert found == pytest.approx(0.998220, abs=5e-6)


def test_slower_rates_need_less() -> None:
    # Source: sensitivities of -95, -92 and -89 dBm at R1, R2 and R3 (from memory).
    assert [slower_gain_db(rate) for rate in Rate] == [6, 3, 0]
