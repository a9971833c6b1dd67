"""Assumptions about names that sound alike."""

from secondfix.assumptions.assumption import Assumption

_FIT = "fit on the list of check pairs, not a validation"

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption(
        "by_ear_alike_pct",
        25,
        20,
        33,
        "%",
        "two names sound alike where at most this share of the sounds that tell them apart differs",
        _FIT,
        least=0,
        most=100,
    ),
    Assumption(
        "by_ear_near_pct",
        45,
        40,
        50,
        "%",
        "two names can be misheard where at most this share of the sounds that tell them apart differs",
        f"{_FIT}; every value from 38 to 59 answers the list the same",
        least=0,
        most=100,
    ),
    Assumption(
        "by_ear_final_pct",
        50,
        25,
        100,
        "%",
        "what a d, t or n lost at the end of a word counts, as a share of any other sound lost",
        "engineering judgement; that these are lost most often: English Consistent Confusion Corpus 1.2",
        least=0,
        most=100,
    ),
)
