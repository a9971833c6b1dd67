"""The rules of the journal, in the order of the printed list."""

from secondfix.findings import Rule

_CP = "common practice, no source"
_TEST = "IEC 60364-6 asks for a functional test of switchgear and controls (clause from memory)"

CONFLICT = Rule("journal_conflict", "Do all who wrote of a thing, not knowing of each other, agree?", _CP)
ENTRY = Rule("journal_entry", "Does every entry count, and know only entries that are here?", _CP)
UNKNOWN_KIND = Rule("journal_kind", "Is every entry of a kind that this edition knows?", _CP)
CROSSED = Rule("crossed_gangs", "Does each gang and entry work its own load and no other?", _TEST)
DEAD = Rule("dead_gang", "Does each gang that feeds a load work anything?", _TEST)
MISSING = Rule("test_missing", "Was every gang that feeds a load, and every scene, tested?", _TEST)
SCENE = Rule("scene_tested", "Does each scene that was tested switch what it should and no more?", _TEST)
SNAG = Rule("snag_open", "Is every snag cleared?", _CP)
DIFFERS = Rule("as_built_differs", "Is the house as its revision says?", _CP)

RULES: tuple[Rule, ...] = (
    CONFLICT,
    ENTRY,
    UNKNOWN_KIND,
    CROSSED,
    DEAD,
    MISSING,
    SCENE,
    SNAG,
    DIFFERS,
)
