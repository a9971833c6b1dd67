"""The findings paper."""

from dataclasses import replace

from secondfix.assumptions import default_assumptions
from secondfix.findings import Finding, passes
from secondfix.house import Schedule
from secondfix.papers import Setting, findings_pdf
from tests.papers.example import FINDINGS, RULE
from tests.papers.reading import flat, outside, pages, words_of

MM = 72 / 25.4


def made(house: Schedule, setting: Setting, findings: tuple[Finding, ...] = FINDINGS) -> bytes:
    answer = findings_pdf(house, findings, default_assumptions(), setting=setting)
    assert isinstance(answer, bytes), answer
    return answer


def test_each_finding_has_value_limit_source_and_remedy(house: Schedule, setting: Setting) -> None:
    text = words_of(made(house, setting))
    for f in FINDINGS[:5]:
        for words in (f.place, f.says, f.value, f.limit, f.source, f.rule, f.remedy[1:]):
            assert flat(words) in text, (f.rule, words)


def test_worst_stands_first_and_each_outcome_has_its_word(house: Schedule, setting: Setting) -> None:
    text = words_of(made(house, setting))
    assert flat("1 danger, 1 fault, 1 advice, 4 cannot tell, 1 no fault found.") in text
    at = [text.index(flat(f.says)) for f in (FINDINGS[1], FINDINGS[0], FINDINGS[2], FINDINGS[3])]
    assert at == sorted(at)


def test_survey_list_names_the_look_and_how_many_answers_wait(house: Schedule, setting: Setting) -> None:
    page = next(p.text for p in pages(made(house, setting)) if "Survey list" in p.text)
    assert "look for a neutral conductor behind the switch" in " ".join(page.split())
    assert "measure the box's depth" in page


def test_assumptions_leaned_on_stand_with_value_range_and_source(house: Schedule, setting: Setting) -> None:
    text = words_of(made(house, setting))
    leaned = default_assumptions()[RULE.assumptions[0]]
    for words in (leaned.means, leaned.source, f"{leaned.value}", f"{leaned.low} to {leaned.high}"):
        assert flat(words) in text


def test_with_nothing_found_it_says_no_fault_found(house: Schedule, setting: Setting) -> None:
    text = words_of(made(house, setting, (passes(replace(RULE, assumptions=()), "B01"),)))
    assert flat("1 no fault found") in text
    assert flat("Nothing waits for a look.") in text
    assert flat("No answer leaned on an assumption.") in text


def test_two_hundred_findings_stay_inside_the_frame(house: Schedule, setting: Setting) -> None:
    many = tuple(replace(f, says=f"{f.says} {n}") for n in range(40) for f in FINDINGS)
    pdf = made(house, setting, many)
    assert len(pages(pdf)) > 20
    assert outside(pdf, left=15 * MM, other=8 * MM) == []
