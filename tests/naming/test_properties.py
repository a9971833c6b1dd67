"""What holds for every name and every house."""

from copy import deepcopy

import pytest
from hypothesis import given
from hypothesis import strategies as st

from secondfix.findings import Outcome
from secondfix.naming import folded, names, shortened
from secondfix.terms import Protocol
from tests.naming.called import asked
from tests.scenes.houses import Plain, houses
from tests.scenes.models import MODELS
from tests.scenes.small import read

WORDS = st.text(st.characters(exclude_categories=("Cs",)), max_size=60)
PLAIN_WORDS = st.text(st.sampled_from("abc éß漢 ZQ\u0301"), min_size=1, max_size=60)


@given(WORDS)
def test_folding_twice_is_folding_once(text: str) -> None:
    assert folded(folded(text)) == folded(text)


@given(PLAIN_WORDS)
def test_case_and_spaces_do_not_make_another_name(text: str) -> None:
    assert folded(f"  {text.upper()} \t") == folded(text.upper().replace(" ", "   "))


@given(WORDS, st.integers(8, 40), st.lists(WORDS, max_size=8))
def test_a_shortened_name_fits_and_is_nobody_elses(name: str, limit: int, others: list[str]) -> None:
    taken = {folded(o) for o in others} | {folded(name)}
    short = shortened(name, limit_bytes=limit, taken=taken)
    assert len(short.encode()) <= limit
    assert folded(short) not in taken


@given(st.text(st.sampled_from("stairwell lamp "), min_size=1, max_size=30), st.integers(2, 40))
def test_shortened_names_stay_apart_from_each_other(name: str, times: int) -> None:
    taken: set[str] = set()
    for _ in range(times):
        short = shortened(name, limit_bytes=16, taken=taken)
        assert folded(short) not in taken
        taken.add(folded(short))


@pytest.mark.parametrize(
    ("name", "short"),
    [
        ("Hall Ceiling", "Hall Ceiling"),
        ("Hall Hall Ceiling Light", "Hall Ceili Light"),
        ("Bedroom 12 wardrobe B07.2", "Bed 12 war B07.2"),
        ("a b c d e f g h i j k", "a b c d e f g h"),
        ("1234567890123 98765", "1234567890 98765"),
        ("Wohnzimmer Stehleuchte", "Wohnzimm Stehleu"),
        ("漢字漢字漢字漢字", "漢字漢字漢"),
        ("Salle à manger côté cour", "Sal à man c co"),
    ],
)
def test_the_longest_word_gives_way_first(name: str, short: str) -> None:
    assert shortened(name, limit_bytes=16, taken=()) == short


def test_a_mark_is_never_parted_from_its_letter() -> None:
    assert shortened("q\u0301" * 9, limit_bytes=8, taken=()) == "q\u0301q\u0301"


@pytest.mark.parametrize("limit", [0, 7, 65])
def test_a_limit_out_of_range_is_our_own_fault(limit: int) -> None:
    with pytest.raises(ValueError, match="8 to 64"):
        shortened("x", limit_bytes=limit, taken=())


def every_device_shows_what_its_model_says(plain: Plain) -> None:
    for device_id, entries in names(read(plain)).of_device.items():
        model = MODELS.get(plain["devices"][device_id].get("model", ""))
        numbers = [e.number for e in entries]
        assert numbers == sorted(set(numbers))
        assert all(e.name for e in entries)
        if model:
            assert len(entries) == model.entries
            assert (0 in numbers) is model.whole_entry
            if model.protocol is not Protocol.ZWAVE:
                assert all(e.endpoint == e.number for e in entries)


def names_by_id_never_clash(plain: Plain) -> None:
    """Gangs that feed nothing carry their id: only rooms, scenes, loads and devices can clash."""
    idle = [e.name for e in names(read(plain)).entries() if e.duty and not e.load_id]
    assert len({folded(name) for name in idle}) == len(idle)


def _blank(plain: Plain, data: st.DataObject) -> Plain:
    blank = deepcopy(plain)
    spots = [("loads", k, "purpose") for k in plain["loads"]] + [
        ("devices", k, "model") for k in plain["devices"]
    ]
    for collection, key, field in data.draw(st.lists(st.sampled_from(spots), max_size=4)):
        blank[collection][key].pop(field, None)
    extended = {g.get("extends") for b in plain["boxes"].values() for g in b["gangs"].values()}
    gangs = [(b, n) for b, box in plain["boxes"].items() for n in box["gangs"] if f"{b}.{n}" not in extended]
    for box, gang in data.draw(st.lists(st.sampled_from(gangs), max_size=2)) if gangs else []:
        blank["boxes"][box]["gangs"][gang] = {}
    return blank


def blanking_makes_no_pass(plain: Plain, data: st.DataObject) -> None:
    plain = deepcopy(plain)
    for load in plain["loads"].values():
        load["name"] = data.draw(st.sampled_from(["Lamp", "Tank", "Lamp over the long table"]))
    for device in plain["devices"].values():
        device["name"] = data.draw(st.sampled_from(["Lamp", "Post", "Thing"]))
    plain["rooms"]["R3"]["name"] = data.draw(st.sampled_from(["Room R1 Lamp", "Room R1 B1", "Nook"]))
    plain["naming"] = {"whole_entry": ["room", data.draw(st.sampled_from(["box", "device"]))]}
    before: dict[tuple[str, str], set[Outcome]] = {}
    for finding in asked(plain):
        before.setdefault((finding.rule, finding.place), set()).add(finding.outcome)
    for finding in asked(_blank(plain, data)):
        if finding.outcome is Outcome.PASSES:
            stood = before.get((finding.rule, finding.place), {Outcome.PASSES})
            assert Outcome.PASSES in stood, (finding.rule, finding.place)


@given(houses())
def test_a_device_shows_the_entries_of_its_model(plain: Plain) -> None:
    every_device_shows_what_its_model_says(plain)
    names_by_id_never_clash(plain)


@given(houses(), st.data())
def test_a_blank_never_makes_a_pass(plain: Plain, data: st.DataObject) -> None:
    blanking_makes_no_pass(plain, data)


@pytest.mark.deep
@given(houses(), st.data())
def test_all_of_it_on_thousands_of_houses(plain: Plain, data: st.DataObject) -> None:
    every_device_shows_what_its_model_says(plain)
    names_by_id_never_clash(plain)
    blanking_makes_no_pass(plain, data)
