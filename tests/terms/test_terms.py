"""Words: every kind has a rating to look for and a label; every purpose a policy with its source."""

import pytest

from secondfix.terms import (
    KIND_LABELS,
    KNOWN_LABELS,
    POWER_LOSS_LABELS,
    PROTOCOLS,
    PURPOSES,
    RATING_OF_KIND,
    AllOff,
    Kind,
    Known,
    PowerLossState,
    Protocol,
    Purpose,
    UnattendedOn,
)


def test_no_word_lacks_its_row() -> None:
    assert set(RATING_OF_KIND) == set(KIND_LABELS) == set(Kind)
    assert set(PURPOSES) == set(Purpose)
    assert set(PROTOCOLS) == set(Protocol)
    assert set(KNOWN_LABELS) == set(Known)
    assert set(POWER_LOSS_LABELS) == set(PowerLossState)


@pytest.mark.parametrize("purpose", list(Purpose))
def test_what_may_not_be_switched_at_will_says_why(purpose: Purpose) -> None:
    policy = PURPOSES[purpose]
    assert policy.source
    if policy.unattended_on is not UnattendedOn.YES or policy.all_off is AllOff.NEVER:
        assert policy.hazard


@pytest.mark.parametrize(
    "purpose", [Purpose.HEATER_PORTABLE, Purpose.HEATER_RADIANT, Purpose.COOKING, Purpose.SAUNA]
)
def test_what_may_burn_is_off_only(purpose: Purpose) -> None:
    assert PURPOSES[purpose].unattended_on is UnattendedOn.NEVER
    assert PURPOSES[purpose].all_off is AllOff.OFF
