"""The scene schedule and the JSON of scenes."""

import json

from secondfix.scenes import RULES, resolve, scene_schedule, scenes_as_json
from tests.scenes.small import asked, command, read, rule, small


def test_the_scene_schedule_has_a_cell_for_every_load_and_scene() -> None:
    plain = small(
        rules=[rule("off", room="R1"), rule("on", level=30, load="L4")], commands=[command("D1", 0)]
    )
    plain["scenes"]["SC2"] = {"name": "Heat", "rules": [rule("on", every_load=True)]}
    plain["loads"]["L1"]["purpose"] = "heater_radiant"
    del plain["loads"]["L2"]["purpose"]
    chart = scene_schedule(resolve(read(plain)))
    assert [c.name for c in chart.columns] == ["Dusk", "Heat"]
    words = {load: [cell.words for cell in cells] for load, cells in chart.rows}
    assert words == {
        "L1": ["off", "refused"],
        "L2": ["cannot tell", "cannot tell"],
        "L3": ["conflict", "left alone"],
        "L4": ["on 30", "on"],
        "L5": ["·", "on"],
    }
    noted = {(load, i) for load, cells in chart.rows for i, cell in enumerate(cells) if cell.noted}
    assert noted == {("L1", 1), ("L2", 0), ("L2", 1), ("L3", 0)}


def test_a_house_without_scenes_has_an_empty_schedule() -> None:
    plain = small()
    del plain["scenes"]
    chart = scene_schedule(resolve(read(plain)))
    assert (chart.columns, chart.rows) == ((), ())


def test_the_json_has_the_ledger_and_survives_a_round_trip() -> None:
    shown = scenes_as_json(
        resolve(read(small(rules=[rule("off", purpose="lighting")], commands=[command("D2", 2)])))
    )
    assert json.loads(json.dumps(shown)) == shown
    (scene,) = shown["scenes"]  # type: ignore[misc, attr-defined] # the shape is what is tested
    assert scene["ledger"] == {"switched": 4, "left_alone": 1, "conflict": 0, "cannot_tell": 0, "loads": 5}
    assert set(scene["crossings"][0]) == {
        "load", "kind", "reason", "why", "by", "to", "level_pct", "asked_level_pct", "device", "entry",
        "refused", "worst", "looks",
    }  # fmt: skip
    assert scene["commands"][0] == {"device": "D1", "entry": 1, "to": "off", "level_pct": None}


def test_every_answer_names_a_rule_of_the_list() -> None:
    plain = small(rules=[rule("off", room="R1")], commands=[command("D1", 0)])
    assert {f.rule for f in asked(plain)} <= {r.id for r in RULES}
    assert len({r.id for r in RULES}) == len(RULES)
