"""The font's own tables, read: against the widths and characters that another reader finds."""

import json
import struct

import pytest
import typst

from secondfix.papers.coverage import plain_text, text_faults
from secondfix.papers.font import covered, face, font_folder, read_face


def test_widths_agree_with_the_typesetter() -> None:
    # Typst measures the same line in the same face; kerning is off there, for our reader leaves it out.
    words = "Dining ceiling 1.05 m Äö Кухня"
    source = (
        '#set text(font: "Source Sans Pro", size: 10pt, kerning: false, ligatures: false)\n'
        f"#context [#metadata(measure(text({json.dumps(words, ensure_ascii=False)})).width.pt()) <w>]"
    )
    found = typst.query(
        source.encode(),
        "<w>",
        field="value",
        one=True,
        font_paths=[str(font_folder())],
        ignore_system_fonts=True,
    )
    assert face().width(words, 10) == pytest.approx(float(found), abs=0.01)


def test_both_faces_draw_the_same_characters() -> None:
    assert face().advance.keys() == face(strong=True).advance.keys()
    assert {ord(c) for c in "Aäłфθ−×·°µΩ½–—’“”‰"} <= covered()


def test_what_is_no_font_is_refused() -> None:
    with pytest.raises(ValueError, match="not a TrueType"):
        read_face(b"GIF89a" + bytes(40))


def test_groups_of_format_12_are_read() -> None:
    cmap = struct.pack(">HHHHI", 0, 1, 3, 10, 12) + struct.pack(
        ">HHIIIIII", 12, 0, 28, 0, 1, 0x1F6CB, 0x1F6CD, 7
    )
    tables = {
        b"cmap": cmap,
        b"head": bytes(18) + struct.pack(">H", 2000) + bytes(34),
        b"hhea": bytes(34) + struct.pack(">H", 1),
        b"hmtx": struct.pack(">HH", 1500, 0),
    }
    start = 12 + 16 * len(tables)
    head, body = b"\0\1\0\0" + struct.pack(">HHHH", len(tables), 0, 0, 0), b""
    for tag, data in tables.items():
        head += struct.pack(">4sIII", tag, 0, start + len(body), len(data))
        body += data
    assert read_face(head + body).advance == {0x1F6CB: 750.0, 0x1F6CC: 750.0, 0x1F6CD: 750.0}


def test_a_further_font_widens_what_can_be_set() -> None:
    # The family's own folder stands for a further one: it brings no new character, and is read.
    assert covered((font_folder(),)) >= covered()


def test_white_space_is_one_space_and_letters_are_composed() -> None:
    assert plain_text({"a": ["x \n\t y", "e\u0301"], "n": 3}) == {"a": ["x y", "é"], "n": 3}


def test_each_text_at_fault_is_told_once_with_every_character() -> None:
    faults = text_faults({"a": "x☃y中", "b": ["x☃y中", "fine"]})
    assert [(f.text, f.characters) for f in faults] == [("x☃y中", "☃中")]
    assert "SNOWMAN" in str(faults[0])
