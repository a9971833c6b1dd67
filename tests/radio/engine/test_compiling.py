"""The compiler loads with the first draw and not before, and leaves nothing beside the source."""

import subprocess
import sys
from pathlib import Path

import secondfix
from secondfix.radio.engine import drawing_kernel, gone_kernel, panels_kernel, searching_kernel

ASK = """
import sys
import numpy as np
from secondfix.radio import Ends, draw_links
before = "numba" in sys.modules
ends = Ends(2, np.array([0]), np.array([1]))
draw_links(ends, margin_db=np.zeros(1), spread_db=6.0, shared=0.0, draws=1, seed=1)
print(before, "numba" in sys.modules)
"""


def test_the_door_of_radio_loads_no_compiler_until_something_is_drawn() -> None:
    run = subprocess.run([sys.executable, "-c", ASK], capture_output=True, text=True, check=True)
    assert run.stdout.split() == ["False", "True"]


def test_what_is_compiled_is_kept_outside_the_source() -> None:
    source = Path(secondfix.__file__).parent
    for work in (
        drawing_kernel.alone,
        gone_kernel.shared_by_all,
        panels_kernel.count,
        searching_kernel.spread,
    ):
        kept = Path(work.stats.cache_path)
        assert source not in [kept, *kept.parents]
