"""Console blocks of a document: the commands it shows, run for real, and the output it prints below each."""

import os
import re
import shlex
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

BLOCK = re.compile(r"^```console\n(.*?)^```$", re.MULTILINE | re.DOTALL)
ENDED = "--- this command ended ---"
LAYING = "requirements/install.sh"


@dataclass(frozen=True)
class Shown:
    """A command as shown (its lines joined), the output shown below it, and its line in the document."""

    command: str
    output: tuple[str, ...]
    line: int


def blocks(text: str) -> list[list[Shown]]:
    """Every console block; ValueError for one that does not begin with a command."""
    found = []
    for block in BLOCK.finditer(text):
        first = text.count("\n", 0, block.start(1)) + 1
        found.append(_commands(block[1].splitlines(), first))
    return found


def _commands(lines: list[str], first: int) -> list[Shown]:
    commands: list[Shown] = []
    for number, line in enumerate(lines, start=first):
        if line.startswith("$ "):
            commands.append(Shown(line[2:], (), number))
        elif not commands:
            raise ValueError(f"line {number}: a console block begins with '$ ', not {line!r}")
        elif commands[-1].command.endswith("\\") and not commands[-1].output:
            last = commands[-1]
            commands[-1] = Shown(f"{last.command}\n{line}", (), last.line)
        else:
            last = commands[-1]
            commands[-1] = Shown(last.command, (*last.output, line), last.line)
    return commands


def differences(text: str, folder: Path, tree: Path) -> list[str]:
    """Run all blocks of a document in `folder`, in order; one line for each output that is not as shown."""
    found = []
    for block in blocks(text):
        for shown, real in zip(block, _run(block, folder, tree), strict=True):
            if not matches(shown.output, real):
                said, printed = "\n".join(shown.output), "\n".join(real)
                found.append(f"line {shown.line}: $ {shown.command}\nshown:\n{said}\nprinted:\n{printed}\n")
    return found


def matches(shown: tuple[str, ...], real: tuple[str, ...]) -> bool:
    """Line by line, blanks at line ends apart; a line `...` stands for any lines, or none."""
    parts = [r"(?:.*\n)*?" if line == "..." else re.escape(line.rstrip()) + "\n" for line in shown]
    return re.fullmatch("".join(parts), "".join(line.rstrip() + "\n" for line in real)) is not None


def _run(block: list[Shown], folder: Path, tree: Path) -> list[tuple[str, ...]]:
    """What each command printed, errors too; one shell for the block, so that `$?` tells the truth."""
    tell = f"; ended=$?; printf '\\n%s\\n' '{ENDED}'; (exit $ended)"
    script = "\n".join(f"{{ {_as_run(shown.command, tree)}\n}}{tell}" for shown in block)
    ended = subprocess.run(
        ["sh", "-c", script],
        cwd=folder,
        env=_environment(),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        check=False,
    )
    outputs = ended.stdout.split(f"\n{ENDED}\n")[:-1]
    return [tuple(output.splitlines()) for output in outputs]


def _as_run(command: str, tree: Path) -> str:
    """`make TARGET` becomes what the Makefile does for it, without laying .venv: the tests stand in it.

    ONCE keeps `make run` from serving the pages, which would end only when somebody interrupts it.
    """
    words = shlex.split(command)
    if words[0] != "make":
        return command
    told = subprocess.run(
        ["make", "--dry-run", "--no-print-directory", *words[1:]],
        cwd=tree,
        env={k: v for k, v in os.environ.items() if k not in {"MAKEFLAGS", "MAKELEVEL"}} | {"ONCE": "1"},
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    lines = [line.replace(".venv/bin/", "") for line in told.splitlines() if LAYING not in line]
    if not lines:
        raise ValueError(f"{command}: nothing is left to run")
    return "\n".join(lines)


def _environment() -> dict[str, str]:
    """One width, no colour, one clock zone: what the documents were printed with."""
    here = Path(sys.executable).parent
    fixed = {"COLUMNS": "100", "NO_COLOR": "1", "TERM": "dumb", "TZ": "UTC", "LC_ALL": "C.UTF-8"}
    return {**os.environ, **fixed, "PATH": f"{here}{os.pathsep}{os.environ['PATH']}"}
