"""The time of one frame over one link, as those who add up commands ask for it."""

import pytest

from secondfix.radio import sending
from secondfix.terms import Protocol, RadioRegion


def test_a_zigbee_frame_is_eleven_octets_more_than_it_carries() -> None:
    # Source: IEEE 802.15.4-2006 6.3 and 7.5.1.4 (secondary): 3.776 ms at a PSDU of 50; a broadcast is not
    # acknowledged: 0.192 + 0.352 less.
    assert sending(None)(Protocol.ZIGBEE, 39, True) == pytest.approx((3.776,) * 3, abs=0.001)
    assert sending(None)(Protocol.ZIGBEE, 39, False) == pytest.approx((3.232,) * 3, abs=0.001)


def test_a_thread_frame_is_secured_too() -> None:
    assert sending(None)(Protocol.MATTER_THREAD, 29, True) == pytest.approx((3.776,) * 3, abs=0.001)


# Source: ITU-T G.9959 airtimes (secondary; R3 preamble from memory) of 20 octets and of the acknowledgement.
@pytest.mark.parametrize(
    ("region", "expected"),
    [
        (RadioRegion.EU, (5.76 + 4.16, 5.76 + 4.16, 8.20 + 4.20)),
        (RadioRegion.JP, (4.56 + 2.96,) * 3),
        (None, (4.56 + 2.96, 5.76 + 4.16, 8.20 + 4.20)),
    ],
)
def test_zwave_rates_by_region(region: RadioRegion | None, expected: tuple[float, float, float]) -> None:
    found = sending(region)(Protocol.ZWAVE, 20, True)
    assert found == pytest.approx(tuple(1 + ms for ms in expected), abs=0.01)
    assert sending(region)(Protocol.ZWAVE, 20, False)[0] < found[0]


def test_more_than_a_frame_carries_is_refused() -> None:
    with pytest.raises(ValueError, match="at most 127"):
        sending(None)(Protocol.ZIGBEE, 117, True)
    with pytest.raises(ValueError, match="0 to 54"):
        sending(RadioRegion.EU)(Protocol.ZWAVE, 55, True)
