"""Every page that the table of addresses knows, at a desk and on a phone, by day and by night."""

from collections.abc import Iterator

import pytest
from django.test import Client
from playwright.sync_api import Browser

from tests.browser.conftest import opened
from tests.browser.looking import DESK_SIZE, PHONE_SIZE, Watched, enter, framed, serious, thinned, too_wide
from tests.web.addresses import Address, addresses
from secondfix.store import door
from secondfix.web.access import RULES, Who
from secondfix.web.frame.sheets import SHEETS

# Sheets that answer only where more has happened: nobody has come yet, edits met, papers were made.
# The journeys come to them and ask the same of them.
WANT_MORE = {"first", "job", "page", "settle"}

# ruff: noqa: I001 - the desk begins Django before the door is imported


@pytest.fixture(scope="module")
def desk_page(browser: Browser, office: door.Account, empty: str, house_id: str) -> Iterator[Watched]:
    """A writer's page at a desk."""
    with opened(browser, viewport=DESK_SIZE) as context:
        enter(context, office, empty)
        yield Watched(context.new_page(), empty)


@pytest.fixture(scope="module")
def phone_page(browser: Browser, office: door.Account, empty: str, house_id: str) -> Iterator[Watched]:
    """A writer's page on a phone."""
    with opened(browser, viewport=PHONE_SIZE, has_touch=True, is_mobile=True) as context:
        enter(context, office, empty)
        yield Watched(context.new_page(), empty)


def is_page(address: Address, house_id: str, office: door.Account) -> bool:
    """Whether an address answers with a sheet; the others are files, steps, and ways elsewhere."""
    client = Client(SERVER_NAME="127.0.0.1")
    if RULES[address.name].look is not Who.ANYBODY:
        client.force_login(office, backend="django.contrib.auth.backends.ModelBackend")
    answer = client.get(address.url(house_id))
    return answer.status_code == 200 and b"<html" in answer.content[:400]


@pytest.mark.parametrize("address", addresses(), ids=lambda a: a.name)
def test_every_page_can_be_used_by_everybody(
    address: Address, house_id: str, office: door.Account, desk_page: Watched, phone_page: Watched
) -> None:
    if not is_page(address, house_id, office):
        assert address.name not in SHEETS or address.name in WANT_MORE
        return
    assert address.name in {*SHEETS, "elevation", "plan"}
    desk_page.go(address.url(house_id))
    assert too_wide(desk_page.page) == []
    phone_page.go(address.url(house_id))
    for watched in (desk_page, phone_page):
        page = watched.page
        thinned(page)
        page.emulate_media(color_scheme="light")
        told = serious(page) + framed(page)
        page.emulate_media(color_scheme="dark")
        told += serious(page, "color-contrast")
        assert told + watched.wrong == []


def test_a_sheet_that_is_read_by_night_is_printed_by_day(desk_page: Watched, house_id: str) -> None:
    page = desk_page.go(f"/house/{house_id}/survey")
    ink = "getComputedStyle(document.documentElement).color"
    page.emulate_media(color_scheme="light")
    day = page.evaluate(ink)
    page.emulate_media(color_scheme="dark")
    assert page.evaluate(ink) != day
    page.emulate_media(media="print")
    assert page.evaluate(ink) == day
    page.emulate_media(media="screen")
