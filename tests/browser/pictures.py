"""The pictures of the desk in docs/pictures, drawn by hand: ``.venv/bin/python -m tests.browser.pictures``.

The demo house as the pages show it: a room by day, the scene schedule by night.
"""

import os
import tempfile
from collections.abc import Mapping
from pathlib import Path

from django.conf import settings
from django.core.management import call_command
from playwright.sync_api import sync_playwright

from tests.desk import PASSWORD, pointed_at
from tests.browser.conftest import FLAGS, chromium, opened, served
from tests.browser.looking import Watched, begin_house, enter
from secondfix.store import door
from secondfix.store.databases import sqlite_at

# ruff: noqa: I001 - the desk begins Django before the door is imported
TREE = Path(__file__).resolve().parents[2]
PICTURES: Mapping[str, tuple[str, str, int]] = {
    "elevations": ("elevations/R05", "light", 900),
    "scenes": ("scenes", "dark", 860),
}
"""File, sheet of the house, ink, height in pixels."""


def main() -> None:
    """Draw them all."""
    os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "1"  # as the tests of the pages do
    with tempfile.TemporaryDirectory() as folder:
        database = sqlite_at(Path(folder) / "desk.sqlite3", settings.SQLITE_VERSION)
        with pointed_at(database), served() as base:
            call_command("migrate", verbosity=0, interactive=False)
            draw(base)


def draw(base: str) -> None:
    """One picture after another into docs/pictures."""
    account = door.create_account(username="Ilka", password=PASSWORD, right=door.Right.WRITER, by=None)
    assert isinstance(account, door.Account)
    house_id = begin_house(TREE, account)
    with sync_playwright() as driver:
        browser = driver.chromium.launch(executable_path=chromium(), args=FLAGS)
        for name, (sheet, ink, height) in PICTURES.items():
            with opened(browser, viewport={"width": 1240, "height": height}, color_scheme=ink) as context:
                enter(context, account, base)
                page = Watched(context.new_page(), base).go(f"/house/{house_id}/{sheet}")
                page.evaluate("document.fonts.ready")
                page.screenshot(path=TREE / f"docs/pictures/{name}.png")
        browser.close()


if __name__ == "__main__":
    main()
