"""A backup made from the page: by a process of its own, beside a desk that goes on working."""

import os
import subprocess
import sys
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from threading import Lock

from django.conf import settings

_FORM = "secondfix-%Y%m%d-%H%M%S.backup"
_COMMAND = (sys.executable, "-c", "from secondfix.cli import main; main()", "backup")


@dataclass(frozen=True, slots=True)
class Making:
    """How it stands: ``running``, ``wrong`` what the last try said, ``file`` the latest that is whole."""

    running: bool
    wrong: str
    file: Path | None


_lock = Lock()
_now: dict[str, subprocess.Popen[str]] = {}
_said: dict[str, str] = {}


def folder() -> Path:
    """Where backups made from the page stand."""
    return Path(settings.DATA or "") / "backups"


def make(now: datetime) -> None:
    """Begin one, unless one is being made."""
    with _lock:
        if _running():
            return
        folder().mkdir(mode=0o700, exist_ok=True)
        path = folder() / now.strftime(_FORM)
        _now["backup"] = subprocess.Popen(  # noqa: S603 - our own command, its words made here
            (*_COMMAND, str(path), "--data", str(settings.DATA)),
            stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True, env=dict(os.environ),
        )  # fmt: skip


def making() -> Making:
    """How it stands now. Of those that are whole only the latest is kept here."""
    with _lock:
        running = _running()
        whole = sorted(folder().glob("secondfix-*.backup")) if settings.DATA else []
        if not running:
            for old in whole[:-1]:
                old.unlink(missing_ok=True)
        return Making(running, _said.get("backup", ""), whole[-1] if whole else None)


def _running() -> bool:
    process = _now.get("backup")
    if process is None:
        return False
    if process.poll() is None:
        return True
    said = process.communicate()[1].strip()
    _said["backup"] = (
        "" if process.returncode == 0 else (said.splitlines() or ["it ended without a word"])[-1]
    )
    del _now["backup"]
    return False
