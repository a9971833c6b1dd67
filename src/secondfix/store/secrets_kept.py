"""The two secrets of the data folder: made once, readable by their owner alone, never in the database."""

import os
import secrets
from pathlib import Path

BYTES = 32


def keep_secret(path: Path) -> None:
    """Make 32 random bytes at ``path`` if nothing stands there; of two who begin at once one wins."""
    if path.exists():
        return
    beside = path.with_name(f".{path.name}.{secrets.token_hex(6)}")
    handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(secrets.token_bytes(BYTES))
            file.flush()
            os.fsync(file.fileno())
        try:
            os.link(beside, path)  # fails where another was quicker: a secret is never replaced
        except FileExistsError:
            return
    finally:
        beside.unlink(missing_ok=True)


def secret_of(path: Path) -> bytes:
    """The secret at ``path``. Raises FileNotFoundError, or ValueError where it is not whole."""
    held = path.read_bytes()
    if len(held) != BYTES:
        raise ValueError(f"{path.name}: {len(held)} bytes; expected {BYTES}")
    return held
