"""The reader of console blocks itself."""

from pathlib import Path

import pytest

from tests.docs.console import Shown, blocks, differences, matches


def document(*lines: str) -> str:
    return "\n".join(["Words.", "", "```console", *lines, "```", ""])


def test_commands_are_read_with_their_output_and_line() -> None:
    text = document("$ printf 'a\\nb\\n'", "a", "b", "$ ls \\", "    demo")
    assert blocks(text) == [[Shown("printf 'a\\nb\\n'", ("a", "b"), 4), Shown("ls \\\n    demo", (), 7)]]


def test_a_block_without_a_command_is_refused() -> None:
    with pytest.raises(ValueError, match="line 4"):
        blocks(document("a line of output"))


@pytest.mark.parametrize(
    ("shown", "real", "same"),
    [
        (("a", "b"), ("a", "b  "), True),
        (("a",), ("a", "b"), False),
        (("a", "b"), ("a",), False),
        (("a", "...", "d"), ("a", "b", "c", "d"), True),
        (("a", "...", "d"), ("a", "d"), True),
        (("a", "...", "d"), ("a", "b"), False),
        (("1 x 2",), ("1 + 2",), False),
        (("...",), (), True),
        ((), (), True),
    ],
)
def test_dots_alone_stand_for_any_lines(shown: tuple[str, ...], real: tuple[str, ...], same: bool) -> None:
    assert matches(shown, real) is same


def test_a_document_that_tells_the_truth_has_no_difference(tmp_path: Path, tree: Path) -> None:
    text = document(
        "$ printf 'a\\n' > f", "$ cat f", "a", "$ ls nowhere 2>/dev/null", "$ test $? -gt 0 && echo no", "no"
    )
    assert differences(text, tmp_path, tree) == []


def test_a_later_block_finds_what_an_earlier_one_left(tmp_path: Path, tree: Path) -> None:
    text = document("$ echo a > f") + document("$ cat f", "a")
    assert differences(text, tmp_path, tree) == []


def test_each_output_that_differs_is_told(tmp_path: Path, tree: Path) -> None:
    told = differences(document("$ echo a", "b", "$ echo c", "c", "$ echo d >&2", ""), tmp_path, tree)
    assert [line.partition(":")[0] for line in told] == ["line 4", "line 8"]
    assert "printed:\na\n" in told[0]


def test_a_make_target_is_run_without_laying_the_environment(tmp_path: Path) -> None:
    (tmp_path / "Makefile").write_text(
        "run:\n\t@sh requirements/install.sh run\n\t@echo .venv/bin/laid\n", encoding="utf-8"
    )
    assert differences(document("$ make run", "laid"), tmp_path, tmp_path) == []
