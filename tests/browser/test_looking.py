"""What the tests of the pages look with sees what it should."""

import pytest
from playwright.sync_api import Page

from tests.browser.looking import Watched, framed, serious, too_wide

# Each slip put into a page that has none, and what then must be told.
SLIPS = {
    "a field without a label": ("document.querySelector('label').remove()", "label"),
    "ink too faint": ("document.querySelector('.says').style.color = '#d9d6cd'", "color-contrast"),
    "a second first heading": (
        "document.body.append(document.querySelector('h1').cloneNode(true))",
        "2 headings of the first rank",
    ),
    "one sentence": ("document.querySelector('.says').textContent = 'A sheet.'", "two sentences"),
    "no title block": ("document.querySelector('.title-block').remove()", "no title block"),
}


@pytest.fixture
def page(watched: Watched) -> Page:
    """The sheet of another password: small, with fields."""
    return watched.go("/password")


@pytest.mark.parametrize("slip", sorted(SLIPS))
def test_a_slip_is_seen(page: Page, slip: str) -> None:
    assert serious(page) + framed(page) == []
    script, told = SLIPS[slip]
    page.evaluate(script)
    assert told in " ".join(serious(page) + framed(page))


def test_a_page_that_is_too_wide_is_seen_at_the_widths_where_it_is(page: Page) -> None:
    page.evaluate("document.querySelector('h1').style.width = '900px'")
    assert too_wide(page) == [360, 480, 640, 699, 700, 820]


def test_what_goes_wrong_in_a_page_is_kept(watched: Watched, page: Page) -> None:
    page.evaluate(
        "console.error('lamp'); document.body.append(Object.assign(new Image(), { src: '/none.png' }))"
    )
    page.wait_for_load_state("networkidle")
    told = " ".join(watched.wrong)
    watched.wrong.clear()
    assert "lamp" in told
    assert told.count("404") == 1


def test_a_way_off_the_machine_is_kept(watched: Watched, page: Page) -> None:
    page.context.route(
        "**/*", lambda route: route.abort() if "elsewhere" in route.request.url else route.continue_()
    )
    page.evaluate("location.assign('http://elsewhere.invalid/')")
    page.wait_for_timeout(100)
    told = " ".join(watched.wrong)
    watched.wrong.clear()
    assert "left the machine: http://elsewhere.invalid/" in told
