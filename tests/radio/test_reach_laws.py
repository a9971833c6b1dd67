"""Laws of reach over random houses: a blank never passes, a wall never mends, a repeater never harms."""

from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from secondfix.radio import Word
from tests.example_house import seen
from tests.radio.houses import SURVEYED, asked, key, row_of_rooms

walls_mm = st.sampled_from([60, 100, 200, 300, 450])
kinds = st.sampled_from(["relay", "leaf", "mute", "bare"])


@st.composite
def houses(draw: st.DrawFn) -> dict[str, Any]:
    count = draw(st.integers(2, 5))
    plain = row_of_rooms(
        count, room_mm=draw(st.integers(4, 12)) * 1000, protocol=draw(st.sampled_from(["zigbee", "zwave"]))
    )
    for wall in plain["walls"].values():
        thick, material = draw(walls_mm), draw(st.sampled_from(["brick", "concrete", "wood"]))
        wall |= {"thickness_mm": thick, "layers": seen([{"material": material, "thickness_mm": thick}])}
    for box in plain["boxes"].values():
        box["shell"] = seen(draw(st.sampled_from(["plastic", "metal"])))
        box["plate"] = seen(draw(st.sampled_from(["plastic", "plastic", "glass", "metal"])))
    for one in plain["devices"].values():
        one["model"] = key(draw(kinds), plain["networks"]["N1"]["protocol"])
    return plain


RANK = {Word.UNLIKELY: 0, Word.DOUBTFUL: 1, Word.NOT_KNOWN: 1, Word.LIKELY: 2}


@given(houses(), st.data())
def test_blanking_a_surveyed_fact_never_turns_another_answer_into_a_pass(
    plain: dict[str, Any], data: st.DataObject
) -> None:
    blanks = [
        *(
            (part, name, field)
            for part in ("boxes",)
            for name in plain[part]
            for field in (*SURVEYED, "position")
        ),
        *(("walls", name, "layers") for name in plain["walls"]),
        *(("rooms", name, field) for name in plain["rooms"] for field in ("storey", "outline_mm")),
        *(("networks", "N1", f) for f in ("controller_place", "transmit_power_dbm", "sensitivity_dbm")),
        *(("devices", name, field) for name in plain["devices"] for field in ("model", "network")),
        ("places", "P0", "position"),
    ]
    part, name, field = data.draw(st.sampled_from(blanks))
    before = {d.id: d for d in asked(plain).devices}
    del plain[part][name][field]
    if field == "model":
        plain["devices"][name] = {k: v for k, v in plain["devices"][name].items() if k != "model"}
    for after in asked(plain).devices:
        assert after.word is not Word.LIKELY or before[after.id].word is Word.LIKELY


@given(houses(), st.data())
def test_a_thicker_wall_never_mends_a_link(plain: dict[str, Any], data: st.DataObject) -> None:
    before = asked(plain)
    name = data.draw(st.sampled_from(sorted(plain["walls"])))
    wall = plain["walls"][name]
    layer = wall["layers"]["value"][0]
    layer["thickness_mm"] += data.draw(st.integers(1, 200))
    wall["thickness_mm"] = layer["thickness_mm"]
    after = asked(plain)
    for old, new in zip(before.devices, after.devices, strict=True):
        assert old.chances is not None
        assert new.chances is not None
        assert new.chances.low <= old.chances.low + 1e-12
        assert new.chances.high <= old.chances.high + 1e-12


@given(houses(), st.data())
def test_a_further_repeater_never_lowers_a_chance(plain: dict[str, Any], data: st.DataObject) -> None:
    before = asked(plain)
    room = data.draw(st.integers(0, len(plain["rooms"]) - 1))
    x, y = plain["rooms"][f"R{room}"]["outline_mm"][0]
    plain["places"]["P9"] = {
        "kind": "socket",
        "name": "Further",
        "room": f"R{room}",
        "position": {"x_mm": x + 1500, "y_mm": y + 2500, "height_mm": 300},
    }
    protocol = plain["networks"]["N1"]["protocol"]
    plain["devices"]["D99"] = {"model": key("plug", protocol), "network": "N1", "place": "P9"}
    after = {d.id: d for d in asked(plain).devices}
    for old in before.devices:
        new = after[old.id]
        assert old.chances is not None
        assert new.chances is not None
        assert new.chances.low >= old.chances.low
        assert new.chances.assumed >= old.chances.assumed
        assert RANK[new.word] >= RANK[old.word]
