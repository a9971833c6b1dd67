"""The page for the person at the boxes says what the code tells."""

import json
import re
from pathlib import Path

from secondfix.electrical.multiway import ARRANGEMENTS, LIVE_TEST, QUESTIONS, Told, tell
from secondfix.house import Arrangement, House, read_house
from tests.electrical.multiway.lights import light
from tests.example_house import as_bytes

PAGE = Path("docs/how-to/multi-way.md")


def test_each_row_of_answers_is_told_so(tree: Path) -> None:
    rows = re.findall(
        r"^\| ((?:(?:yes|no) \| ){5})(.+?) \| (.*?) ?\|$", (tree / PAGE).read_text(), re.MULTILINE
    )
    names = {words.name: arrangement for arrangement, words in ARRANGEMENTS.items()}
    told = set()
    for answers, name, begins in rows:
        given = [word == "yes" for word in answers.split(" | ")[:5]]
        arrangement = names[name.partition(":")[0]]
        expected = Told(arrangement, begins or None)
        assert tell(dict(zip((q.id for q in QUESTIONS), given, strict=True))) == expected
        told.add(arrangement)
    assert len(rows) == 7
    assert told == set(Arrangement) - {Arrangement.NOT_JOINED}


def test_its_example_is_read(tree: Path) -> None:
    (example,) = re.findall(r"```json\n(.*?)```", (tree / PAGE).read_text(), re.DOTALL)
    (load,) = json.loads("{" + example + "}").values()
    plain = light(places=3)
    load["multiway"]["gangs"] = plain["loads"]["L1"]["multiway"]["gangs"]
    plain["loads"]["L1"] = load
    assert isinstance(read_house(as_bytes(plain), where="x.json", models={}), House)


def test_it_asks_the_questions_and_carries_the_cautions(tree: Path) -> None:
    text = " ".join((tree / PAGE).read_text().split())
    cautions = " ".join(c.words for c in LIVE_TEST)
    for must in (
        "kill",
        "licensed person",
        "two-pole",
        "proving unit",
        "prove dead",
        "Colours prove nothing",
    ):
        assert must in text
        assert must in cautions
    assert len(re.findall(r"^\| [1-5] \| .+\? \|$", (tree / PAGE).read_text(), re.MULTILINE)) == len(
        QUESTIONS
    )
