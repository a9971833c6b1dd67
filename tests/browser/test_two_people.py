"""Two people before one house: their edits meet, and nothing of either is lost."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.conftest import opened
from tests.browser.looking import DESK_SIZE, PASSWORD, Watched, enter, framed, serious
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported


@pytest.fixture
def other(browser: Browser, office: door.Account, empty: str) -> Iterator[Page]:
    """The page of a second writer."""
    made = door.create_account(username="Osk", password=PASSWORD, right=door.Right.WRITER, by=office)
    assert isinstance(made, door.Account)
    with opened(browser, viewport=DESK_SIZE) as context:
        enter(context, made, empty)
        yield context.new_page()


def test_two_who_meet_in_one_field_lose_nothing(
    watched: Watched, other: Page, empty: str, house_id: str
) -> None:
    mine = watched.go(f"/house/{house_id}/schedule")
    other.goto(mine.url)

    typed(other, "B02.1", "power", "33")
    saved(other)
    typed(mine, "B04.1", "power", "27")  # another field: both stand, and each is shown the other's
    saved(mine)
    expect(cell(mine, "B02.1", "power")).to_have_text("33 (told)")

    typed(other, "B01.1", "power", "61")
    saved(other)
    typed(mine, "B01.1", "power", "48")  # the same field, not yet shown: neither is taken for granted
    expect(mine.get_by_role("heading", level=1)).to_have_text("Two edits of one field")
    watched.refused(409)
    assert serious(mine) + framed(mine) == []
    expect(mine.get_by_text("As it stands now: 61")).to_be_visible()
    expect(mine.get_by_text("As you wrote it: 48")).to_be_visible()
    mine.get_by_text("As you wrote it").click()
    mine.get_by_role("button", name="Save with these").click()
    expect(mine.get_by_role("heading", level=1)).to_have_text("Drawing register")

    for page in (mine, other):
        page.goto(f"{empty}/house/{house_id}/schedule")
        expect(cell(page, "B01.1", "power")).to_have_text("48 (told)")
        expect(cell(page, "B02.1", "power")).to_have_text("33 (told)")
        expect(cell(page, "B04.1", "power")).to_have_text("27 (told)")


def saved(page: Page) -> None:
    """Wait until what was typed is told to stand."""
    expect(page.locator("#said")).to_contain_text("Saved as edit")


def cell(page: Page, place: str, key: str) -> Locator:
    """A cell of the switch schedule."""
    return page.locator(f'tr[data-place="{place}"] td[data-key="{key}"]')


def typed(page: Page, place: str, key: str, text: str) -> None:
    """Type a text into a cell."""
    cell(page, place, key).click()
    page.keyboard.type(text)
    page.keyboard.press("Enter")
