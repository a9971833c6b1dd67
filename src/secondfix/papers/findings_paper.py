"""The findings paper: what was found, worst first; what to look at; which assumptions were leaned on."""

from collections import Counter
from collections.abc import Iterable, Sequence

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Outcome, in_order, survey_list
from secondfix.house import Schedule, is_nec
from secondfix.papers.blocks import Block, Sheet, column, heading, para, soft, strong, table
from secondfix.papers.coverage import TextFault
from secondfix.papers.drawing import SHAPE_WORDS, shape_of
from secondfix.papers.figures import assumption_range, assumption_value
from secondfix.papers.leaned import leaned_blocks, leaning, names_of
from secondfix.papers.places import about_words, id_words, thing_words
from secondfix.papers.setting import Setting
from secondfix.papers.snags import snags
from secondfix.papers.typeset import typeset
from secondfix.papers.words import counted, sentence


def findings_pdf(
    schedule: Schedule, findings: Iterable[Finding], assumptions: Assumptions, *, setting: Setting
) -> bytes | list[TextFault]:
    """Findings by severity, survey list and assumptions of one house as a PDF, or its unprintable texts.

    Every finding stands with value, limit, source and remedy; what passes is counted per rule under the
    words 'no fault found'. The same arguments give the same bytes.
    """
    answers = in_order(findings)
    sheets = [
        findings_sheet(schedule, answers, assumptions, "S1/01"),
        leaning(
            survey_sheet(schedule, answers, "S1/02"),
            assumptions,
            names_of(f for f in answers if f.outcome is Outcome.CANNOT_TELL),
            nec=is_nec(schedule.house),
        ),
        assumptions_sheet(schedule, answers, assumptions, "S1/03"),
    ]
    return typeset(sheets, title="findings", house=schedule.house, setting=setting, landscape=False)


def findings_sheet(
    schedule: Schedule, answers: Sequence[Finding], assumptions: Assumptions, number: str
) -> Sheet:
    """Failures and cannot-tells in full, passes by the count; numbers are those of the snag list."""
    blocks: list[Block] = [para(tally_words(answers), style="strong")]
    shape = ""
    for n, finding in ((s.number, f) for s in snags(answers) for f in s.findings):
        if shape_of(finding) != shape:
            shape = shape_of(finding)
            blocks.append(heading(SHAPE_WORDS[shape]))
        blocks.append(_finding_block(schedule, n, finding))
    passed = Counter(f.rule for f in answers if f.outcome is Outcome.PASSES)
    if passed:
        blocks.append(heading(SHAPE_WORDS["passes"]))
        blocks.append(
            table(
                [column("Rule", fr=2), column("Source", fr=3), column("Places", mm=20, align="right")],
                [
                    [rule, soft(_source_of(answers, rule)), str(count)]
                    for rule, count in sorted(passed.items())
                ],
                dense=True,
            )
        )
    says = "Worst first, each with value, limit, source and remedy. No fault found does not mean safe."
    open_names = names_of(f for f in answers if f.outcome is not Outcome.PASSES)
    blocks += leaned_blocks(assumptions, open_names, nec=is_nec(schedule.house))
    return Sheet(number, "Findings", says, blocks)


def survey_sheet(schedule: Schedule, answers: Sequence[Finding], number: str) -> Sheet:
    """What to look at, place by place, the place with most to settle first."""
    rows = []
    last = ""
    for line in survey_list(answers):
        words = strong(thing_words(schedule.house, line.place)) if line.place != last else ""
        last = line.place
        rows.append([words, line.words, soft(", ".join(line.rules)), str(line.settles)])
    columns = [
        column("Place", fr=2.2),
        column("Look", fr=3),
        column("Rules that wait", fr=2.2),
        column("Settles", mm=16, align="right"),
    ]
    says = "One look settles so many answers. The places at which most is open come first."
    blocks = [table(columns, rows)] if rows else [para("Nothing waits for a look.")]
    return Sheet(number, "Survey list", says, blocks)


def assumptions_sheet(
    schedule: Schedule, answers: Sequence[Finding], assumptions: Assumptions, number: str
) -> Sheet:
    """The assumptions that some answer leaned on, with value, range and source."""
    leaned = names_of(answers)
    says = (
        "No standard and no survey says these. Where an answer would change within a range it is cannot tell."
    )
    blocks = (
        [_assumptions_table(schedule, assumptions, leaned)]
        if leaned
        else [para("No answer leaned on an assumption.")]
    )
    return Sheet(number, "Assumptions", says, blocks)


def all_assumptions_sheet(
    schedule: Schedule, answers: Sequence[Finding], assumptions: Assumptions, number: str
) -> Sheet:
    """Every assumption as it is resolved for this house: those that answers leaned on, then the others."""
    leaned = names_of(answers)
    others = sorted(set(assumptions) - set(leaned))
    says = (
        "Every value as it holds for this house: the default, over it the firm's, the house's, the command "
        "line's. No standard and no survey says these. Where an answer would change within a range it is "
        "cannot tell."
    )
    blocks: list[Block] = []
    for title, names in (("Answers lean on", leaned), ("No answer leans on", others)):
        if names:
            blocks += [heading(title), _assumptions_table(schedule, assumptions, names)]
    return Sheet(number, "Assumptions", says, blocks)


def _assumptions_table(schedule: Schedule, assumptions: Assumptions, names: Sequence[str]) -> Block:
    nec = is_nec(schedule.house)
    rows = [
        [
            soft(str(n)),
            {"lines": [strong(a.means), soft(name)]},
            assumption_value(a, nec=nec),
            assumption_range(a, nec=nec),
            a.source,
            a.set_by,
        ]
        for n, (name, a) in enumerate(((name, assumptions[name]) for name in names), 1)
    ]
    columns = [
        column("No.", mm=9),
        column("Stands for", fr=3),
        column("Value", mm=29 if nec else 20),
        column("Range", mm=34 if nec else 26),
        column("Source", fr=2),
        column("Set by", mm=16),
    ]
    return table(columns, rows)


def _finding_block(schedule: Schedule, number: int, f: Finding) -> Block:
    pairs = [
        ("Value", f.value),
        ("Limit", f.limit),
        ("Remedy" if f.outcome is Outcome.FAILS else "Look", sentence(f.remedy)),
        ("Source", f.source),
        ("Concerns", ", ".join(thing_words(schedule.house, i) for i in f.also)),
        ("Leans on", ", ".join(f.assumptions)),
    ]
    return {
        "kind": "finding",
        "shape": shape_of(f),
        "number": str(number),
        "word": SHAPE_WORDS[shape_of(f)],
        "place": id_words(schedule.house, f.place),
        "room": about_words(schedule.house, f.place),
        "rule": f.rule,
        "says": f.says,
        "pairs": [list(p) for p in pairs if p[1]],
    }


def tally_words(answers: Sequence[Finding]) -> str:
    """``1 danger, 2 faults, 4 cannot tell.``"""
    counts = Counter(shape_of(f) for f in answers)
    parts = [shape_count(shape, counts[shape]) for shape in SHAPE_WORDS if counts[shape]]
    return ", ".join(parts) + "." if parts else "No question was asked."


def shape_count(shape: str, count: int) -> str:
    """So many of one shape; advice, cannot tell and no fault found have no plural."""
    words = SHAPE_WORDS[shape].lower()
    return counted(count, words, "" if shape in {"danger", "fault"} else words)


def _source_of(answers: Sequence[Finding], rule: str) -> str:
    return "; ".join(sorted({f.source for f in answers if f.rule == rule and f.outcome is Outcome.PASSES}))
