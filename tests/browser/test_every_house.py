"""Every page again before other houses, on a phone by night, and to somebody who may only read.

The demo house of 230 V is looked at whole in ``test_every_page``; here each page meets what that house and
its writer do not show: another world of wiring, a house without positions, an empty one, a closed page.
"""

import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from uuid import UUID

import pytest
from playwright.sync_api import Browser

from tests.desk import PASSWORD
from tests.browser.conftest import opened
from tests.browser.looking import DESK_SIZE, Watched, enter, framed, overflows, serious, thinned
from tests.web.addresses import Address, addresses
from secondfix.house import begin, plain_of
from secondfix.store import door
from secondfix.web.frame.sheets import SHEETS

# ruff: noqa: I001 - the desk begins Django before the door is imported
NARROW = {"width": 320, "height": 640}
"""At 1280 pixels and four times the size: WCAG 2.2, 1.4.10."""
QUICK = (
    "aria-allowed-attr", "aria-hidden-focus", "aria-required-children", "aria-required-parent", "aria-roles",
    "aria-valid-attr-value", "button-name", "empty-heading", "heading-order", "label", "link-name", "list",
    "scrollable-region-focusable", "select-name", "svg-img-alt", "td-headers-attr",
    "th-has-data-cells",
)  # fmt: skip
"""What depends on what a house holds; the colours of day and night were looked at with the first house."""
SHOWN = [a for a in addresses() if a.name in {*SHEETS, "elevation", "plan"}]
"""Addresses that answer with a sheet; ``test_every_page`` holds that there are no others."""


@dataclass(frozen=True)
class Seen:
    """One way of looking: a house, who looks, at which width, by day or by night."""

    house: str
    writer: bool
    narrow: bool
    night: bool
    rules: tuple[str, ...]


WAYS = {
    "another world of wiring, a phone by night": Seen("nec", True, True, True, ("target-size", *QUICK)),
    "no positions, a reader by day": Seen("bare", False, False, False, QUICK),
    "nothing yet, a phone by day": Seen("empty", True, True, False, QUICK),
}


@pytest.fixture(scope="module")
def houses(office: door.Account, tree: Path) -> dict[str, str]:
    """The id of each house."""
    demo = json.loads((tree / "demo/house.json").read_bytes())
    documents = {
        "nec": json.loads((tree / "demo/nec-house.json").read_bytes()),
        "bare": without_positions({**demo, "id": str(UUID(int=UUID(demo["id"]).int + 1))}),
        "empty": plain_of(begin(house_id=str(UUID(int=UUID(demo["id"]).int + 2)), name="Fernley End")),
    }
    for document in documents.values():
        assert isinstance(door.begin_house(json.dumps(document).encode(), by=office), door.Saved)
    return {key: document["id"] for key, document in documents.items()}


def without_positions(plain: dict[str, object]) -> dict[str, object]:
    """The same house, of which nobody has measured where anything stands."""
    for kind, left_out in (("boxes", "position"), ("places", "position"), ("rooms", "outline_mm")):
        for thing in plain[kind].values():  # type: ignore[attr-defined] # a plain document
            thing.pop(left_out, None)
    return {k: v for k, v in plain.items() if k not in {"walls", "doors", "windows"}}


@pytest.fixture(scope="module")
def reader(office: door.Account) -> door.Account:
    """Somebody who may only read."""
    account = door.create_account(username="Osk", password=PASSWORD, right=door.Right.READER, by=office)
    assert isinstance(account, door.Account)
    return account


@pytest.fixture(scope="module", params=sorted(WAYS))
def looked(
    request: pytest.FixtureRequest, browser: Browser, office: door.Account, reader: door.Account, empty: str
) -> Iterator[tuple[Seen, Watched]]:
    """A page that looks in one of the ways."""
    way = WAYS[request.param]
    who = office if way.writer else reader
    size = {"viewport": NARROW, "has_touch": True} if way.narrow else {"viewport": DESK_SIZE}
    with opened(browser, color_scheme="dark" if way.night else "light", **size) as context:
        enter(context, who, empty)
        yield way, Watched(context.new_page(), empty)


@pytest.mark.parametrize("address", SHOWN, ids=lambda a: a.name)
def test_every_page_is_whole_before_every_house(
    address: Address, looked: tuple[Seen, Watched], houses: dict[str, str]
) -> None:
    way, watched = looked
    if "house_id" not in address.arguments and way.writer:
        return  # a sheet of the desk: the reader alone sees another
    url = address.url(houses[way.house], **({"storey_id": "F"} if way.house == "nec" else {}))
    page = watched.page
    answer = page.goto(watched.base + url)
    assert answer is not None
    if answer.status == 404:  # nothing of the kind stands in this house
        watched.refused(404)
        return
    if answer.status == 403:
        watched.refused(403)
        assert not way.writer
        assert page.locator("h1").inner_text() == "Not for this account"
        assert page.locator(".field a").count() == 1  # a way on
    thinned(page, most=3)
    told = serious(page, *way.rules) + (framed(page) if answer.status == 200 else [])
    told += [f"wider than the screen ({page.url})"] if overflows(page) else []
    assert told + watched.wrong == []
