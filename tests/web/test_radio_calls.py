"""Calls about radio: what the journal tells counts, and the answers are those of the command line."""

import json
from pathlib import Path
from typing import Any

import pytest
from django.test import Client
from pydantic import BaseModel

from tests.cli.conftest import Call, call
from tests.desk import PASSWORD
from secondfix.web.api.shapes import radio

# ruff: noqa: I001 - the desk begins Django before the door is imported
__all__ = ["call"]
assert PASSWORD  # the desk is begun
LINKS: tuple[tuple[str, str, int | None], ...] = (
    ("P81", "D01", -61),
    ("D31", "P81", -74),
    ("D20", "D31", -58),
    ("D12", "D15", -66),
    ("P81", "D20", None),
)
CALLS: dict[str, type[BaseModel]] = {
    "foresee": radio.Foreseen,
    "measured": radio.Learned,
    "channels": radio.Channels,
}


def lines(house_id: str) -> str:
    """A journal of five measured links and a survey of the air."""
    told: list[tuple[str, str, dict[str, Any]]] = [
        ("measured", f"link:{a}>{b}", {"not_heard": True} if level is None else {"rssi_dbm": level})
        for a, b, level in LINKS
    ]
    air = [{"channel": 6, "level_dbm": -58, "duty_permille": 120}]
    told.append(("air_heard", f"house:{house_id}", {"transmitters": air}))
    return "".join(
        json.dumps(
            {
                "format": 1,
                "id": f"0190b7c4-5e21-7a3d-9c40-00000000000{n}",
                "house": house_id,
                "revision": "edit-1",
                "kind": kind,
                "subject": subject,
                "writer": "Ilka",
                "at": "2031-05-06T09:40+02:00",
                **own,
            }
        )
        + "\n"
        for n, (kind, subject, own) in enumerate(told)
    )


def test_the_calls_answer_what_reach_prints_with_the_same_journal(
    writer: Client, house_id: str, tree: Path, tmp_path: Path, call: Call
) -> None:
    text = lines(house_id)
    posted = writer.post(f"/api/houses/{house_id}/journal", text, content_type="application/x-ndjson")
    assert posted.status_code == 200
    (tmp_path / "visit.jsonl").write_text(text)
    options = ("--draws", "10000", "--journal", tmp_path / "visit.jsonl", "--json")
    printed = json.loads(call("reach", tree / "demo/house.json", *options).out)
    for name, shape in CALLS.items():
        answer = writer.get(f"/api/houses/{house_id}/{name}")
        assert answer.status_code == 200
        assert answer.json() == printed["foreseen" if name == "foresee" else name], name
        shape.model_validate_json(answer.content, strict=True)
    assert printed["foreseen"]["measured"] == 5


def test_without_a_journal_no_number_stands_unasked(reader: Client, house_id: str) -> None:
    told = reader.get(f"/api/houses/{house_id}/foresee").json()
    assert all(d["chance"] is None for n in told["networks"] for d in n["devices"])
    told = reader.get(f"/api/houses/{house_id}/foresee?numbers=true").json()
    assert all(d["chance"] for n in told["networks"] for d in n["devices"])
    assert reader.get(f"/api/houses/{house_id}/measured").json()["count"] == 0
    assert reader.get(f"/api/houses/{house_id}/channels").json()["heard"] == []


@pytest.mark.parametrize("name", CALLS)
def test_a_house_that_is_not_there_is_told(reader: Client, house_id: str, name: str) -> None:
    assert reader.get(f"/api/houses/nowhere/{name}").status_code == 404
