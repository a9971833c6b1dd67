"""Names that sound alike, against what listeners heard and a table worked apart from this code."""

import re

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.naming.by_ear.distance import Said, same_rhythm
from secondfix.naming.by_ear.judge import Limits, Verdict, ends, judged, phrase, settled, shares
from secondfix.naming.by_ear.phones import COST
from secondfix.naming.by_ear.words import words_of

LIMITS = settled(default_assumptions())

# Word said, word heard, listeners who heard it of all listeners. Source: English Consistent Confusion Corpus
# 1.2 (Sheffield, CC BY 4.0), speech in noise. Where a pair was tried several times, the most.
LISTENERS = {
    ("bright", "right"): (12, 15),
    ("wall", "war"): (7, 15),
    ("like", "light"): (10, 15),
    ("flight", "light"): (8, 15),
    ("plight", "light"): (6, 15),
    ("morning", "warning"): (9, 15),
    ("scene", "seem"): (7, 15),
    ("cable", "table"): (8, 15),
    ("dorm", "door"): (11, 15),
    ("dawn", "door"): (13, 15),
    ("bath", "back"): (7, 15),
    ("ninth", "night"): (9, 15),
    ("floor", "law"): (7, 15),
    ("porch", "watch"): (8, 15),
    ("marriage", "garage"): (12, 15),
}
# The two that the rule misses. 'garage' rhymes with 'marriage' in Britain; the dictionary is of US English.
MISSED = {("porch", "watch"), ("marriage", "garage")}

# L phones differ of n in the longer phrase; the same rhythm; what the trial rule says. Source: worked apart
# from this code from the first pronunciations of the Carnegie Mellon dictionary, stress left out for L/n.
TABLE = """
bright/right 1/4 yes alike
wall/war 1/3 yes alike
like/light 1/3 yes alike
flight/light 1/4 yes alike
plight/light 1/4 yes alike
morning/warning 1/6 yes alike
scene/seem 1/3 yes alike
cable/table 1/5 yes alike
dorm/door 1/4 yes alike
dawn/door 1/3 yes alike
bath/back 1/3 yes alike
ninth/night 2/4 yes near
floor/law 2/4 yes near
porch/watch 3/4 no apart
marriage/garage 5/5 no apart
hall/wall 1/3 yes alike
fan/van 1/3 yes alike
fan/pan 1/3 yes alike
light/right 1/3 yes alike
hall light/wall light 1/6 yes alike
porch/torch 1/4 yes alike
lamp/ramp 1/4 yes alike
study/steady 1/5 no alike
landing/lending 1/6 no alike
fifteen/fifty 1/6 no alike
cellar/seller 0/4 yes alike
kitchen/chicken 2/5 yes near
bedroom/bathroom 2/6 no near
dining room/living room 3/8 no near
dining/living 3/5 no apart
bedroom one/bedroom two 3/9 no near
one/two 3/3 no apart
bed/bath 2/3 no apart
five/nine 2/3 yes near
garage/garbage 5/6 yes near
kitchen/garage 5/5 no apart
porch/kitchen 5/5 no apart
on/off 2/2 no apart
"""
ROWS = re.findall(r"^(.+)/(.+) (\d)/(\d) (yes|no) (\w+)$", TABLE, flags=re.MULTILINE)


def as_said(name: str) -> Said:
    spoken = phrase(words_of(name))
    assert spoken is not None, name
    return spoken


def verdict(a: str, b: str, limits: Limits = LIMITS) -> Verdict:
    return judged(as_said(a), as_said(b), limits)


def test_thirteen_of_the_fifteen_pairs_that_listeners_confused_are_caught() -> None:
    """A fit, not a validation: the limits were set on this very list."""
    caught = {pair for pair in LISTENERS if verdict(*pair) is not Verdict.APART}
    assert len(LISTENERS) == 15
    assert set(LISTENERS) - caught == MISSED
    assert all(2 * heard >= 0.75 * of for heard, of in LISTENERS.values())


def test_the_same_thirteen_are_caught_at_both_ends_of_the_limits() -> None:
    at = ends(default_assumptions())
    for limits in (at.strict, at.lax):
        assert {pair for pair in LISTENERS if verdict(*pair, limits) is Verdict.APART} == MISSED


@pytest.mark.parametrize("row", ROWS, ids="/".join)
def test_distance_rhythm_and_rule(row: tuple[str, ...]) -> None:
    # Exact: whole numbers.
    a, b, differ, longest, rhythm, rule = row
    one, other = as_said(a), as_said(b)
    assert shares(one, other, LIMITS)[:2] == (int(differ), int(longest))
    assert same_rhythm(one, other) is (rhythm == "yes")
    assert judged(one, other, LIMITS) == rule


def test_every_limit_from_38_to_59_percent_answers_the_table_the_same() -> None:
    # So says the source of the assumption by_ear_near_pct. Exact: whole percents tried one by one.
    def as_in_table(near_pct: int) -> bool:
        limits = Limits(LIMITS.alike_pct, near_pct, LIMITS.final_permille)
        return all(verdict(a, b, limits) == rule for a, b, *_, rule in ROWS)

    assert len(ROWS) == 38
    assert [pct for pct in range(20, 80) if as_in_table(pct)] == list(range(38, 60))


# Source: Miller & Nicely, J. Acoust. Soc. Am. 27 (1955) 338-352, symmetric, as tabled in the R package clue
# 0.3-64; the order of its abstract of 1954: f/θ, v/ð, p/k the most confused within voicing. Exact.
@pytest.mark.parametrize(
    ("pair", "heard"),
    [
        ("P K", 432), ("F TH", 423), ("D G", 342), ("V DH", 338), ("T K", 241), ("P T", 229), ("B V", 210),
        ("DH Z", 161), ("TH S", 157), ("M N", 151), ("DH B", 145), ("G Z", 139), ("Z ZH", 136),
        ("G ZH", 125), ("TH P", 124), ("G DH", 120), ("S SH", 115), ("D Z", 106), ("F P", 101),
    ],
)  # fmt: skip
def test_what_is_heard_for_what_costs_less(pair: str, heard: int) -> None:
    a, b = pair.split()
    assert COST[a][b] == COST[b][a] == 1000 - heard


def test_what_is_hardly_ever_heard_for_the_other_costs_all() -> None:
    """Least confused in the same table: f-ʒ 7 and n-ʃ 11 thousandths; ours keeps no figure below 100."""
    for a, b, heard in (("F", "ZH", 7), ("N", "SH", 11)):
        assert 1000 - COST[a][b] <= heard


def test_two_listings_of_confusions_agree_within_a_factor_of_two() -> None:
    """The corpus' counts (k-p 127, k-t 80, m-n 56, p-t 36) on the scale of the older figures by k-p.

    Tolerance: other speakers, other noise, half a century; a factor of two keeps the order of magnitude.
    """
    for (a, b), times in {("K", "T"): 80, ("M", "N"): 56, ("P", "T"): 36}.items():
        assert 0.5 <= (432 * times / 127) / (1000 - COST[a][b]) <= 2
