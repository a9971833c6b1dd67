"""docs/assumptions.md says of every assumption what the code says, and nothing else."""

from pathlib import Path

from secondfix.actions.assumptions import Listed, listed
from secondfix.assumptions import default_assumptions

_HEAD = ("name", "stands for", "value", "range", "nobody may set it beyond", "source", "leaned on by")


def row(one: Listed) -> str:
    a = one.assumption
    bounds = f"{a.least} to {a.most}"
    span = "taken as certain" if a.low == a.high else f"{a.low} to {a.high}"
    leaning = ", ".join((*(f"`{rule}`" for rule in one.rules), *one.answers))
    return f"| `{a.name}` | {a.means} | {a.value} {a.unit} | {span} | {bounds} | {a.source} | {leaning} |"


def table() -> str:
    head = f"| {' | '.join(_HEAD)} |\n|{'---|' * len(_HEAD)}\n"
    return head + "\n".join(map(row, listed(default_assumptions()))) + "\n"


def test_the_table_is_that_of_the_code(tree: Path) -> None:
    page = (tree / "docs/assumptions.md").read_text(encoding="utf-8")
    assert page[page.index("| name |") :] == table()
