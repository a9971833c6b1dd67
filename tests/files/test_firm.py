"""A firm's folder: its own models and assumptions over the shipped ones; all faults at once."""

from pathlib import Path

from secondfix.files import Firm, open_firm, shipped_models
from tests import example_house as ex


def folder(tmp_path: Path, *, model: str = ex.SWITCH_TOML, assumptions: str = "") -> Path:
    (tmp_path / "models").mkdir()
    (tmp_path / "models" / "corvell-pair@1.toml").write_text(model)
    (tmp_path / "assumptions.toml").write_text(assumptions)
    return tmp_path


def faults(path: Path) -> list[str]:
    opened = open_firm(path)
    assert isinstance(opened, list)
    return [f"{f.path}: {f.stands}; {f.expected}" for f in opened]


def test_without_a_folder_the_shipped_catalogue_stands() -> None:
    firm = open_firm(None)
    assert isinstance(firm, Firm)
    assert firm.models == shipped_models()
    assert len(firm.models) >= 14


def test_the_firms_models_and_assumptions_are_taken(tmp_path: Path) -> None:
    firm = open_firm(
        folder(
            tmp_path,
            assumptions="parent_margin_db = 12\n[cable_allowance_mm]\nvalue = 8\nlow = 6\nhigh = 9\n",
        )
    )
    assert isinstance(firm, Firm)
    assert "corvell-pair@1" in firm.models
    assert firm.assumptions["parent_margin_db"].set_by == "firm"
    assert firm.assumptions.span("cable_allowance_mm") == (6, 8, 9)


def test_every_fault_of_every_file_is_told(tmp_path: Path) -> None:
    broken = ex.SWITCH_TOML.replace("gangs = 2", "gangs = 99").replace('form = "switch"', 'form = "lamp"')
    told = faults(
        folder(
            tmp_path,
            model=broken,
            assumptions='luck = 3\nparent_margin_db = "ten"\ncable_allowance_mm = {value = 4, low = 5}\n',
        )
    )
    assert [t.split(":")[0] for t in told] == [
        "form",
        "gangs",
        "luck",
        "parent_margin_db",
        "cable_allowance_mm",
    ]


def test_a_published_edition_is_never_changed(tmp_path: Path) -> None:
    key, model = next(iter(shipped_models().items()))
    text = (Path(__file__).parents[2] / f"src/secondfix/catalogue/models/{key}.toml").read_text()
    path = folder(tmp_path)
    (path / "models" / f"{key}.toml").write_text(text.replace(model.title, "Another title"))
    told = faults(path)
    differs = f"edition: {key}, which stands already and differs"
    assert told == [f"{differs}; a new edition: a published edition is never changed"]


def test_a_folder_that_is_not_there_and_files_that_are_not_text(tmp_path: Path) -> None:
    assert faults(tmp_path / "none") == [": no such folder; the firm's folder"]
    path = folder(tmp_path, assumptions="= =")
    (path / "models" / "corvell-pair@1.toml").write_bytes(b"\xff\xfe")
    assert [t.split(";")[0] for t in faults(path)] == ["byte 0: not UTF-8", "line 1, column 1: not TOML"]


def test_a_file_that_nobody_would_read_is_told(tmp_path: Path) -> None:
    path = folder(tmp_path)
    (path / "assumption.toml").write_text("parent_margin_db = 12")
    (path / "models" / "notes.txt").write_text("")
    (path / ".hidden").write_text("")
    assert [t.split(";")[0] for t in faults(path)] == [": a file that is not read"] * 2


def test_a_model_stands_in_a_file_of_its_key(tmp_path: Path) -> None:
    path = folder(tmp_path)
    (path / "models" / "corvell-pair@1.toml").rename(path / "models" / "pair.toml")
    assert faults(path) == [": a file that holds corvell-pair@1; the name corvell-pair@1.toml"]


def test_assumptions_too_deep_too_large_or_too_long_a_number_are_told_and_do_not_raise(
    tmp_path: Path,
) -> None:
    path = folder(tmp_path) / "assumptions.toml"
    for text, told in (
        ("parent_margin_db." + ".".join("a" * 3000) + " = 1\n", "nested too deep; at most 8 levels"),
        ("parent_margin_db = " + "[" * 5000 + "]" * 5000 + "\n", "nested too deep; at most 8 levels"),
        ("# " + "x" * 300_000, "more than 262,144 bytes; at most 262,144 bytes"),
        ("parent_margin_db = " + "9" * 5000 + "\n", "a number or date that cannot be read; a whole number"),
        (
            "parent_margin_db = 1\nparent_margin_db = 2\n",
            "a key that stands twice; TOML (cannot overwrite a value)",
        ),
    ):
        path.write_text(text)
        (fault,) = faults(tmp_path)
        assert fault.endswith(told)


def test_an_endless_file_is_read_no_further_than_the_largest_allowed(tmp_path: Path) -> None:
    path = folder(tmp_path)
    (path / "models" / "endless-one@1.toml").symlink_to("/dev/zero")
    assert faults(path) == [": more than 262,144 bytes; at most 262,144 bytes"]
