"""A writer in a process of its own: saves and posts without end, and says each that it was told is saved.

Arguments: the data folder, the database's URL or ``-``, a seed. Standard output: one line for each answer.
Writers of even and of odd seeds change different fields, so that two may work at one house.
"""

import json
import sys
from pathlib import Path

from secondfix.house import uuid7
from secondfix.store.start import Whereabouts, begin

BOXES = ("B1", "B2")


def tell(*words: str) -> None:
    """One line, on its way before anything else is done."""
    sys.stdout.write(" ".join(words) + "\n")
    sys.stdout.flush()


def write(folder: str, url: str, seed: int) -> None:
    """Save an edit and post an entry, over and over; each is told only after the store has answered."""
    begin(Whereabouts(Path(folder), database_url=None if url == "-" else url), migrate=False)
    from secondfix.store import door  # noqa: PLC0415 - the start comes first

    writer, house_id = door.accounts()[0], door.houses()[0].id
    for n in range(100_000):
        opened = door.open_house(house_id)
        plain = json.loads(opened.text)
        plain["boxes"][BOXES[seed % 2]]["note"] = words = f"{seed}-{n}"
        edit_id = uuid7(unix_ms=n, random=bytes([2, seed]) * 5)
        sent = json.dumps(plain).encode()
        answer = door.save(house_id, sent, base=opened.number, by=writer, edit_id=edit_id, words=words)
        assert isinstance(answer, door.Saved), answer
        tell("edit", edit_id, words)
        entry = {
            "format": 1, "house": house_id, "id": uuid7(unix_ms=n, random=bytes([1, seed]) * 5),
            "revision": "A", "kind": "function_tested", "subject": "gang:B1.1", "writer": "Osk",
            "at": "2031-05-06T09:40+02:00", "answered": {"L1": "changed"}, "note": words,
        }  # fmt: skip
        assert not door.post_entries(house_id, json.dumps(entry).encode(), by=writer).faults
        tell("entry", str(entry["id"]), words)


if __name__ == "__main__":
    write(sys.argv[1], sys.argv[2], int(sys.argv[3]))
