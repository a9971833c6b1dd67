"""Learning from measured links against closed forms and plain integrals of the published likelihoods.

Conjugate normal model: Lindley and Smith 1972 (from memory). Censored likelihood, a density for each value
that was read and a tail for each that was not: Tobin, Econometrica 26 (1958) (from memory), integrated here
with a fine grid. Moments of a normal's tail: scipy.stats.truncnorm.
"""

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.stats import norm, truncnorm

from secondfix.radio.learning.regression import Problem, sampled

Floats = NDArray[np.float64]
SPREAD, PRIOR, CHAINS = 8.0, 5.0, 40_000
READ = np.array([3.1, 12.4, -4.0, 7.7, 9.3])


def one_offset(loss: Floats, beyond: list[bool]) -> Problem:
    """Every link lost one unknown offset and a part of its own; spread and width known."""
    rows = len(loss)
    return Problem(
        loss, np.array(beyond), np.ones((rows, 1)), np.ones(rows), np.zeros(rows), np.array([PRIOR]),
        np.array([False]), np.array([SPREAD]), np.array([1.0]), np.array([1.0]),
    )  # fmt: skip


def test_the_offset_is_that_of_the_conjugate_normal() -> None:
    found = sampled(one_offset(READ, [False] * 5), chains=CHAINS, seed=1).weights[:, 0]
    precision = 1 / PRIOR**2 + len(READ) / SPREAD**2
    assert found.mean() == pytest.approx(READ.sum() / SPREAD**2 / precision, abs=4 / CHAINS**0.5 * 2.9)
    assert found.std() == pytest.approx(precision**-0.5, rel=0.02)


def test_the_offset_is_that_of_the_censored_likelihood() -> None:
    """Three read, two that lost at least 12 and 15 dB: mean and spread of prior times Tobin's likelihood."""
    loss, beyond = np.array([3.1, 12.4, 7.7, 12.0, 15.0]), [False, False, False, True, True]
    at = np.linspace(-40, 50, 20_001)
    log = norm.logpdf(at, 0, PRIOR)
    for value, not_read in zip(loss, beyond, strict=True):
        log += norm.logsf(value, at, SPREAD) if not_read else norm.logpdf(value, at, SPREAD)
    share = np.exp(log - log.max())
    share /= share.sum()
    mean = float(share @ at)
    found = sampled(one_offset(loss, beyond), chains=CHAINS, seed=2).weights[:, 0]
    assert found.mean() == pytest.approx(mean, abs=0.08)
    assert found.std() == pytest.approx(float(np.sqrt(share @ (at - mean) ** 2)), rel=0.02)


def test_the_spread_is_that_of_its_marginal_likelihood() -> None:
    """Offset integrated out in closed form, the spread one of nine values: chances of each."""
    spreads = np.linspace(4.0, 12.0, 9)
    problem = one_offset(READ, [False] * 5)
    chances = np.full(9, 1 / 9)
    problem = Problem(
        problem.loss, problem.beyond, problem.parts, problem.own, problem.noise2, problem.sd,
        problem.with_spread, spreads, np.ones(9), chances,
    )  # fmt: skip
    likely = []
    for s in spreads:
        covariance = s**2 * np.eye(5) + PRIOR**2
        _, size = np.linalg.slogdet(covariance)
        likely.append(-(size + READ @ np.linalg.solve(covariance, READ)) / 2)
    share = np.exp(np.array(likely) - max(likely))
    found = sampled(problem, chains=CHAINS, seed=3).spread
    counted = np.array([(found == s).mean() for s in spreads])
    assert counted == pytest.approx(share / share.sum(), abs=0.012)


@pytest.mark.parametrize("bound", [-2.0, 0.0, 3.0, 9.0])
def test_what_was_not_heard_is_drawn_from_the_tail_of_the_normal(bound: float) -> None:
    """With the offset all but known, one loss not heard is a normal above its bound."""
    problem = one_offset(np.array([bound * SPREAD]), [True])
    sure = Problem(
        problem.loss, problem.beyond, problem.parts, problem.own, problem.noise2, np.array([1e-6]),
        problem.with_spread, problem.spreads, problem.widths, problem.chances,
    )  # fmt: skip
    found = sampled(sure, chains=CHAINS, seed=4).loss[:, 0] / SPREAD
    mean, variance = truncnorm.stats(bound, np.inf, moments="mv")
    assert found.min() >= bound
    assert found.mean() == pytest.approx(float(mean), abs=0.02)
    assert found.std() == pytest.approx(float(variance) ** 0.5, rel=0.03)
