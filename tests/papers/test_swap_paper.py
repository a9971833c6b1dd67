"""The worksheet of a swap: the outcome first, nothing lost, and no step towards a box where it is refused."""

from functools import cache
from pathlib import Path

import pytest

from secondfix import radio
from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model
from secondfix.files import Firm, open_firm, open_house
from secondfix.house import House, schedule
from secondfix.joining import before_boxes
from secondfix.maintenance import Outcome, StepKind, SwapPlan, Unit, swap
from secondfix.papers import Setting, swap_pdf
from secondfix.papers.swap.at_box import HEADS
from tests.papers.reading import flat, outside, pages, words_of

DEMO = Path(__file__).resolve().parents[2] / "demo"
MM = 72 / 25.4
ASSUMED = default_assumptions()
KEPT = ("house.json", "D08", "brantock-larch-four@1")
LOSSES = ("house.json", "D15", "plimmet-osier-one@1")
REFUSED = ("house.json", "D06", "plimmet-osier-three@1")
REPEATER = ("house.json", "D31", "plimmet-tern@1")
BUTTON = ("house.json", "D33", "plimmet-wick@2")
NEC = ("nec-house.json", "D01", "skelverin-pintle-two@2")
BENCH = ("house.json", "D09", "tavrindo-slate-two@1")
FITTED = [KEPT, LOSSES, REPEATER, BUTTON, BENCH, NEC]


@cache
def models() -> dict[str, Model]:
    firm = open_firm(DEMO / "maintenance" / "firm")
    assert isinstance(firm, Firm)
    return dict(firm.models)


@cache
def asked(name: str, failed: str, model: str) -> tuple[House, SwapPlan]:
    house = open_house(str(DEMO / name), models())
    assert isinstance(house, House)
    reach = radio.reach(schedule(house, house.models), ASSUMED)
    plan = swap(house, failed, [Unit(model)], models=models(), assumptions=ASSUMED, reach=reach)
    assert isinstance(plan, SwapPlan)
    return house, plan


def paper(case: tuple[str, str, str], setting: Setting) -> tuple[SwapPlan, bytes]:
    house, plan = asked(*case)
    made = swap_pdf(house, plan, setting=setting)
    assert isinstance(made, bytes), made
    return plan, made


@pytest.mark.parametrize("case", FITTED, ids=lambda c: c[1])
def test_every_step_stands_on_it_and_those_at_the_box_in_the_order_of_the_plan(
    case: tuple[str, str, str], setting: Setting
) -> None:
    plan, made = paper(case, setting)
    text = words_of(made)
    wanted = [s.words for s in plan.steps if s.kind in HEADS]
    at_box = flat("".join(p.text for p in pages(made) if "S10/03" in p.text))
    places = [at_box.index(flat(words)) for words in wanted]
    assert places == sorted(places)
    for sheet in plan.sheets:
        said = [*sheet.removal, *sheet.window, *sheet.procedure, sheet.entries_words]
        said += [x for e in sheet.entries for x in (e.name, e.purpose)]
        said += [x for t in sheet.tests for x in (t.press, t.answer)]
        assert [x for x in said if flat(x) not in text] == []
    kinds = {e.kind.replace("_", " ") for e in plan.entries}
    assert [k for k in kinds if flat(k) not in text] == []


@pytest.mark.parametrize("case", FITTED, ids=lambda c: c[1])
def test_cautions_come_before_any_step(case: tuple[str, str, str], setting: Setting) -> None:
    house, plan = asked(*case)
    text = words_of(paper(case, setting)[1])
    first = text.index(flat(next(s.words for s in plan.steps if s.kind in HEADS)))
    assert [c.id for c in before_boxes(house) if text.index(flat(c.words)) > first] == []


def test_what_joins_on_a_bench_is_printed_before_the_box_is_isolated(setting: Setting) -> None:
    plan, made = paper(BENCH, setting)
    text = words_of(made)
    isolate = next(s.words for s in plan.steps if s.kind is StepKind.ISOLATE)
    assert text.index(flat(plan.sheets[0].procedure[0])) < text.index(flat(isolate))


def test_a_kept_swap_says_so_first_and_asks_for_nothing_to_be_accepted(setting: Setting) -> None:
    plan, made = paper(KEPT, setting)
    assert plan.outcome is Outcome.KEPT
    first = flat(pages(made)[0].text)
    assert flat("Kept: every scene of the book switches the same loads the same way") in first
    assert flat("Customer's name") not in words_of(made)


def test_losses_are_named_with_a_line_for_the_customer_before_anything_is_removed(setting: Setting) -> None:
    plan, made = paper(LOSSES, setting)
    first = flat(pages(made)[0].text)
    assert plan.losses
    for words in (*(loss.words for loss in plan.losses), "For tonight", "For good", "Customer's name"):
        assert flat(words) in first
    assert [n.title for n in plan.nearest if flat(n.title) not in first] == []
    assert flat("Off its network") not in first


def test_a_look_into_the_box_is_asked_for_under_a_caution(setting: Setting) -> None:
    plan, made = paper(LOSSES, setting)
    first = flat(pages(made)[0].text)
    looks = [look.words for f in plan.open for look in f.looks]
    assert looks
    assert first.index(flat("Before a look into a box")) < min(first.index(flat(w)) for w in looks)


def test_a_refused_swap_has_reasons_and_nearest_models_and_leads_no_hands_into_a_box(
    setting: Setting,
) -> None:
    plan, made = paper(REFUSED, setting)
    text = words_of(made)
    assert plan.outcome is Outcome.REFUSED
    assert len(pages(made)) == 1
    for r in plan.reasons:
        assert flat(r.words) in text
        assert flat(r.remedy) in text
    assert [n.model for n in plan.nearest if flat(n.model) not in text] == []
    for words in (*HEADS.values(), "Take D06 out", "Mark every conductor", "Function test"):
        assert flat(words) not in text


def test_children_of_a_repeater_are_ticked_off_one_by_one(setting: Setting) -> None:
    plan, made = paper(REPEATER, setting)
    assert plan.children == ("D20", "D21", "D22")
    last = flat(pages(made)[-1].text)
    assert flat("before each has been heard again") in last
    assert [c for c in plan.children if c not in last] == []


def test_uses_that_others_own_are_asked_about_on_the_first_sheet(setting: Setting) -> None:
    plan, made = paper(BUTTON, setting)
    assert plan.asks
    first = flat(pages(made)[0].text)
    assert [a.use for a in plan.asks if flat(a.words) not in first] == []


def test_scenes_are_taught_gang_by_gang(setting: Setting) -> None:
    plan, made = paper(NEC, setting)
    last = words_of(made)
    assert plan.teach
    assert all(t.again for t in plan.teach)
    for t in plan.teach:
        assert flat(t.name) in last
    assert last.count(flat("teach")) >= len(plan.teach)
    # An extension unit of a swapped gang is pressed too.
    assert flat("B07.1, which extends B01.1") in last


def test_every_kind_of_step_has_a_place_on_the_paper() -> None:
    elsewhere = {
        StepKind.ASK, StepKind.CAPTURE, StepKind.JOIN, StepKind.SET, StepKind.TEACH, StepKind.HEAR,
        StepKind.TEST, StepKind.RECORD,
    }  # fmt: skip
    assert set(HEADS) | elsewhere == set(StepKind)


@pytest.mark.parametrize("case", [*FITTED, REFUSED], ids=lambda c: c[1])
def test_it_is_upright_inside_the_frame_in_the_house_s_own_size_and_the_same_twice(
    case: tuple[str, str, str], setting: Setting
) -> None:
    house, plan = asked(*case)
    made = paper(case, setting)[1]
    assert outside(made, left=15 * MM, other=8 * MM) == []
    wide = 215.9 if case is NEC else 210.0  # ANSI/ASME Y14.1 Letter, ISO 216 A4
    assert all(p.width == pytest.approx(wide * MM, abs=0.5) for p in pages(made))
    assert all(p.height > p.width for p in pages(made))
    assert swap_pdf(house, plan, setting=setting) == made
