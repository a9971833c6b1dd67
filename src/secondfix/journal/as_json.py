"""Answers about a journal as plain JSON values; the shapes are described in docs/journal.md."""

import json
from typing import Any

from secondfix.journal.asbuilt import AsBuilt
from secondfix.journal.crossing import Crossing
from secondfix.journal.entry import Entry, Unknown
from secondfix.journal.pressing import FunctionTest
from secondfix.journal.scene_test import SceneTest


def entry_as_json(entry: Entry) -> dict[str, Any]:
    """One entry as an object; one of unknown kind as it stands."""
    if isinstance(entry, Unknown):
        plain: dict[str, Any] = json.loads(entry.line)
        return plain
    return entry.model_dump(mode="json", exclude_defaults=True)


def as_built_as_json(built: AsBuilt) -> dict[str, Any]:
    """Differences, remarks, conflicts, open snags, entries of unknown kind, and what is told of entries."""
    folded = built.folded
    return {
        "house": built.house.id,
        "differences": [
            {
                "place": d.place, "field": d.field, "designed": d.designed, "found": d.found,
                "says": d.says, "entries": list(d.entries),
            }
            for d in built.differences
        ],
        "remarks": [{"place": r.place, "says": r.says, "entry": r.entry} for r in built.remarks],
        "conflicts": [
            {"subject": c.subject, "aspect": c.aspect, "entries": [entry_as_json(e) for e in c.entries]}
            for c in folded.conflicts
        ],
        "open_snags": [entry_as_json(s) for s in folded.open_snags],
        "unknown": [entry_as_json(u) for u in folded.unknown],
        "told": [{"entry": t.entry, "words": t.words, "serious": t.serious} for t in built.told],
        "counted": len(folded.counted),
        "withdrawn": sorted(folded.withdrawn),
        "not_adopted": list(built.fresh),
    }  # fmt: skip


def tests_as_json(test: FunctionTest, scenes: tuple[SceneTest, ...]) -> dict[str, Any]:
    """Every press with what it made, the true map, what is crossed or shared, and scenes."""
    return {
        "presses": [
            {
                "subject": p.subject, "place": p.place, "device": p.device,
                "expected": None if p.expected is None else list(p.expected),
                "answered": list(p.answered), "also_answered": p.also_answered,
                "worked": p.worked.value, "entry": p.entry, "since": p.since,
            }
            for p in test.presses
        ],
        "true_map": {p.subject: list(p.answered) for p in test.presses if p.entry is not None},
        "crossed_gangs": [_crossing(c) for c in test.crossed_gangs],
        "crossed_entries": [_crossing(c) for c in test.crossed_entries],
        "shared": [{"load": load, "gangs": list(gangs)} for load, gangs in test.shared],
        "scenes": [
            {
                "scene": s.scene, "tested": s.tested, "disputed": s.disputed, "as_expected": s.as_expected,
                "missing": list(s.missing), "extra": list(s.extra), "wrong_way": list(s.wrong_way),
                "also_answered": s.also_answered, "since": s.since,
            }
            for s in scenes
        ],
    }  # fmt: skip


def _crossing(crossing: Crossing) -> dict[str, Any]:
    return {
        "gangs": list(crossing.channels),
        "exchange": [list(pair) for pair in crossing.exchanges],
        "rename": dict(crossing.names),
    }
