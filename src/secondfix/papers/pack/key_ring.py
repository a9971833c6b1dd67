"""The key ring: a paper of its own, only on request; no other paper holds a code."""

import io
from collections.abc import Sequence
from dataclasses import dataclass

from secondfix.house import House
from secondfix.papers.blocks import Sheet, cautions
from secondfix.papers.coverage import TextFault
from secondfix.papers.setting import Setting
from secondfix.papers.typeset import typeset

# ISO/IEC 18004: a quiet zone of four modules around the symbol.
_QUIET_MODULES = 4
_MODULE_PX = 3.2


@dataclass(frozen=True, slots=True)
class Key:
    """One secret: reference (``K07``), what it opens, the code as text, what its picture holds."""

    ref: str
    opens: str
    code: str
    qr: str = ""


def key_ring_pdf(house: House, keys: Sequence[Key], *, setting: Setting) -> bytes | list[TextFault]:
    """Codes and keys of one house as a PDF of their own, or its unprintable texts.

    Whoever calls it keeps the file apart, readable to its owner alone. The same arguments give the same
    bytes.
    """
    sheets = [_sheet(keys, "S9/01")]
    return typeset(sheets, title="key ring", house=house, setting=setting, landscape=True)


def _sheet(keys: Sequence[Key], number: str) -> Sheet:
    """Every key with its code, and a QR picture where there is one to scan."""
    pictures = {key.ref: qr_svg(key.qr) for key in keys if key.qr}
    cards = [
        {"ref": key.ref, "opens": key.opens, "code": key.code, "file": key.ref if key.qr else ""}
        for key in keys
    ]
    blocks = [
        cautions(
            "Whoever holds this sheet can open the house.",
            ["Keep it apart from the pack. It stands in no drawing register. It is not copied."],
        ),
        {"kind": "keys", "cards": cards},
    ]
    return Sheet(number, "Key ring", "Codes and keys of the networks and devices.", blocks, pictures)


def qr_svg(text: str) -> str:
    """The QR symbol of a text (ISO/IEC 18004, level M at least) with its quiet zone, black on white."""
    import segno  # noqa: PLC0415 - only who asks for keys needs it

    out = io.BytesIO()
    symbol = segno.make_qr(text, error="m")
    symbol.save(out, kind="svg", scale=_MODULE_PX, border=_QUIET_MODULES, light="#ffffff", xmldecl=False)
    return out.getvalue().decode()
