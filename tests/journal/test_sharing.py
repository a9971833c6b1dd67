"""The as-built house shares what nobody touched with its revision, and is the house that its text gives."""

from hypothesis import given

from secondfix.house import House, as_canonical_json, read_house
from secondfix.journal import as_built, journal_of
from tests.example_house import models
from tests.journal.random_journals import MISCHIEF, STEPS, Mischief, Step, honest, spoilt
from tests.journal.writing import FIT_D31, HOUSE, write

MODELS = models()


@given(STEPS, MISCHIEF)
def test_it_is_the_house_that_its_text_gives(steps: list[Step], mischief: Mischief) -> None:
    built = as_built(HOUSE, journal_of(spoilt(honest(steps), mischief)), models=MODELS)
    anew = read_house(as_canonical_json(built.house).encode(), where="anew", models={})
    assert isinstance(anew, House)
    assert built.house == anew
    assert as_canonical_json(anew) == as_canonical_json(built.house)


def test_members_that_no_entry_touched_are_the_very_same() -> None:
    entry = write(1, "fitted", "device:D31", **FIT_D31)
    built = as_built(HOUSE, journal_of([entry]), models=MODELS).house
    assert built.devices["D31"].box == "B1"
    for name in ("rooms", "circuits", "loads"):
        old, new = getattr(HOUSE, name), getattr(built, name)
        assert old
        assert all(new[key] is old[key] for key in old)
    assert {k for k in built.devices if built.devices[k] is not HOUSE.devices.get(k)} == {"D31"}
