"""Numbers of ids that a house has used, so that none comes to mean another thing."""

import re
from datetime import datetime
from threading import Lock

from secondfix.store import door

MOST_EDITS = 50
_ID = re.compile(rb'"([A-Z][a-z]{0,3})(\d{1,5})[".]')
_read: dict[tuple[str, datetime], tuple[int, dict[str, int]]] = {}
_reading = Lock()


def largest_used(house_id: str) -> dict[str, tuple[int]]:
    """The largest number behind each letter in the journal and in the last fifty edits.

    What was read once is kept: each further edit is read alone. An id that stood only before all of these,
    and of which no entry speaks, could be given again. Raises door.UnknownError.
    """
    rows = [row for row in door.edits(house_id) if row.stands]
    key = (house_id, rows[-1].at)
    with _reading:
        last, largest = _read.get(key, (0, {}))
        for row in rows[:MOST_EDITS]:
            if row.number > last:
                _take(largest, door.edit_bytes(house_id, row.number))
        _read[key] = (rows[0].number, largest)
        told = dict(largest)
    _take(told, door.journal_bytes(house_id))
    return {letter: (number,) for letter, number in told.items()}


def _take(largest: dict[str, int], text: bytes) -> None:
    for letter, number in set(_ID.findall(text)):
        key = letter.decode()
        largest[key] = max(largest.get(key, 0), int(number))
