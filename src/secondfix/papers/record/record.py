"""What a journal brings to a pack: the as-built house, its tests, its findings, and over which revision."""

from dataclasses import dataclass, replace

from secondfix.findings import Finding
from secondfix.house import House
from secondfix.journal import RULES, AsBuilt, Entry, FunctionTest, SceneTest

# These have a sheet of their own: the differences, and what is not yet tested.
_ON_OWN_SHEETS = frozenset({"as_built_differs", "test_missing"})


@dataclass(frozen=True, slots=True)
class Record:
    """The journal's answers over one revision.

    ``test`` holds the tests against the revision, ``test_as_built`` against the as-built house, which knows
    devices fitted since. ``findings`` are all that the journal shows; ``revision`` is what the revision is
    called on the papers.
    """

    built: AsBuilt
    test: FunctionTest
    test_as_built: FunctionTest
    scenes: tuple[SceneTest, ...]
    findings: tuple[Finding, ...]
    revision: str

    @property
    def house(self) -> House:
        """The as-built house, on which every schedule of the pack rests."""
        return self.built.house

    @property
    def answers(self) -> tuple[Finding, ...]:
        """Findings that get a number on list, plan and elevation: conflicts, crossings, open snags."""
        own = self.house.id
        kept = (f for f in self.findings if f.rule not in _ON_OWN_SHEETS)
        return tuple(replace(f, place="house") if f.place == own else f for f in kept)

    def entry(self, entry_id: str) -> Entry | None:
        """An entry that counts, by its id."""
        return self.built.folded.counted.get(entry_id)


def revision_words(built: AsBuilt) -> str:
    """What the entries say that they were written over: ``A``, or each of several."""
    said = sorted({e.revision for e in built.folded.counted.values()})
    return ", ".join(said) or "not said"


assert {r.id for r in RULES} >= _ON_OWN_SHEETS
