"""What measured links teach of the others, on invented houses, beside least squares on the same links.

The error on links that nobody measured is told above that of a fit on all links: for the learning a least
squares fit of the same parts of the house, for a law of distance the same law fitted to all.
"""

from __future__ import annotations

import time
from dataclasses import dataclass, replace
from functools import cache

import numpy as np

from bench.figures import Pair, figure
from bench.measured_houses import DEFAULTS, Floats, Truth, house_with_truth
from secondfix.radio import learn
from secondfix.radio.learning.regression import Problem, sampled

HOUSES = 300


@dataclass(frozen=True)
class Errors:
    """A number a house, by learning and by least squares: percent above the fit on all links, or dB."""

    learned: Floats
    least_squares: Floats


@cache
def truth(seed: int, elsewhere: bool) -> Truth:
    return house_with_truth(seed, elsewhere=elsewhere)


@cache
def excess(links: int) -> Errors:
    """Every house with so many of its links measured, picked at random, not heard ones told as such."""
    tried = [t for seed in range(HOUSES) if (t := _tried(truth(seed, False), seed, links))]
    return Errors(
        np.array([100 * (t.learned / t.parts_on_all - 1) for t in tried]),
        np.array([100 * (t.least_squares / t.law_on_all - 1) for t in tried]),
    )


@cache
def error_db(links: int) -> Errors:
    """The errors themselves where houses follow another law than ours."""
    tried = [t for seed in range(HOUSES) if (t := _tried(truth(seed, True), seed, links))]
    return Errors(np.array([t.learned for t in tried]), np.array([t.least_squares for t in tried]))


@dataclass(frozen=True)
class Tried:
    """Errors in dB on the links of one house that nobody measured."""

    learned: float
    parts_on_all: float
    least_squares: float
    law_on_all: float


def _tried(house: Truth, seed: int, links: int) -> Tried | None:
    every = np.arange(len(house.level))
    picked = np.random.default_rng([seed, 9]).permutation(every)[:links]
    left = np.setdiff1d(every, picked)
    learned = learn(house.rows, DEFAULTS, house.answer, house.measured(picked))
    law = np.column_stack([np.ones(len(every)), house.away])
    heard = picked[house.heard[picked]]
    if len(heard) < 2:
        return None  # no line goes through one point
    return Tried(
        _rms(house.level[left] - learned.predicted("N1").ab_dbm[left]),
        _error(house.parts, house.level - house.computed, every, left),
        _error(law, house.level, heard, left),
        _error(law, house.level, every, left),
    )


def _error(parts: Floats, level: Floats, fitted: np.ndarray, left: np.ndarray) -> float:
    weights, *_ = np.linalg.lstsq(parts[fitted], level[fitted], rcond=1e-8)
    return _rms(level[left] - parts[left] @ weights)


def _rms(error: Floats) -> float:
    return float(np.sqrt(np.mean(error**2)))


def _at(found: Errors, share: float) -> Pair:
    return float(np.quantile(found.learned, share)), float(np.quantile(found.least_squares, share))


@figure(
    "links not measured, 5 measured, median house: error above a fit on all (aim 8), least squares", unit="%"
)
def five_median() -> Pair:
    return _at(excess(5), 0.5)


@figure("links not measured, 5 measured, nine houses in ten (aim 25), least squares", unit="%")
def five_ninety() -> Pair:
    return _at(excess(5), 0.9)


@figure("links not measured, 10 measured, median house (aim 4), least squares", unit="%")
def ten_median() -> Pair:
    return _at(excess(10), 0.5)


@figure("links not measured, 10 measured, nine houses in ten (aim 12), least squares", unit="%")
def ten_ninety() -> Pair:
    return _at(excess(10), 0.9)


@figure("error after 5 measured in houses of another law, median house, least squares", unit="dB")
def elsewhere_median() -> Pair:
    return _at(error_db(5), 0.5)


@figure("error after 5 measured in houses of another law, nine in ten, least squares", unit="dB")
def elsewhere_ninety() -> Pair:
    return _at(error_db(5), 0.9)


@figure("learning from 40 links of 40 devices, one in four not heard, 64 chains one by one", unit="ms")
def forty_links() -> Pair:
    """Side by side beside one after another, of the same problem."""
    problem = _problem()
    sampled(problem, chains=64, seed=1)
    began = time.perf_counter()
    sampled(problem, chains=64, seed=1)
    together = time.perf_counter() - began
    began = time.perf_counter()
    for seed in range(64):
        sampled(problem, chains=1, seed=seed)
    return together * 1000, (time.perf_counter() - began) * 1000


def _problem() -> Problem:
    draw = np.random.default_rng(11)
    devices, links = 40, 40
    a = draw.integers(0, devices, links)
    b = (a + draw.integers(1, devices, links)) % devices
    parts = np.zeros((links, 8 + devices))
    parts[:, :8] = draw.random((links, 8))
    parts[np.arange(links), 8 + a] = 1
    parts[np.arange(links), 8 + b] = 1
    with_spread = np.arange(8 + devices) >= 8
    spreads = np.tile(np.linspace(4.0, 12.0, 31), 2)
    chances = np.full(62, 1 / 62)
    problem = Problem(
        draw.normal(0, 8, links), np.zeros(links, np.bool_), parts, np.full(links, 0.7), np.full(links, 9.5),
        np.where(with_spread, 0.4, 4.0), with_spread, spreads, np.repeat([1.0, 3.0], 31), chances,
    )  # fmt: skip
    return replace(problem, beyond=np.arange(links) % 4 == 0)
