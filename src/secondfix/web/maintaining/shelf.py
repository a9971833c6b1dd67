"""Files that were sent, held for a while between two steps of a form. In the memory of this process."""

from collections import OrderedDict
from dataclasses import dataclass
from threading import Lock
from uuid import uuid4

MOST_BYTES = 192 * 1024 * 1024
MOST_FILES = 40


@dataclass(frozen=True, slots=True)
class Held:
    """A file: what it was called, its bytes, whose it is."""

    name: str
    data: bytes
    by: str


_held: OrderedDict[str, Held] = OrderedDict()
_lock = Lock()


def hold(name: str, data: bytes, *, by: str) -> str:
    """Keep a file; the key to ask for it again. The oldest make room."""
    key = uuid4().hex
    with _lock:
        _held[key] = Held(name, data, by)
        while len(_held) > MOST_FILES or (
            len(_held) > 1 and sum(len(h.data) for h in _held.values()) > MOST_BYTES
        ):
            _held.popitem(last=False)
    return key


def held(key: str, *, by: str) -> Held | None:
    """The file again, for whoever sent it; None where it had to make room."""
    with _lock:
        found = _held.get(key)
        if found is not None:
            _held.move_to_end(key)
    return found if found is not None and found.by == by else None
