"""Pages of a finished paper as pictures, for a screen that shows the very sheet that will be printed."""

import io
from threading import Lock

_ONE_AT_A_TIME = Lock()  # PDFium keeps state of its own: its makers allow one thread
MOST_WIDE_PX = 2400


def page_count(pdf: bytes) -> int:
    """How many pages a paper has."""
    from pypdfium2 import PdfDocument  # noqa: PLC0415 - paid for by those who look at pages

    with _ONE_AT_A_TIME, PdfDocument(pdf) as document:
        return len(document)


def page_picture(pdf: bytes, *, page: int, width_px: int) -> bytes:
    """Page ``page`` (from 1) as a PNG picture of this width. IndexError for a page that is not there.

    ``width_px`` is at most MOST_WIDE_PX (ValueError). The picture carries no text: whoever cannot see it
    reads the PDF, which is tagged.
    """
    from pypdfium2 import PdfDocument  # noqa: PLC0415 - as above

    if not 0 < width_px <= MOST_WIDE_PX:
        raise ValueError(f"{width_px} px; expected 1 to {MOST_WIDE_PX}")
    with _ONE_AT_A_TIME, PdfDocument(pdf) as document:
        if not 1 <= page <= len(document):
            raise IndexError(f"page {page} of {len(document)}")
        sheet = document[page - 1]
        drawn = sheet.render(scale=width_px / sheet.get_width()).to_pil().convert("RGB")
        exact = drawn.resize((width_px, drawn.height))  # PDFium rounds up to a whole point more
        out = io.BytesIO()
        exact.quantize(64).save(out, "PNG", optimize=True)
        return out.getvalue()
