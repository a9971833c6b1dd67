"""The radio sheet: words for every device, and who falls when something goes, trips, moves or is added."""

import json
from pathlib import Path
from threading import Event
from typing import Any
from uuid import UUID

import pytest
from django.test import Client

from bench.manor import manor
from tests.desk import PASSWORD
from secondfix.actions.foresee import foresee
from secondfix.files import shipped_models
from secondfix.house import House, as_canonical_json, begin, plain_of, read_house
from secondfix.radio import Foreseen
from secondfix.store import door
from secondfix.web.frame import jobs
from secondfix.web.radio import asking

# ruff: noqa: I001 - the desk begins Django before the door is imported
assert PASSWORD  # the desk is begun


@pytest.fixture(autouse=True)
def patient(monkeypatch: pytest.MonkeyPatch) -> None:
    """Wait for every answer, however busy the machine."""
    monkeypatch.setattr(asking, "SOON_S", 120)


def page(client: Client, house_id: str, query: str = "") -> str:
    answer = client.get(f"/house/{house_id}/radio?{query}")
    assert answer.status_code == 200
    return answer.content.decode()


def row(told: str, device: str) -> str:
    return told.split(f'<tr role="row" id="{device}"', 1)[1].split("</tr>", 1)[0]


def test_every_device_has_its_words_and_its_way_and_no_number(reader: Client, house_id: str) -> None:
    told = page(reader, house_id)
    assert "by way of D31" in row(told, "D20")
    assert "likely" in row(told, "D01")
    assert " %" not in told.split('id="devices"')[1].split("</table>")[0]
    assert "D02" not in told.split('id="devices"')[1]  # of another network
    assert "D02" in page(reader, house_id, "network=N3").split('id="devices"')[1]


def test_a_plug_that_is_pulled_takes_along_whom_only_it_carries(reader: Client, house_id: str) -> None:
    told = page(reader, house_id, "case=pulled:D31")
    then = told.split('id="then"')[1].split("</section>")[0]
    assert "1 device falls" in then
    assert "D20 Workshop" in then
    assert "falls" in row(told, "D20")
    assert "gone itself" in row(told, "D31")
    assert "falls" not in row(told, "D21")


def test_a_circuit_tells_of_the_other_networks_too(reader: Client, house_id: str) -> None:
    then = page(reader, house_id, "case=tripped:C5").split('id="then"')[1].split("</section>")[0]
    assert "16 devices fall" in then
    assert "The same circuit in" in then
    assert "N2" in then


def test_a_device_that_passes_on_for_nobody_is_gone_alone(reader: Client, house_id: str) -> None:
    then = page(reader, house_id, "case=repeater_gone:D33").split('id="then"')[1].split("</section>")[0]
    assert "Nobody else falls" in then
    assert "passes on for nobody" in then


@pytest.mark.parametrize(
    "wrong", ["case=tripped:C99", "case=pulled:D02", "case=%3Cscript%3E", "network=N99&storey=Z"]
)
def test_what_names_nothing_of_the_network_is_no_case(reader: Client, house_id: str, wrong: str) -> None:
    told = page(reader, house_id, wrong)
    assert 'id="then"' not in told
    assert "<script>" not in told


def test_numbers_are_shown_when_asked_for(reader: Client, house_id: str) -> None:
    told = page(reader, house_id, "case=pulled:D31&numbers=1")
    assert "Chance then" in told
    assert " %" in row(told, "D20")
    assert "In the mean" in told


def test_every_case_of_the_form_has_an_answer(reader: Client, house_id: str) -> None:
    told = page(reader, house_id)
    form = told.split('id="case"')[1].split("</select>")[0]
    values = [part.split('"')[0] for part in form.split('<option value="')[2:]]
    assert {v.partition(":")[0] for v in values} >= {
        "repeater_gone", "pulled", "tripped", "controller_moved", "socket_helps"
    }  # fmt: skip
    for value in values:
        assert 'id="then"' in page(reader, house_id, f"case={value}"), value


def test_a_house_without_a_network_is_told_where_to_begin(writer: Client, office: door.Account) -> None:
    plain = plain_of(begin(house_id=str(UUID(int=0x0190B7C45E217A3D9C4000000000F001)), name="Fernley End"))
    assert isinstance(door.begin_house(json.dumps(plain).encode(), by=office), door.Saved)
    told = page(writer, plain["id"])
    assert "first-step" in told
    assert "Begin with a network" in told


def test_a_slow_answer_is_watched_and_cancelled_and_begun_again(
    writer: Client, house_id: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun, goes_on = Event(), Event()

    def slow(house: House, *, progress: jobs.Progress, **how: Any) -> Foreseen:
        progress("paths")
        begun.set()
        goes_on.wait(30)
        progress("network one")
        return foresee(house, progress=progress, **how)

    monkeypatch.setattr(asking, "foresee", slow)
    monkeypatch.setattr(asking, "SOON_S", 0)
    assert 'id="waits"' in page(writer, house_id)
    assert begun.wait(30)
    job = jobs.jobs_of(house_id)[0]
    watched = writer.get(f"/house/{house_id}/radio/work/{job.id}")
    assert "step 1 of 23, paths" in watched.content.decode()
    goes_on.set()
    cancelled = writer.post(f"/house/{house_id}/radio/work/{job.id}", {"sheet": "radio"})
    assert cancelled.status_code == 302
    assert jobs.wait(job, most_s=30)
    told = page(writer, house_id)
    assert "It was cancelled" in told
    assert "by way of D31" in told  # what needs no draws stands
    assert writer.get(f"/house/{house_id}/radio/work/{job.id}")["HX-Refresh"] == "true"
    monkeypatch.setattr(asking, "SOON_S", 120)
    assert 'id="costs"' in writer.get(f"/house/{house_id}/radio?again=1", follow=True).content.decode()


def test_an_answer_is_worked_out_once_for_every_edit(
    reader: Client, house_id: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    counted = []

    def counts(house: House, **how: Any) -> Foreseen:
        counted.append(house.id)
        return foresee(house, **how)

    monkeypatch.setattr(asking, "foresee", counts)
    for query in ("", "case=pulled:D31", "network=N2"):
        page(reader, house_id, query)
    assert len(counted) == 1


def test_a_house_of_many_places_is_answered_whole(writer: Client, office: door.Account) -> None:
    data = json.dumps(manor(places=150, seed=2)).encode()
    house = read_house(data, where="manor", models=shipped_models())
    assert isinstance(house, House)
    assert isinstance(door.begin_house(as_canonical_json(house).encode(), by=office), door.Saved)
    told = page(writer, house.id)
    assert 'id="costs"' in told
    assert told.count('<tr role="row" id="') >= 50
    then = page(writer, house.id, "case=tripped:CL1").split('id="then"')[1].split("</section>")[0]
    assert "it cannot be told, for facts are missing" in then  # the manor's survey has gaps


def test_the_work_of_another_house_is_not_found(writer: Client, house_id: str, tree: Path) -> None:
    assert writer.get(f"/house/{house_id}/radio/work/{'0' * 32}").status_code == 404
