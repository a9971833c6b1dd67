"""Answers are ordered, counted, and folded into one survey list."""

import pytest

from secondfix.findings import (
    Finding,
    Look,
    Rule,
    Severity,
    cannot_tell,
    exit_code,
    fails,
    finding_as_json,
    in_order,
    passes,
    survey_list,
    tally,
)

RULE = Rule("depth", "Does it fit?", "common practice, no source")
OTHER = Rule("neutral", "Is there a neutral?", "common practice, no source")


def unknown(place: str, *fields: str, rule: Rule = RULE) -> Finding:
    return cannot_tell(
        rule, Severity.FAULT, place, "Not known.", looks=[Look(place, f, f"look for {f}") for f in fields]
    )


def failing(severity: Severity, place: str = "B1") -> Finding:
    return fails(
        RULE, severity, place, "Too deep.", value="40 mm", limit="35 mm", remedy="Take a deeper box."
    )


@pytest.mark.parametrize(
    ("findings", "code"),
    [
        ([], 0),
        ([passes(RULE, "B1")], 0),
        ([failing(Severity.ADVICE)], 0),
        ([failing(Severity.ADVICE), unknown("B1", "depth_mm")], 3),
        ([unknown("B1", "depth_mm"), failing(Severity.FAULT)], 1),
        ([failing(Severity.DANGER)], 1),
    ],
)
def test_the_exit_code_is_that_of_the_worst_answer(findings: list[Finding], code: int) -> None:
    assert exit_code(findings) == code


def test_failures_come_first_and_worst_first() -> None:
    given = [passes(RULE, "B0"), unknown("B0", "x"), failing(Severity.ADVICE), failing(Severity.DANGER, "B9")]
    assert [f.severity for f in in_order(given)] == [Severity.DANGER, Severity.ADVICE, Severity.FAULT, None]


def test_the_place_with_most_to_settle_comes_first_and_its_best_look_leads() -> None:
    given = [
        unknown("B1", "depth_mm"),
        unknown("B2", "neutral", "depth_mm"),
        unknown("B2", "neutral", rule=OTHER),
    ]
    lines = [(s.place, s.field, s.settles, s.rules) for s in survey_list(given)]
    assert lines == [
        ("B2", "neutral", 2, ("depth", "neutral")),
        ("B2", "depth_mm", 1, ("depth",)),
        ("B1", "depth_mm", 1, ("depth",)),
    ]


def test_only_what_cannot_be_told_is_to_be_looked_at() -> None:
    assert survey_list([failing(Severity.FAULT), passes(RULE, "B1")]) == []


def test_a_cannot_tell_names_what_would_settle_it() -> None:
    with pytest.raises(ValueError, match="must name what would settle it"):
        cannot_tell(RULE, Severity.FAULT, "B1", "Not known.", looks=[])


def test_the_count_has_every_key() -> None:
    assert tally([failing(Severity.FAULT)]) == {
        "danger": 0,
        "fault": 1,
        "advice": 0,
        "cannot_tell": 0,
        "passes": 0,
    }


def test_a_finding_as_json_names_place_value_limit_source_and_remedy() -> None:
    plain = finding_as_json(failing(Severity.FAULT))
    assert {k: plain[k] for k in ("place", "value", "limit", "source", "remedy", "severity")} == {
        "place": "B1",
        "value": "40 mm",
        "limit": "35 mm",
        "source": "common practice, no source",
        "remedy": "Take a deeper box.",
        "severity": "fault",
    }
