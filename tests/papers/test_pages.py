"""Pages of a paper as pictures."""

import io

import pytest
from PIL import Image

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.papers import Setting, findings_pdf, page_count, page_picture
from tests.papers.example import FINDINGS


@pytest.fixture
def pdf(house: Schedule, setting: Setting) -> bytes:
    """The findings paper of the example."""
    made = findings_pdf(house, FINDINGS, default_assumptions(), setting=setting)
    assert isinstance(made, bytes)
    return made


def test_every_page_is_a_picture_of_the_width_asked_for_and_not_blank(pdf: bytes) -> None:
    for page in range(1, page_count(pdf) + 1):
        picture = Image.open(io.BytesIO(page_picture(pdf, page=page, width_px=700)))
        assert (picture.format, picture.width) == ("PNG", 700)
        assert len(picture.convert("RGB").getcolors(2**24) or ()) > 2


def test_a_page_that_is_not_there_and_a_width_beyond_the_limit_are_refused(pdf: bytes) -> None:
    for page in (0, page_count(pdf) + 1):
        with pytest.raises(IndexError):
            page_picture(pdf, page=page, width_px=700)
    with pytest.raises(ValueError, match="expected 1 to"):
        page_picture(pdf, page=1, width_px=2401)
