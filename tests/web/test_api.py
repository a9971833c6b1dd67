"""The calls: the same answers as the command line, saving with a base, the journal, faults in one form."""

import json
import re
from pathlib import Path
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.http import HttpResponse
from django.test import Client
from jsonschema import Draft202012Validator
from pydantic import BaseModel

from tests.cli.conftest import Call, call
from tests.web.addresses import calls
from secondfix.house import as_canonical_json, edited, Change, read_house, House
from secondfix.store import door
from secondfix.web.api.calls import api
from secondfix.web.api.shapes import asked, found, kept, site
from secondfix.web.api.shapes.base import Shape

# ruff: noqa: I001 - the desk begins Django before the door is imported
__all__ = ["call"]
JSON = "application/json"
EDIT = "01936b1e-7a40-7c21-8f3e-5d2c9a71b6a1"
ENTRY = {
    "format": 1, "id": "01936c02-1b40-7d13-9a55-08b1c2d3e4f5", "revision": "A", "kind": "function_tested",
    "subject": "gang:B06.1", "writer": "Osk", "at": "2031-05-06T09:40+02:00", "answered": {"L10": "changed"},
}  # fmt: skip


def put(client: Client, house_id: str, body: bytes, **query: Any) -> HttpResponse:
    words = "&".join(f"{k}={v}" for k, v in query.items())
    return client.put(f"/api/houses/{house_id}/document?{words}", body, content_type=JSON)  # type: ignore[return-value] # the test's answer is one


def changed(house_id: str, path: str, value: object) -> bytes:
    """The document as it stands, with one field changed."""
    house = read_house(door.open_house(house_id).text.encode(), where="store", models={})
    assert isinstance(house, House)
    made = edited(house, [Change(path, value)], models={})
    assert isinstance(made, House)
    return as_canonical_json(made).encode()


def line(house_id: str, **other: Any) -> str:
    return json.dumps({**ENTRY, "house": house_id, **other}) + "\n"


@pytest.fixture
def demo(tree: Path) -> Path:
    """The file of the house that the fixture began."""
    return tree / "demo/house.json"


VERBS: list[tuple[str, list[str], str, type[BaseModel]]] = [
    ("check", [], "check", found.Checked),
    ("reach", ["--numbers"], "reach?numbers=true", asked.Reached),
    ("names", [], "names", asked.Named),
    ("scenes", [], "scenes", asked.Scenes),
    ("scenes", ["--on", "2031-05-06", "--scene", "S2"], "scenes?on=2031-05-06&scene=S2", asked.Scenes),
    ("walk", [], "walk", asked.Walked),
    ("worksheet", [], "worksheet", asked.Worksheets),
    ("worksheet", ["--device", "D09"], "worksheet?device=D09", asked.Worksheets),
    ("select", ["--place", "B01"], "select?place=B01", asked.Selected),
    ("assumptions", [], "assumptions", found.Assumptions),
]


@pytest.mark.parametrize("how", VERBS, ids=[v[2] for v in VERBS])
def test_a_call_answers_what_the_command_line_prints(
    writer: Client, house_id: str, demo: Path, call: Call, how: tuple[str, list[str], str, type[BaseModel]]
) -> None:
    verb, options, url, shape = how
    answer = writer.get(f"/api/houses/{house_id}/{url}")
    assert answer.json() == json.loads(call(verb, demo, *options, "--json").out)
    shape.model_validate_json(answer.content, strict=True)


def test_asked_twice_the_answer_is_the_same_and_after_an_edit_another(writer: Client, house_id: str) -> None:
    first = writer.get(f"/api/houses/{house_id}/check").content
    assert writer.get(f"/api/houses/{house_id}/check").content == first
    put(writer, house_id, changed(house_id, "boxes.B01.note", "behind the coats"), base=1)
    put(writer, house_id, changed(house_id, "circuits.C1.name", "Lights, east"), base=2)
    assert writer.get(f"/api/houses/{house_id}").json()["number"] == 3


def test_the_register_and_one_house(writer: Client, house_id: str) -> None:
    listed = kept.Houses.model_validate_json(writer.get("/api/houses").content, strict=True)
    assert [h.id for h in listed.houses] == [house_id]
    assert writer.get(f"/api/houses/{house_id}").json() == writer.get("/api/houses").json()["houses"][0]
    door.put_away(house_id, by=door.accounts()[0])
    assert writer.get("/api/houses").json()["houses"] == []
    assert [h["id"] for h in writer.get("/api/houses?away=true").json()["houses"]] == [house_id]


def test_a_house_begins_from_its_document_and_never_as_a_twin(writer: Client, tree: Path) -> None:
    data = (tree / "demo/house-mended.json").read_bytes()
    first = writer.post("/api/houses", data, content_type=JSON)
    assert (first.status_code, first.json()["number"]) == (201, 1)
    again = writer.post("/api/houses", data, content_type=JSON)
    assert again.status_code == 409
    assert "save it as an edit" in again.json()["faults"][0]["expected"]
    assert len(door.houses()) == 1


def test_a_document_with_faults_begins_nothing_and_tells_them_all(writer: Client) -> None:
    answer = writer.post("/api/houses", b'{"format": 1, "name": 7}', content_type=JSON)
    refused = kept.Refused.model_validate_json(answer.content, strict=True)
    assert (answer.status_code, len(refused.faults) >= 3, door.houses()) == (422, True, ())


def test_faults_are_told_up_to_a_number_and_counted(writer: Client) -> None:
    boxes = {f"B{n}": {"room": "R1"} for n in range(1, 260)}
    answer = writer.post("/api/houses", json.dumps({"format": 1, "boxes": boxes}), content_type=JSON)
    faults = answer.json()["faults"]
    assert (answer.status_code, len(faults), faults[-1]["where"]) == (422, 201, "and more")


def test_a_document_is_read_with_its_base_and_saved_with_it(writer: Client, house_id: str) -> None:
    read = writer.get(f"/api/houses/{house_id}/document").json()
    read["document"]["name"] = "Larkholm, east wing"
    answer = put(writer, house_id, json.dumps(read["document"]).encode(), base=read["base"], words="east")
    assert kept.Saved.model_validate_json(answer.content, strict=True).number == 2
    edits = kept.Edits.model_validate_json(writer.get(f"/api/houses/{house_id}/edits").content, strict=True)
    assert [(e.number, e.words, e.by) for e in edits.edits] == [(2, "east", "Ilka"), (1, "begun", "Ilka")]
    earlier = writer.get(f"/api/houses/{house_id}/edits/1").json()["document"]["name"]
    assert earlier == "Larkholm, Upper Wendleby"


def test_a_save_sent_twice_is_answered_alike_and_saved_once(writer: Client, house_id: str) -> None:
    body = changed(house_id, "boxes.B01.note", "behind the coats")
    first = put(writer, house_id, body, base=1, edit_id=EDIT)
    assert put(writer, house_id, body, base=1, edit_id=EDIT).content == first.content
    assert door.house_row(house_id).number == 2
    other = put(writer, house_id, changed(house_id, "name", "Another"), base=2, edit_id=EDIT)
    assert (other.status_code, other.json()["faults"][0]["path"]) == (409, "edit_id")


def test_two_who_change_one_field_are_told_both_values_and_nothing_is_lost(
    writer: Client, house_id: str
) -> None:
    mine = changed(house_id, "boxes.B01.note", "mine")
    put(writer, house_id, changed(house_id, "boxes.B01.note", "theirs"), base=1)
    answer = put(writer, house_id, mine, base=1)
    clash = kept.Clash.model_validate_json(answer.content, strict=True)
    assert answer.status_code == 409
    assert [(c.path, c.theirs, c.mine) for c in clash.conflicts] == [("boxes.B01.note", "theirs", "mine")]
    assert clash.kept is not None
    assert door.edit_bytes(house_id, clash.kept) == mine


def test_a_save_with_faults_is_refused_and_set_aside(writer: Client, house_id: str) -> None:
    answer = put(writer, house_id, b"{", base=1)
    refused = kept.Refused.model_validate_json(answer.content, strict=True)
    assert (answer.status_code, refused.kept, refused.faults[0].where) == (422, 2, "document")
    assert writer.get(f"/api/houses/{house_id}/edits/2").status_code == 404  # it never stood


def test_an_issue_freezes_the_current_edit_alone(writer: Client, house_id: str) -> None:
    put(writer, house_id, changed(house_id, "boxes.B01.note", "behind the coats"), base=1)
    url = f"/api/houses/{house_id}/issues"
    old = writer.post(url, {"number": 1}, content_type=JSON)
    assert (old.status_code, old.json()["faults"][0]["stands"]) == (409, "edit 1; 2 is current")
    made = writer.post(url, {"number": 2, "words": "for fitting"}, content_type=JSON)
    assert (made.status_code, made.json()["letter"]) == (201, "A")
    out = kept.IssuedHouse.model_validate_json(writer.get(f"{url}/A").content, strict=True)
    assert (out.words, out.document["boxes"]["B01"]["note"]) == ("for fitting", "behind the coats")
    assert [i["letter"] for i in writer.get(url).json()["issues"]] == ["A"]


def test_a_journal_comes_in_and_goes_out_word_for_word(writer: Client, house_id: str) -> None:
    url, kind = f"/api/houses/{house_id}/journal", "application/x-ndjson"
    posted = writer.post(url, line(house_id), content_type=kind)
    assert posted.json() == {"faults": [], "taken": [ENTRY["id"]], "again": [], "id_taken": []}
    again = writer.post(url, line(house_id), content_type=kind)
    assert (again.status_code, again.json()["again"]) == (200, [ENTRY["id"]])
    assert writer.get(url).content.decode() == line(house_id)


def test_a_line_that_cannot_be_read_is_told_and_the_others_are_taken(writer: Client, house_id: str) -> None:
    answer = writer.post(
        f"/api/houses/{house_id}/journal", "nothing\n" + line(house_id), content_type="application/x-ndjson"
    )
    posted = kept.Posted.model_validate_json(answer.content, strict=True)
    assert (answer.status_code, len(posted.taken), posted.faults[0].path) == (422, 1, "line 1, column 1")


def test_an_entry_with_another_body_is_a_conflict(writer: Client, house_id: str) -> None:
    url, kind = f"/api/houses/{house_id}/journal", "application/x-ndjson"
    writer.post(url, line(house_id), content_type=kind)
    answer = writer.post(url, line(house_id, answered={}), content_type=kind)
    assert (answer.status_code, answer.json()["id_taken"]) == (409, [ENTRY["id"]])
    assert writer.get(url).content.decode() == line(house_id)


def test_as_built_and_function_test_answer_what_the_command_line_prints(
    writer: Client, house_id: str, demo: Path, tmp_path: Path, call: Call
) -> None:
    writer.post(f"/api/houses/{house_id}/journal", line(house_id), content_type="application/x-ndjson")
    (tmp_path / "visit.jsonl").write_text(line(house_id))
    verbs: dict[str, type[BaseModel]] = {"as-built": site.AsBuilt, "test": site.Tested}
    for verb, shape in verbs.items():
        answer = writer.get(f"/api/houses/{house_id}/{verb}")
        assert answer.json() == json.loads(call(verb, demo, tmp_path / "visit.jsonl", "--json").out)
        shape.model_validate_json(answer.content, strict=True)


def test_a_swap_answers_what_the_command_line_prints_and_writes_nothing(
    writer: Client, house_id: str, demo: Path, call: Call
) -> None:
    model = door.open_house(house_id).house.devices["D01"].model
    sent = {"failed": "D01", "units": [{"model": model}]}
    answer = writer.post(f"/api/houses/{house_id}/swap", sent, content_type=JSON)
    assert answer.json() == json.loads(call("swap", demo, "D01", str(model), "--json").out)
    site.Swapped.model_validate_json(answer.content, strict=True)
    assert door.journal_size(house_id) == 0


def test_a_swap_of_what_is_not_there_is_told(writer: Client, house_id: str) -> None:
    answer = writer.post(f"/api/houses/{house_id}/swap", {"failed": "D99"}, content_type=JSON)
    assert (answer.status_code, "D99" in answer.json()["faults"][0]["stands"]) == (422, True)


def test_who_fell_silent_and_what_a_new_controller_asks(
    writer: Client, house_id: str, demo: Path, call: Call
) -> None:
    heard = {"silent": ["D01.1"], "answers": ["D02"]}
    answer = writer.post(f"/api/houses/{house_id}/suspects", heard, content_type=JSON)
    assert [s.device for s in site.Suspected.model_validate_json(answer.content).suspects] == ["D01"]
    new = {"network": "N1", "kept": "nothing"}
    rebuilt = writer.post(f"/api/houses/{house_id}/controller", new, content_type=JSON)
    printed = call("swap", demo, "N1", "--controller", "nothing", "--json").out
    assert rebuilt.json() == json.loads(printed)
    site.Rebuilt.model_validate_json(rebuilt.content, strict=True)
    strange = writer.post(f"/api/houses/{house_id}/controller", {**new, "network": "N9"}, content_type=JSON)
    assert strange.status_code == 422


def test_a_device_list_is_held_against_the_house(writer: Client, house_id: str) -> None:
    mapping = {"format": 1, "columns": {"name": "Name"}}
    sent = {
        "device_list": SimpleUploadedFile("list.csv", b"Name,Age\nHall light,3\nAttic fan,4\n"),
        "mapping": SimpleUploadedFile("mapping.json", json.dumps(mapping).encode()),
    }
    answer = writer.post(f"/api/houses/{house_id}/reconcile", sent)
    held = site.Held.model_validate_json(answer.content, strict=True)
    assert (answer.status_code, held.rows) == (200, 2)
    bad = {**sent, "mapping": SimpleUploadedFile("mapping.json", b"{}")}
    bad["device_list"].seek(0)
    assert writer.post(f"/api/houses/{house_id}/reconcile", bad).status_code == 422


def test_a_code_is_read_and_its_secrets_stay_hidden(writer: Client, house_id: str) -> None:
    answer = writer.post("/api/code", {"text": "34970112332"}, content_type=JSON)
    read = asked.CodeRead.model_validate_json(answer.content, strict=True)
    assert (answer.status_code, read.kind, read.ok) == (200, "matter-manual", True)
    assert all(f.value is None for f in read.fields if f.secret)
    shown = writer.post("/api/code", {"text": "34970112332", "reveal": True}, content_type=JSON).json()
    assert all(f["value"] is not None for f in shown["fields"])
    assert writer.post("/api/code", {"text": "x", "kind": "tea"}, content_type=JSON).status_code == 422


@pytest.mark.parametrize(
    ("url", "at"),
    [
        ("select", "place"),
        ("select?place=B99", "place"),
        ("scenes?scene=S99", "scene"),
        ("scenes?on=yesterday", "on"),
        ("scenes?on=0001-01-01", "on"),
        ("worksheet?device=D99", "device"),
        ("reach?numbers=perhaps", "numbers"),
    ],
)
def test_a_call_that_does_not_fit_is_told_where(writer: Client, house_id: str, url: str, at: str) -> None:
    answer = writer.get(f"/api/houses/{house_id}/{url}")
    faults = kept.Faults.model_validate_json(answer.content, strict=True).faults
    assert (answer.status_code, [(f.where, f.path) for f in faults]) == (422, [("query", at)])


@pytest.mark.parametrize("body", [b"{", b'{"text": "1", "text": "2"}', b"[]", b"\xff", b"", b'{"text": NaN}'])
def test_a_body_that_is_no_object_of_ours_is_told(writer: Client, office: object, body: bytes) -> None:
    answer = writer.post("/api/code", body, content_type=JSON)
    assert (answer.status_code, bool(answer.json()["faults"])) == (422, True)


def test_what_is_not_there_is_told_in_the_same_form(writer: Client, house_id: str) -> None:
    for url in (f"/api/houses/{house_id[:-1]}0/check", "/api/houses/nowhere", "/api/nothing", "/api/code"):
        answer = writer.get(url)
        assert (answer.status_code, url) == (405 if url == "/api/code" else 404, url)
        assert set(answer.json()["faults"][0]) == {"where", "path", "stands", "expected"}


def test_every_answer_has_its_shape_in_the_description(writer: Client, house_id: str) -> None:
    described = writer.get("/api/openapi.json").json()
    assert described["openapi"].startswith("3.1")
    for one in (c for c in calls(house_id) if c.method == "get"):
        path = one.url.replace(house_id, "{house_id}").replace("/edits/1", "/edits/{number}")
        path = path.replace("/issues/A", "/issues/{letter}")
        query = "?place=B01" if path.endswith("select") else ""
        answer = writer.get(one.url + query)
        content = described["paths"][path]["get"]["responses"][str(answer.status_code)]["content"]
        if JSON in content:
            schema = {**content[JSON]["schema"], "components": described["components"]}
            Draft202012Validator(schema).validate(answer.json())


def test_a_house_that_is_described_is_a_house_that_is_taken(writer: Client, tree: Path) -> None:
    components = api.get_openapi_schema()["components"]
    schema = {"$ref": "#/components/schemas/HouseDocument", "components": components}
    Draft202012Validator(schema).validate(json.loads((tree / "demo/house.json").read_bytes()))


def test_no_two_shapes_share_a_name() -> None:
    """The library would put one in the place of the other and say nothing."""
    told: dict[str, Any] = {}
    for module in (asked, found, kept, site):
        for shape in (s for s in vars(module).values() if isinstance(s, type) and issubclass(s, BaseModel)):
            schema = shape.model_json_schema()
            parts = {shape.__name__: schema, **schema.pop("$defs", {})}
            for name, part in parts.items():
                assert told.setdefault(name, part) == part, name


def test_no_shape_hides_a_key(house_id: str) -> None:
    with pytest.raises(ValueError, match="extra"):
        found.Look.model_validate({"place": "B01", "field": "depth_mm", "words": "look", "more": 1})
    assert issubclass(found.Look, Shape)


def test_nothing_of_the_description_loads_from_elsewhere(writer: Client, house_id: str) -> None:
    assert writer.get("/api/docs").status_code == 404
    page = writer.get(f"/house/{house_id}/calls").content.decode()
    assert "//" not in page.replace("<!doctype", "")


def test_the_sheet_lists_every_call_for_this_house(reader: Client, house_id: str) -> None:
    page = reader.get(f"/house/{house_id}/calls").content.decode()
    for one in calls(house_id):
        path = one.url.replace("/edits/1", "/edits/{number}").replace("/issues/A", "/issues/{letter}")
        assert path.replace(f"/api/houses/{house_id}", "…") in page
    for way in re.findall(r'<a href="(/api/[^"]+)"', page):
        assert (reader.get(way).status_code, way) == (200, way)
