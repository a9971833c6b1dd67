"""The verb ``test``."""

from secondfix.actions.as_built import Found, as_built, of_tests, tested_as_json
from secondfix.cli.as_built import missing_text
from secondfix.cli.check import findings_text
from secondfix.cli.journals import JournalFiles, opened_journal, with_lines
from secondfix.cli.opening import AsJson, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import para, table
from secondfix.findings import exit_code
from secondfix.house import House
from secondfix.journal import Press, SceneTest, Worked

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    journal_files: JournalFiles,
    firm_folder: FirmFolder = None,
    as_json: AsJson = False,
) -> None:
    """The function test: what each gang and scene really works, what is crossed or dead, what mends it."""
    house, firm = opened(house_file, firm_folder)
    journal, lines = opened_journal(journal_files, house=house_file)
    found = as_built(house, journal, models=firm.models)
    if as_json:
        print_json(tested_as_json(found))
    else:
        print(as_text(house, found))  # noqa: T201 - the command line prints
    leave(with_lines(exit_code(of_tests(found)), lines))


def as_text(house: House, found: Found) -> str:
    """A row for each gang, entry and scene tested, what is crossed, then the findings."""
    parts = [f"{house.name}: function test"]
    if rows := [_row(p) for p in found.test.presses if p.worked is not Worked.NOT_TESTED]:
        parts.append(table(("gang or entry", "should", "is", "worked"), rows, indent=2))
    if scenes := [(s.scene, *_scene(house, s)) for s in found.scenes if s.tested or s.disputed]:
        parts.append(table(("scene", "is", "called"), scenes, indent=2))
    for crossing in (*found.test.crossed_gangs, *found.test.crossed_entries):
        pairs = "; ".join(f"{a} with {b}" for a, b in crossing.exchanges)
        names = "; ".join(f"{channel} works {load}" for channel, load in crossing.names)
        parts.append(
            para(f"Crossed: {', '.join(crossing.channels)}. Exchange {pairs}; or rename: {names}.", hang=2)
        )
    others = [f for f in of_tests(found) if f.rule != "test_missing"]
    return "\n\n".join([*parts, *findings_text(others), *missing_text(found)])


def _row(press: Press) -> tuple[str, str, str, str]:
    should = "not said" if press.expected is None else ", ".join(press.expected) or "nothing"
    did = ", ".join((*press.answered, *([press.also_answered] if press.also_answered else []))) or "nothing"
    is_ = press.worked.value.replace("_", " ")
    return press.subject.partition(":")[2], should, is_, did if press.entry else ""


def _scene(house: House, scene: SceneTest) -> tuple[str, str]:
    is_ = "disputed" if scene.disputed else "as it should" if scene.as_expected else "not as it should"
    return is_, house.scenes[scene.scene].name
