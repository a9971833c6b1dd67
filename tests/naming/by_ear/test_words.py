"""From the written name to the words said, and how each is said."""

import re
from pathlib import Path

import pytest

from secondfix.naming.by_ear.dictionary import dictionary, pronounced
from secondfix.naming.by_ear.phones import CONSONANTS, VOWELS
from secondfix.naming.by_ear.pronunciations import TEXT
from secondfix.naming.by_ear.words import distinguishing, words_of

WELL_FORMED = {*CONSONANTS, *(f"{vowel}{stress}" for vowel in VOWELS for stress in "012")}


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("Bedroom 2", "bedroom two"),
        ("Bedroom  TWO", "bedroom two"),
        ("Lamp 12, left-hand", "lamp twelve left hand"),
        ("Room 100", "room one hundred"),
        ("Flat 342", "flat three hundred forty two"),
        ("1900", "one thousand nine hundred"),
        ("007", "zero zero seven"),
        ("20261", "two zero two six one"),
        ("B12", "b twelve"),
        ("1st floor", "first floor"),
        ("22nd, 13th & 20TH", "twenty second thirteenth and twentieth"),
        ("4th 5th 8th 9th 12th", "fourth fifth eighth ninth twelfth"),
        ("WC", "w c"),
        ("TV", "tv"),
        ("Café", "cafe"),
        ("Anna’s lamp", "anna's lamp"),
        ("— · —", ""),
        ("Küche", "kuche"),
        ("台所 light", "台所 light"),
        ("٣ lamps", "lamps"),
    ],
)
def test_what_is_said(name: str, words: str) -> None:
    assert words_of(name) == tuple(words.split())


@pytest.mark.parametrize(
    ("word", "phones"),
    [
        ("porch", "P AO1 R CH"),
        ("a", "EY1"),
        ("anna's", "AE1 N AH0 Z"),
        ("zoe's", "Z OW1 IY0 Z"),
        ("lock's", "L AA1 K S"),
        ("torches", "T AO1 R CH IH0 Z"),
        ("awnings", "AA1 N IH0 NG Z"),
        ("grace's", "G R EY1 S IH0 Z"),
        ("downlights", "D AW1 N L AY2 T S"),
        ("lampshade", "L AE1 M P SH EY2 D"),
        ("scullery", "S K AH1 L ER0 IY0"),
    ],
)
def test_how_it_is_said(word: str, phones: str) -> None:
    assert pronounced(word) == tuple(phones.split())


@pytest.mark.parametrize("word", ["zorbin", "台所", "'s", "upquux", "kuche", "lightes", "quuxlamp"])
def test_what_is_not_known_is_not_guessed(word: str) -> None:
    assert pronounced(word) is None


def test_the_dictionary_is_sorted_well_formed_and_has_one_vowel_a_word() -> None:
    lines = TEXT.splitlines()
    words = [line.split()[0] for line in lines]
    assert words == sorted(set(words))
    assert all(re.fullmatch("[a-z]+", word) for word in words)
    assert 3000 <= len(words) <= 8000
    for word, phones in dictionary().items():
        assert phones, word
        assert set(phones) <= WELL_FORMED, word
        assert any(phone[-1] in "012" for phone in phones), word


def test_the_letters_and_numbers_are_all_there() -> None:
    assert all(pronounced(letter) for letter in "abcdefghijklmnopqrstuvwxyz")
    for number in [*range(1000), 1000, 9999]:
        assert all(pronounced(word) for word in words_of(str(number)))
    for number in range(1, 100):
        assert all(pronounced(word) for word in words_of(f"{number}th"))


def test_the_licence_stands_beside_the_words(tree: Path) -> None:
    licence = (tree / "src/secondfix/naming/by_ear/pronunciations.LICENCE.txt").read_text()
    assert "Carnegie Mellon University" in licence
    assert "Redistribution and use in source and binary forms" in licence


@pytest.mark.parametrize(
    ("a", "b", "left"),
    [
        ("hall light", "wall light", ("hall", "wall")),
        ("hall light one", "light two hall", ("one", "two")),
        ("kitchen", "kitchen fan", ("", "fan")),
        ("new new hall", "new hall", ("new", "")),
        ("light hall", "hall light", ("", "")),
    ],
)
def test_shared_words_do_not_tell_names_apart(a: str, b: str, left: tuple[str, str]) -> None:
    one, other = distinguishing(tuple(a.split()), tuple(b.split()))
    assert (" ".join(one), " ".join(other)) == left
