"""From an empty register to a pack, told once for a mouse, a thumb, and the keyboard alone."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.desk import PASSWORD, sqlite_desk
from tests.browser.conftest import opened, served
from tests.browser.hands import Hand, Keys, Mouse, Thumb
from tests.browser.looking import DESK_SIZE, PHONE_SIZE, Watched, begin_house, framed, serious
from secondfix.store import door
from secondfix.web.frame.asked import forget

# ruff: noqa: I001 - the desk begins Django before the door is imported
HANDS: dict[str, tuple[type[Hand], dict[str, object]]] = {
    "keys": (Keys, {"viewport": DESK_SIZE}),
    "mouse": (Mouse, {"viewport": DESK_SIZE}),
    "thumb": (Thumb, {"viewport": PHONE_SIZE, "has_touch": True, "is_mobile": True}),
}


@dataclass
class Person:
    """Somebody before a page, with the hand they use."""

    hand: Hand
    watched: Watched

    @property
    def page(self) -> Page:
        """The page."""
        return self.watched.page

    def sheet(self, title: str) -> None:
        """The sheet of this title is the one that is open."""
        expect(self.page.get_by_role("heading", level=1)).to_have_text(title)

    def to_sheet(self, title: str) -> None:
        """By the drawing register to another sheet of the house."""
        register = self.page.get_by_role("navigation", name="Drawing register")
        self.hand.press(register.get_by_role("link", name=title))
        self.sheet(title)

    def press(self, name: str, within: Locator | None = None) -> None:
        """A button or link by its words."""
        at = within or self.page.get_by_role("main")
        self.hand.press(at.get_by_role("button", name=name).or_(at.get_by_role("link", name=name)).first)

    def fill(self, texts: dict[str, str], within: Locator | None = None) -> None:
        """Fields by their labels; a list is chosen from by what it shows."""
        at = within or self.page.get_by_role("main")
        for label, text in texts.items():
            field = at.get_by_label(label, exact=True)
            is_list = field.evaluate("f => f.tagName") == "SELECT"
            (self.hand.choose if is_list else self.hand.write)(field, text)


@pytest.fixture(params=sorted(HANDS))
def person(
    request: pytest.FixtureRequest, browser: Browser, laid_file: Path, tmp_path: Path
) -> Iterator[Person]:
    """The first person to come to a desk of their own, by each of the three ways in turn."""
    hand, how = HANDS[request.param]
    with sqlite_desk(laid_file, tmp_path / "desk.sqlite3"):
        forget()
        with served() as base, opened(browser, **how, accept_downloads=True) as context:
            watched = Watched(context.new_page(), base)
            yield Person(hand(), watched)
            assert watched.wrong == []
        forget()


def test_from_an_empty_register_to_the_pack(person: Person, tmp_path: Path) -> None:
    person.watched.go("/")
    make_an_account(person)
    begin_a_house(person)
    fill_the_building(person)
    fill_the_schedule(person)
    mend_what_is_wrong(person)
    make_a_scene(person)
    print_the_pack(person)


def make_an_account(person: Person) -> None:
    """The first account, on the one sheet that is open to everybody."""
    person.sheet("The first account")
    assert serious(person.page) + framed(person.page) == []
    person.fill({"Name": "Ilka", "Password, at least twelve characters": PASSWORD})
    person.press("Make the first account")
    person.sheet("Register of houses")


def begin_a_house(person: Person) -> None:
    """A house by its name."""
    person.press("Begin a house")
    person.fill({"Name of the house": "Marsh End 3"})
    person.press("Begin")
    person.sheet("Drawing register")


def fill_the_building(person: Person) -> None:
    """What the house is made of; a new house has a hall with one wall box, R1 and B1."""
    person.to_sheet("Rooms, boxes and circuits")
    facts = person.page.locator("#facts")
    person.fill({"Mains voltage, V": "230", "Wiring rules": "IEC 60364", "Radio region": "EU"}, facts)
    person.press("Save the facts", facts)
    expect(person.page.get_by_role("status")).to_contain_text("Facts of the house saved")
    for made, kind, texts in (
        ("St1", "storey", {"Name": "Ground floor", "Finished floor above the datum, mm": "0"}),
        ("R2", "room", {"Name": "Porch", "Storey": "Ground floor"}),
        ("C1", "circuit", {"Name": "Lights below", "Breaker, A": "10", "Curve": "B"}),
        ("C2", "circuit", {"Name": "Lights above", "Breaker, A": "10", "Curve": "B"}),
        ("B2", "wall box", {"Room": "Porch", "How many mounts": "1", "How many gangs": "2"}),
    ):
        form = person.page.get_by_role("group", name=f"Another {kind}", exact=True)
        person.fill(texts, form)
        person.press(f"Add the {kind}", form)
        expect(person.page.get_by_role("status")).to_contain_text(f"{made} added")


def fill_the_schedule(person: Person) -> None:
    """What the gangs of the wall box feed, one of them with a slip: its neutral is of another circuit."""
    person.to_sheet("Switch schedule")
    if isinstance(person.hand, Thumb):
        fill_the_box(person)
        return
    row = {"load": "Porch light", "kind": "LED lamp", "purpose": "lighting", "power": "8"}
    for place, texts in (
        ("B2.1", {**row, "count": "1", "line": "C1", "load-neutral": "C2"}),
        ("B2.2", {"duty": "scene only"}),
    ):
        for key, text in texts.items():
            type_into(person, place, key, text)


def type_into(person: Person, place: str, key: str, text: str) -> None:
    """A text into a cell of the grid: by a click, or by arrows from the cell that has the focus."""
    cell = person.page.locator(f'tr[data-place="{place}"] td[data-key="{key}"]')
    if isinstance(person.hand, Mouse):
        cell.click()
    else:
        walk_to(person, cell)
    person.page.keyboard.type(text)
    person.page.keyboard.press("Enter")
    expect(person.page.locator("#said")).to_contain_text("Saved")
    expect(cell).to_contain_text(text, ignore_case=True)


def walk_to(person: Person, cell: Locator) -> None:
    """By Tab into the grid, then by arrows to a cell."""
    page = person.page
    if not page.evaluate("document.activeElement.matches('td[data-key]')"):
        person.hand.reach(page.locator("#switch-schedule td[tabindex='0']"))
    cells = "[...at.parentElement.querySelectorAll('td[data-key]')]"
    place = f"(at => [at.parentElement.sectionRowIndex, {cells}.indexOf(at)])"
    here = page.evaluate(f"{place}(document.activeElement)")
    there = cell.evaluate(place)
    for step, key_up, key_down in ((0, "ArrowUp", "ArrowDown"), (1, "ArrowLeft", "ArrowRight")):
        for _ in range(abs(there[step] - here[step])):
            page.keyboard.press(key_down if there[step] > here[step] else key_up)
    assert cell.evaluate("at => at === document.activeElement")


def fill_the_box(person: Person) -> None:
    """The same on the form of the box, as one does on a phone."""
    person.press("B2.1")
    person.sheet("Wall box")
    first = person.page.get_by_role("group", name="Gang B2.1")
    texts = {"Load": "Porch light", "Kind": "LED lamp", "Purpose": "lighting", "Power of one, W": "8"}
    person.fill({**texts, "How many": "1", "Line": "C1", "Neutral of the load": "C2"}, first)
    person.fill({"Duty": "scene only"}, person.page.get_by_role("group", name="Gang B2.2"))
    person.press("Save the box")
    person.sheet("Switch schedule")


def mend_what_is_wrong(person: Person) -> None:
    """The slip is seen among the checks, which lead to its row; mended there, it is gone."""
    person.to_sheet("Checks")
    slip = person.page.get_by_role("article").filter(has_text="returns through the neutral of C2")
    expect(slip).to_contain_text("Danger")
    person.press("B2.1", slip)
    person.sheet("Switch schedule")
    if isinstance(person.hand, Thumb):
        person.press("B2.1")
        first = person.page.get_by_role("group", name="Gang B2.1")
        person.fill({"Neutral of the load": "C1"}, first)
        person.press("Save the box")
    else:
        type_into(person, "B2.1", "load-neutral", "C1")
        expect(person.page.locator('tr[data-place="B2.1"]')).not_to_contain_text("Danger")
    person.to_sheet("Checks")
    expect(slip).to_have_count(0)


def make_a_scene(person: Person) -> None:
    """A scene held at the second gang, that switches every light off; what it would do is told before."""
    person.to_sheet("Scene schedule")
    person.fill({"Name of the scene": "Bedtime"})
    person.press("Begin the scene")
    person.sheet("Scene")
    person.fill(
        {"Started by": "a press of a gang", "Gang": "B2.2", "Press": "held"},
        person.page.locator(".start").first,
    )
    rule = person.page.get_by_role("group", name="Rule 1")
    person.fill({"Purpose": "lighting"}, rule.get_by_role("group", name="Select"))
    person.fill({"Switch them": "off"}, rule)
    expect(person.page.locator("#changes")).to_contain_text("1 crossing would differ")
    person.press("Save the scene")
    person.sheet("Scene schedule")
    row = person.page.get_by_role("row", name="Porch light")
    expect(row).to_contain_text("cannot tell")  # no device stands there yet


def print_the_pack(person: Person) -> None:
    """The pack, made aside while the page watches; the paper itself comes from the desk."""
    person.to_sheet("Papers")
    person.hand.tick(person.page.get_by_role("radio", name="Handover pack"))
    person.press("Print")
    paper = person.page.get_by_role("link", name="handover-pack.pdf", exact=True)
    paper.wait_for(timeout=60_000)
    assert serious(person.page) + framed(person.page) == []
    address = paper.get_attribute("href")
    assert address is not None
    answer = person.page.request.get(person.watched.base + address)
    assert answer.headers["content-type"] == "application/pdf"
    assert answer.body().startswith(b"%PDF-")
    person.press("look at its pages")
    person.page.wait_for_url("**/handover-pack.pdf/1")
    assert serious(person.page) + framed(person.page) == []


@pytest.mark.parametrize("person", ["mouse", "thumb"], indirect=True)
def test_a_failed_switch_is_swapped_and_its_buttons_do_as_before(person: Person, tree: Path) -> None:
    account = door.create_account(username="Ilka", password=PASSWORD, right=door.Right.WRITER, by=None)
    assert isinstance(account, door.Account)
    house_id = begin_house(tree, account, "demo/house-mended.json")
    person.watched.go(f"/house/{house_id}/")
    person.sheet("Sign in")
    person.fill({"Name": "Ilka", "Password": PASSWORD})
    person.press("Sign in")

    person.to_sheet("Swap")
    person.fill({"Failed device": "D08", "New device": "(ostrabeck-gull-four@2)"})
    person.press("What becomes of it?")
    plan = person.page.get_by_role("region", name="What the swap comes to")
    expect(plan).to_contain_text("Kept")
    expect(plan).to_contain_text("prove dead")
    person.press("The swap is done: write its entries")
    person.sheet("Function test")
    expect(person.page.get_by_role("status").first).to_contain_text("written down")
    person.to_sheet("Journal")
    expect(person.page.get_by_role("main")).to_contain_text("in the place of D08")
    person.to_sheet("Swap")
    failed = person.page.get_by_label("Failed device")
    expect(failed).not_to_contain_text("D08")
