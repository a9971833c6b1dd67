"""The verb ``as-built``."""

from datetime import datetime

from secondfix.actions.as_built import Found, as_built, found_as_json
from secondfix.cli.check import findings_text
from secondfix.cli.journals import JournalFiles, opened_journal, with_lines
from secondfix.cli.opening import AsJson, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import counted, para
from secondfix.findings import Outcome, exit_code
from secondfix.house import House
from secondfix.journal import Named, PurposeSet
from secondfix.terms import PURPOSES

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    journal_files: JournalFiles,
    firm_folder: FirmFolder = None,
    as_json: AsJson = False,
) -> None:
    """What differs from the design, in words: the house as its journal found it."""
    house, firm = opened(house_file, firm_folder)
    journal, lines = opened_journal(journal_files, house=house_file)
    now = datetime.now().astimezone().isoformat(timespec="seconds")
    found = as_built(house, journal, models=firm.models, now=now)
    if as_json:
        print_json(found_as_json(found))
    else:
        print(as_text(house, found))  # noqa: T201 - the command line prints
    leave(with_lines(exit_code(found.findings), lines))


def as_text(house: House, found: Found) -> str:
    """Differences first, then what the journal shows."""
    built = found.built
    head = (
        f"{house.name}: {counted(len(built.folded.counted), 'entry', 'entries')} count, "
        f"{counted(len(built.differences), 'difference')} from the revision, "
        f"{counted(len(built.folded.open_snags), 'open snag')}"
    )
    others = [f for f in found.findings if f.rule not in {"as_built_differs", "test_missing"}]
    lines = [para(d.says, indent=2, hang=2) for d in built.differences]
    entries = _entries_text(found)
    lines += [para(r.says, indent=2, hang=2) for r in built.remarks if r.entry not in entries[1]]
    lines += entries[0]
    parts = [para(head), *(["\n".join(lines)] if lines else [])]
    return "\n\n".join([*parts, *findings_text(others), *missing_text(found)])


def _entries_text(found: Found) -> tuple[list[str], set[str]]:
    """Names and purposes of entries in the controller, a paragraph for each device; the ids told in it."""
    of_device: dict[str, dict[str, list[str]]] = {}
    told: set[str] = set()
    for remark in found.built.remarks:
        entry = found.built.folded.counted.get(remark.entry)
        if isinstance(entry, Named | PurposeSet) and entry.subject.startswith("entry:"):
            words = f"'{entry.name}'" if isinstance(entry, Named) else PURPOSES[entry.purpose].label
            said = of_device.setdefault(remark.place.partition(".")[0], {}).setdefault(remark.place, [])
            said.insert(0, words) if isinstance(entry, Named) else said.append(words)
            told.add(remark.entry)
    return [
        para(
            "In the controller: "
            + "; ".join(f"{place} {', '.join(words)}" for place, words in places.items())
            + ".",
            indent=2,
            hang=2,
        )
        for places in of_device.values()
    ], told


def missing_text(found: Found) -> list[str]:
    """What was not tested, in one paragraph: in a house that stands it is nearly everything."""
    missing = [f for f in found.findings if f.rule == "test_missing" and f.outcome is Outcome.FAILS]
    if not missing:
        return []
    first = missing[0]
    places = ", ".join(f.place for f in missing)
    since = [p.place for p in found.test.presses if p.since] + [s.scene for s in found.scenes if s.since]
    again = f" Of these, tested before their device was fitted: {', '.join(since)}." if since else ""
    return [
        "\n".join(
            [
                para(f"○ Advice (test_missing). {len(missing)} not tested: {places}.{again}", hang=4),
                para(f"do: {first.remedy}", indent=4, hang=2),
                para(f"source: {first.source}", indent=4, hang=2),
            ]
        )
    ]
