"""The command line: parse, call one action, print. Each verb loads only what it needs."""

from secondfix.cli.table import main

__all__ = ["main"]
