"""Rooms, boxes and circuits: a new house from nothing, each field in and out, ids of our own.

Nothing is taken out that others speak of.
"""

import html
from typing import Any

import pytest
from django.test import Client

from tests.desk import PASSWORD
from secondfix.exchange import KINDS, kind_of, shown_thing
from secondfix.house import House
from secondfix.store import door
from secondfix.web.frame.asked import asked, asked_at
from secondfix.web.things import adding

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


def house_now(house_id: str) -> House:
    return door.open_house(house_id).house


def change(client: Client, house_id: str, thing: str, known: str = "told", **fields: str) -> Any:
    base = str(door.house_row(house_id).number)
    sent = {key.replace("_", "-"): text for key, text in fields.items()}
    return client.post(f"/house/{house_id}/thing/{thing}", {"base": base, "known": known, **sent})


def add(client: Client, house_id: str, kind: str, **fields: str) -> Any:
    base = str(door.house_row(house_id).number)
    sent = {key.replace("_", "-"): text for key, text in fields.items()}
    return client.post(f"/house/{house_id}/building", {"base": base, "adds": kind, **sent})


def stands(house_id: str, thing: str, key: str) -> str:
    house = house_now(house_id)
    kind = kind_of(house, thing)
    assert kind is not None
    return shown_thing(house, kind, f"{kind.collection}.{thing}")[key]


FIELDS = [
    ("G", {"name": "Lower floor"}, {}),
    ("G", {"level": "-120"}, {}),
    ("G", {"ceiling": "2650"}, {}),
    ("G", {"floor": "concrete 180, air 40, floorboard 22"}, {"floor": " (told)"}),
    ("R04", {"name": "Boot room"}, {}),
    ("R04", {"storey": ""}, {}),
    ("R04", {"tags": "cold, north-side"}, {}),
    ("R04", {"outline": "5070 5900, 7250 5900, 7250 8650, 5070 8650"}, {}),
    ("C5", {"name": "Sockets, lower floor"}, {}),
    ("C5", {"breaker": "16"}, {"breaker": " (told)"}),
    ("C5", {"curve": "C"}, {"curve": " (told)"}),
    ("C5", {"label": "Sockets, all"}, {}),
    ("C5", {"label-rooms": "R01, R07"}, {}),
    ("C5", {"other-load": "1.25"}, {"other-load": " (told)"}),
    ("C5", {"phase": "L2"}, {"phase": " (told)"}),
    ("C5", {"shares": "C6", "together": "yes"}, {"shares": " (told)", "together": " (told)"}),
    ("C5", {"feeder": "board in the cellar"}, {"feeder": " (told)"}),
    ("B14", {"room": "R15 Guest", "x": "", "y": "", "height": ""}, {}),
    ("B14", {"depth": "58"}, {"depth": " (told)"}),
    ("B14", {"set-back": "3"}, {"set-back": " (told)"}),
    ("B14", {"cables": "4"}, {"cables": " (told)"}),
    ("B14", {"shell": "metal"}, {"shell": " (told)"}),
    ("B14", {"plate": "glass"}, {"plate": " (told)"}),
    ("B14", {"finish": "tile"}, {"finish": " (told)"}),
    ("B14", {"earthed": "no"}, {"earthed": " (told)"}),
    ("B14", {"x": "10800", "y": "5520", "height": "1150"}, {}),
    ("B14", {"zone": "2"}, {"zone": " (told)"}),
    ("B14", {"two-supplies": "yes"}, {"two-supplies": " (told)"}),
    ("B14", {"note": "behind the mirror"}, {}),
    ("L22", {"name": "tank pump"}, {}),
    ("L22", {"room": "R07 Utility"}, {}),
    ("L22", {"place": "P22 pump point"}, {}),
    ("L22", {"purpose": "extract fan"}, {}),
    ("L22", {"kind": "resistive"}, {"kind": " (told)"}),
    ("L22", {"power": "62.5"}, {"power": " (told)"}),
    ("L22", {"count": "2"}, {"count": " (told)"}),
    ("L22", {"load-neutral": "C2 Lighting, upper floor"}, {"load-neutral": " (told)"}),
    (
        "L22",
        {"kind": "lamp on an iron-core transformer", "also-kinds": "motor; LED on a separate driver"},
        {"kind": " (told)", "also-kinds": " (told)"},
    ),
    ("L22", {"factor": "0.85"}, {"factor": " (told)"}),
    ("L22", {"inrush": "4.5", "inrush-width": "300"}, {"inrush": " (told)", "inrush-width": " (told)"}),
    (
        "L22",
        {"transformer": "60", "transformer-least": "7.5"},
        {"transformer": " (told)", "transformer-least": " (told)"},
    ),
    ("L22", {"bypass": "220"}, {"bypass": " (told)"}),
    ("L22", {"dimmable": "yes"}, {"dimmable": " (told)"}),
    ("L22", {"to-be-dimmed": "no"}, {}),
    ("L22", {"continuous": "yes"}, {"continuous": " (told)"}),
    ("L22", {"reversing": "no"}, {"reversing": " (told)"}),
    ("L22", {"permanent": "yes"}, {"permanent": " (told)"}),
    ("L22", {"thermostat": "no"}, {"thermostat": " (told)"}),
    ("L22", {"limit": "900"}, {}),
    ("L22", {"returns": "returns on"}, {}),
    ("L22", {"arrangement": "switch loop"}, {"arrangement": " (told)"}),
    ("L22", {"places": "B08.1, B11.1"}, {}),
    ("L22", {"others": "in series"}, {"others": " (told)"}),
    ("L22", {"spare-cores": "1"}, {"spare-cores": " (told)"}),
    ("L22", {"tags": "water"}, {}),
    ("L22", {"note": "under the stone"}, {}),
    ("P01", {"name": "middle point"}, {}),
    ("P01", {"room": "R04 Cloaks", "x": "", "y": "", "height": ""}, {}),
    ("P01", {"place-kind": "surface"}, {}),
    ("P01", {"x": "6000", "y": "2900", "height": "2500"}, {}),
    ("P01", {"circuit": "C2 Lighting, upper floor"}, {"circuit": " (told)"}),
    ("W05", {"thickness": "203", "layers": "plasterboard 13, air 80, brick 110"}, {"layers": " (told)"}),
    ("W05", {"storey": "U Upper floor"}, {}),
    ("W24", {"from": "10100 5500", "to": "12200 5500"}, {}),
    ("Door1", {"along": "5650", "width": "1050", "sill": "20", "opening-height": "2050"}, {}),
    ("Door1", {"leaf": "wood 44"}, {"leaf": " (told)"}),
    ("Win1", {"along": "1700", "width": "1600", "sill": "880", "opening-height": "1250"}, {}),
    ("Win1", {"leaf": "glass 4, air 12, glass 4"}, {"leaf": " (told)"}),
]
KEPT = {("L22", "kind"), ("W05", "storey"), ("Door1", "sill"), ("Win1", "sill")}
REQUIRED = {"name", "room", "level", "place-kind", "from", "to", "along", "width", "opening-height"}


@pytest.mark.parametrize(
    ("thing", "texts", "known"), FIELDS, ids=[f"{t}-{'-'.join(texts)}" for t, texts, _ in FIELDS]
)
def test_every_field_goes_in_and_out_again(
    writer: Client, house_id: str, thing: str, texts: dict[str, str], known: dict[str, str]
) -> None:
    answer = change(writer, house_id, thing, **texts)
    assert answer.status_code == 302, answer.content.decode().split("to put right")[-1][:400]
    assert answer["Location"].endswith(f"/building#{thing}")
    for key, text in texts.items():
        assert stands(house_id, thing, key) == text + known.get(key, "")
    page = html.unescape(writer.get(f"/house/{house_id}/thing/{thing}").content.decode())
    for key, text in texts.items():
        assert text + known.get(key, "") in page
    optional = {key: "" for key in texts if key not in REQUIRED and (thing, key) not in KEPT}
    if optional:
        assert change(writer, house_id, thing, **optional).status_code == 302
        assert [stands(house_id, thing, key) for key in optional] == [""] * len(optional)


def test_the_facts_of_the_house_go_in_and_out(writer: Client, house_id: str) -> None:
    texts = {
        "name": "Larkholm, Lower Wendleby", "mains": "240", "frequency": "60", "rules": "NFPA 70, the NEC",
        "region": "ANZ", "zone": "Pacific/Auckland", "latitude": "-41.25", "longitude": "174.75", "note": "",
    }  # fmt: skip
    answer = writer.post(f"/house/{house_id}/building", {"base": "1", "act": "facts", **texts})
    assert answer.status_code == 302
    assert shown_thing(house_now(house_id), KINDS["house"], "") == texts
    gone = {key: "" for key in texts if key != "name"}
    writer.post(f"/house/{house_id}/building", {"base": "2", "act": "facts", **gone})
    house = house_now(house_id)
    assert (house.mains_voltage_v, house.wiring_rules, house.latitude_mdeg) == (None, None, None)


def test_a_slip_is_told_and_what_was_typed_stays(writer: Client, house_id: str) -> None:
    answer = change(writer, house_id, "C1", breaker="ten", name="Lights east")
    page = answer.content.decode()
    assert answer.status_code == 422
    assert "expected a figure in A" in page
    assert 'value="ten"' in page
    assert 'value="Lights east"' in page
    assert page.count('aria-invalid="true"') == 1
    assert door.house_row(house_id).number == 1


def test_what_the_document_refuses_is_told_beside_the_field(writer: Client, house_id: str) -> None:
    answer = change(writer, house_id, "C1", breaker="400")
    assert answer.status_code == 422
    assert answer.content.decode().count('aria-invalid="true"') == 1
    facts = writer.post(f"/house/{house_id}/building", {"base": "1", "act": "facts", "mains": "9"})
    assert facts.status_code == 422
    assert b"mains_voltage_v" in facts.content


def test_a_new_house_is_filled_from_nothing_to_its_first_check(writer: Client) -> None:
    writer.post("/new", {"name": "Marsh End 3"})
    house_id = door.houses()[0].id
    page = writer.get(f"/house/{house_id}/building").content.decode()
    assert "Begin with the facts of the house" in page
    facts = {"act": "facts", "base": "1", "mains": "230", "rules": "IEC 60364", "region": "EU"}
    assert writer.post(f"/house/{house_id}/building", facts).status_code == 302
    assert add(writer, house_id, "storey", name="Ground floor", level="0", ceiling="2450").status_code == 302
    assert add(writer, house_id, "room", name="Parlour", storey="St1 Ground floor").status_code == 302
    wall = {"storey": "St1 Ground floor", "from": "0 0", "to": "4200 0", "thickness": '4 1/2"'}
    assert add(writer, house_id, "wall", **wall).status_code == 302
    door_ = {"wall": "W1", "along": "600", "width": "800", "opening_height": "2000"}
    assert add(writer, house_id, "door", **door_).status_code == 302
    assert add(writer, house_id, "window", **{**door_, "along": "2100"}, sill="900").status_code == 302
    assert add(writer, house_id, "circuit", name="Lights", breaker="10", curve="B").status_code == 302
    assert add(writer, house_id, "box", room="R2 Parlour", mounts="2", gangs="3").status_code == 302
    assert add(writer, house_id, "load", name="cove", room="R2 Parlour", power="40").status_code == 302
    assert add(writer, house_id, "place", place_kind="light point", name="cove", room="R2").status_code == 302
    box = house_now(house_id).boxes["B2"]
    assert ([*box.mounts], [g.mount for g in box.gangs.values()]) == (["1", "2"], ["1", "1", "2"])
    sent = {"base": str(door.house_row(house_id).number), "known": "measured"}
    sent |= {"B2.1:duty": "feeds", "B2.1:load": "L1", "B2.1:line": "C1", "B2.1:depth": "35"}
    assert writer.post(f"/house/{house_id}/box/B2", sent).status_code == 302
    change(writer, house_id, "L1", place="P1 cove", purpose="lighting", kind="LED lamp with built-in driver")
    house = house_now(house_id)
    assert house.boxes["B2"].gangs["1"].load == "L1"
    assert house.loads["L1"].power_mw is not None
    assert house.loads["L1"].power_mw.value == 40_000
    checks = writer.get(f"/house/{house_id}/checks").content.decode()
    assert checks.count('<article class="finding">') > 3
    assert "B2" in checks


def test_ids_are_ours_and_none_comes_to_mean_another_thing(writer: Client, house_id: str) -> None:
    first = add(writer, house_id, "room", name="Larder")
    assert "more=room" in first["Location"]
    rooms = house_now(house_id).rooms
    new = next(i for i in rooms if rooms[i].name == "Larder")
    assert writer.post(f"/house/{house_id}/thing/{new}", {"base": "2", "act": "out"}).status_code == 302
    assert new not in house_now(house_id).rooms
    add(writer, house_id, "room", name="Scullery")
    rooms = house_now(house_id).rooms
    assert new not in rooms
    assert int(next(i for i in rooms if rooms[i].name == "Scullery")[1:]) == int(new[1:]) + 1


def test_what_is_likely_to_be_the_same_stays_in_the_row(writer: Client, house_id: str) -> None:
    sent = {"base": "1", "adds": "load", "name": "sconce", "room": "R05 Parlour", "known": "seen_open"}
    page = writer.post(f"/house/{house_id}/building", sent, follow=True).content.decode()
    row = page.split('id="more-load"', 1)[1].split("</form>", 1)[0]
    assert "<option selected>R05 Parlour</option>" in row
    assert '<option value="seen_open" selected>' in row
    assert "sconce" not in row
    assert 'name="name" value="" maxlength="500" autocomplete="off" autofocus' in row
    other = page.split('id="more-place"', 1)[1].split("</form>", 1)[0]
    assert "selected>R05" not in other


def test_two_who_add_from_one_edit_add_two_things(writer: Client, house_id: str) -> None:
    for name in ("Larder", "Scullery"):
        sent = {"base": "1", "adds": "room", "name": name}
        assert writer.post(f"/house/{house_id}/building", sent).status_code == 302
    assert {"Larder", "Scullery"} <= {room.name for room in house_now(house_id).rooms.values()}


def test_whoever_was_slower_by_a_hair_gets_the_next_id(
    writer: Client, house_id: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    writer.post(f"/house/{house_id}/building", {"base": "1", "adds": "room", "name": "Larder"})
    stale = [asked_at(house_id, 1)]
    monkeypatch.setattr(adding, "asked", lambda house_id: stale.pop() if stale else asked(house_id))
    monkeypatch.setattr(adding, "largest_used", lambda _: {})
    answer = writer.post(f"/house/{house_id}/building", {"base": "1", "adds": "room", "name": "Scullery"})
    assert "/building" in answer["Location"]
    rooms = house_now(house_id).rooms
    assert sorted(i for i in rooms if rooms[i].name in {"Larder", "Scullery"}) == ["R18", "R19"]


@pytest.mark.parametrize("thing", ["B01", "C1", "G", "L01", "P01", "R01"])
def test_what_others_speak_of_is_not_taken_out_and_they_are_named(
    writer: Client, house_id: str, thing: str
) -> None:
    answer = writer.post(f"/house/{house_id}/thing/{thing}", {"base": "1", "act": "out"})
    page = answer.content.decode()
    assert answer.status_code == 422
    assert f"{thing} stays" in page
    assert f"/house/{house_id}/" in page.split(f"{thing} stays")[1].split("</p>")[0]
    assert door.house_row(house_id).number == 1


def test_the_only_room_of_a_house_stays(writer: Client) -> None:
    writer.post("/new", {"name": "Marsh End 3"})
    house_id = door.houses()[0].id
    assert writer.post(f"/house/{house_id}/thing/B1", {"base": "1", "act": "out"}).status_code == 302
    assert writer.post(f"/house/{house_id}/thing/R1", {"base": "2", "act": "out"}).status_code == 422


def test_a_box_gets_and_loses_mounts_and_gangs(writer: Client, house_id: str) -> None:
    here = f"/house/{house_id}/thing/B14"
    assert writer.post(here, {"base": "1", "act": "mounts", "depth": "59"})["Location"] == here
    writer.post(here, {"base": "2", "act": "gangs"})
    box = house_now(house_id).boxes["B14"]
    assert ([*box.mounts], [g.mount for g in box.gangs.values()]) == (["1", "2"], ["1", "2"])
    assert box.depth_mm is not None
    assert box.depth_mm.value == 59
    refused = writer.post(here, {"base": "3", "act": "out mounts.2"})
    assert refused.status_code == 422
    writer.post(here, {"base": "3", "act": "out gangs.2"})
    writer.post(here, {"base": "4", "act": "out mounts.2"})
    box = house_now(house_id).boxes["B14"]
    assert ([*box.mounts], [*box.gangs]) == (["1"], ["1"])
    assert writer.post(here, {"base": "5", "act": "out mounts.7"}).status_code == 404


def test_mounts_and_gangs_of_a_box_are_changed_with_it(writer: Client, house_id: str) -> None:
    sent = {"mounts.1:neutral": "absent", "mounts.1:through": "yes (seen open)", "note": "tight"}
    assert change(writer, house_id, "B02", known="measured", **sent).status_code == 302
    box = house_now(house_id).boxes["B02"]
    neutral, through = box.mounts["1"].neutral, box.mounts["1"].neutral_through
    assert neutral is not None
    assert through is not None
    assert (neutral.value, neutral.known, through.value, through.known) == (
        "absent", "measured", True, "seen_open",
    )  # fmt: skip
    assert box.note == "tight"


@pytest.mark.parametrize(
    ("kind", "fields", "line"),
    [
        ("room", {}, "rooms.R18.name"),
        ("box", {"room": "R01 Hall", "mounts": "7", "gangs": "1"}, "a whole number up to 6"),
        ("box", {"room": "R01 Hall", "mounts": "0", "gangs": "0"}, "boxes.B23.mounts"),
        ("circuit", {"name": "Spare", "breaker": "many"}, "a figure in A"),
        ("castle", {"name": "x"}, "one of storey, room"),
    ],
)
def test_a_new_thing_with_a_slip_is_told_and_not_made(
    writer: Client, house_id: str, kind: str, fields: dict[str, str], line: str
) -> None:
    answer = add(writer, house_id, kind, **fields)
    assert answer.status_code == 422
    assert line in html.unescape(answer.content.decode())
    for text in fields.values():
        assert kind == "castle" or text in answer.content.decode()
    assert door.house_row(house_id).number == 1


def test_a_form_without_its_edit_is_told(writer: Client, house_id: str) -> None:
    for here in (f"/house/{house_id}/building", f"/house/{house_id}/thing/R01"):
        answer = writer.post(here, {"base": "x", "adds": "room", "name": "Nook"})
        assert answer.status_code == 422
        assert b"the number of an edit" in answer.content


def test_two_who_change_one_field_are_led_to_take_a_side(writer: Client, house_id: str) -> None:
    change(writer, house_id, "R01", name="Great hall")
    answer = writer.post(f"/house/{house_id}/thing/R01", {"base": "1", "name": "Small hall"})
    assert "/settle/" in answer["Location"]
    assert house_now(house_id).rooms["R01"].name == "Great hall"


def test_every_thing_has_a_row_with_its_id_as_anchor(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/building").content.decode()
    house = house_now(house_id)
    for things in (
        house.storeys, house.rooms, house.walls, house.doors, house.windows, house.boxes, house.circuits,
        house.loads, house.places,
    ):  # fmt: skip
        for thing in things:
            assert page.count(f'<tr id="{thing}">') == 1


def test_names_are_escaped(writer: Client, house_id: str) -> None:
    change(writer, house_id, "R01", name="<script>alert(1)</script>")
    for page in ("building", "thing/R01", "thing/B01", "networks", "plans"):
        assert "<script>alert" not in writer.get(f"/house/{house_id}/{page}").content.decode()


def test_a_reader_sees_what_is_stated_and_no_form(reader: Client, house_id: str) -> None:
    for page in ("building", "thing/B01", "networks", "choose/P14"):
        text = reader.get(f"/house/{house_id}/{page}").content.decode()
        assert 'name="base"' not in text
    assert "61 (measured)" in reader.get(f"/house/{house_id}/thing/B01").content.decode()


def test_a_thing_that_is_not_there_is_not_found(writer: Client, house_id: str) -> None:
    assert writer.get(f"/house/{house_id}/thing/R99").status_code == 404
    assert writer.post(f"/house/{house_id}/thing/R99", {"base": "1"}).status_code == 404


def test_before_a_box_is_opened_stands_what_comes_first(writer: Client, house_id: str) -> None:
    assert "isolate, lock off, prove dead" in writer.get(f"/house/{house_id}/thing/B01").content.decode()
