"""The first account, signing in and out, people and their rights."""

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported


def test_the_first_page_of_a_new_desk_makes_the_first_account(stranger: Client) -> None:
    assert stranger.get("/", follow=True).redirect_chain[-1][0] == "/first"
    answer = stranger.post("/first", {"username": "Ilka", "password": PASSWORD})
    assert answer["Location"] == "/"
    assert [a.right for a in door.accounts()] == ["writer"]
    assert stranger.get("/").status_code == 200


def test_nobody_makes_a_second_first_account(stranger: Client, office: door.Account) -> None:
    assert stranger.post("/first", {"username": "Osk", "password": PASSWORD})["Location"] == "/sign-in"
    assert len(door.accounts()) == 1


def test_a_weak_first_password_is_refused_in_words(stranger: Client) -> None:
    answer = stranger.post("/first", {"username": "Ilka", "password": "short"})
    assert answer.status_code == 422
    assert b"expected" in answer.content
    assert door.accounts() == ()


def test_signing_in_leads_back_to_the_sheet_that_was_asked_for(
    stranger: Client, office: door.Account
) -> None:
    sent = {"username": "Ilka", "password": PASSWORD, "back": "/away"}
    assert stranger.post("/sign-in", sent)["Location"] == "/away"


@pytest.mark.parametrize("away", ["https://elsewhere.invalid/", "//elsewhere.invalid", "javascript:0"])
def test_signing_in_never_leads_away_from_the_desk(stranger: Client, office: door.Account, away: str) -> None:
    sent = {"username": "Ilka", "password": PASSWORD, "back": away}
    assert stranger.post("/sign-in", sent)["Location"] == "/"


def test_five_wrong_passwords_rest_the_account(stranger: Client, office: door.Account) -> None:
    for _ in range(5):
        stranger.post("/sign-in", {"username": "Ilka", "password": "not this one at all"})
    assert stranger.post("/sign-in", {"username": "Ilka", "password": PASSWORD}).status_code in {403, 429}


def test_leaving_leaves(writer: Client) -> None:
    writer.post("/leave")
    assert writer.get("/").status_code == 302


def test_a_writer_makes_closes_and_opens_accounts(writer: Client) -> None:
    writer.post("/people", {"username": "Osk", "password": PASSWORD, "right": "reader"})
    writer.post("/people", {"username": "Osk", "act": "close"})
    assert [(a.username, a.right, a.is_active) for a in door.accounts()] == [
        ("Ilka", "writer", True),
        ("Osk", "reader", False),
    ]
    writer.post("/people", {"username": "Osk", "act": "open", "right": "writer"})
    assert door.accounts()[1].may_write


def test_the_last_writer_cannot_close_the_desk(writer: Client) -> None:
    answer = writer.post("/people", {"username": "Ilka", "act": "close"})
    assert answer.status_code == 422
    assert door.accounts()[0].is_active


def test_another_password_wants_the_old_one(writer: Client) -> None:
    assert writer.post("/password", {"old": "wrong", "password": "seven slow barges"}).status_code == 422
    assert writer.post("/password", {"old": PASSWORD, "password": "seven slow barges"}).status_code == 302
    assert door.accounts()[0].check_password("seven slow barges")


def test_the_ink_is_kept_in_the_browser(stranger: Client) -> None:
    stranger.post("/ink", {"ink": "night", "back": "/first"})
    assert b'data-ink="night"' in stranger.get("/first").content
