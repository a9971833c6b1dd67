"""A test made before the device that now works the gang was fitted counts no longer."""

from secondfix.findings import Outcome
from secondfix.journal import (
    Adoption,
    Entry,
    Journal,
    Worked,
    adopt,
    as_built,
    check,
    fitted_since,
    function_test,
    journal_of,
    merge,
    scene_tests,
)
from tests.journal.writing import FIT_D31, HOUSE, entry_id, write

NOTHING = Journal()
PRESSED = write(1, "function_tested", "gang:B1.1", answered={"L1": "changed"})
RAN = write(2, "function_tested", "scene:SC1", answered={"L1": "off", "L2": "off"})
FIT = write(3, "fitted", "device:D31", **FIT_D31)
AGAIN = write(4, "function_tested", "gang:B1.1", answered={"L1": "changed"}, sees=(1,))


def adopted(*entries: Entry, number: int = 100, earlier: Journal = NOTHING) -> Journal:
    """The journal of these with an adoption of all that is new in it."""
    journal = merge(earlier, journal_of(entries))
    made = adopt(
        as_built(HOUSE, journal, models={}), entry_id=entry_id(number), revision="A",
        to_revision=f"R{number}", writer="office", at="2031-06-01T08:00+02:00",
    )  # fmt: skip
    assert isinstance(made, Adoption), made
    return merge(journal, journal_of([made.entry]))


def since(journal: Journal) -> dict[str, str]:
    built = as_built(HOUSE, journal, models={})
    return fitted_since(built.house, built.folded)


def test_a_test_adopted_before_the_fitting_is_asked_for_again() -> None:
    journal = merge(adopted(PRESSED, RAN), journal_of([FIT]))
    built = as_built(HOUSE, journal, models={})
    assert since(journal) == {"gang:B1.1": "D31", "scene:SC1": "D31"}
    test = function_test(HOUSE, built.folded, since=since(journal))
    (press,) = [p for p in test.presses if p.place == "B1.1"]
    assert (press.worked, press.since) == (Worked.NOT_TESTED, "D31")
    expected = {"SC1": {"L1": "off", "L2": "off"}}
    (scene,) = scene_tests(built.folded, expected, since=since(journal))
    assert (scene.as_expected, scene.since) == (False, "D31")
    told = [f for f in check(built, expected=expected) if f.place in {"B1.1", "SC1"}]
    assert {f.outcome for f in told} == {Outcome.FAILS}
    assert all("since D31 was fitted" in f.says for f in told if f.rule == "test_missing")
    assert sorted(f.place for f in told if f.rule == "test_missing") == ["B1.1", "SC1"]


def test_a_test_made_in_the_visit_that_fits_counts() -> None:
    assert since(adopted(PRESSED, RAN, FIT)) == {}
    assert since(journal_of([PRESSED, RAN, FIT])) == {}


def test_a_test_made_after_the_fitting_counts_again_and_stays_so_when_adopted() -> None:
    first = adopted(PRESSED)
    second = merge(first, journal_of([FIT, AGAIN]))
    assert since(second) == {}
    assert since(adopted(number=101, earlier=second)) == {}


def test_a_later_adoption_of_the_fitting_alone_does_not_make_an_old_test_new() -> None:
    assert since(adopted(FIT, number=101, earlier=adopted(PRESSED))) == {"gang:B1.1": "D31"}


def test_a_test_adopted_after_the_fitting_counts() -> None:
    assert since(adopted(PRESSED, number=101, earlier=adopted(FIT))) == {}


def test_an_adoption_withdrawn_tells_nothing() -> None:
    journal = merge(adopted(PRESSED), journal_of([FIT]))
    back = write(200, "withdrawn", f"house:{HOUSE.id}", of=100, sees=(100,))
    assert since(merge(journal, journal_of([back]))) == {}
