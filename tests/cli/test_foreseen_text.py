"""What was foreseen, as text: who falls with what, in few words."""

import json
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

from bench.block import block
from secondfix.cli.foreseen_text import case_text, foreseen_text
from secondfix.house import House
from secondfix.radio import Foreseen, Reach, Word, foresee, reach
from tests.cli.conftest import Call
from tests.example_house import seen
from tests.radio.foresight.test_cases import WEAK, row
from tests.radio.houses import rows_of

DEMO = str(Path(__file__).resolve().parents[2] / "demo" / "house.json")


@cache
def asked(*, controller_on: str | None = None, count: int = 6) -> tuple[House, Foreseen, Reach]:
    plain: dict[str, Any] = row(count)
    if controller_on:
        plain["places"]["P0"]["circuit"] = seen(controller_on)
    rows = rows_of(plain)
    answer = reach(rows, WEAK)
    return rows.house, foresee(rows, WEAK, answer, draws=3000), answer


def text(*, numbers: bool = False, controller_on: str | None = None, count: int = 6) -> str:
    house, foreseen, answer = asked(controller_on=controller_on, count=count)
    return "\n".join(foreseen_text(house, foreseen, answer, numbers=numbers))


def test_a_repeater_that_may_be_pulled_out_stands_once() -> None:
    told = text()
    assert told.count("DP gone or pulled out") == 1
    assert "DP pulled out" not in told


def test_chances_stand_only_when_asked_for() -> None:
    assert "%" not in text()
    assert "whichever one goes" in text(numbers=True)
    assert "reached" in text(numbers=True)


def test_a_circuit_that_takes_the_controller_takes_all_others() -> None:
    (line,) = (
        line
        for line in text(controller_on="C2").splitlines()
        if line.startswith("circuit C2 (Sockets) tripped")
    )
    assert line.endswith("all others")


def test_who_falls_and_was_doubtful_already_is_marked() -> None:
    assert "doubtful already: D2, DB\n" in text()


def test_whose_word_is_another_than_that_of_the_best_route_is_named_with_the_reason() -> None:
    house, foreseen, answer = asked()
    words = {"D0": Word.UNLIKELY, "D1": Word.LIKELY}
    devices = tuple(replace(d, word=words.get(d.id, d.word)) for d in answer.devices)
    told = foreseen_text(house, foreseen, replace(answer, devices=devices), numbers=False)
    line = " ".join(told[1].split())
    assert "by no single one: D0." in line
    assert "Likely link by link, but not in the draws," in line
    assert line.endswith("others on the air: D1.")
    assert "link by link" not in text()


def test_one_case_is_told_whole_and_another_not_at_all() -> None:
    house, foreseen, _ = asked()
    (_, case, *_) = case_text(house, foreseen, "C1", numbers=False)
    assert case.startswith("N1 (Row), circuit C1 (Lights west) tripped")
    assert "Without power: D0, D1, D2, D3, D4, D5." in " ".join(case.split())
    assert case_text(house, foreseen, "C9", numbers=False) == []
    lines = "\n".join(case_text(house, foreseen, "D1", numbers=True)).splitlines()
    assert {line.split()[0] for line in lines if "%" in line and line[0] == "D"} >= {"D2", "DP"}


def test_who_passes_nothing_on_has_no_case_and_the_reason_is_told() -> None:
    house, foreseen, _ = asked()
    told = case_text(house, foreseen, "DB", numbers=False)
    assert told[1] == "DB: it passes nothing on, so nobody else falls with it."


def test_one_case_is_asked_for_by_its_id(call: Call) -> None:
    told = call("reach", DEMO, "--gone", "D31", "--draws", "2000")
    assert told.code == 0
    assert "D31 (Tern) gone or pulled out; who falls: " in told.out
    assert "D20" in told.out
    assert "by way of" not in told.out
    refused = call("reach", DEMO, "--gone", "D99", "--draws", "100")
    assert refused.code == 2
    assert refused.err.strip() == (
        "--gone: 'D99'; expected a device, a circuit, a socket or a place for a controller"
    )


def test_a_survey_of_the_air_is_counted_in_the_draws(call: Call, tmp_path: Path) -> None:
    (tmp_path / "air.csv").write_text("channel,width,level,duty\n9,20,-40,90\n")
    quiet = json.loads(call("reach", DEMO, "--draws", "640", "--numbers", "--json").out)["foreseen"]
    loud = call("reach", DEMO, "--draws", "640", "--numbers", "--json", "--air", tmp_path / "air.csv")
    heard = json.loads(loud.out)["foreseen"]

    def chances(foreseen: dict[str, Any]) -> dict[str, float]:
        return {d["id"]: d["chance"]["share"] for d in foreseen["networks"][0]["devices"]}

    before, after = chances(quiet), chances(heard)
    assert sum(after.values()) < sum(before.values()) - 1, "its channel is 20, where that one sends"
    assert any("others on the air" in note for note in quiet["notes"])
    assert not any("others on the air" in note for note in heard["notes"])


def test_of_a_large_house_those_who_are_likely_are_counted(call: Call) -> None:
    plain = block(devices=61)
    del plain["devices"]["D7"]["model"]
    told = call("reach", "-", stdin=json.dumps(plain).encode()).out
    assert "60 devices are likely; --numbers or --json tells by which way." in told
    assert [line.split()[0] for line in told.splitlines() if line.startswith("D")] == ["D7"]
    assert "D12 " in call("reach", "-", "--numbers", stdin=json.dumps(plain).encode()).out


def test_of_many_whose_circuit_is_not_known_a_dozen_are_named() -> None:
    plain = row(14)
    for n in range(14):
        del plain["boxes"][f"B{n}"]["gangs"]["1"]["line"]
    rows = rows_of(plain)
    notes = foresee(rows, WEAK, reach(rows, WEAK), draws=64).notes
    (note,) = (n for n in notes if n.startswith("On which circuit"))
    assert note.endswith(
        "them: the controller of Row, D0, D1, D2, D3, D4, D5, D6, D7, D8, D9, D10 and 3 more."
    )


def test_an_empty_id_is_no_case(call: Call) -> None:
    told = call("reach", DEMO, "--gone", "")
    assert (told.code, told.err.count("\n")) == (2, 1)
    assert "--gone" in told.err
