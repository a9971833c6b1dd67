"""Radio by the keys alone and by a thumb: who falls with a circuit, links measured, a channel surveyed."""

import json
from collections.abc import Iterator
from pathlib import Path
from uuid import UUID

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.conftest import opened
from tests.browser.hands import Hand, Keys, Thumb
from tests.browser.looking import DESK_SIZE, Watched, begin_house, enter, framed, overflows, serious
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
HANDS: dict[str, tuple[type[Hand], dict[str, object]]] = {
    "keys": (Keys, {"viewport": DESK_SIZE}),
    "thumb": (Thumb, {"viewport": {"width": 360, "height": 740}, "has_touch": True, "is_mobile": True}),
}
LONGEST_MS = 60_000
"""How long an answer may take that is worked out aside, on the first use of a machine."""


@pytest.fixture(scope="module")
def house(office: door.Account, tree: Path) -> str:
    """The demo house, in the register."""
    return begin_house(tree, office)


@pytest.fixture(params=sorted(HANDS))
def handed(
    request: pytest.FixtureRequest, browser: Browser, office: door.Account, empty: str
) -> Iterator[tuple[Hand, Watched]]:
    """A hand before a page of the writer."""
    hand, how = HANDS[request.param]
    with opened(browser, **how) as context:
        enter(context, office, empty)
        watched = Watched(context.new_page(), empty)
        yield hand(), watched
        assert watched.wrong == []


def test_who_falls_with_a_circuit_is_told_in_words_and_hatched_on_the_plan(
    handed: tuple[Hand, Watched], house: str
) -> None:
    hand, watched = handed
    page = watched.go(f"/house/{house}/radio")
    answered(page)
    hand.choose(page.get_by_label("What goes, trips, moves or is added"), "circuit C5 Sockets")
    hand.press(page.get_by_role("button", name="See who falls"))
    then = page.get_by_role("region", name="What becomes of whom")
    expect(then).to_contain_text("16 devices fall")
    expect(then).to_contain_text("The same circuit in N2")
    plan = page.get_by_role("region", name="Ground floor, plan of radio")
    expect(plan.locator("svg")).to_be_visible(timeout=LONGEST_MS)
    assert plan.locator("svg [fill='url(#falls)']").count() > 1
    hand.press(then.get_by_role("link", name="As it stands"))
    expect(page.get_by_role("region", name="What becomes of whom")).to_have_count(0)
    seemly(page)


@pytest.mark.parametrize("handed", ["thumb"], indirect=True)
def test_a_device_on_the_plan_leads_to_who_falls_without_it(handed: tuple[Hand, Watched], house: str) -> None:
    hand, watched = handed
    page = watched.go(f"/house/{house}/radio")
    answered(page)
    plan = page.get_by_role("region", name="Ground floor, plan of radio")
    hand.press(plan.get_by_role("link", name="D31"))
    expect(page.get_by_role("region", name="What becomes of whom")).to_contain_text("D20 Workshop")


@pytest.mark.parametrize("handed", ["thumb"], indirect=True)
def test_five_links_are_written_down_and_answers_turn_into_numbers(
    handed: tuple[Hand, Watched], office: door.Account, tree: Path
) -> None:
    hand, watched = handed
    plain = json.loads((tree / "demo/nec-house.json").read_bytes())
    plain["id"] = str(UUID(int=UUID(plain["id"]).int + len(door.houses())))
    assert isinstance(door.begin_house(json.dumps(plain).encode(), by=office), door.Saved)
    network = next(iter(plain["networks"]))
    members = [i for i, d in plain["devices"].items() if d.get("network") == network][:5]
    page = watched.go(f"/house/{plain['id']}/measured-links")
    for n, device in enumerate(members):
        expect(page.locator("#waiting")).to_have_count(0, timeout=LONGEST_MS)
        hand.choose(page.get_by_label("Sent by"), f"controller of {network}")
        hand.choose(page.get_by_label("Heard at"), device)
        if n:
            hand.write(page.get_by_label("Level in dBm"), f"\u2212{60 + 2 * n}")
        else:
            page.get_by_label("Listened for, and not heard").check()
        hand.press(page.get_by_role("button", name="Write it down"))
        expect(page.get_by_role("status")).to_contain_text("Written")
    expect(page.get_by_text("5 links measured")).to_be_visible()
    expect(page.get_by_role("region", name="What was learned of the house")).to_be_visible()
    seemly(page)
    watched.go(f"/house/{plain['id']}/radio")
    answered(page)
    expect(page.locator("#devices")).to_contain_text("%")


@pytest.mark.parametrize("handed", ["keys"], indirect=True)
def test_a_channel_survey_is_typed_and_every_channel_answers(
    handed: tuple[Hand, Watched], house: str
) -> None:
    hand, watched = handed
    page = watched.go(f"/house/{house}/channels")
    hand.write(page.get_by_label("Row 1, channel", exact=True), "6")
    hand.write(page.get_by_label("Row 1, level in dBm"), "loud")
    hand.press(page.get_by_role("button", name="Write the survey down"))
    expect(page.get_by_role("alert")).to_contain_text("row 1, level_dbm")
    watched.refused(422)
    hand.write(page.get_by_label("Row 1, level in dBm"), "-58")
    hand.press(page.get_by_role("button", name="Write the survey down"))
    expect(page.get_by_role("status")).to_contain_text("1 heard")
    expect(page.get_by_role("region", name="Channels of N1").locator("tbody tr")).to_have_count(16)
    seemly(page)


def answered(page: Page) -> None:
    """What is worked out aside stands on the page."""
    expect(page.locator("#waiting")).to_have_count(0, timeout=LONGEST_MS)
    expect(page.locator("#costs")).to_be_visible(timeout=LONGEST_MS)


def seemly(page: Page) -> None:
    """The sheet as it stands now is framed, no wider than the screen, and nothing serious is wrong of it."""
    told = framed(page)
    for ink in ("light", "dark"):
        page.emulate_media(color_scheme=ink)
        told += serious(page)
    assert told + [f"wider than the screen ({page.url})"] * overflows(page) == []
