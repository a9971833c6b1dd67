"""Our own sentences in the words of houses that follow NFPA 70."""

import pytest

from secondfix.terms import said, said_around_names


@pytest.mark.parametrize(
    ("words", "nec"),
    [
        ("Isolate, lock off, prove dead.", "De-energize, lock out and tag, test for absence of voltage."),
        ("Before any isolation", "Before any lockout"),
        ("Switch the circuit off at the board.", "Switch the circuit off at the panelboard."),
        ("line to earth", "line to ground"),
        ("Pull it out of its socket.", "Pull it out of its receptacle."),
        ("the protective conductor", "the equipment grounding conductor"),
        ("treat it as live until proved dead", "treat it as live until tested for absence of voltage"),
        ("The panelboard is grounded.", "The panelboard is grounded."),
    ],
)
def test_words_of_the_trade_there_stand_for_ours(words: str, nec: str) -> None:
    assert said(words, nec=True) == nec
    assert said(words, nec=False) == words


def test_a_sentence_with_names_in_it_keeps_what_a_user_may_have_written() -> None:
    words = "Socket by the board room (Earth closet): isolate, lock off, prove dead."
    told = said_around_names(words, nec=True)
    assert told.startswith("Socket by the board room (Earth closet): ")
    assert told.endswith("de-energize, lock out and tag, test for absence of voltage.")
    assert said_around_names(words, nec=False) == words
