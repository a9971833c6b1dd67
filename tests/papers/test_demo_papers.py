"""The demo houses on paper: every gang, name and caution found, nothing past the frame."""

from pathlib import Path

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.catalogue import Model, read_model
from secondfix.house import House, Schedule, read_house, schedule
from secondfix.joining import before_boxes, cautions_for, to_mind, walk
from secondfix.naming import check, names
from secondfix.papers import Setting, pack_pdf, worksheets_pdf
from secondfix.radio import sending
from secondfix.scenes import Air, resolve, scene_times, time_words
from secondfix.terms import WiringRules
from tests.papers.reading import flat, outside, pages, words_of

MM = 72 / 25.4
LETTER = (792, 612)  # 11 by 8-1/2 in, on its side


@pytest.fixture(scope="module", params=["house", "house-mended", "nec-house", "nec-house-mended"])
def demo(request: pytest.FixtureRequest, tree: Path) -> Schedule:
    read = [
        read_model(p.read_text(encoding="utf-8"), where=p.name)
        for p in sorted((tree / "src/secondfix/catalogue/models").glob("*.toml"))
    ]
    models = {m.key: m for m in read if isinstance(m, Model)}
    data = (tree / "demo" / f"{request.param}.json").read_bytes()
    house = read_house(data, where="demo", models=models)
    assert isinstance(house, House), house
    return schedule(house, house.models)


def test_pack_of_the_demo_house_is_whole(demo: Schedule, setting: Setting) -> None:
    pdf = pack_pdf(demo, check(demo, default_assumptions()), default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes), pdf
    text = words_of(pdf)
    wanted = [*demo.rows, *demo.house.boxes, *demo.house.devices, *(e.name for e in names(demo).entries())]
    wanted += [c.words for c in (*before_boxes(demo.house), *to_mind(demo.house))]
    nec = demo.house.wiring_rules is WiringRules.NEC
    wanted += ["Closeout pack", "Punch list"] if nec else ["Handover pack", "Snag list"]
    assert {(p.width, p.height) for p in pages(pdf)} == {LETTER} or not nec
    wanted += [
        x.name for kind in (demo.house.loads, demo.house.scenes, demo.house.rooms) for x in kind.values()
    ]
    assert [w for w in wanted if flat(w) not in text] == []
    assert outside(pdf, left=15 * MM, other=8 * MM) == []


def test_the_scene_schedule_tells_how_long_each_scene_takes(demo: Schedule, setting: Setting) -> None:
    times = scene_times(demo, resolve(demo), default_assumptions(), Air(sending(demo.house.radio_region)))
    pdf = pack_pdf(demo, (), default_assumptions(), setting=setting, times=times)
    assert isinstance(pdf, bytes), pdf
    text = words_of(pdf)
    assert [w for time in times for w in time_words(time) if flat(w) not in text] == []


def test_worksheets_of_the_demo_house_carry_every_caution_and_name(demo: Schedule, setting: Setting) -> None:
    order = walk(demo, {}, default_assumptions())
    pdf = worksheets_pdf(demo, order, (), default_assumptions(), setting=setting)
    assert isinstance(pdf, bytes), pdf
    text = words_of(pdf)
    wanted = [c.words for d in demo.house.devices for c in cautions_for(demo, d)]
    wanted += [e.name for e in names(demo).entries()]
    nec = demo.house.wiring_rules is WiringRules.NEC
    way = f"{order.walked_mm / 304.8:.0f} ft" if nec else f"{order.walked_mm / 1000:.0f} m"
    wanted.append(f"about {way}.")
    assert [w for w in wanted if flat(w) not in text] == []
    assert outside(pdf, left=15 * MM, other=8 * MM) == []
