"""Limits on what comes in: size of a body, of a form, of JSON; told before anything is read or kept."""

import json
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client, RequestFactory, override_settings
from django.urls import ResolverMatch

from tests.web.addresses import addresses
from secondfix.store import door
from secondfix.web.limits import DOCUMENT_BYTES, LIST_BYTES, MOST_BYTES, ORDINARY_BYTES, Limits

# ruff: noqa: I001 - the desk begins Django before the door is imported
JSON = "application/json"


class Unread:
    """A body that must not be read."""

    def read(self, *_: int) -> bytes:
        raise AssertionError("the body was read")

    readline = read


def answered(client: Client, method: str, url: str, length: int) -> Any:
    """The answer to a body that only says how long it is."""
    return client.generic(
        method, url, b"", content_type=JSON, **{"CONTENT_LENGTH": str(length), "wsgi.input": Unread()}
    )


def test_every_limit_has_an_address() -> None:
    assert set(MOST_BYTES) <= {a.name for a in addresses()}


@pytest.mark.parametrize("address", addresses(), ids=lambda a: a.name)
def test_a_larger_body_than_its_address_takes_is_refused_unread(
    writer: Client, house_id: str, address: Any
) -> None:
    most = MOST_BYTES.get(address.name, ORDINARY_BYTES)
    answer = answered(writer, "POST", address.url(house_id), most + 1)
    assert answer.status_code == 413
    assert door.house_row(house_id).number == 1


def test_a_body_of_the_largest_size_is_let_in() -> None:
    limits = Limits(lambda _: pytest.fail("not called"))
    for name, most in MOST_BYTES.items():
        request = RequestFactory().post("/", content_type=JSON, data=b"", CONTENT_LENGTH=str(most))
        request.resolver_match = ResolverMatch(lambda: None, (), {}, url_name=name)
        assert limits.process_view(request) is None


def test_a_call_with_too_large_a_body_is_told_as_calls_are(writer: Client, house_id: str) -> None:
    url = f"/api/houses/{house_id}/document?base=1"
    answer = answered(writer, "PUT", url, DOCUMENT_BYTES + 1)
    assert (answer.status_code, answer.json()["faults"][0]["where"]) == (413, "call")
    page = answered(writer, "POST", "/new", MOST_BYTES["new"] + 1)
    assert "at most" in page.content.decode()


def test_a_document_above_its_size_is_told_and_not_kept(
    writer: Client, house_id: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("secondfix.store.saving.LARGEST_FILE_BYTES", 1000)
    answer = writer.put(f"/api/houses/{house_id}/document?base=1", b" " * 1001, content_type=JSON)
    refused = answer.json()
    assert (answer.status_code, refused["kept"], refused["faults"][0]["stands"]) == (422, None, "1,001 bytes")
    assert len(door.edits(house_id)) == 1


@pytest.mark.parametrize("deep", [40, 100_000])
def test_json_that_is_too_deep_is_told(writer: Client, house_id: str, deep: int) -> None:
    body = b'{"text": ' + b"[" * deep + b"]" * deep + b"}"
    for method, url in (
        ("POST", "/api/code"),
        ("POST", "/api/houses"),
        ("PUT", f"/api/houses/{house_id}/document?base=1"),
    ):
        answer = writer.generic(method, url, body, content_type=JSON)
        assert (answer.status_code, answer.json()["faults"][0]["stands"]) == (422, "nested too deep")


def test_a_line_of_a_journal_that_is_too_deep_is_told(writer: Client, house_id: str) -> None:
    answer = writer.post(
        f"/api/houses/{house_id}/journal", b"[" * 100_000, content_type="application/x-ndjson"
    )
    assert (answer.status_code, len(answer.json()["faults"])) == (422, 1)


def test_a_form_of_too_many_fields_is_refused(writer: Client, house_id: str) -> None:
    with override_settings(DATA_UPLOAD_MAX_NUMBER_FIELDS=50):
        sent = {f"f{n}": "x" for n in range(60)}
        assert writer.post(f"/house/{house_id}/box/B01", sent).status_code == 400
    assert door.house_row(house_id).number == 1


def test_a_form_of_too_many_files_is_refused(writer: Client) -> None:
    sent = {f"file{n}": SimpleUploadedFile(f"{n}.json", b"{}") for n in range(11)}
    assert writer.post("/new", sent).status_code == 400
    assert door.houses() == ()


def test_numbers_beyond_the_tables_are_told_and_break_nothing(writer: Client, house_id: str) -> None:
    huge = 10**30
    for url in (f"/api/houses/{house_id}/edits/{huge}", f"/house/{house_id}/settle/{huge}"):
        assert (writer.get(url).status_code in {404, 422}, url) == (True, url)
    body = json.dumps({"number": huge})
    answer = writer.post(f"/api/houses/{house_id}/issues", body, content_type=JSON)
    assert answer.status_code == 422
    assert writer.post(f"/house/{house_id}/box/B01", {"base": str(huge)}).status_code in {404, 422}


def test_a_device_list_may_be_larger_than_a_document() -> None:
    assert LIST_BYTES > DOCUMENT_BYTES > ORDINARY_BYTES
