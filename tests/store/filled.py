"""A store with something in every table, and everything that it answers, to hold against another."""

from typing import Any

from secondfix.assumptions import default_assumptions
from secondfix.store.door import (
    Account,
    Cover,
    Stage,
    accounts,
    begin_house,
    cover,
    edit_bytes,
    edits,
    houses,
    issue,
    issued,
    journal_bytes,
    keep_code,
    keep_mapping,
    list_mapping,
    post_entries,
    put_away,
    references,
    save,
    set_stage,
    show_code,
    shown,
    write_cover,
)
from tests.store.examples import HOUSE, TEXT, changed
from tests.store.test_entries import line

CODE = "83FED3407A939723A5C639B26916D505C3B5"
DSK = "34028-23669-20938-46346-33746-07431-56821-14554"
NAME = "Odile Varnesund"
AWAY = "01936b1e-7a40-7c21-8f3e-5d2c9a71b699"


def fill(writer: Account) -> None:
    """Something in every table."""
    begin_house(TEXT.encode(), by=writer)
    begin_house(changed(id=AWAY, name="Quill End"), by=writer)
    put_away(AWAY, by=writer)
    save(HOUSE, changed(boxes__B1__note="damp · feucht"), base=1, by=writer)
    save(HOUSE, b"{ cut", base=2, by=writer)
    issue(HOUSE, number=2, assumptions=default_assumptions(), by=writer)
    set_stage(HOUSE, Stage.SECOND_FIX, by=writer)
    post_entries(HOUSE, b"\n".join(line(n) for n in range(5)), by=writer)
    assert keep_code(HOUSE, "K07", CODE, by=writer) is None
    assert keep_code(HOUSE, "K08", DSK, by=writer) is None
    show_code(HOUSE, "K07", by=writer)
    assert keep_mapping(HOUSE, '{"format": 1}', by=writer)
    write_cover(HOUSE, Cover(NAME, "Pellow Lane 11", "", ""), by=writer)


def answers() -> dict[str, Any]:
    """What the store answers to every question, without showing a code."""
    return {
        "accounts": [(a.username, a.right, a.password) for a in accounts()],
        "houses": (houses(), houses(away=True)),
        "edits": [(e, edit_bytes(HOUSE, e.number)) for e in edits(HOUSE)],
        "issued": issued(HOUSE, "A"),
        "mapping": list_mapping(HOUSE),
        "journal": journal_bytes(HOUSE),
        "ring": (references(HOUSE), shown(HOUSE)),
        "cover": cover(HOUSE),
    }
