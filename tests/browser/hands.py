"""Three ways of using a page: with a mouse, a thumb, the keys alone. A journey is told once for all."""

import re
from typing import Protocol

from playwright.sync_api import Locator, Page

MOST_TABS = 400
_SEEN = """() => { const at = document.activeElement, ink = getComputedStyle(at);
    const box = at.getClientRects()[0] ?? at.getBoundingClientRect();
    const x = box.left + Math.min(box.width / 2, 20), y = box.top + Math.min(box.height / 2, 12);
    const over = document.elementFromPoint(x, y);
    return at === document.body || (ink.outlineStyle !== "none" && parseFloat(ink.outlineWidth) >= 1
        && box.bottom > 0 && box.top < innerHeight && (!over || at.contains(over) || over.contains(at))); }"""
"""Marked, in sight, and with nothing laid over it (WCAG 2.2, 2.4.7 and 2.4.11)."""

_SHOWN = "list => list.selectedOptions[0].textContent.trim()"


class Hand(Protocol):
    """What a person does with a page."""

    def press(self, what: Locator) -> None:
        """Follow a link, press a button."""

    def write(self, field: Locator, text: str) -> None:
        """Put a text into a field."""

    def choose(self, field: Locator, text: str) -> None:
        """Choose from a list by what it shows."""

    def tick(self, radio: Locator) -> None:
        """Take one of several."""


class Mouse:
    """A hand on a mouse, the other on the keys."""

    def press(self, what: Locator) -> None:
        """A click."""
        what.click()

    def write(self, field: Locator, text: str) -> None:
        """A click into the field, then the text."""
        field.click()
        field.fill(text)

    def choose(self, field: Locator, text: str) -> None:
        """The list opened, a line of it chosen."""
        field.select_option(label=line_of(field, text))

    def tick(self, radio: Locator) -> None:
        """A click."""
        radio.check()


class Thumb(Mouse):
    """A thumb on glass; what it presses is at least 24 pixels wide and high (WCAG 2.2, 2.5.8)."""

    def press(self, what: Locator) -> None:
        """A tap."""
        what.scroll_into_view_if_needed()
        box = what.bounding_box()
        assert box is not None, f"{what} is not to be seen"
        assert min(box["width"], box["height"]) >= 24, (what, box)
        what.tap()

    def write(self, field: Locator, text: str) -> None:
        """A tap into the field, then the text."""
        field.tap()
        field.fill(text)


class Keys:
    """The keyboard alone: Tab, arrows, Enter, and the letters."""

    def press(self, what: Locator) -> None:
        """There by Tab, then Enter."""
        self.reach(what).keyboard.press("Enter")

    def write(self, field: Locator, text: str) -> None:
        """There by Tab, which marks what stands; the text in its place."""
        page = self.reach(field)
        page.keyboard.press("ControlOrMeta+a")
        page.keyboard.type(text) if text else page.keyboard.press("Delete")

    def choose(self, field: Locator, text: str) -> None:
        """There by Tab, then down the list by arrows until it shows the text."""
        page, wanted = self.reach(field), line_of(field, text)
        for key in ("ArrowUp", "ArrowDown"):
            for _ in range(field.locator("option").count()):
                if field.evaluate(_SHOWN) == wanted:
                    return
                page.keyboard.press(key)
        raise AssertionError(f"{field} shows {field.evaluate(_SHOWN)!r}, not {wanted!r}")

    def tick(self, radio: Locator) -> None:
        """To the one that is taken by Tab, from there by arrows."""
        name = radio.get_attribute("name")
        taken = radio.page.locator(f"input[name='{name}']:checked")
        page = self.reach(taken)
        for _ in range(radio.page.locator(f"input[name='{name}']").count()):
            if radio.is_checked():
                return
            page.keyboard.press("ArrowDown")
        assert radio.is_checked()

    def reach(self, what: Locator) -> Page:
        """Tab until it has the focus; every stop on the way must be seen to have it."""
        page = what.page
        what.wait_for()
        wanted = what.element_handle()
        for _ in range(MOST_TABS):
            if page.evaluate("wanted => wanted === document.activeElement", wanted):
                return page
            page.keyboard.press("Tab")
            assert page.evaluate(_SEEN), f"the focus is not seen: {focused(page)} ({page.url})"
        raise AssertionError(f"{what} is not reached by Tab")


def line_of(field: Locator, text: str) -> str:
    """The one line of a list that holds this text."""
    lines = [line.strip() for line in field.locator("option").all_text_contents()]
    held = [line for line in lines if line == text] or [line for line in lines if text in line]
    assert len(held) == 1, f"{text!r} is not one of {lines}"
    return held[0]


def focused(page: Page) -> str:
    """The beginning of the markup of what has the focus."""
    markup: str = page.evaluate("document.activeElement.outerHTML.slice(0, 160)")
    return re.sub(r"\s+", " ", markup)
