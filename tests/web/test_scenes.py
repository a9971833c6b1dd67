"""The scene schedule on the screen: why a crossing is what it is; a scene on its form, tried and saved."""

from typing import Any

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.house import plain_of
from secondfix.store import door
from secondfix.web.scenes.typed import form_of, scene_of, texts_of

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun
HTMX = {"HX-Request": "true"}


def form(house_id: str, scene_id: str, *, base: int = 1, **other: str) -> dict[str, str]:
    house = door.open_house(house_id).house
    return {**texts_of(house, house.scenes[scene_id]), "base": str(base), **other}


def page_of(client: Client, house_id: str, rest: str = "") -> str:
    return client.get(f"/house/{house_id}/scenes{rest}").content.decode()


def scene_now(house_id: str, scene_id: str) -> Any:
    return plain_of(door.open_house(house_id).house)["scenes"].get(scene_id)


def test_every_load_meets_every_scene(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id)
    house = door.open_house(house_id).house
    assert page.count("data-at=") == len(house.loads) * len(house.scenes)
    assert "Ledger of 40 loads" in page
    assert "32 + 8 + 0 + 0" in page


def test_a_crossing_says_why_and_by_which_policy(writer: Client, house_id: str) -> None:
    page = page_of(writer, house_id, "?at=S2.L22")
    assert "The whole-device entry reaches it, which rules and policy leave out." in page
    assert "animal care (animals depend on it): no scene switches it off" in page
    assert "D08 whole-device entry: off" in page


def test_a_crossing_asked_for_by_a_script_comes_alone(writer: Client, house_id: str) -> None:
    part = writer.get(f"/house/{house_id}/scenes?at=S1.L02", headers=HTMX).content.decode()
    assert "<html" not in part
    assert "Its purpose, security light, is left alone unless a rule names the load itself." in part


@pytest.mark.parametrize("at", ["S1", "S1.L999", "S99.L01", "nothing"])
def test_a_crossing_that_is_not_there_is_not_chosen(writer: Client, house_id: str, at: str) -> None:
    assert "Choose a crossing to read why" in page_of(writer, house_id, f"?at={at}")


def test_a_narrow_screen_has_the_scene_that_is_asked_for(writer: Client, house_id: str) -> None:
    loads = len(door.open_house(house_id).house.loads)
    page = page_of(writer, house_id, "?scene=S4")
    assert page.count('class="crossing here"') == loads
    assert 'aria-current="true">Dusk' in page


def test_the_form_of_every_scene_says_what_the_document_says(house_id: str) -> None:
    house = door.open_house(house_id).house
    for scene_id, scene in house.scenes.items():
        assert scene_of(texts_of(house, scene)) == plain_of(house)["scenes"][scene_id]


def test_every_field_of_a_scene_goes_through_its_form() -> None:
    texts = {
        "name": "Late",
        "note": "asked for twice",
        "starts.0.by": "sun",
        "starts.0.sun": "sunset",
        "starts.0.offset_min": "-20",
        "starts.0.days.sat": "on",
        "starts.0.days.fri": "on",
        "starts.0.press": "held",  # of another way of starting: left out
        "starts.1.by": "sensor",
        "starts.1.device": "D33 Library",
        "starts.1.button": "4",
        "starts.1.press": "twice",
        "rules.0.select.every_load": "on",
        "rules.0.select.storey": "G",
        "rules.0.out.1.tag": "night",
        "rules.0.out.1.purpose": "lighting",
        "rules.0.to": "on",
        "rules.0.level_pct": "35",
        "rules.1.select.load": "L08 table, Dining",
        "rules.1.to": "off",
        "rules.1.gone": "on",
        "rules.2.to": "",
        "commands.0.entry": "D08.0 whole-device entry, Parlour",
        "commands.0.to": "off",
    }
    assert scene_of(texts) == {
        "name": "Late",
        "note": "asked for twice",
        "starts": [
            {"by": "sun", "sun": "sunset", "offset_min": -20, "days": ["fri", "sat"]},
            {"by": "sensor", "device": "D33", "button": 4, "press": "twice"},
        ],
        "rules": [
            {
                "select": {"every_load": True, "storey": "G"},
                "leave_out": [{"purpose": "lighting", "tag": "night"}],
                "to": "on",
                "level_pct": 35,
            }
        ],
        "commands": [{"device": "D08", "entry": 0, "to": "off"}],
    }


def test_a_kind_without_a_row_gets_an_empty_one_and_more_where_asked() -> None:
    texts = {"rules.0.to": "on", "rules.0.select.room": "R01"}
    assert [r["name"] for r in form_of(texts)["rules"]] == ["rules.0"]
    assert [r["name"] for r in form_of(texts, more=["rules"])["rules"]] == ["rules.0", "rules.1"]
    assert [s["fresh"] for s in form_of(texts)["starts"]] == [True]


def test_what_an_edit_would_change_is_told_and_not_saved(writer: Client, house_id: str) -> None:
    sent = form(house_id, "S3", **{"rules.0.level_pct": "80", "rules.2.to": "on"})
    part = writer.post(f"/house/{house_id}/scenes/S3", sent, headers=HTMX).content.decode()
    assert "2 crossings would differ" in part
    assert "Dining table (L08)" in part
    assert "<strong>on 45</strong>" in part
    assert "<strong>on 80</strong>" in part
    assert "Kitchen light (L04)" in part
    assert door.house_row(house_id).number == 1


def test_an_answer_that_would_be_new_or_fall_away_is_told(writer: Client, house_id: str) -> None:
    sent = form(house_id, "S2", **{"commands.0.gone": "on"})
    part = writer.post(f"/house/{house_id}/scenes/S2", sent, headers=HTMX).content.decode()
    assert "Answers that would fall away" in part
    assert "The whole-device entry of D08 also switches L22 pump off." in part
    sent = form(house_id, "S3", **{"starts.0.gang": "B11.3", "starts.0.press": "held"})
    part = writer.post(f"/house/{house_id}/scenes/S3", sent, headers=HTMX).content.decode()
    assert "Answers that would be new" in part
    assert "starts 2 scenes: S3, S6." in part


def test_the_same_without_scripts_stands_on_the_whole_sheet(writer: Client, house_id: str) -> None:
    sent = form(house_id, "S3", act="see", **{"rules.0.to": "off", "rules.0.level_pct": ""})
    page = writer.post(f"/house/{house_id}/scenes/S3", sent).content.decode()
    assert "1 crossing would differ" in page
    assert "<html" in page
    assert door.house_row(house_id).number == 1


def test_a_row_more_keeps_what_was_typed(writer: Client, house_id: str) -> None:
    sent = form(house_id, "S3", act="more:rules", name="Supper")
    page = writer.post(f"/house/{house_id}/scenes/S3", sent).content.decode()
    assert 'name="rules.4.to"' in page
    assert 'value="Supper"' in page


def test_a_scene_is_saved_and_the_chart_shows_it(writer: Client, house_id: str) -> None:
    sent = form(house_id, "S3", act="save", **{"rules.0.level_pct": "80"})
    page = writer.post(f"/house/{house_id}/scenes/S3", sent, follow=True).content.decode()
    assert "Saved as edit 2." in page
    assert "<strong>on 80</strong>" in page
    assert scene_now(house_id, "S3")["rules"][0]["level_pct"] == 80


def test_a_scene_sent_unchanged_makes_no_edit(writer: Client, house_id: str) -> None:
    page = writer.post(f"/house/{house_id}/scenes/S6", form(house_id, "S6", act="save"), follow=True)
    assert b"Nothing differs from what stands." in page.content
    assert door.house_row(house_id).number == 1


@pytest.mark.parametrize(
    ("field", "typed", "told"),
    [
        ("rules.0.level_pct", "forty", "scenes.S3.rules[0].level_pct"),
        ("rules.0.level_pct", "140", "scenes.S3.rules[0].level_pct"),
        ("rules.0.select.load", "L999", "scenes.S3.rules[0].select.load"),
        ("starts.0.gang", "B05.9", "scenes.S3.starts[0].gang"),
        ("name", "", "scenes.S3.name"),
    ],
)
def test_a_slip_is_told_and_what_was_typed_stays(
    writer: Client, house_id: str, field: str, typed: str, told: str
) -> None:
    sent = form(house_id, "S3", act="save", **{field: typed})
    answer = writer.post(f"/house/{house_id}/scenes/S3", sent)
    assert answer.status_code == 422
    assert told in answer.content.decode()
    assert f'name="{field}" value="{typed}"' in answer.content.decode()
    assert door.house_row(house_id).number == 1


def test_a_scene_begins_with_its_name_under_an_id_that_no_other_bore(writer: Client, house_id: str) -> None:
    taken = {"base": "1", "act": "out", "name": "Reading"}
    writer.post(f"/house/{house_id}/scenes/S7", taken)
    assert scene_now(house_id, "S7") is None
    page = writer.post(f"/house/{house_id}/scenes", {"base": "2", "name": "Long bath"}, follow=True)
    assert "S8 Long bath" in page.content.decode()
    assert scene_now(house_id, "S8") == {"name": "Long bath"}


def test_taking_a_scene_out_is_told_beforehand(writer: Client, house_id: str) -> None:
    sent = form(house_id, "S4", act="out")
    part = writer.post(f"/house/{house_id}/scenes/S4", sent, headers=HTMX).content.decode()
    assert "no such scene" in part
    assert "The scene is taken out." in part


def test_two_people_at_one_scene_lose_nothing(writer: Client, house_id: str) -> None:
    writer.post(f"/house/{house_id}/scenes/S3", form(house_id, "S3", **{"rules.0.level_pct": "80"}))
    other = {**form(house_id, "S3", **{"rules.0.level_pct": "20"}), "base": "1"}
    answer = writer.post(f"/house/{house_id}/scenes/S3", other)
    assert "/settle/" in answer["Location"]


def test_a_scene_without_a_name_is_told(writer: Client, house_id: str) -> None:
    answer = writer.post(f"/house/{house_id}/scenes", {"base": "1", "name": " "})
    assert answer.status_code == 422
    assert b"scenes.S8.name" in answer.content


def test_a_house_without_loads_says_what_comes_first(writer: Client) -> None:
    begun = writer.post("/new", {"name": "Bare Yard"}, follow=True)
    house_id = begun.redirect_chain[-1][0].split("/")[2]
    assert "No load is known yet" in page_of(writer, house_id)


def test_a_reader_sees_the_form_and_cannot_fill_it_in(reader: Client, house_id: str) -> None:
    page = reader.get(f"/house/{house_id}/scenes/S3").content.decode()
    assert '<fieldset class="bare" disabled>' in page
    assert "Save the scene" not in page
    assert "Begin the scene" not in page_of(reader, house_id)
