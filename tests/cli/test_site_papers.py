"""Papers of later years: the worksheet of a swap, the pack with its journals, what the demo makes of both."""

import shutil
from pathlib import Path

import pytest

from tests.cli.conftest import Call
from tests.papers.reading import words_of

DEMO = Path(__file__).parents[2] / "demo"
HOUSE = DEMO / "house.json"
FIRM = ("--firm", DEMO / "maintenance/firm")
JOURNALS = [w for n in ("farrow", "pell") for w in ("--journal", DEMO / f"maintenance/journal-{n}.jsonl")]


def test_a_swap_writes_its_worksheet_beside_what_it_prints(call: Call, tmp_path: Path) -> None:
    ended = call("swap", HOUSE, "D15", "plimmet-osier-one@1", "--pdf", "s.pdf", "--issue", "C")
    assert ended.code == 3
    assert "kept, with the losses named below" in " ".join(ended.out.split())
    assert "SwapofD15atB15Bedroom" in words_of((tmp_path / "s.pdf").read_bytes())


def test_a_worksheet_takes_the_node_number_from_the_journal(call: Call, tmp_path: Path) -> None:
    words = ("D08", "brantock-larch-four@1", *FIRM, *JOURNALS[:2], "--pdf", "s.pdf")
    assert call("swap", HOUSE, *words).code == 0
    assert "Itkeepsnode11." in words_of((tmp_path / "s.pdf").read_bytes())


def test_a_refused_swap_leaves_a_worksheet_that_refuses(call: Call, tmp_path: Path) -> None:
    assert call("swap", HOUSE, "D06", "plimmet-osier-three@1", "--pdf", "s.pdf").code == 1
    assert "Refused:donotfitit." in words_of((tmp_path / "s.pdf").read_bytes())


def test_a_pack_takes_journals_and_the_revision_s_name(call: Call, tmp_path: Path) -> None:
    ended = call("pack", HOUSE, *FIRM, *JOURNALS, "--revision", "A2", "--out", "p", "--date", "2026-03-09")
    assert ended.code == 0, ended.err
    text = words_of((tmp_path / "p/handover-pack.pdf").read_bytes())
    assert "draft,as-builtofrevisionA2" in text
    assert "Functiontestrecord" in text


def test_a_line_that_cannot_be_read_is_told_and_the_pack_is_still_made(call: Call, tmp_path: Path) -> None:
    (tmp_path / "j.jsonl").write_text('{"format":1\n')
    ended = call("pack", HOUSE, "--journal", "j.jsonl", "--out", "p")
    assert ended.code == 1
    assert "j.jsonl: line 1" in ended.err
    assert (tmp_path / "p/handover-pack.pdf").exists()


@pytest.mark.parametrize("verb", ["pack", "swap"])
def test_a_journal_that_is_not_there_stops_before_anything_is_written(
    call: Call, tmp_path: Path, verb: str
) -> None:
    words = ("D15", "plimmet-sedge@1", "--pdf", "p") if verb == "swap" else ("--out", "p")
    ended = call(verb, HOUSE, *words, "--journal", "none.jsonl")
    assert ended.code == 2
    assert "none.jsonl" in ended.err
    assert not (tmp_path / "p").exists()


def test_the_demo_prints_a_swap_and_the_pack_of_its_journals(call: Call, tmp_path: Path) -> None:
    shutil.copytree(DEMO, tmp_path / "demo")
    ended = call("demo", "--out", "out", "--date", "2026-03-09")
    assert ended.code == 0, ended.err
    assert "as-built-pack.pdf and swap-D08.pdf" in ended.out
    assert "as-builtofrevisionA" in words_of((tmp_path / "out/as-built-pack.pdf").read_bytes())
    assert "Kept:everyscene" in words_of((tmp_path / "out/swap-D08.pdf").read_bytes())
    assert "Nojournalwasgiven" in words_of((tmp_path / "out/handover-pack.pdf").read_bytes())
