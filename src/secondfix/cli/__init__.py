"""The command line: parse, call one action, print. Each verb loads only what it needs."""

import gc

from secondfix.cli.table import main

__all__ = ["main", "once"]


def once() -> None:
    """One verb in a process of its own: it ends soon, and looking for garbage costs more than it frees."""
    gc.disable()
    main()
