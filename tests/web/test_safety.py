"""The desk under attack: markup in every text, forged forms, other hosts, sessions, headers, paths."""

import json
import re
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest
from django.conf import settings
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client

from tests.desk import PASSWORD
from tests.web.addresses import addresses
from secondfix.store import door
from secondfix.web.access import RULES, Who

# ruff: noqa: I001 - the desk begins Django before the door is imported
EVIL = "\"'></script><img src=x onerror=alert(1)><svg/onload=alert(1)>{{7*7}}"
SHORT = "'\"><img src=x onerror=a()>"
_TEXTS = {"name": EVIL, "note": EVIL, "label": EVIL, "words": EVIL, "feeder": SHORT, "entry_name": SHORT}
PAGES = [a for a in addresses() if not a.name.startswith("api:") and a.name != "authority"]


class Read(HTMLParser):
    """What a browser would run or fetch in a page."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.harm: list[str] = []
        self.forms = 0
        self.tokens = 0

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        if tag == "script" and "src" not in given and given.get("type") != "application/json":
            self.harm.append("a script in the page")
        if tag in {"iframe", "object", "embed", "base"} or (tag == "img" and given.get("src") == "x"):
            self.harm.append(tag)
        for name, value in attrs:
            if name.startswith("on") or name in {"style", "srcdoc"}:
                self.harm.append(name)
            if (value or "").strip().lower().startswith(("javascript:", "data:", "//")):
                self.harm.append(f"{name}={value}")
        self.forms += tag == "form" and (given.get("method") or "").lower() == "post"
        self.tokens += tag == "input" and given.get("name") == "csrfmiddlewaretoken"


def harm_in(page: str) -> list[str]:
    reader = Read()
    reader.feed(page)
    return reader.harm


def hostile(plain: Any) -> Any:
    """The document with markup in every text that a person may choose."""
    if isinstance(plain, dict):
        return {
            k: _TEXTS[k][: 80 if k == "name" else 200]
            if k in _TEXTS and isinstance(v, str)
            else {**v, "value": EVIL[:80]}
            if k == "label" and isinstance(v, dict)
            else hostile(v)
            for k, v in plain.items()
        }
    return [hostile(v) for v in plain] if isinstance(plain, list) else plain


@pytest.fixture
def evil_house(office: door.Account, tree: Path) -> str:
    """The demo house with markup for texts, an entry and a cover of the same kind, and one issue."""
    document = json.loads((tree / "demo/house.json").read_bytes())
    models = document.pop("models", {})
    data = json.dumps({**hostile(document), "models": models}).encode()
    saved = door.begin_house(data, by=office, words=EVIL)
    assert isinstance(saved, door.Saved), saved
    house_id = door.houses()[0].id
    entries = [
        ("snag_raised", "box:B01", {"words": EVIL}),
        ("named", "entry:D01.1", {"name": SHORT}),
        ("signed", f"house:{house_id}", {"name": SHORT, "paper": SHORT}),
        ("function_tested", "gang:B06.1", {"answered": {}, "also_answered": EVIL}),
        ("measured", "network:N1", {"table": [{"link": "link:D01>D02", "lqi": 12}], "note": EVIL}),
    ]
    lines = [
        {"format": 1, "id": f"01936c02-1b40-7d13-9a55-08b1c2d3e4f{n}", "house": house_id, "revision": "A",
         "kind": kind, "subject": subject, "writer": SHORT, "at": "2031-05-06T09:40+02:00", **own}
        for n, (kind, subject, own) in enumerate(entries)
    ]  # fmt: skip
    posted = door.post_entries(house_id, "\n".join(map(json.dumps, lines)).encode(), by=office)
    assert posted.faults == ()
    door.write_cover(house_id, door.Cover(EVIL, EVIL, EVIL, EVIL), by=office)
    return house_id


@pytest.fixture
def evil_writer(office: door.Account) -> Client:
    """The browser of a writer whose name is markup."""
    account = door.create_account(username=SHORT, password=PASSWORD, right=door.Right.WRITER, by=office)
    assert isinstance(account, door.Account)
    client = Client(SERVER_NAME="localhost")
    client.force_login(account, backend="django.contrib.auth.backends.ModelBackend")
    return client


def test_the_attack_would_be_seen() -> None:
    assert len(harm_in(f"<p>{EVIL}</p>")) >= 3
    assert harm_in(f'<p title="{SHORT}">') != []


def test_markup_in_any_text_of_a_house_stays_text_on_every_page(evil_writer: Client, evil_house: str) -> None:
    evil_writer.post(f"/house/{evil_house}/history", {"base": "1", "words": EVIL})
    seen = 0
    for address in PAGES:
        answer = evil_writer.get(address.url(evil_house))
        if answer.status_code == 200 and answer["Content-Type"].startswith(("text/html", "image/svg")):
            page = answer.content.decode()
            assert (harm_in(page), address.name) == ([], address.name)
            seen += "&lt;img src=x" in page
    assert seen > 12  # the markup does stand on the pages, as text
    for query in (f"/?find={SHORT}", f"/sign-in?next={SHORT}", f"/house/{evil_house}/checks?place={SHORT}"):
        assert harm_in(evil_writer.get(query).content.decode()) == []


def test_markup_in_what_was_typed_comes_back_as_text(evil_writer: Client, evil_house: str) -> None:
    for url, sent in (
        ("/new", {"name": EVIL * 3}),
        ("/people", {"username": EVIL * 2, "password": "x", "right": EVIL}),
        (f"/house/{evil_house}/box/B01", {"base": "1", "purpose": EVIL, "known": EVIL}),
        (f"/house/{evil_house}/keys", {"reference": EVIL, "code": EVIL}),
        (f"/house/{evil_house}/assumptions", {"base": "1", "name": EVIL, "value": EVIL}),
    ):
        assert (harm_in(evil_writer.post(url, sent).content.decode()), url) == ([], url)
    file = SimpleUploadedFile(f"{SHORT}.csv", EVIL.encode())
    answer = evil_writer.post(f"/house/{evil_house}/schedule/back", {"base": "1", "file": file})
    assert harm_in(answer.content.decode()) == []


def test_every_form_that_sends_carries_a_token(writer: Client, house_id: str) -> None:
    for address in PAGES:
        answer = writer.get(address.url(house_id))
        if answer.status_code == 200 and answer["Content-Type"].startswith("text/html"):
            reader = Read()
            reader.feed(answer.content.decode())
            assert (reader.tokens >= reader.forms, address.name) == (True, address.name)


def test_a_form_without_a_token_does_nothing_anywhere(office: door.Account, house_id: str) -> None:
    client = Client(SERVER_NAME="localhost", enforce_csrf_checks=True)
    client.force_login(office, backend="django.contrib.auth.backends.ModelBackend")
    for address in PAGES:
        answer = client.post(address.url(house_id), {"base": "1", "name": "Marsh End 3", "act": "away"})
        assert (answer.status_code, address.name) == (403, address.name)
    assert (door.house_row(house_id).number, len(door.houses())) == (1, 1)


@pytest.mark.parametrize(
    "away",
    [
        "https://elsewhere.invalid/", "//elsewhere.invalid", "/\\elsewhere.invalid", "\\\\elsewhere.invalid",
        "http:elsewhere.invalid", "javascript:alert(1)", "\thttps://elsewhere.invalid",
        "///elsewhere.invalid", "https://localhost@elsewhere.invalid/", "/%0d%0aSet-Cookie:a=b\r\nX: y",
    ],
)  # fmt: skip
def test_nobody_is_led_away(stranger: Client, office: door.Account, away: str) -> None:
    for url, sent in (
        ("/ink", {"ink": "night", "back": away}),
        ("/sign-in", {"username": "Ilka", "password": PASSWORD, "back": away}),
    ):
        answer = stranger.post(url, sent)
        assert answer["Location"].startswith("/")
        assert not answer["Location"].startswith(("//", "/\\"))
        assert "\n" not in answer["Location"]


def test_every_page_says_what_a_browser_may_do_with_it(writer: Client, house_id: str) -> None:
    for address in addresses():
        answer = writer.get(address.url(house_id))
        rules = answer["Content-Security-Policy"]
        assert "unsafe" not in rules
        assert "frame-ancestors 'none'" in rules
        assert "default-src 'none'" in rules
        assert answer["X-Frame-Options"] == "DENY"
        assert answer["X-Content-Type-Options"] == "nosniff"
        assert answer["Referrer-Policy"] == "same-origin"
        assert answer["Cross-Origin-Opener-Policy"] == "same-origin"
        assert ("no-store" in answer["Cache-Control"], address.name) == (True, address.name)


def test_another_host_is_answered_with_nothing_of_a_house(writer: Client, house_id: str) -> None:
    for header in ({"HTTP_HOST": "elsewhere.invalid"}, {"HTTP_HOST": "localhost:80@elsewhere.invalid"}):
        answer = writer.get(f"/house/{house_id}/", **header)
        assert answer.status_code == 400
        assert b"Larkholm" not in answer.content
    forwarded = writer.get("/sign-in", HTTP_X_FORWARDED_HOST="elsewhere.invalid")
    assert b"elsewhere" not in forwarded.content


def test_signing_in_gives_another_session_and_leaving_ends_it(stranger: Client, office: door.Account) -> None:
    session = stranger.session  # as an attacker would have laid it
    session["laid"] = "yes"
    session.save()
    before = stranger.cookies["sessionid"].value
    stranger.post("/sign-in", {"username": "Ilka", "password": PASSWORD})
    cookie = stranger.cookies["sessionid"]
    assert cookie.value != before
    assert (bool(cookie["httponly"]), cookie["samesite"]) == (True, "Lax")
    held = Client(SERVER_NAME="localhost")
    held.cookies["sessionid"] = cookie.value
    assert held.get("/").status_code == 200
    stranger.post("/leave")
    assert held.get("/").status_code == 302


def test_another_password_and_a_closed_account_end_every_other_session(
    writer: Client, reader: Client, office: door.Account
) -> None:
    elsewhere = Client(SERVER_NAME="localhost")
    elsewhere.force_login(office, backend="django.contrib.auth.backends.ModelBackend")
    writer.post("/password", {"old": PASSWORD, "password": "seven slow barges"})
    assert (writer.get("/").status_code, elsewhere.get("/").status_code) == (200, 302)
    door.change_account(username="Osk", by=office, active=False)
    assert reader.get("/").status_code == 302


def test_a_right_taken_away_is_gone_with_the_next_request(reader: Client, office: door.Account) -> None:
    door.change_account(username="Osk", by=office, right=door.Right.WRITER)
    assert reader.get("/new").status_code == 200
    door.change_account(username="Osk", by=office, right=door.Right.READER)
    assert reader.get("/new").status_code == 403


@pytest.mark.parametrize(
    "path",
    [
        "../../store/settings.py", "secondfix/../../../store/settings.py", "%2e%2e/%2e%2e/store/settings.py",
        "secondfix/%2e%2e/%2e%2e/%2e%2e/urls.py", "//etc/passwd", "..%5c..%5cstore%5csettings.py",
        "secondfix/ink.css%00.py",
    ],
)  # fmt: skip
def test_no_path_leads_out_of_the_static_files(stranger: Client, path: str) -> None:
    answer = stranger.get(f"/static/{path}")
    assert answer.status_code in {302, 400, 404}


def test_names_in_an_address_never_reach_a_header_or_a_file(writer: Client, house_id: str) -> None:
    evil = "x%0d%0aSet-Cookie:%20a=b"
    for address in (a for a in PAGES if set(a.arguments) - {"house_id", "number", "kept"}):
        url = address.url(house_id)
        last = re.sub(r"[^/]+$", "", url)
        for name in (evil, "%22;x=%22", "..%2f..%2fetc%2fpasswd", "%00"):
            answer = writer.get(last + name)
            assert (answer.status_code < 500, url) == (True, url)
            assert "a=b" not in str(answer.headers)


@pytest.mark.parametrize(
    "name", ['a"b.csv', "a\r\nX-Evil: 1.csv", "../../etc/passwd", "x" * 300, "\u202egpj.csv", ""]
)
def test_a_file_may_be_called_anything(writer: Client, house_id: str, name: str) -> None:
    file = SimpleUploadedFile(name or "x", b"Gang,Purpose\n")
    file.name = name or None  # the library would clean it, a browser need not
    answer = writer.post(f"/house/{house_id}/schedule/back", {"base": "1", "file": file})
    assert answer.status_code < 500
    assert "X-Evil" not in str(answer.headers)


def test_strangers_learn_nothing_of_which_houses_and_accounts_there_are(
    stranger: Client, office: door.Account, house_id: str
) -> None:
    nowhere = f"{house_id[:-4]}0000"
    for address in (a for a in PAGES if RULES[a.name].look is not Who.ANYBODY and "house_id" in a.arguments):
        assert (
            stranger.get(address.url(house_id)).status_code == stranger.get(address.url(nowhere)).status_code
        )
    wrong = [
        stranger.post("/sign-in", {"username": name, "password": "not this one"}).content.decode()
        for name in ("Ilka", "Nobody")
    ]
    token = re.compile(r'value="[A-Za-z0-9]{64}"|X-CSRFToken": "[^"]*"|&quot;[A-Za-z0-9]{64}&quot;')
    assert token.sub("", wrong[0]) == token.sub("", wrong[1])


def test_debugging_is_off_and_sessions_last_no_longer_than_said() -> None:
    assert settings.DEBUG is False
    assert settings.SESSION_COOKIE_AGE <= 14 * 24 * 3600
    assert settings.SESSION_COOKIE_HTTPONLY
