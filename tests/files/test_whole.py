"""Files are read up to a limit and written whole or not at all."""

import os
import stat
from pathlib import Path

import pytest

from secondfix.files import read_bytes, write_whole
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
