"""Stages, houses put away and brought back, issues that stay as they went out, and who may do what."""

import json
from collections.abc import Callable

import pytest

from secondfix.assumptions import Override, default_assumptions
from secondfix.store.door import (
    Account,
    Known,
    NotAllowedError,
    Stage,
    UnknownError,
    begin_house,
    bring_back,
    go_back,
    houses,
    issue,
    issued,
    issues,
    open_house,
    post_entries,
    put_away,
    save,
    set_stage,
    settle,
)
from secondfix.store.issuing import letter
from tests.store.examples import HOUSE, TEXT, changed


@pytest.fixture(autouse=True)
def house(writer: Account) -> None:
    """One house."""
    begin_house(TEXT.encode(), by=writer)


def test_the_stage_is_what_was_said_last(writer: Account) -> None:
    for stage in Stage:
        set_stage(HOUSE, stage, by=writer)
        assert open_house(HOUSE).stage == houses()[0].stage == stage


def test_a_house_put_away_is_off_the_list_and_can_be_brought_back(writer: Account) -> None:
    put_away(HOUSE, by=writer)
    assert houses() == ()
    (row,) = houses(away=True)
    assert row.away_at is not None
    assert open_house(HOUSE).text == TEXT
    assert begin_house(TEXT.encode(), by=writer) == Known(HOUSE, 1, away=True)
    bring_back(HOUSE, by=writer)
    assert [r.id for r in houses()] == [HOUSE]
    assert houses(away=True) == ()


def test_an_issue_stays_as_it_went_out(writer: Account) -> None:
    own = default_assumptions().overridden({"parent_margin_db": Override(13)}, set_by="firm")
    row = issue(HOUSE, number=1, assumptions=own, by=writer, words="for pricing")
    assert row is not None
    save(HOUSE, changed(name="Fenwick Row 3"), base=1, by=writer)
    frozen = issued(HOUSE, "A")
    assert (frozen.text, frozen.row, frozen.house.name) == (TEXT, row, "Pellow Lane 11")
    assert json.loads(frozen.assumptions)["parent_margin_db"]["value"] == 13
    assert set(json.loads(frozen.assumptions)) == set(own)
    assert frozen.editions == ("corvell-pair@1", "corvell-pebble@2")


def test_issues_take_letters_in_turn_and_only_of_the_current_edit(writer: Account) -> None:
    set_of = default_assumptions()
    issue(HOUSE, number=1, assumptions=set_of, by=writer)
    save(HOUSE, changed(name="Fenwick Row 3"), base=1, by=writer)
    assert issue(HOUSE, number=1, assumptions=set_of, by=writer) is None
    issue(HOUSE, number=2, assumptions=set_of, by=writer)
    assert [(i.letter, i.number) for i in issues(HOUSE)] == [("B", 2), ("A", 1)]
    with pytest.raises(UnknownError):
        issued(HOUSE, "C")


def test_letters_skip_those_that_read_as_figures() -> None:
    assert [letter(n) for n in (0, 1, 7, 8, 13, 14, 23, 24, 47, 48)] == [
        "A", "B", "H", "J", "P", "Q", "Z", "AA", "AZ", "BA",
    ]  # fmt: skip


@pytest.mark.parametrize(
    "deed",
    [
        lambda by: begin_house(changed(id="01936b1e-7a40-7c21-8f3e-5d2c9a71b699"), by=by),
        lambda by: save(HOUSE, changed(name="x"), base=1, by=by),
        lambda by: settle(HOUSE, 1, {}, seen=1, by=by),
        lambda by: go_back(HOUSE, 1, base=1, by=by),
        lambda by: issue(HOUSE, number=1, assumptions={}, by=by),
        lambda by: post_entries(HOUSE, b"", by=by),
        lambda by: put_away(HOUSE, by=by),
        lambda by: bring_back(HOUSE, by=by),
        lambda by: set_stage(HOUSE, Stage.TEST, by=by),
    ],
    ids=["begin", "save", "settle", "go back", "issue", "post", "put away", "bring back", "stage"],
)
def test_a_reader_changes_nothing(
    writer: Account, reader: Account, deed: Callable[[Account], object]
) -> None:
    before = (houses(), issues(HOUSE), open_house(HOUSE))
    with pytest.raises(NotAllowedError):
        deed(reader)
    assert (houses(), issues(HOUSE), open_house(HOUSE)) == before
    writer.is_active = False
    with pytest.raises(NotAllowedError):
        deed(writer)
