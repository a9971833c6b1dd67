"""What every test stands on: how many random cases, and where the tree is."""

import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

# 'ci' is the same cases on every machine, few enough for every run; 'deep' draws new thousands each time
# and prints how to draw a failing one again. Both without a deadline: the machine's mood is no fault.
settings.register_profile("ci", derandomize=True, max_examples=40, deadline=None, database=None)
settings.register_profile(
    "deep",
    max_examples=3000,
    deadline=None,
    print_blob=True,
    suppress_health_check=[HealthCheck.too_slow],  # a slow draw is expected of large random houses
)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "ci"))


@pytest.fixture(scope="session")
def tree() -> Path:
    """The top of the checkout."""
    return Path(__file__).resolve().parents[1]
