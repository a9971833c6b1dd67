"""Nothing secret in the logs: codes, passwords and documents pass through the desk and leave no line."""

import logging
from collections.abc import Iterator

import pytest
from django.conf import settings
from django.test import Client

from tests.desk import PASSWORD
from secondfix.store import door

# ruff: noqa: I001 - the desk begins Django before the door is imported
CODE = "34970112332"
SECRETS = (CODE, "20202021", PASSWORD, "wrong grey herons", "behind the coats", "Marten Holloway")


@pytest.fixture
def everything(caplog: pytest.LogCaptureFixture) -> Iterator[pytest.LogCaptureFixture]:
    """Every line of every log, the finest too, but for those that the desk itself keeps from it."""
    names = set(logging.root.manager.loggerDict) - set(settings.LOGGING["loggers"])
    loggers = [logging.getLogger(), *map(logging.getLogger, names)]
    before = [(log, log.level, log.propagate, log.disabled) for log in loggers]
    for log in loggers:
        log.setLevel(logging.DEBUG)
        log.propagate, log.disabled = True, False
    caplog.set_level(logging.DEBUG)
    yield caplog
    for log, level, propagates, disabled in before:
        log.setLevel(level)
        log.propagate, log.disabled = propagates, disabled


def test_a_code_a_password_and_a_document_leave_no_line(
    stranger: Client, writer: Client, house_id: str, everything: pytest.LogCaptureFixture
) -> None:
    stranger.post("/sign-in", {"username": "Ilka", "password": "wrong grey herons"})
    stranger.post("/sign-in", {"username": "Ilka", "password": PASSWORD})
    writer.post("/password", {"old": "wrong grey herons", "password": "short"})
    writer.post("/api/code", {"text": CODE, "reveal": True}, content_type="application/json")
    writer.post("/api/code", {"text": [CODE], "kind": CODE}, content_type="application/json")
    writer.post("/api/code", f'{{"text": "{CODE}"', content_type="application/json")
    writer.post("/api/code?text=" + CODE, {}, content_type="application/json")
    writer.get(f"/api/nothing?code={CODE}")
    assert door.keep_code(house_id, "K07", CODE, by=door.accounts()[0]) is None
    assert door.show_code(house_id, "K07", by=door.accounts()[0]) == CODE
    writer.post(f"/house/{house_id}/keys", {"reference": "K08", "code": CODE, "base": "1"})
    writer.post(f"/house/{house_id}/keys", {"reference": "K07", "act": "show"})
    writer.put(
        f"/api/houses/{house_id}/document?base=1",
        '{"note": "behind the coats"}',
        content_type="application/json",
    )
    writer.post(f"/house/{house_id}/cover", {"customer": "Marten Holloway"})
    text = "\n".join(logging.Formatter("%(name)s %(message)s").format(r) for r in everything.records)
    assert "django.request" in text  # the desk does log: what went wrong, and where
    assert [s for s in SECRETS if s in text] == []


def test_a_fault_of_the_desk_is_logged_without_what_was_sent(
    writer: Client, house_id: str, everything: pytest.LogCaptureFixture, monkeypatch: pytest.MonkeyPatch
) -> None:
    def breaks(*_: object, **__: object) -> None:
        raise RuntimeError("a fault of ours")

    monkeypatch.setattr("secondfix.web.api.asking.views.code", breaks)
    writer.raise_request_exception = False
    answer = writer.post("/api/code", {"text": CODE}, content_type="application/json")
    assert (answer.status_code, answer.json()["faults"][0]["stands"]) == (500, "a fault of the desk")
    text = "\n".join(logging.Formatter("%(name)s %(message)s").format(r) for r in everything.records)
    assert "a fault of ours" in text
    assert CODE not in text + answer.content.decode()
