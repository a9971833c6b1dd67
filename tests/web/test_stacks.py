"""Tables that become slips on a narrow screen: every cell named after its column, every role said."""

import re

import pytest
from django.template import Context, Template

from tests.desk import PASSWORD

assert PASSWORD  # the desk is begun
TABLE = (
    '<table class="small"><thead><tr><th scope="col">Place</th><th scope="col">Limit &amp; source</th>'
    '<th scope="col">Mend<span class="apart"> it</span></th></tr></thead><tbody>'
    '<tr><th scope="rowgroup" colspan="3">Hall</th></tr>'
    '<tr id="B01"><th scope="row">B01</th><td>a &lt; b</td><td></td></tr>'
    '<tr><th scope="row">B02</th><td colspan="2">nothing</td></tr>'
    '<tr><th scope="row">B03</th><td data-head="">in full</td><td>2</td></tr>'
    "</tbody></table>"
)


def rendered(table: str, words: str = '"Houses"', **context: str) -> str:
    return Template("{% load stacks %}{% stacks " + words + " %}" + table + "{% endstacks %}").render(
        Context(context)
    )


@pytest.fixture(scope="module")
def made() -> str:
    return rendered(TABLE)


def test_each_cell_has_the_name_of_its_column(made: str) -> None:
    assert '<td role="cell" data-head="Limit &amp; source">a &lt; b</td>' in made
    assert '<td role="cell" data-head="Mend it"></td>' in made
    assert '<td role="cell" data-head="Mend it">2</td>' in made


def test_a_cell_across_several_columns_and_one_that_says_so_have_none(made: str) -> None:
    assert '<td role="cell" colspan="2">nothing</td>' in made
    assert made.count('data-head=""') == 1


def test_every_part_says_its_role(made: str) -> None:
    tags = re.findall(r"<(table|thead|tbody|tr|th|td)\b([^>]*)>", made)
    assert all('role="' in rest for _, rest in tags)
    roles = [role for _, rest in tags for role in re.findall(r'role="(\w+)"', rest)]
    assert {role: roles.count(role) for role in set(roles)} == {
        "table": 1, "rowgroup": 2, "row": 5, "columnheader": 3, "rowheader": 4, "cell": 5,
    }  # fmt: skip
    assert 'class="stacks small"' in made


def test_the_words_are_its_caption_and_the_name_of_what_rolls(made: str) -> None:
    assert made.startswith('<div class="rolls" role="region" aria-label="Houses" tabindex="0"><table')
    assert '<caption class="apart">Houses</caption>' in made


def test_words_of_a_house_are_escaped_and_a_caption_that_stands_stays() -> None:
    made = rendered("<table><caption>Own</caption></table>", '"Refused" room', room='<b a="1">')
    assert 'aria-label="Refused, &lt;b a=&quot;1&quot;&gt;"' in made
    assert made.count("<caption") == 1
