"""What a person waits for with a long journal: reading it, folding it, and the as-built house.

100,000 entries of the demo house: two phones take turns at its things, hear of each other now and then,
and about one entry in twenty is withdrawn.
"""

from __future__ import annotations

import json
import random
from functools import cache
from pathlib import Path

from bench.figures import Pair, figure, seconds_side_by_side
from bench.plain_fold import plain_fold
from secondfix.files import shipped_models
from secondfix.house import House, read_house, uuid7
from secondfix.journal import Entry, Journal, as_built, as_lines, fold, journal_of, new_entry, read_journal

DEMO = Path(__file__).parents[1] / "demo" / "house.json"
ENTRIES = 100_000


@cache
def house() -> House:
    read = read_house(DEMO.read_bytes(), where="demo", models=shipped_models())
    assert isinstance(read, House)
    return read


@cache
def journal() -> Journal:
    """The same entries in every run: a seeded generator, and nobody's real visits."""
    chance, place = random.Random(20310506), house()
    subjects = [
        *[(f"load:{key}", "named") for key in place.loads],
        *[(f"box:{key}", "survey_corrected") for key in place.boxes],
        *[(f"gang:{key}.{n}", "function_tested") for key, box in place.boxes.items() for n in box.gangs],
        *[(f"device:{key}", "joined") for key, d in place.devices.items() if d.network],
        *[(f"link:{key}>{next(iter(place.devices))}", "measured") for key in place.devices],
    ]
    heads: list[dict[str, list[str]]] = [{}, {}]
    entries = []
    for number in range(ENTRIES):
        subject, kind = chance.choice(subjects)
        phone = chance.randrange(2)
        if chance.random() < 0.5:
            both = dict.fromkeys([*heads[0].get(subject, []), *heads[1].get(subject, [])])
            heads[0][subject] = heads[1][subject] = list(both)
        sees = list(heads[phone].get(subject, []))
        if sees and chance.random() < 0.05:
            entries.append(_entry(number, "withdrawn", subject, sees, {"of": chance.choice(sees)}))
        else:
            entries.append(_entry(number, kind, subject, sees, _fields(kind, subject, chance)))
        heads[phone][subject] = [entries[-1].id]
    return journal_of(entries)


def _fields(kind: str, subject: str, chance: random.Random) -> dict[str, object]:
    owner = subject.partition(":")[2]
    device = house().devices.get(owner)
    fields: dict[str, dict[str, object]] = {
        "named": {"name": f"Lamp {chance.randrange(9)}"},
        "survey_corrected": {
            "path": f"boxes.{owner}.depth_mm",
            "found": {"value": chance.randrange(30, 60), "known": "measured"},
        },
        "function_tested": {"answered": {chance.choice(list(house().loads)): "changed"}},
        "joined": {"network": device.network if device else None},
        "measured": {"lqi": chance.randrange(256)},
    }
    return fields[kind]


def _entry(number: int, kind: str, subject: str, sees: list[str], fields: dict[str, object]) -> Entry:
    plain = {
        "format": 1,
        "id": uuid7(unix_ms=1_935_000_000_000 + number, random=number.to_bytes(10, "big")),
        "house": house().id,
        "revision": "A",
        "kind": kind,
        "subject": subject,
        "writer": "phone",
        "at": f"2031-05-06T{number % 24:02}:40+02:00",
        "sees": sees,
        **fields,
    }
    entry = new_entry(plain, where="bench")
    assert isinstance(entry, Entry), entry
    return entry


@figure("fold of 100,000 entries, against a plain fold of the first 10,000", unit="s")
def folding() -> Pair:
    tenth = list(journal())[: ENTRIES // 10]
    return seconds_side_by_side(
        lambda: fold(house(), journal()), lambda: plain_fold(house().id, tenth), rounds=3
    )


@figure("as-built house from 100,000 entries, against the fold of them alone", unit="s")
def building() -> Pair:
    models = shipped_models()
    return seconds_side_by_side(
        lambda: as_built(house(), journal(), models=models), lambda: fold(house(), journal()), rounds=3
    )


@figure("reading 100,000 lines of a journal, against their JSON alone", unit="s")
def reading() -> Pair:
    data = as_lines(journal()).encode()
    return seconds_side_by_side(
        lambda: read_journal(data, where="bench"),
        lambda: [json.loads(x) for x in data.splitlines()],
        rounds=3,
    )
