"""What a cold start costs before any question is asked."""

from __future__ import annotations

import sys

from bench.figures import Pair, figure, process, seconds_side_by_side


@figure("import the house document, cold process, against pydantic alone", unit="s")
def house_imported() -> Pair:
    return seconds_side_by_side(
        process([sys.executable, "-c", "import secondfix.house"]),
        process([sys.executable, "-c", "import pydantic; pydantic.BaseModel"]),
    )
