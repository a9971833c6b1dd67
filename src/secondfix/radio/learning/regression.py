"""Bayesian regression of measured losses, those too weak to be heard among them: a Gibbs sampler.

Many chains run side by side, and each gives one sample, so samples do not hang on one another.
"""

from dataclasses import dataclass

import numpy as np

from secondfix.radio.crossing import Bools, Floats, Ints

SWEEPS = 160
TOGETHER = 8  # every so many sweeps the spread is drawn without leaning on the weights at hand


@dataclass(frozen=True, slots=True, eq=False)
class Problem:
    """``loss = parts @ weights + own + noise`` for each row, in dB beyond what is computed.

    ``loss`` (rows,) is what was measured, or where ``beyond`` is True the loss that was at least there.
    ``parts`` (rows, weights). Weights are normal about 0 with ``sd``, times the spread where ``with_spread``
    is True, else times the width. A row's own part is normal with variance ``own`` times the spread squared,
    its noise with ``noise2``. ``spreads`` and ``widths`` list the values that spread and width may take
    together, ``chances`` how likely each is before anything is measured (summing to 1).
    """

    loss: Floats
    beyond: Bools
    parts: Floats
    own: Floats
    noise2: Floats
    sd: Floats
    with_spread: Bools
    spreads: Floats
    widths: Floats
    chances: Floats


@dataclass(frozen=True, slots=True, eq=False)
class Samples:
    """Draws from the posterior, one a chain: ``weights`` (chains, weights), ``spread`` in dB and ``width``.

    ``loss`` (chains, rows) is what was measured, and for what was not heard what it may have been.
    """

    weights: Floats
    spread: Floats
    width: Floats
    loss: Floats


@dataclass(frozen=True, slots=True, eq=False)
class _Grid:
    """What does not change from sweep to sweep, for each value of the spread."""

    variance: Floats  # (values, rows)
    half: Floats  # (values, weights, weights): inverse of the lower Cholesky factor of the precision
    level: Floats  # (values,): the part of the log likelihood that no loss enters


def sampled(problem: Problem, *, chains: int, seed: int) -> Samples:
    """Draw ``chains`` samples of weights and spread given what was measured and what was not heard.

    Equation: normal linear model with conjugate weights; the spread on a grid, drawn from its marginal;
    losses beyond hearing drawn from the normal's tail (data augmentation). Without any of these the draws
    are exact; with them after 160 sweeps from scattered starts. Source: Tobin 1958 for the censored
    likelihood, Chib 1992 for the sampler (both from memory). Leaves out: a spread between the values.
    """
    draw = np.random.default_rng(seed)
    grid = _grid_of(problem)
    loss = np.repeat(problem.loss[None], chains, axis=0)
    rows = np.flatnonzero(problem.beyond)
    spread = draw.choice(len(problem.spreads), chains, p=problem.chances)
    if len(rows):
        scatter = problem.spreads[spread, None] * np.abs(draw.standard_normal((chains, len(rows))))
        loss[:, rows] += scatter
    weights = np.zeros((chains, problem.parts.shape[1]))
    for sweep in range(SWEEPS if len(rows) else 1):
        if sweep % TOGETHER == 0:
            spread = _spread_alone(problem, grid, loss, draw)
        else:
            spread = _spread_given(problem, grid, loss, weights, draw)
        weights = _weights(problem, grid, loss, spread, draw)
        if len(rows):
            centre = weights @ problem.parts[rows].T
            sd = np.sqrt(grid.variance[spread][:, rows])
            loss[:, rows] = centre + sd * _beyond((problem.loss[rows] - centre) / sd, draw)
    return Samples(weights, problem.spreads[spread], problem.widths[spread], loss)


def _grid_of(problem: Problem) -> _Grid:
    spreads = problem.spreads[:, None]
    variance = problem.own * spreads**2 + problem.noise2
    sd = problem.sd * np.where(problem.with_spread, spreads, problem.widths[:, None])
    # Few rows differ in how sure they are: one product of the parts for each such kind of row.
    kinds, of_kind = np.unique(np.stack([problem.own, problem.noise2]), axis=1, return_inverse=True)
    precision = np.zeros((len(spreads), problem.parts.shape[1], problem.parts.shape[1]))
    for kind in range(kinds.shape[1]):
        parts = problem.parts[of_kind.ravel() == kind]
        each = 1 / (kinds[0, kind] * problem.spreads**2 + kinds[1, kind])
        precision += each[:, None, None] * (parts.T @ parts)
    at = np.arange(precision.shape[1])
    precision[:, at, at] += 1 / sd**2
    lower = np.linalg.cholesky(precision)
    half = np.linalg.inv(lower)
    level = (
        np.log(problem.chances)
        - np.log(variance).sum(axis=1) / 2
        - np.log(sd).sum(axis=1)
        - np.log(np.diagonal(lower, axis1=1, axis2=2)).sum(axis=1)
    )
    return _Grid(variance, half, level)


def _spread_alone(problem: Problem, grid: _Grid, loss: Floats, draw: np.random.Generator) -> Ints:
    """Draw each chain's value of the spread, the weights integrated out."""
    square = (loss**2) @ (1 / grid.variance).T
    likely = np.empty((len(loss), len(problem.spreads)))
    for value, variance in enumerate(grid.variance):
        pull = (loss / variance) @ problem.parts @ grid.half[value].T
        likely[:, value] = grid.level[value] + (pull**2).sum(axis=1) / 2
    return _picked(likely - square / 2, draw)


def _spread_given(
    problem: Problem, grid: _Grid, loss: Floats, weights: Floats, draw: np.random.Generator
) -> Ints:
    """Draw each chain's value of the spread, the weights as they stand."""
    left = (loss - weights @ problem.parts.T) ** 2 @ (1 / grid.variance).T
    square = (weights / problem.sd) ** 2
    level = np.log(problem.chances) - np.log(grid.variance).sum(axis=1) / 2
    for kind, scale in ((problem.with_spread, problem.spreads), (~problem.with_spread, problem.widths)):
        left += square[:, kind].sum(axis=1)[:, None] / scale**2
        level = level - int(kind.sum()) * np.log(scale)
    return _picked(level - left / 2, draw)


def _picked(likely: Floats, draw: np.random.Generator) -> Ints:
    """One column of each row, as likely as e to its value."""
    share = np.cumsum(np.exp(likely - likely.max(axis=1, keepdims=True)), axis=1)
    at = draw.random(len(likely))[:, None] * share[:, -1:]
    out: Ints = np.minimum((share < at).sum(axis=1), likely.shape[1] - 1).astype(np.int64)
    return out


def _weights(problem: Problem, grid: _Grid, loss: Floats, spread: Ints, draw: np.random.Generator) -> Floats:
    """Draw each chain's weights, losses and spread as they stand."""
    pull = (loss / grid.variance[spread]) @ problem.parts
    random = draw.standard_normal(pull.shape)
    out = np.empty_like(pull)
    for value in np.unique(spread):
        here = spread == value
        half = grid.half[value]
        out[here] = (pull[here] @ half.T + random[here]) @ half
    return out


def _beyond(least: Floats, draw: np.random.Generator) -> Floats:
    """Standard normal numbers above ``least``, exact far out in the tail."""
    from scipy.special import log_ndtr, ndtri_exp  # noqa: PLC0415 - a cold `check` must not load it

    out: Floats = -ndtri_exp(log_ndtr(-least) + np.log1p(-draw.random(least.shape)))
    return out
