"""Everything that the journal of a house shows to be wrong, open or different."""

from collections.abc import Iterator, Mapping

from secondfix.findings import Finding, Look, Severity, cannot_tell, fails, passes
from secondfix.journal import rules
from secondfix.journal.asbuilt import AsBuilt
from secondfix.journal.check_presses import press_findings, scene_findings
from secondfix.journal.pressing import function_test
from secondfix.journal.retest import fitted_since
from secondfix.journal.scene_test import scene_tests
from secondfix.journal.subject import subject_of


def check(built: AsBuilt, *, expected: Mapping[str, Mapping[str, str]]) -> list[Finding]:
    """Every answer about a journal, passes included, in no promised order. Pure.

    ``expected`` gives each scene of the revision the loads it should switch, ``on`` or ``off``; a scene
    left out is not asked about. Gangs are held against the revision, so a crossing that was adopted is
    no longer one.
    """
    since = fitted_since(built.house, built.folded)
    test = function_test(built.revision, built.folded, since=since)
    scenes = scene_tests(built.folded, expected, since=since)
    return [
        *_conflicts(built),
        *_entries(built),
        *_unknown(built),
        *press_findings(built.revision, test),
        *scene_findings(built.revision, scenes),
        *_snags(built),
        *_differs(built),
    ]


def _conflicts(built: AsBuilt) -> Iterator[Finding]:
    for conflict in built.folded.conflicts:
        place = subject_of(conflict.subject).id
        who = "; ".join(f"{e.writer} at {e.at}" for e in conflict.entries)
        yield fails(
            rules.CONFLICT,
            Severity.FAULT,
            place,
            f"Of {conflict.subject}, {len(conflict.entries)} current entries differ on '{conflict.aspect}', "
            f"and their writers did not know of each other ({who}). None of them decides.",
            value=", ".join(e.id for e in conflict.entries),
            limit="one current entry, or several that agree",
            remedy="Look at the place; then write an entry that has seen all of them, or withdraw some.",
        )
    if not built.folded.conflicts:
        yield passes(rules.CONFLICT, built.house.id, value="no conflict")


def _entries(built: AsBuilt) -> Iterator[Finding]:
    for told in built.told:
        entry = built.folded.counted.get(told.entry)
        about = f"Entry {told.entry}" + (f" by {entry.writer} of {entry.subject}" if entry else "")
        yield fails(
            rules.ENTRY,
            Severity.FAULT if told.serious else Severity.ADVICE,
            subject_of(entry.subject).id if entry else built.house.id,
            f"{about} {told.words}.",
            value=told.entry,
            limit="an entry that counts, and knows only entries that are here",
            remedy="Withdraw it if it is wrong; bring the journal that is missing if one is.",
        )
    if not built.told:
        yield passes(rules.ENTRY, built.house.id, value=f"{len(built.folded.counted)} entries")


def _unknown(built: AsBuilt) -> Iterator[Finding]:
    for entry in built.folded.unknown:
        place = subject_of(entry.subject).id
        words = f"read entry {entry.id} with the Secondfix that wrote it"
        yield cannot_tell(
            rules.UNKNOWN_KIND,
            Severity.FAULT,
            place,
            f"Entry {entry.id} is of the kind '{entry.kind}', which this edition does not know: "
            "it is kept as it stands, and what it says is not in the as-built house.",
            looks=[Look(place, "journal", words)],
            value=entry.kind,
        )
    if not built.folded.unknown:
        yield passes(rules.UNKNOWN_KIND, built.house.id)


def _snags(built: AsBuilt) -> Iterator[Finding]:
    for snag in built.folded.open_snags:
        yield fails(
            rules.SNAG,
            snag.severity,
            subject_of(snag.subject).id,
            f"Snag open: {snag.words} ({snag.writer}, {snag.at})",
            value="open",
            limit="cleared",
            remedy="Put it right, then clear the snag with an entry that says how.",
            also=[snag.id],
        )
    if not built.folded.open_snags:
        yield passes(rules.SNAG, built.house.id, value="no open snag")


def _differs(built: AsBuilt) -> Iterator[Finding]:
    for d in built.differences:
        yield fails(
            rules.DIFFERS,
            Severity.ADVICE,
            d.place,
            d.says,
            value=d.found or "not standing",
            limit=d.designed or "not in the revision",
            remedy="Adopt the as-built house, or bring the site to the design and record it.",
            also=d.entries,
        )
    for remark in built.remarks:
        yield fails(
            rules.DIFFERS,
            Severity.ADVICE,
            remark.place,
            remark.says,
            value="see the entry",
            limit="",
            remedy="Finish the step and record it, or leave it as it is known.",
            also=[remark.entry],
        )
    if not built.differences and not built.remarks:
        yield passes(rules.DIFFERS, built.house.id, value="as the revision says")
