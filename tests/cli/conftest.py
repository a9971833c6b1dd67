"""Verbs called in this process, as the command line calls them."""

import io
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest

from secondfix.cli import main


@dataclass(frozen=True)
class Ended:
    """How a call ended."""

    code: int
    out: str
    err: str


Call = Callable[..., Ended]


@pytest.fixture
def call(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Call:
    """Call ``secondfix`` with words, in a folder of its own; ``stdin`` is what stands on standard input."""

    def run(*words: str | Path, stdin: bytes = b"") -> Ended:
        monkeypatch.chdir(tmp_path)
        monkeypatch.setattr(sys, "argv", ["secondfix", *map(str, words)])
        monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(stdin)))
        monkeypatch.setenv("COLUMNS", "100")
        capsys.readouterr()
        try:
            main()
            code = 0
        except SystemExit as end:
            code = end.code if isinstance(end.code, int) else 1
        got = capsys.readouterr()
        return Ended(code, got.out, got.err)

    return run
