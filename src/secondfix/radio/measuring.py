"""The question once more with what was measured."""

from collections.abc import Sequence

from secondfix.assumptions import Assumptions
from secondfix.house import Schedule
from secondfix.radio.answers import Reach
from secondfix.radio.learning.fitting import SAMPLES, learn
from secondfix.radio.learning.learned import Learned
from secondfix.radio.learning.measured import Measured
from secondfix.radio.paths import Paths
from secondfix.radio.question import reach


def reach_measured(
    rows: Schedule,
    assumptions: Assumptions,
    measured: Sequence[Measured],
    *,
    paths: Paths | None = None,
    samples: int = SAMPLES,
    seed: int = 1,
) -> tuple[Reach, Learned]:
    """`reach` with its links as the measured ones teach them, and what was learned.

    With none measured the answer is that of `reach`, and what is learned is what is assumed. Meaning, source
    and omissions as `reach` and `learn`; the same seed gives the same answer.
    """
    computed = reach(rows, assumptions, paths=paths)
    learned = learn(rows, assumptions, computed, measured, samples=samples, seed=seed)
    if not learned.count:
        return computed, learned
    return reach(rows, assumptions, paths=computed.paths, learned=learned), learned
