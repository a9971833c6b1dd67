"""The catalogue of rules in docs and the rules in code: each with its mark and its assumptions."""

import re
from functools import cache

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.electrical import RULES
from secondfix.findings import Rule
from tests.electrical.faults_wide import CASES
from tests.electrical.reads import DOCS, PAGES
from tests.electrical.sound import HOUSES, answers, spoilt

MARKS = (
    "read",
    "secondary",
    "computed",
    "from memory",
    "common practice, no source",
    "data sheet",
    "circuit theory",
)
MULTIWAY = {rule.id for rule in RULES if rule.id.startswith("multiway_")}
# Whatever works out a current may lean on these; the page tells of them once.
ANY_CURRENT = ("power_factor_", "rating_carries_down_to_pct")


@cache
def sections() -> dict[str, str]:
    """Rule to what the pages say of it, line ends as blanks."""
    found = {}
    for page in PAGES:
        text = (DOCS / page).read_text(encoding="utf-8")
        for section in re.split(r"^### ", text, flags=re.MULTILINE)[1:]:
            found[section.splitlines()[0]] = " ".join(section.split())
    return found


@cache
def leaned_on() -> dict[str, set[str]]:
    """Rule to the assumptions that its answers name, over the sound houses and every injected fault."""
    plains = [*HOUSES.values(), *(spoilt(changes, of=house) for house, changes, _ in CASES.values())]
    names: dict[str, set[str]] = {rule.id: set() for rule in RULES}
    for finding in (f for plain in plains for f in answers(plain)):
        names[finding.rule] |= {n for n in finding.assumptions if not n.startswith(ANY_CURRENT)}
    return names


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_a_rule_stands_on_the_page_with_a_mark_and_its_assumptions(rule: Rule) -> None:
    section = sections()[rule.id]
    if rule.id not in MULTIWAY:  # their page gives one source for all of them
        assert any(mark in section for mark in MARKS)
    assert any(mark in rule.source for mark in MARKS)
    named = set(re.findall(r"`([a-z_]+_(?:pct|mm|mw|v|permille|ma))`", section)) & set(default_assumptions())
    assert leaned_on()[rule.id] <= named
    assert named <= leaned_on()[rule.id]


def test_no_section_speaks_of_a_rule_that_is_not() -> None:
    assert set(sections()) == {rule.id for rule in RULES}
