"""Findings in the words of the rules that their house follows."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from secondfix.findings import Finding, Look
from secondfix.house import House, is_nec
from secondfix.terms import said_around_names


def in_words_of(house: House, findings: Iterable[Finding]) -> Iterator[Finding]:
    """The same findings; in NEC houses *de-energize* for *isolate*, and the like, where they tell what to do.

    Rules, places, values and sources stay as they are.
    """
    nec = is_nec(house)
    for f in findings:
        if not nec:
            yield f
            continue
        looks = tuple(Look(k.place, k.field, said_around_names(k.words, nec=nec)) for k in f.looks)
        says, remedy = (said_around_names(words, nec=nec) for words in (f.says, f.remedy))
        yield replace(f, says=says, remedy=remedy, looks=looks)
