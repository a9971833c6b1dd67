"""The bench's register: each figure beside its baseline."""

import sys

import pytest

from bench.figures import REGISTER, Figure, Register, process, seconds_side_by_side
from bench.run import bench_modules, measured


def test_a_figure_is_printed_and_written_with_its_ratio(capsys: pytest.CaptureFixture[str]) -> None:
    register = Register()
    register.figure("boxes checked, against a tenth of them", unit="s")(lambda: (1.5, 0.2))
    (figure,) = measured(register)
    assert figure.as_json() == {
        "name": "boxes checked, against a tenth of them",
        "value": 1.5,
        "unit": "s",
        "baseline": 0.2,
        "ratio": 7.5,
    }
    assert "7.5 x  boxes checked" in capsys.readouterr().out


def test_only_the_figures_asked_for_are_measured() -> None:
    register = Register()
    register.figure("walls crossed", unit="s")(lambda: (1.0, 1.0))
    register.figure("pages printed", unit="s")(lambda: 1 / 0)
    assert [figure.name for figure in measured(register, "walls")] == ["walls crossed"]


def test_a_name_stands_once() -> None:
    register = Register()
    register.figure("walls crossed", unit="s")(lambda: (1.0, 1.0))
    with pytest.raises(ValueError, match="walls crossed"):
        register.figure("walls crossed", unit="s")(lambda: (2.0, 1.0))


def test_a_figure_without_a_baseline_is_our_fault() -> None:
    with pytest.raises(ZeroDivisionError):
        Figure("alone", 1.0, "s", 0.0).as_json()


def test_both_sides_are_timed_as_often_and_the_warm_up_does_not_count() -> None:
    turns: list[str] = []
    value, baseline = seconds_side_by_side(lambda: turns.append("v"), lambda: turns.append("b"), rounds=3)
    assert turns == ["v", "b"] * 4
    assert min(value, baseline) >= 0


def test_a_process_that_crashes_is_no_quick_answer() -> None:
    with pytest.raises(RuntimeError, match="ended with 4"):
        process([sys.executable, "-c", "raise SystemExit(4)"])()
    process([sys.executable, "-c", "raise SystemExit(3)"], stands=(0, 1, 3))()


def test_each_bench_file_brings_a_figure_of_its_own() -> None:
    for module in bench_modules():
        before = len(REGISTER.names())
        __import__(module)
        assert len(REGISTER.names()) > before, module
