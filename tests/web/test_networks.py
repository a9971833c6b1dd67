"""Networks and devices: each field in and out, reach in words, and choosing what fits at one place."""

import html
import re
from pathlib import Path
from typing import Any

import pytest
from django.test import Client

from tests.desk import PASSWORD
from tests.web.test_building import change, house_now, stands
from secondfix.actions.reach import reach
from secondfix.actions.select import select
from secondfix.assumptions import default_assumptions
from secondfix.exchange import KINDS
from secondfix.files import shipped_models
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


def add(client: Client, house_id: str, kind: str, **fields: str) -> Any:
    base = str(door.house_row(house_id).number)
    return client.post(f"/house/{house_id}/networks", {"base": base, "adds": kind, **fields})


FIELDS = [
    ("N1", {"name": "Larkholm air"}, {}),
    ("N1", {"controller": "P83 Dresser"}, {}),
    ("N1", {"channel": "15"}, {}),
    ("N1", {"transmit": "4"}, {}),
    ("N1", {"hears": "-97"}, {}),
    ("N1", {"key-ref": "K07"}, {}),
    ("D01", {"device-name": "Hall switches"}, {}),
    ("D01", {"returns": "returns as it was"}, {}),
    ("D01", {"address": "00124B001CDEF012"}, {}),
    ("D01", {"code-ref": "K44"}, {}),
    ("D01", {"note": "stiff"}, {}),
    ("D01", {"source": "mains", "repeats": "yes"}, {"source": " (told)", "repeats": " (told)"}),
    ("D06", {"model": "", "network": "N2 Larkholm east"}, {}),
    ("Use1", {"words": "The reader's lamp."}, {}),
    ("Use1", {"use-kind": "other", "device": "D31", "entry": "1"}, {}),
    ("D32", {"outputs": "1: L41"}, {}),
]


@pytest.mark.parametrize(
    ("thing", "texts", "known"), FIELDS, ids=[f"{t}-{'-'.join(texts)}" for t, texts, _ in FIELDS]
)
def test_every_field_of_networks_and_devices_goes_in_and_out(
    writer: Client, house_id: str, thing: str, texts: dict[str, str], known: dict[str, str]
) -> None:
    answer = change(writer, house_id, thing, **texts)
    assert answer.status_code == 302, answer.content.decode().split("to put right")[-1][:400]
    assert answer["Location"].endswith(f"/networks#{thing}")
    assert [stands(house_id, thing, key) for key in texts] == [t + known.get(k, "") for k, t in texts.items()]
    optional = {key: "" for key in texts if key not in {"name", "outputs", "words", "use-kind", "device"}}
    if optional:
        assert change(writer, house_id, thing, **optional).status_code == 302
        assert [stands(house_id, thing, key) for key in optional] == [""] * len(optional)


def test_a_device_moves_to_another_box_and_to_a_place(writer: Client, house_id: str) -> None:
    sent = {"box": "", "mounts": "", "gangs": "", "place": "P93 Armchair", "model": ""}
    assert change(writer, house_id, "D06", **sent).status_code == 302
    device = house_now(house_id).devices["D06"]
    assert (device.box, device.place, device.gangs) == (None, "P93", ())
    back = {"place": "", "box": "B06 Cloaks", "mounts": "1", "gangs": "1"}
    assert change(writer, house_id, "D06", **back).status_code == 302
    assert house_now(house_id).devices["D06"].box == "B06"


def test_an_address_is_read_however_its_digits_are_parted(writer: Client, house_id: str) -> None:
    change(writer, house_id, "D01", address="00:12:4b:00:1c:de:f0:12")
    assert house_now(house_id).devices["D01"].address == "00124B001CDEF012"


def test_networks_and_devices_are_added_and_taken_out(writer: Client, house_id: str) -> None:
    assert add(writer, house_id, "network", name="Barn", protocol="Zigbee").status_code == 302
    assert house_now(house_id).networks["N4"].name == "Barn"
    change(writer, house_id, "D33", network="N4 Barn")
    refused = writer.post(f"/house/{house_id}/thing/N4", {"base": "3", "act": "out"})
    assert refused.status_code == 422
    assert f'href="/house/{house_id}/networks#D33"' in refused.content.decode()
    change(writer, house_id, "D33", network="N1 Larkholm mesh")
    gone = writer.post(f"/house/{house_id}/thing/N4", {"base": "4", "act": "out"})
    assert gone["Location"].endswith("/networks")
    assert "N4" not in house_now(house_id).networks


def test_a_new_device_takes_what_is_free_in_its_box(writer: Client, house_id: str) -> None:
    for edit in ({"act": "mounts"}, {"act": "gangs"}):
        sent = {"base": str(door.house_row(house_id).number), **edit}
        writer.post(f"/house/{house_id}/thing/B14", sent)
    assert add(writer, house_id, "device", box="B14 Shower").status_code == 302
    house = house_now(house_id)
    new = next(i for i in house.devices if house.devices[i].box == "B14" and i != "D14")
    assert (house.devices[new].mounts, house.devices[new].gangs) == (("2",), ("2",))
    slip = add(writer, house_id, "device", model="plimmet-osier-one@1")
    assert slip.status_code == 422
    assert b"where it stands: box or place" in slip.content


def test_every_device_has_its_reach_in_the_words_of_the_question(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/networks").content.decode()
    for device in reach(house_now(house_id), assumptions=default_assumptions()).devices:
        row = page.split(f'<tr role="row" id="{device.id}">', 1)[1].split("</tr>", 1)[0]
        assert device.word.value in row
        if device.route:
            assert f"by way of {', '.join(device.route)}" in row
    silent = page.split("What hangs on one repeater", 1)[1].split("</table>", 1)[0]
    assert "D20, D21, D22" in silent


def test_a_device_at_a_place_without_position_says_what_is_needed(writer: Client, house_id: str) -> None:
    change(writer, house_id, "P91", x="", y="", height="")
    page = html.unescape(writer.get(f"/house/{house_id}/networks").content.decode())
    row = page.split('<tr role="row" id="D31">', 1)[1].split("</tr>", 1)[0]
    assert "not known" in row
    assert "measure where P91 is on the plan" in row


def test_an_empty_house_is_told_what_to_do_first(writer: Client) -> None:
    writer.post("/new", {"name": "Marsh End 3"})
    page = writer.get(f"/house/{door.houses()[0].id}/networks").content.decode()
    assert "Begin with a network" in page
    assert "/choose/B1" in page


@pytest.mark.parametrize("place", ["B02", "B07", "P14", "P41"])
def test_a_place_is_answered_as_select_answers_it(writer: Client, house_id: str, place: str) -> None:
    page = html.unescape(writer.get(f"/house/{house_id}/choose/{place}").content.decode())
    choices = select(
        house_now(house_id), models=shipped_models(), assumptions=default_assumptions(), places=[place]
    )
    assert choices
    assert page.count('<section class="spot"') == len(choices)
    sections = page.split('<section class="spot"')[1:]
    for choice, section in zip(choices, sections, strict=True):
        offered = re.findall(r'name="model" value="([^"]+)"', section)
        assert offered == [o.model for o in (*choice.fits, *choice.doubts)]
        if choice.refused:
            assert f"Refused: {len(choice.refused)} model" in section
        for refusal in choice.refused:
            assert refusal.because.says in section
            assert refusal.model in section
        for help_ in choice.helps:
            assert help_.words in section


def test_the_protocol_asked_for_is_the_one_answered(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/choose/P14?protocol=zwave").content.decode()
    assert "Wanted: yard (L14); Z-Wave; 230 V" in page
    assert "yard (L14); Zigbee or" in writer.get(f"/house/{house_id}/choose/P14?protocol=x").content.decode()


def test_choosing_makes_the_edit(writer: Client, house_id: str) -> None:
    sent = {"base": "1", "spot": "0", "model": "plimmet-rush@1"}
    answer = writer.post(f"/house/{house_id}/choose/P14", sent)
    house = house_now(house_id)
    new = answer["Location"].partition("#")[2]
    device = house.devices[new]
    assert (device.model, device.place, device.outputs, device.network) == (
        "plimmet-rush@1", "P14", {"1": "L14"}, "N1",
    )  # fmt: skip
    assert house.boxes["B07"].gangs["2"].duty == "scene_only"
    assert "plimmet-rush@1" in house.models
    page = writer.get(f"/house/{house_id}/networks").content.decode()
    assert f'<tr role="row" id="{new}">' in page


def test_where_no_network_or_several_speak_it_that_is_said(writer: Client, house_id: str) -> None:
    add(writer, house_id, "network", name="Barn", protocol="Zigbee")
    sent = {"base": "2", "spot": "0", "model": "plimmet-rush@1"}
    page = writer.post(f"/house/{house_id}/choose/P14", sent, follow=True).content.decode()
    assert "joins is still open" in page


def test_another_model_keeps_the_device(writer: Client, house_id: str) -> None:
    house = house_now(house_id)
    choices = select(house, models=shipped_models(), assumptions=default_assumptions())
    spot, other = next(
        (c.spot, f.model)
        for c in choices
        for f in c.fits
        if c.spot.device_id and f.model != house.devices[c.spot.device_id].model
    )
    here = [c.spot for c in choices if c.spot.place == spot.place].index(spot)
    sent = {"base": "1", "spot": str(here), "model": other}
    answer = writer.post(f"/house/{house_id}/choose/{spot.place}", sent)
    assert answer["Location"].endswith(f"#{spot.device_id}")
    before, after = (h.devices[spot.device_id or ""] for h in (house, house_now(house_id)))
    assert (after.model, after.code_ref, after.gangs) == (other, before.code_ref, before.gangs)
    assert len(house_now(house_id).devices) == len(house.devices)


@pytest.mark.parametrize(
    ("sent", "line"),
    [
        ({"spot": "9", "model": "plimmet-rush@1"}, "a spot of this place"),
        ({"spot": "9" * 5000, "model": "plimmet-rush@1"}, "a spot of this place"),
        ({"spot": "x", "model": "plimmet-rush@1"}, "a spot of this place"),
        ({"spot": "0", "model": "no-such-thing@1"}, "a model that fits here"),
        ({"spot": "0", "model": "quorndel-lathe-four@1"}, "a model that fits here"),
    ],
)
def test_what_does_not_fit_is_not_chosen(
    writer: Client, house_id: str, sent: dict[str, str], line: str
) -> None:
    answer = writer.post(f"/house/{house_id}/choose/P14", {"base": "1", **sent})
    assert answer.status_code == 422
    assert line in answer.content.decode()
    assert door.house_row(house_id).number == 1


def test_a_device_that_has_joined_is_swapped_not_chosen_anew(writer: Client, house_id: str) -> None:
    change(writer, house_id, "D32", address="00124B001CDEF012")
    page = writer.get(f"/house/{house_id}/choose/P41").content.decode()
    assert "D32 has joined" in page
    assert 'name="model"' not in page
    model = house_now(house_id).devices["D32"].model
    answer = writer.post(f"/house/{house_id}/choose/P41", {"base": "2", "spot": "0", "model": model or ""})
    assert answer.status_code == 422
    assert b"a swap, which keeps what uses it" in answer.content


def test_a_place_that_wants_nothing_says_so_and_one_that_is_not_there_is_not_found(
    writer: Client, house_id: str
) -> None:
    assert b"Nothing is to be chosen at P81" in writer.get(f"/house/{house_id}/choose/P81").content
    assert writer.get(f"/house/{house_id}/choose/X1").status_code == 404


def test_the_caution_stands_before_the_choice(writer: Client, house_id: str) -> None:
    page = writer.get(f"/house/{house_id}/choose/B07").content.decode()
    assert page.index("isolate, lock off, prove dead") < page.index('<section class="spot"')


@pytest.mark.parametrize("name", ["demo/house.json", "demo/nec-house.json"])
def test_every_sheet_of_every_thing_answers_in_either_world(
    writer: Client, office: door.Account, tree: Path, name: str
) -> None:
    door.begin_house((tree / name).read_bytes(), by=office)
    house = house_now(door.houses()[0].id)
    pages = ["building", "networks", *(f"plans/{s}" for s in house.storeys)]
    for kind in sorted(KINDS.keys() - {"house", "mount", "gang"}):
        pages += [f"thing/{i}" for i in getattr(house, KINDS[kind].collection)]
    pages += [f"choose/{i}" for i in (*house.boxes, *house.places)]
    assert len(pages) > 200
    told = {page: writer.get(f"/house/{house.id}/{page}").status_code for page in pages}
    assert {page: status for page, status in told.items() if status != 200} == {}


def test_an_extension_unit_has_no_radio_and_says_so(writer: Client, office: door.Account, tree: Path) -> None:
    door.begin_house((tree / "demo/nec-house.json").read_bytes(), by=office)
    house = house_now(door.houses()[0].id)
    silent = [i for i, d in house.devices.items() if d.model and house.models[d.model].protocol is None]
    assert silent
    page = writer.get(f"/house/{house.id}/networks").content.decode()
    for device_id in silent:
        assert "has no radio" in page.split(f'<tr role="row" id="{device_id}">', 1)[1].split("</tr>", 1)[0]


def test_an_nec_house_is_spoken_to_in_its_own_words(writer: Client, office: door.Account, tree: Path) -> None:
    door.begin_house((tree / "demo/nec-house.json").read_bytes(), by=office)
    house_id = door.houses()[0].id
    for page in ("thing/B03", "choose/B03", "box/B03", "survey"):
        text = writer.get(f"/house/{house_id}/{page}").content.decode()
        assert "de-energize, lock out and tag, test for absence of voltage" in text
        assert "lock off" not in text
