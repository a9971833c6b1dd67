"""The firm's own models and assumptions, read once when the desk begins."""

import os
from functools import cache
from pathlib import Path

from secondfix.files import Firm, open_firm


@cache
def firm() -> Firm:
    """The firm of the folder in ``SECONDFIX_FIRM``; the shipped catalogue and defaults without one.

    `secondfix serve` has told its faults before any page is asked for.
    """
    named = os.environ.get("SECONDFIX_FIRM")
    opened = open_firm(Path(named) if named else None)
    if isinstance(opened, list):
        raise ValueError("; ".join(map(str, opened)))
    return opened
