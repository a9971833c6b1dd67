"""The description of the calls held against the desk: random calls break nothing, answers are as described.

A writer of a fresh desk calls; the house is the demo's, or one that is not there. What is sent fits or not.
"""

import json
import os
from collections.abc import Iterator
from pathlib import Path

import pytest
import schemathesis
from django.core.wsgi import get_wsgi_application
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from schemathesis import APIOperation, Case, GenerationMode, checks

from tests.desk import PASSWORD, sqlite_desk
from tests.web.conftest import signed_in
from secondfix.store import door
from secondfix.web.api.calls import api
from secondfix.web.frame.asked import forget

# ruff: noqa: I001 - the desk begins Django before the door is imported
LABELS = [f"{m.upper()} {p}" for p, methods in api.get_openapi_schema()["paths"].items() for m in methods]
CHECKS = [
    checks.not_a_server_error,
    checks.status_code_conformance,
    checks.content_type_conformance,
    checks.response_schema_conformance,
    checks.response_headers_conformance,
]
WAYS = (GenerationMode.POSITIVE, GenerationMode.NEGATIVE)
TOKEN = "a" * 32
Cookies = dict[str, str]


@schemathesis.serializer("application/x-ndjson")
def lines(_: object, value: object) -> bytes:
    """A journal as text; what is no text as Python writes it."""
    return value if isinstance(value, bytes) else str(value).encode("utf-8", "replace")


@pytest.fixture(scope="module")
def described(
    laid_file: Path, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[object, Cookies, str]]:
    """The calls as the desk describes them, the cookies of a writer, and the id of the demo house."""
    tree = Path(__file__).parents[2]
    with sqlite_desk(laid_file, tmp_path_factory.mktemp("calls") / "desk.sqlite3"):
        forget()
        made = door.create_account(username="Ilka", password=PASSWORD, right=door.Right.WRITER, by=None)
        assert isinstance(made, door.Account)
        door.begin_house((tree / "demo/house.json").read_bytes(), by=made)
        cookies = {"sessionid": signed_in(made).cookies["sessionid"].value, "csrftoken": TOKEN}
        schema = schemathesis.openapi.from_dict(json.loads(json.dumps(api.get_openapi_schema())))
        schema.app = get_wsgi_application()
        yield schema, cookies, door.houses()[0].id
    forget()


def called(described: tuple[object, Cookies, str], label: str, *, most: int) -> None:
    """Call one operation with random values, and hold each answer against the description."""
    schema, cookies, house_id = described
    method, path = label.split(" ")
    operation: APIOperation = schema[path][method]  # type: ignore[index] # a schema is looked up so

    @settings(
        max_examples=most,
        deadline=None,
        derandomize=True,
        database=None,
        suppress_health_check=list(HealthCheck),
    )
    @given(case=st.one_of(*_cases(operation, house_id)))
    def calls_it(case: Case) -> None:
        answer = case.call(headers={"X-CSRFToken": TOKEN, "Host": "localhost"}, cookies=cookies)
        assert answer.status_code not in {401, 403}  # a writer called
        case.validate_response(answer, checks=CHECKS)

    calls_it()


def _cases(operation: APIOperation, house_id: str) -> Iterator[st.SearchStrategy[Case]]:
    for way in WAYS:
        if "{house_id}" in operation.path:
            yield operation.as_strategy(generation_mode=way, path_parameters={"house_id": house_id})
        yield operation.as_strategy(generation_mode=way)


@pytest.mark.parametrize("label", LABELS)
def test_a_call_answers_as_it_is_described(described: tuple[object, Cookies, str], label: str) -> None:
    called(described, label, most=10)


@pytest.mark.deep
@pytest.mark.parametrize("label", LABELS)
def test_many_calls_answer_as_they_are_described(described: tuple[object, Cookies, str], label: str) -> None:
    called(described, label, most=int(os.environ.get("CALLS", "300")))
