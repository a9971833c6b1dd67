"""`reach --pictures`: each network on each storey as a picture in a folder."""

from pathlib import Path
from xml.etree import ElementTree

from tests.cli.conftest import Call

DEMO = Path(__file__).parents[2] / "demo/house-mended.json"


def test_each_network_on_each_storey_is_drawn(tmp_path: Path, call: Call) -> None:
    told = call("reach", DEMO, "--pictures", "drawn")
    assert told.code == 0
    names = sorted(p.name for p in (tmp_path / "drawn").iterdir())
    assert names == [f"radio-N{n}-{storey}.svg" for n in (1, 2, 3) for storey in ("G", "U")]
    for name in names:
        ElementTree.parse(tmp_path / "drawn" / name)
    assert "6 pictures" in told.err


def test_a_file_where_the_folder_should_be_is_told_in_one_line(tmp_path: Path, call: Call) -> None:
    (tmp_path / "drawn").write_text("not a folder")
    told = call("reach", DEMO, "--pictures", "drawn")
    assert (told.code, told.err.count("\n")) == (2, 1)
    assert "drawn" in told.err
