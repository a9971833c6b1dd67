"""Files are read up to a limit and written whole or not at all."""

import os
import stat
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from secondfix.files import append_line, read_bytes, write_whole
from secondfix.house import LARGEST_FILE_BYTES, Fault


def test_a_written_file_is_whole_and_nothing_is_left_beside_it(tmp_path: Path) -> None:
    write_whole(tmp_path / "deep" / "h.json", b"one")
    write_whole(tmp_path / "deep" / "h.json", b"two")
    assert (tmp_path / "deep" / "h.json").read_bytes() == b"two"
    assert [p.name for p in (tmp_path / "deep").iterdir()] == ["h.json"]


def test_a_write_that_fails_leaves_the_old_bytes(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    target = tmp_path / "h.json"
    write_whole(target, b"old")

    def no_sync(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", no_sync)
    with pytest.raises(OSError, match="No space"):
        write_whole(target, b"new")
    assert target.read_bytes() == b"old"
    assert [p.name for p in tmp_path.iterdir()] == ["h.json"]


def test_a_missing_file_and_a_folder_are_told(tmp_path: Path) -> None:
    missing = read_bytes(str(tmp_path / "none.json"))
    folder = read_bytes(str(tmp_path))
    assert isinstance(missing, Fault)
    assert isinstance(folder, Fault)
    assert missing.stands == "no such file or directory"
    assert folder.stands == "is a directory"


def test_no_more_than_the_limit_is_ever_read(tmp_path: Path) -> None:
    big = tmp_path / "big"
    with big.open("wb") as file:
        file.truncate(LARGEST_FILE_BYTES * 3)
    data = read_bytes(str(big))
    assert isinstance(data, bytes)
    assert len(data) == LARGEST_FILE_BYTES + 1


def test_a_secret_file_is_its_owners_alone(tmp_path: Path) -> None:
    write_whole(tmp_path / "ring.keys", b"x", mode=0o600)
    assert stat.S_IMODE((tmp_path / "ring.keys").stat().st_mode) == 0o600


def test_a_line_is_appended_and_what_stands_there_is_not_touched(tmp_path: Path) -> None:
    path = tmp_path / "visits" / "j.jsonl"
    append_line(path, "one")
    before = path.stat().st_ino
    append_line(path, "zwei ü")
    assert path.read_bytes() == "one\nzwei ü\n".encode()
    assert path.stat().st_ino == before


def test_a_last_line_that_was_cut_off_keeps_a_line_of_its_own(tmp_path: Path) -> None:
    path = tmp_path / "j.jsonl"
    path.write_bytes(b"one\ntw")
    append_line(path, "three")
    assert path.read_bytes() == b"one\ntw\nthree\n"


def test_lines_appended_at_once_by_several_are_all_there_and_whole(tmp_path: Path) -> None:
    path = tmp_path / "j.jsonl"
    lines = [f"{n} " + "x" * (2000 * (n % 7)) for n in range(120)]
    with ThreadPoolExecutor(8) as pool:
        list(pool.map(lambda line: append_line(path, line), lines))
    read = [line for line in path.read_text().splitlines() if line]  # an empty line says nothing in a journal
    assert sorted(read) == sorted(lines)
