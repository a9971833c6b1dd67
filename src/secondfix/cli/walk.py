"""The verb ``walk``."""

from collections.abc import Sequence
from itertools import groupby

from secondfix.actions.leaned import leaned_as_json
from secondfix.actions.walk import Walked, walk, walked_as_json
from secondfix.assumptions import Assumption
from secondfix.cli.check import findings_text
from secondfix.cli.leaning import leaning_on, leaning_text
from secondfix.cli.opening import AsJson, Assume, FirmFolder, HouseFile, leave, opened, print_json, verb_app
from secondfix.cli.page import counted, para
from secondfix.findings import exit_code
from secondfix.house import House, is_nec
from secondfix.joining import stage_words
from secondfix.terms import said, walked_way

app = verb_app()


@app.command()
def run(
    house_file: HouseFile, firm_folder: FirmFolder = None, assume: Assume = None, as_json: AsJson = False
) -> None:
    """An order in which every device has a good parent, already joined and powered, when its turn comes."""
    house, firm = opened(house_file, firm_folder, assume)
    walked = walk(house, assumptions=firm.assumptions)
    leaned = leaning_on(house, walked.findings, firm.assumptions)
    if as_json:
        print_json({**walked_as_json(walked), **leaned_as_json(leaned)})
    else:
        print(as_text(house, walked, leaned))  # noqa: T201 - the command line prints
    leave(exit_code(walked.findings))


_PARENTS = (
    "Each device joins through the nearest good parent that stands by then. By which way it talks in the end "
    "it chooses itself; reach shows the likeliest."
)


def as_text(house: House, walked: Walked, leaned: Sequence[Assumption]) -> str:
    """The walk as a page of text, a stage a block."""
    w, nec = walked.walk, is_nec(house)
    isolations = counted(w.isolations, said("isolation", nec=nec))
    head = (
        f"{house.name}: {counted(len(w.joins()), 'device')} to join, {isolations}, "
        f"about {walked_way(w.walked_mm, nec=nec)} to walk"
        f"{'' if w.exact else ', perhaps not the shortest way'}"
    )
    parts = [para(head)]
    for stage, steps in groupby(w.steps, key=lambda s: s.stage):
        lines = [stage_words(stage, nec=nec)]
        for step in steps:
            marks = f" ({', '.join(m.value for m in step.marks)})" if step.marks else ""
            lines.append(para(f"{step.number:>3}. {step.words}{marks}", indent=2, hang=5))
        parts.append("\n".join(lines))
    if w.steps:
        parts.append(para(_PARENTS))
    if w.unplaced:
        parts.append(para(f"Position not known, so the way is guessed: {', '.join(w.unplaced)}."))
    return "\n\n".join(parts + findings_text(walked.findings) + leaning_text(house, leaned))
