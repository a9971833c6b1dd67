"""Reading and writing whole files: written beside, flushed to the disk, then renamed into place."""

import errno
import os
import sys
import tempfile
from pathlib import Path

from secondfix.house import LARGEST_FILE_BYTES, Fault


def read_bytes(name: str, *, most: int = LARGEST_FILE_BYTES) -> bytes | Fault:
    """The file's bytes, or standard input for ``-``; a fault where it cannot be read.

    Reads at most one byte more than ``most``, the largest file allowed, so that a device or an endless
    pipe cannot fill the memory.
    """
    where = "standard input" if name == "-" else name
    try:
        if name == "-":
            return sys.stdin.buffer.read(most + 1)
        with Path(name).open("rb") as file:
            return file.read(most + 1)
    except OSError as error:
        return Fault(where, "", (error.strerror or "cannot be read").lower(), "a file that can be read")


def write_whole(path: Path, data: bytes, *, mode: int = 0o644) -> None:
    """Put ``data`` at ``path``: after a crash it holds the old bytes or the new ones, never a part.

    Raises OSError where the folder cannot be written; nothing is left behind then.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, beside = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        Path(beside).chmod(mode)
        Path(beside).replace(path)
    except BaseException:
        Path(beside).unlink(missing_ok=True)
        raise
    _flush_folder(path.parent)


def _flush_folder(folder: Path) -> None:
    """The rename itself is durable only once the folder is."""
    if os.name == "posix":
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def append_line(path: Path, line: str) -> None:
    """Append one line in one piece and see it onto the disk: nothing that stands there is written again.

    A last line that was cut off keeps a line of its own; where several append at once an empty line may
    stand. Raises OSError where that cannot be.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    with path.open("a+b", buffering=0) as file:
        cut = b""
        if file.seek(0, os.SEEK_END):
            file.seek(-1, os.SEEK_END)
            cut = b"" if file.read(1) == b"\n" else b"\n"
        data = cut + line.encode() + b"\n"
        if file.write(data) != len(data):
            raise OSError(errno.ENOSPC, "only a part of the line could be written")
        os.fsync(file.fileno())
