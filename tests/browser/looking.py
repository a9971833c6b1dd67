"""What every test of the pages looks with: a page that is watched, the people and the house before it."""

from pathlib import Path
from typing import Any

from axe_playwright_python.sync_playwright import Axe
from django.test import Client
from playwright.sync_api import BrowserContext, ConsoleMessage, Page, Request, Response, ViewportSize

from tests.desk import PASSWORD
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
__all__ = ["PASSWORD"]

DESK_SIZE = ViewportSize(width=1280, height=860)
PHONE_SIZE = ViewportSize(width=390, height=844)
WIDTHS = (360, 480, 640, 699, 700, 820, 999, 1000, 1199, 1200, 1600, 1920, 2560)
"""What a page bears without being pushed sideways: a small phone, each fold from both sides, a wide desk."""
_AXE = Axe().axe_script


class Watched:
    """A page, and what it did that it should not: words on the console, a way off here, a failed fetch."""

    def __init__(self, page: Page, base: str) -> None:
        self.page, self.base = page, base
        self.wrong: list[str] = []
        page.on("console", self._console)
        page.on("pageerror", lambda error: self.wrong.append(f"script: {error}"))
        page.on("request", self._request)
        page.on("response", self._response)

    def go(self, path: str) -> Page:
        """To a page of the desk."""
        self.page.goto(self.base + path)
        return self.page

    def refused(self, status: int) -> None:
        """Take one answer of this status for what it should be: the desk refused something."""
        told = next((w for w in self.wrong if w.startswith(f"{status}: ")), None)
        assert told is not None, f"nothing was answered with {status}: {self.wrong}"
        self.wrong.remove(told)

    def _console(self, message: ConsoleMessage) -> None:
        told_as_response = message.text.startswith("Failed to load resource: the server responded")
        if message.type in {"error", "warning"} and not told_as_response:
            self.wrong.append(f"console: {message.text} ({self.page.url})")

    def _request(self, request: Request) -> None:
        if not request.url.startswith((self.base, "data:", "blob:")):
            self.wrong.append(f"left the machine: {request.url}")

    def _response(self, response: Response) -> None:
        if response.status >= 400:
            self.wrong.append(f"{response.status}: {response.url}")


def enter(context: BrowserContext, account: door.Account, base: str) -> None:
    """Sign a browser in by its cookie."""
    client = Client(SERVER_NAME="127.0.0.1")
    client.force_login(account, backend="django.contrib.auth.backends.ModelBackend")
    context.add_cookies([{"name": "sessionid", "value": client.cookies["sessionid"].value, "url": base}])


def begin_house(tree: Path, account: door.Account, file: str = "demo/house.json") -> str:
    """A demo house in the register; its id."""
    saved = door.begin_house((tree / file).read_bytes(), by=account)
    assert isinstance(saved, door.Saved)
    return door.houses()[0].id


def serious(page: Page, *rules: str) -> list[str]:
    """What axe holds for serious or worse, and where; only these of its rules where some are named."""
    if not page.evaluate("'axe' in window"):
        page.evaluate(_AXE)
    options: dict[str, Any] = {"resultTypes": ["violations"], **({"runOnly": list(rules)} if rules else {})}
    found = page.evaluate("options => axe.run(options).then((told) => told.violations)", options)
    return [
        f"{v['id']} at {' '.join(str(n['target'][0]) for n in v['nodes'][:4])} ({page.url})"
        for v in found
        if v["impact"] in {"serious", "critical"}
    ]


def thinned(page: Page, most: int = 8) -> None:
    """Leave the first rows of every table: the others are marked up alike, and axe takes its time."""
    page.evaluate(
        f"document.querySelectorAll('tbody tr:nth-of-type(n+{most + 1})').forEach((row) => row.remove())"
    )


_FRAME = """() => [document.querySelectorAll("h1").length,
    document.querySelector(".says")?.innerText ?? "", document.querySelectorAll(".title-block dt").length]"""


def framed(page: Page) -> list[str]:
    """What a sheet lacks of its frame: one heading, its two sentences, a title block with six fields."""
    wrong = []
    headings, says, fields = page.evaluate(_FRAME)
    if headings != 1:
        wrong.append(f"{headings} headings of the first rank ({page.url})")
    if says.count(". ") != 1:
        wrong.append(f"it does not say what it is in two sentences ({page.url})")
    if fields != 6:
        wrong.append(f"no title block ({page.url})")
    return wrong


def overflows(page: Page) -> bool:
    """Whether the page itself would have to be pushed sideways."""
    wider = "document.documentElement.scrollWidth > document.documentElement.clientWidth"
    return bool(page.evaluate(wider))


def too_wide(page: Page) -> list[int]:
    """The widths at which the page itself would have to be pushed sideways."""
    wide = []
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 860})
        if overflows(page):
            wide.append(width)
    page.set_viewport_size(DESK_SIZE)
    return wide
