"""Who may come in: the first account, names and passwords, closed accounts, and a writer left always."""

import pytest
from django.contrib.auth import authenticate
from django.test import RequestFactory

from secondfix.store.door import (
    Account,
    NotAllowedError,
    Refused,
    Right,
    UnknownError,
    accounts,
    change_account,
    create_account,
    set_password,
)
from tests.desk import PASSWORD
from tests.store.conftest import Store


def signs_in(username: str, password: str) -> bool:
    """Whether the name and password let somebody in."""
    request = RequestFactory().post("/sign-in")
    return authenticate(request, username=username, password=password) is not None


def test_the_first_account_is_a_writer(store: Store) -> None:
    with pytest.raises(NotAllowedError):
        create_account(username="Osk", password=PASSWORD, right=Right.READER, by=None)
    assert accounts() == ()
    first = create_account(username="Ilka", password=PASSWORD, right=Right.WRITER, by=None)
    assert isinstance(first, Account)
    with pytest.raises(NotAllowedError):
        create_account(username="Osk", password=PASSWORD, right=Right.WRITER, by=None)


def test_a_reader_makes_no_account(reader: Account) -> None:
    with pytest.raises(NotAllowedError):
        create_account(username="Pell", password=PASSWORD, right=Right.WRITER, by=reader)
    with pytest.raises(NotAllowedError):
        change_account(username="Osk", by=reader, right=Right.WRITER)


@pytest.mark.parametrize(
    ("username", "password", "paths"),
    [
        ("", PASSWORD, {"username"}),
        ("a\nb", PASSWORD, {"username"}),
        ("x" * 41, PASSWORD, {"username"}),
        ("Pell", "short", {"password"}),
        ("Pell", "passwordpassword"[:8], {"password"}),
        ("", "", {"username", "password"}),
        ("Ilka", PASSWORD, {"username"}),
    ],
)
def test_every_fault_of_a_name_and_password_is_told(
    writer: Account, username: str, password: str, paths: set[str]
) -> None:
    made = create_account(username=username, password=password, right=Right.READER, by=writer)
    assert isinstance(made, Refused)
    assert {f.path for f in made.faults} == paths
    assert len(accounts()) == 1


def test_a_closed_account_comes_in_no_more_and_is_opened_again(writer: Account, reader: Account) -> None:
    assert signs_in("Osk", PASSWORD)
    change_account(username="Osk", by=writer, active=False)
    assert not signs_in("Osk", PASSWORD)
    change_account(username="Osk", by=writer, active=True)
    assert signs_in("Osk", PASSWORD)
    assert not signs_in("Osk", "another heron")


def test_a_new_password_takes_the_place_of_the_old(writer: Account) -> None:
    assert isinstance(set_password(writer, "short"), Refused)
    assert signs_in("Ilka", PASSWORD)
    assert set_password(writer, "nine brown otters") is None
    assert signs_in("Ilka", "nine brown otters")
    assert not signs_in("Ilka", PASSWORD)


def test_a_writer_is_left_always(writer: Account, reader: Account) -> None:
    assert isinstance(change_account(username="Ilka", by=writer, right=Right.READER), Refused)
    assert isinstance(change_account(username="Ilka", by=writer, active=False), Refused)
    assert [a.may_write for a in accounts()] == [True, False]
    change_account(username="Osk", by=writer, right=Right.WRITER)
    assert isinstance(change_account(username="Ilka", by=writer, right=Right.READER), Account)
    with pytest.raises(UnknownError):
        change_account(username="nobody", by=accounts()[1], active=False)


def test_five_wrong_passwords_rest_the_name_for_a_while(writer: Account) -> None:
    for _ in range(5):
        assert not signs_in("Ilka", "wrong wrong wrong")
    assert not signs_in("Ilka", PASSWORD)
