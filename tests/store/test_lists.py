"""Mappings of device lists: kept with their house, on either kind of store."""

import pytest

from secondfix.store.door import (
    Account,
    NotAllowedError,
    UnknownError,
    begin_house,
    keep_mapping,
    latest_mappings,
    list_mapping,
)
from tests.store.conftest import Store
from tests.store.examples import HOUSE, TEXT, changed

OTHER = "01936b1e-7a40-7c21-8f3e-5d2c9a71b699"


@pytest.fixture(autouse=True)
def house(store: Store, writer: Account) -> None:
    """Two houses on either store."""
    begin_house(TEXT.encode(), by=writer)
    begin_house(changed(id=OTHER, name="Quill End"), by=writer)


def test_the_latest_mapping_of_a_house_stands(writer: Account) -> None:
    assert list_mapping(HOUSE) is None
    assert keep_mapping(HOUSE, "one", by=writer)
    assert not keep_mapping(HOUSE, "one", by=writer)  # it stands already
    assert keep_mapping(HOUSE, "two\0", by=writer)
    assert (list_mapping(HOUSE), list_mapping(OTHER)) == ("two", None)


def test_mappings_of_the_firm_come_the_latest_first_and_once(writer: Account) -> None:
    keep_mapping(HOUSE, "one", by=writer)
    keep_mapping(OTHER, "two", by=writer)
    assert latest_mappings() == ("two", "one")
    assert latest_mappings(1) == ("two",)
    keep_mapping(OTHER, "one", by=writer)
    assert latest_mappings() == ("one",)


def test_only_a_writer_keeps_one_and_only_for_a_house_that_stands(writer: Account, reader: Account) -> None:
    with pytest.raises(NotAllowedError):
        keep_mapping(HOUSE, "one", by=reader)
    with pytest.raises(UnknownError):
        keep_mapping("01936b1e-7a40-7c21-8f3e-5d2c9a71b600", "one", by=writer)


def test_one_that_is_too_large_is_not_kept(writer: Account) -> None:
    assert not keep_mapping(HOUSE, "x" * 1_048_577, by=writer)
    assert list_mapping(HOUSE) is None
