"""The weighted distance of many pairs of phrases in one go, to leave out all that are far apart."""

from collections.abc import Mapping, Sequence

import numpy as np
import numpy.typing as npt

from secondfix.naming.by_ear.distance import Said, same_rhythm
from secondfix.naming.by_ear.judge import Limits, reach
from secondfix.naming.by_ear.phones import COST, WHOLE

Words = tuple[str, ...]
Ints = npt.NDArray[np.int32]

_ORDER = {phone: n for n, phone in enumerate(sorted(COST), start=1)}  # 0 is a blank behind a short phrase
_COSTS = np.full((len(_ORDER) + 1, len(_ORDER) + 1), WHOLE, dtype=np.int32)
_COSTS[1:, 1:] = [[COST[p][q] for q in _ORDER] for p in _ORDER]
_AT_ONCE = 4096  # pairs of like length at a time: short phrases do not wait for long ones


def within_reach(
    phrases: Mapping[Words, Said], pairs: Sequence[tuple[Words, Words]], limits: Limits
) -> list[tuple[Words, Words]]:
    """The pairs of phrases, each given by its words, that the rule finds near or alike at these limits."""
    share = max(limits.near_pct, limits.alike_pct)
    size = {words: len(p.phones) for words, p in phrases.items()}
    distances = weighted_many(phrases, pairs, final_permille=limits.final_permille).tolist()
    return [
        (a, b)
        for (a, b), distance in zip(pairs, distances, strict=True)
        if distance <= reach(max(size[a], size[b]), share) or same_rhythm(phrases[a], phrases[b])
    ]


def weighted_many(
    phrases: Mapping[Words, Said], pairs: Sequence[tuple[Words, Words]], *, final_permille: int
) -> Ints:
    """``distance.weighted`` of each pair, in thousandths of a phone."""
    out = np.zeros(len(pairs), dtype=np.int32)
    if not pairs:
        return out
    column = {words: n for n, words in enumerate(phrases)}
    phones, loss = _laid_out(list(phrases.values()), final_permille)
    sizes = np.array([len(p.phones) for p in phrases.values()])
    columns = np.array([(column[a], column[b]) for a, b in pairs])
    order = np.argsort(sizes[columns].sum(axis=1), kind="stable")
    for start in range(0, len(pairs), _AT_ONCE):
        at = order[start : start + _AT_ONCE]
        sides = [columns[at, side] for side in (0, 1)]
        tops = [sizes[side].max() for side in sides]
        first, second = [
            (phones[:top, side], loss[:top, side]) for top, side in zip(tops, sides, strict=True)
        ]
        out[at] = _distances(first, second)
    return out


def _laid_out(phrases: Sequence[Said], final_permille: int) -> tuple[Ints, Ints]:
    """Phones by number and what losing each costs: one row for each place, one column for each phrase."""
    most = max(len(p.phones) for p in phrases)
    phones = np.zeros((most, len(phrases)), dtype=np.int32)
    loss = np.zeros_like(phones)
    for column, p in enumerate(phrases):
        phones[: len(p.phones), column] = [_ORDER[phone] for phone in p.phones]
        loss[: len(p.phones), column] = [final_permille if end else WHOLE for end in p.final]
    return phones, loss


def _distances(a: tuple[Ints, Ints], b: tuple[Ints, Ints]) -> Ints:
    """The same table as in ``distance.weighted``, each cell for all pairs at once."""
    row: list[Ints] = [np.zeros(a[0].shape[1], dtype=np.int32)]
    for loss in b[1]:
        row.append(row[-1] + loss)
    for phone, lose in zip(*a, strict=True):
        corner, left = row[0], row[0] + lose
        row[0] = left
        for j, (other, loss) in enumerate(zip(*b, strict=True), 1):
            left = np.minimum(np.minimum(row[j] + lose, left + loss), corner + _COSTS[phone, other])
            corner, row[j] = row[j], left
    return row[-1]
