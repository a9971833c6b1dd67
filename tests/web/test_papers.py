"""Papers on the desk: chosen, printed aside, opened; drawings; work that fails is told."""

import io
import json
import zipfile
from collections.abc import Iterator
from pathlib import Path
from time import monotonic, sleep

import pytest
from django.test import Client

from secondfix.papers import page_count
from secondfix.store import door
from secondfix.web.frame import jobs
from secondfix.web.frame.jobs import Job, Progress, State


@pytest.fixture(autouse=True)
def no_jobs() -> Iterator[None]:
    jobs._jobs.clear()
    yield
    jobs._jobs.clear()


def printed(client: Client, house_id: str, **sent: str) -> Job:
    """The job of this order, once it has ended."""
    answer = client.post(f"/house/{house_id}/papers", sent)
    assert answer.status_code == 302
    job = jobs.find(answer["Location"].rpartition("/")[2], house_id=house_id)
    assert job is not None
    return ended(job)


def ended(job: Job) -> Job:
    until = monotonic() + 120
    while not job.ended:
        assert monotonic() < until
        sleep(0.01)
    return job


def bare(office: door.Account, *, name: str = "Marrow Croft 4") -> str:
    """A house of one box, quickly printed; its id."""
    house_id = "0190b7c4-5e21-7a3d-9c40-000000000001"
    house = {
        "format": 1,
        "id": house_id,
        "name": name,
        "rooms": {"R1": {"name": "Porch"}},
        "boxes": {"B1": {"room": "R1", "mounts": {"1": {}}, "gangs": {"1": {}}}},
    }
    assert isinstance(door.begin_house(json.dumps(house).encode(), by=office), door.Saved)
    return house_id


def test_a_paper_is_made_aside_and_opens_in_the_browser(reader: Client, office: door.Account) -> None:
    house_id = bare(office)
    job = printed(reader, house_id, what="findings", issue="C", drawn_by="Osk", on="2031-05-06")
    page = reader.get(f"/house/{house_id}/papers/{job.id}").content.decode()
    assert "findings.pdf" in page
    assert "hx-trigger" not in page  # it has ended: nothing asks again
    paper = reader.get(f"/house/{house_id}/papers/{job.id}/findings.pdf")
    assert paper.content[:5] == b"%PDF-"
    assert paper["Content-Disposition"] == 'inline; filename="findings.pdf"'
    assert "Findings" in reader.get(f"/house/{house_id}/papers").content.decode()


def test_the_pages_of_a_paper_are_looked_at_one_by_one(reader: Client, office: door.Account) -> None:
    house_id = bare(office)
    job = printed(reader, house_id, what="findings", issue="C", drawn_by="Osk", on="2031-05-06")
    there = f"/house/{house_id}/papers/{job.id}/findings.pdf"
    page = reader.get(f"{there}/1").content.decode()
    pages = page_count(reader.get(there).content)
    assert f"page 1 of {pages}" in page
    picture = reader.get(f"{there}/1.png")
    assert picture["Content-Type"] == "image/png"
    assert picture.content[:8] == b"\x89PNG\r\n\x1a\n"
    for beyond in (f"{there}/0", f"{there}/{pages + 1}", f"{there}/{pages + 1}.png", f"{there[:-4]}.zip/1"):
        assert reader.get(beyond).status_code == 404


def test_all_of_them_come_in_one_file_too(reader: Client, office: door.Account) -> None:
    house_id = bare(office)
    job = printed(reader, house_id, what="all", as_built="1")
    answer = reader.get(f"/house/{house_id}/papers/{job.id}/all.zip")
    names = set(zipfile.ZipFile(io.BytesIO(answer.content)).namelist())
    assert names == {"handover-pack.pdf", "findings.pdf", "worksheets.pdf", "elevations-R1.svg"}


def test_texts_that_no_font_draws_are_told_in_words(reader: Client, office: door.Account) -> None:
    house_id = bare(office, name="Haus \U00012000")
    job = printed(reader, house_id, what="findings")
    assert job.state is State.DONE
    page = reader.get(f"/house/{house_id}/papers/{job.id}").content.decode()
    assert "no font at hand draws these texts" in page
    assert reader.get(f"/house/{house_id}/papers/{job.id}/findings.pdf").status_code == 404


@pytest.mark.parametrize(
    ("field", "value", "says"),
    [
        ("drawn_by", "line\nline", "1 to 40 on one line"),
        ("issue", "x" * 41, "41 characters"),
        ("on", "yesterday", "a day such as"),
        ("size", "a0", "one of a4"),
        ("what", "everything", "one of pack"),
    ],
)
def test_a_field_that_cannot_be_is_told_and_nothing_begun(
    reader: Client, office: door.Account, field: str, value: str, says: str
) -> None:
    house_id = bare(office)
    answer = reader.post(f"/house/{house_id}/papers", {"what": "findings", field: value})
    assert answer.status_code == 422
    assert says in answer.content.decode()
    assert jobs.jobs_of(house_id) == ()


def held(house_id: str, by: str) -> Job:
    """A job that goes on until it is cancelled."""

    def work(progress: Progress) -> None:
        while True:
            progress("findings.pdf")
            sleep(0.005)

    return jobs.start(house_id=house_id, by=by, title="Findings", steps=3, work=work)


def test_work_under_way_is_watched_with_scripts_and_without(reader: Client, office: door.Account) -> None:
    house_id = bare(office)
    job = held(house_id, "Osk")
    while job.state is State.WAITING:
        sleep(0.005)
    url = f"/house/{house_id}/papers/{job.id}"
    page = reader.get(url).content.decode()
    assert 'hx-trigger="every 1s"' in page
    assert '<noscript><meta http-equiv="refresh"' in page
    part = reader.get(url, headers={"HX-Request": "true"}).content.decode()
    assert part.lstrip().startswith('<section id="job"')
    assert "now findings.pdf" in part
    reader.post(url, {"act": "cancel"})
    assert ended(job).state is State.CANCELLED
    assert "Nothing of it is kept" in reader.get(url).content.decode()


def test_only_its_own_person_or_a_writer_cancels(
    reader: Client, writer: Client, office: door.Account
) -> None:
    house_id = bare(office)
    job = held(house_id, "Ilka")
    reader.post(f"/house/{house_id}/papers/{job.id}", {"act": "cancel"})
    assert not job.stop.is_set()
    writer.post(f"/house/{house_id}/papers/{job.id}", {"act": "cancel"})
    assert ended(job).state is State.CANCELLED


def test_too_many_at_once_are_told(reader: Client, office: door.Account) -> None:
    house_id = bare(office)
    waiting = [held(house_id, "Osk") for _ in range(jobs.MOST_WAITING)]
    answer = reader.post(f"/house/{house_id}/papers", {"what": "findings"})
    for job in waiting:
        jobs.cancel(job)
    assert answer.status_code == 422
    assert "under way" in answer.content.decode()


def test_a_fault_of_ours_is_told_as_one(reader: Client, office: door.Account) -> None:
    house_id = bare(office)

    def work(_: Progress) -> None:
        raise RuntimeError("ours")

    job = ended(jobs.start(house_id=house_id, by="Osk", title="Findings", steps=1, work=work))
    assert "a fault of ours" in reader.get(f"/house/{house_id}/papers/{job.id}").content.decode()


def test_work_of_another_house_or_none_is_not_found(
    reader: Client, office: door.Account, house_id: str
) -> None:
    job = ended(jobs.start(house_id=bare(office), by="Osk", title="Findings", steps=1, work=lambda _: None))
    assert reader.get(f"/house/{house_id}/papers/{job.id}").status_code == 404
    assert reader.get(f"/house/{house_id}/papers/{'0' * 32}").status_code == 404


def test_drawings_stand_on_the_sheet_and_open_as_pictures(reader: Client, house_id: str, tree: Path) -> None:
    page = reader.get(f"/house/{house_id}/papers").content.decode()
    assert f'/house/{house_id}/drawing/elevations-R01.svg"' in page
    answer = reader.get(f"/house/{house_id}/drawing/elevations-R01.svg")
    assert answer["Content-Type"] == "image/svg+xml"
    assert b"<svg" in answer.content[:200]
    assert reader.get(f"/house/{house_id}/drawing/elevations-R99.svg").status_code == 404


def test_a_house_without_a_box_says_what_comes_first(reader: Client, office: door.Account) -> None:
    house = {"format": 1, "id": "0190b7c4-5e21-7a3d-9c40-000000000002", "name": "Low Barn"}
    plain = {**house, "rooms": {"R1": {"name": "Porch"}}, "boxes": {}}
    assert isinstance(door.begin_house(json.dumps(plain).encode(), by=office), door.Saved)
    page = reader.get(f"/house/{house['id']}/papers").content.decode()
    assert "There is nothing to draw yet" in page


def test_after_a_new_start_of_the_desk_the_sheet_says_that_its_work_is_gone(
    reader: Client, house_id: str
) -> None:
    job = printed(reader, house_id, what="findings")
    url = f"/house/{house_id}/papers/{job.id}"
    jobs._jobs.clear()  # they are in memory alone
    answer = reader.get(url)
    assert answer.status_code == 404
    for part in (
        "no longer kept",
        "started again",
        f'href="/house/{house_id}/papers">Choose the papers again',
    ):
        assert part in answer.content.decode()
    assert reader.post(url, {"act": "cancel"}).status_code == 404
    assert reader.get(f"{url}/findings.pdf").status_code == 404


def test_a_sheet_that_watched_it_is_told_in_its_place_and_asks_no_more(reader: Client, house_id: str) -> None:
    asked = reader.get(f"/house/{house_id}/papers/{'0' * 32}", headers={"HX-Request": "true"})
    part = asked.content.decode()
    assert asked.status_code == 200  # else it would not take the place of what is watched
    assert part.startswith('<section id="job"')
    assert "no longer kept" in part
    assert "hx-get" not in part
