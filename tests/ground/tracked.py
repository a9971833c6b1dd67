"""The files that git tracks in this checkout, read as text."""

import re
import subprocess
from functools import cache
from pathlib import Path

TOP = Path(__file__).resolve().parents[2]


@cache
def names() -> tuple[str, ...]:
    """Tracked paths; the checkout may belong to another user (a clean clone run as root)."""
    listed = subprocess.run(
        ["git", "-c", "safe.directory=*", "ls-files", "-z"],
        cwd=TOP,
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    return tuple(name for name in listed.split("\0") if name and (TOP / name).exists())


@cache
def texts() -> tuple[tuple[str, str], ...]:
    """(path, text) of every tracked file that is text."""
    found = []
    for name in names():
        raw = (TOP / name).read_bytes()
        if b"\0" not in raw:
            found.append((name, raw.decode("utf-8")))
    return tuple(found)


def lines_matching(pattern: str, *, suffixes: tuple[str, ...] = ()) -> list[str]:
    """`path:line: text` of each tracked line that the pattern finds; all suffixes when none is named."""
    search = re.compile(pattern).search
    return [
        f"{name}:{number}: {line.strip()[:120]}"
        for name, text in texts()
        if not suffixes or name.endswith(suffixes)
        for number, line in enumerate(text.splitlines(), start=1)
        if search(line)
    ]
