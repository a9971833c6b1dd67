"""Which edits differ, and which stand."""

import json
from collections.abc import Iterable

from secondfix.house import FieldChange, field_changes
from secondfix.store import door
from secondfix.web.frame.asked import asked_at

MOST = 400


def between(house_id: str, one: int, other: int) -> tuple[FieldChange, ...]:
    """What edit ``other`` has otherwise than edit ``one``. Raises door.UnknownError."""
    texts = (asked_at(house_id, one).text, asked_at(house_id, other).text)
    before, after = map(json.loads, texts)
    return field_changes(before, after)


def standing(rows: Iterable[door.EditRow]) -> list[int]:
    """The numbers of edits that became current, the latest first."""
    return [row.number for row in rows if row.stands]
