"""A swap on the desk: its outcome, losses, worksheet and entries; which device it is; a controller."""

import json
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from threading import Event, Thread
from time import monotonic, sleep
from urllib.parse import quote

import pytest
from django.test import Client

from secondfix.house import Fault
from secondfix.store import door
from secondfix.web.frame import jobs
from secondfix.web.frame.jobs import Progress
from secondfix.web.frame.site import on_site
from secondfix.web.maintaining import asking
from tests.desk import PASSWORD
from tests.web.conftest import signed_in


@pytest.fixture(autouse=True)
def no_jobs() -> Iterator[None]:
    jobs._jobs.clear()
    yield
    jobs._jobs.clear()


@pytest.fixture(autouse=True)
def patient(monkeypatch: pytest.MonkeyPatch) -> None:
    """Wait for every answer, however busy the machine."""
    monkeypatch.setattr(asking, "SOON_S", 120)


@pytest.fixture
def journals(tree: Path, office: door.Account, house_id: str) -> str:
    """The demo house with one journal of its first years; its id."""
    data = (tree / "demo/maintenance/journal-farrow.jsonl").read_bytes()
    assert not door.post_entries(house_id, data, by=office).faults
    return house_id


def page(client: Client, house_id: str, query: str = "", *, status: int = 200) -> str:
    answer = client.get(f"/house/{house_id}/swap?{query}")
    assert answer.status_code == status
    return answer.content.decode()


KEPT = "failed=D08&with=ostrabeck-gull-four@2"
LOSES = "failed=D11&with=plimmet-osier-two@1"
REFUSED = "failed=D08&with=quorndel-lathe-four@1"


def test_the_sheet_asks_for_the_device_first(reader: Client, house_id: str) -> None:
    told = page(reader, house_id)
    assert "Failed device" in told
    assert 'class="outcome' not in told


def test_the_outcome_leads_and_cautions_stand_before_the_steps(reader: Client, journals: str) -> None:
    told = page(reader, journals, KEPT)
    assert told.index('class="outcome"') < told.index("Before hands go into the box")
    assert told.index("Before hands go into the box") < told.index('class="swap-steps"')
    assert "rove dead" in told
    assert "write its entries" not in told  # a reader writes nothing


def test_a_refused_swap_has_reasons_and_no_steps(reader: Client, journals: str) -> None:
    told = page(reader, journals, REFUSED)
    assert "What stands against it" in told
    assert "Leave the plate on" in told
    assert 'class="swap-steps"' not in told


def test_losses_are_accepted_by_a_name_in_the_journal(writer: Client, journals: str) -> None:
    query = LOSES
    sent = {"act": "accept", "name": "M. Ostler"}
    answer = writer.post(f"/house/{journals}/swap?{query}", sent, follow=True)
    assert "Accepted: " in answer.content.decode()
    signed = [json.loads(line) for line in door.journal_bytes(journals).splitlines()][-1]
    assert (signed["kind"], signed["subject"], signed["name"]) == ("signed", "device:D11", "M. Ostler")
    assert signed["paper"].startswith("losses of the swap of D11: ")


def test_a_swap_that_is_done_stands_in_the_journal(writer: Client, journals: str) -> None:
    query = f"{KEPT}&reason=dead+since+the+storm"
    writer.post(f"/house/{journals}/swap?{query}", {"act": "done"})
    built = on_site(journals).record.built
    assert "D08" not in built.house.devices
    assert any("Dead since the storm." in n.what for n in on_site(journals).lines)


def test_a_refused_swap_is_not_written(writer: Client, journals: str) -> None:
    before = door.journal_bytes(journals)
    query = REFUSED
    assert writer.post(f"/house/{journals}/swap?{query}", {"act": "done"}).status_code == 422
    assert door.journal_bytes(journals) == before


def test_the_worksheet_opens_as_a_pdf_and_entries_go_out_as_lines(reader: Client, journals: str) -> None:
    query = KEPT
    paper = reader.get(f"/house/{journals}/swap.pdf?{query}")
    assert (paper["Content-Type"], paper.content[:5]) == ("application/pdf", b"%PDF-")
    lines = reader.get(f"/house/{journals}/swap.jsonl?{query}").content.splitlines()
    kinds = [json.loads(line)["kind"] for line in lines]
    assert "fitted" in kinds
    assert "function_tested" not in kinds


def test_nothing_chosen_leads_back_to_the_sheet(reader: Client, house_id: str) -> None:
    assert reader.get(f"/house/{house_id}/swap.pdf")["Location"] == f"/house/{house_id}/swap"


def test_faults_of_the_question_are_told(reader: Client, house_id: str) -> None:
    told = page(reader, house_id, "failed=D99&with=nobody-nothing@1", status=422)
    assert "a device, wall box, gang or place of this house" in told
    assert "nobody-nothing@1" in page(reader, house_id, "failed=D08&with=nobody-nothing@1", status=422)


def test_what_fell_silent_leads_to_the_device(reader: Client, journals: str) -> None:
    told = page(reader, journals, "silent=D08.1,B08.2&answers=B01.1")
    assert 'href="?failed=D08"' in told
    assert "it is this one" in told
    assert "names nothing in this house" in page(reader, journals, "silent=nowhere")


def test_a_replaced_controller_is_told_what_is_done_again(reader: Client, house_id: str) -> None:
    told = page(reader, house_id, "network=N2&kept=nothing")
    assert "Join again, in this order" in told
    assert page(reader, house_id, "network=N2&kept=half", status=422)
    assert page(reader, house_id, "network=N9&kept=nothing", status=422)


@pytest.fixture
def slow(monkeypatch: pytest.MonkeyPatch) -> Event:
    """An answer that is tried model by model: the second not before the event is set."""
    go = Event()

    def work(_site: object, _question: object, progress: Progress) -> list[Fault]:
        progress("model 1 of 2, Lathe")
        go.wait(20)
        progress("model 2 of 2, Cairn")
        return [Fault("swap", "", "late", "an answer")]

    monkeypatch.setattr(asking, "SOON_S", 0.01)
    monkeypatch.setattr(asking, "_answer", work)
    return go


def watched(told: str) -> str:
    """The address at which the sheet asks how far it is."""
    return unescape(told.split('id="waiting" hx-get="')[1].partition('"')[0])


def test_a_slow_answer_is_worked_out_aside(reader: Client, journals: str, slow: Event) -> None:
    told = page(reader, journals, KEPT)
    assert "being worked out" in told
    assert 'hx-trigger="every 1s"' in told
    waiting = reader.get(watched(told), headers={"HX-Request": "true"})
    assert waiting.status_code == 200
    assert waiting.content.decode().startswith('<p id="waiting"')
    slow.set()
    assert jobs.wait(jobs.jobs_of(journals)[0], most_s=20)
    done = reader.get(watched(told), headers={"HX-Request": "true"})
    assert (done.status_code, done["HX-Redirect"]) == (
        204,
        f"/house/{journals}/swap?{quote(KEPT, safe='=&')}",
    )
    assert "late" in page(reader, journals, KEPT, status=422)


def test_how_far_it_is_stands_on_the_sheet(reader: Client, journals: str, slow: Event) -> None:
    told = page(reader, journals, KEPT)
    job = jobs.jobs_of(journals)[0]
    until = monotonic() + 20
    while not job.at:
        assert monotonic() < until
        sleep(0.005)
    assert "model 1 of 2, Lathe" in reader.get(watched(told), headers={"HX-Request": "true"}).content.decode()
    slow.set()


def test_a_slow_answer_is_cancelled_between_two_models_and_asked_again(
    reader: Client, journals: str, slow: Event, monkeypatch: pytest.MonkeyPatch
) -> None:
    told = page(reader, journals, KEPT)
    job = jobs.jobs_of(journals)[0]
    cancelled = Thread(target=lambda: reader.post(watched(told)), daemon=True)
    cancelled.start()
    assert job.stop.wait(20)
    slow.set()
    cancelled.join(20)
    assert jobs.wait(job, most_s=20)
    assert job.state is jobs.State.CANCELLED
    told = page(reader, journals, KEPT)
    assert "It was cancelled" in told
    assert "hx-get" not in told.partition('id="waits"')[2]
    monkeypatch.setattr(asking, "SOON_S", 20)
    assert "late" in page(reader, journals, f"{KEPT}&again=1", status=422)


def test_another_reader_cancels_nothing(
    reader: Client, office: door.Account, journals: str, slow: Event
) -> None:
    told = page(reader, journals, KEPT)
    account = door.create_account(username="Bex", password=PASSWORD, right=door.Right.READER, by=office)
    assert isinstance(account, door.Account)
    signed_in(account).post(watched(told))
    assert not jobs.jobs_of(journals)[0].stop.is_set()
    slow.set()


def test_a_desk_that_was_started_again_leads_back_to_the_question(reader: Client, journals: str) -> None:
    lost = f"/house/{journals}/swap/work/{'0' * 32}?{KEPT}"
    told = reader.get(lost, headers={"HX-Request": "true"})
    assert told["HX-Redirect"] == f"/house/{journals}/swap?{quote(KEPT, safe='=&')}"
    assert reader.post(lost)["Location"] == f"/house/{journals}/swap?{quote(KEPT, safe='=&')}"


def test_an_answer_that_failed_says_so(
    reader: Client, journals: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object) -> list[Fault]:
        raise RuntimeError("a slip of the test")

    monkeypatch.setattr(asking, "_answer", broken)
    told = page(reader, journals, KEPT)
    assert "a fault of ours" in told
    assert "again=1" in told
