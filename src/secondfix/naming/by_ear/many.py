"""The weighted distance of many pairs of phrases in one go, to leave out all that are far apart."""

from collections.abc import Iterable, Sequence

import numpy as np
import numpy.typing as npt

from secondfix.naming.by_ear.distance import Said
from secondfix.naming.by_ear.judge import Limits
from secondfix.naming.by_ear.phones import COST, WHOLE

Words = tuple[str, ...]
Ints = npt.NDArray[np.int32]

_ORDER = {phone: n for n, phone in enumerate(sorted(COST), start=1)}  # 0 is a blank behind a short phrase
_COSTS = np.full((len(_ORDER) + 1, len(_ORDER) + 1), WHOLE, dtype=np.int32)
_COSTS[1:, 1:] = [[COST[p][q] for q in _ORDER] for p in _ORDER]
_AT_ONCE = 4096  # pairs of like length at a time: short phrases do not wait for long ones


class Laid:
    """Phrases laid out once, a column each, to be compared in any pairs at one set of limits."""

    def __init__(self, limits: Limits) -> None:
        self._limits = limits
        self._column: dict[Words, int] = {}
        self._rhythms: dict[tuple[int, tuple[str, ...]], int] = {}
        self._phones = np.zeros((0, 0), dtype=np.int32)
        self._loss = np.zeros((0, 0), dtype=np.int32)
        self._sizes = np.zeros(0, dtype=np.int64)
        self._rhythm = np.zeros(
            0, dtype=np.int64
        )  # one number for a rhythm; below nothing where none is heard

    def lay_out(self, phrases: Iterable[tuple[Words, Said]]) -> None:
        """Take in what is not laid out yet."""
        new = {words: said for words, said in phrases if words not in self._column}
        if not new:
            return
        first = len(self._column)
        self._column |= {words: first + n for n, words in enumerate(new)}
        phones, loss = _laid_out(list(new.values()), self._limits.final_permille)
        self._phones, self._loss = _beside(self._phones, phones), _beside(self._loss, loss)
        self._sizes = np.append(self._sizes, [len(p.phones) for p in new.values()])
        self._rhythm = np.append(
            self._rhythm, [self._rhythm_of(p, ~n) for n, p in enumerate(new.values(), first)]
        )

    def _rhythm_of(self, phrase: Said, alone: int) -> int:
        if not phrase.stressed:
            return alone
        return self._rhythms.setdefault((phrase.syllables, phrase.stressed), len(self._rhythms))

    def within_reach(self, pairs: Sequence[tuple[Words, Words]]) -> list[tuple[Words, Words]]:
        """The pairs of phrases, each given by its words, that the rule finds near or alike."""
        columns = self._columns(pairs)
        sizes, rhythms = self._sizes[columns], self._rhythm[columns]
        share = max(self._limits.near_pct, self._limits.alike_pct)
        near = np.maximum(WHOLE, sizes.max(axis=1) * WHOLE * share // 100)
        found = (self._distances(columns) <= near) | (rhythms[:, 0] == rhythms[:, 1])
        return [pairs[n] for n in np.flatnonzero(found).tolist()]

    def weighted(self, pairs: Sequence[tuple[Words, Words]]) -> Ints:
        """``distance.weighted`` of each pair, in thousandths of a phone."""
        return self._distances(self._columns(pairs))

    def _columns(self, pairs: Sequence[tuple[Words, Words]]) -> npt.NDArray[np.int64]:
        both = [(self._column[a], self._column[b]) for a, b in pairs]
        return np.array(both, dtype=np.int64).reshape(-1, 2)

    def _distances(self, columns: npt.NDArray[np.int64]) -> Ints:
        out = np.zeros(len(columns), dtype=np.int32)
        sizes = self._sizes[columns]
        order = np.argsort(sizes.sum(axis=1), kind="stable")
        for start in range(0, len(columns), _AT_ONCE):
            at = order[start : start + _AT_ONCE]
            tops = sizes[at].max(axis=0)
            first, second = (
                (self._phones[:top, columns[at, side]], self._loss[:top, columns[at, side]])
                for side, top in enumerate(tops)
            )
            out[at] = _distances(first, second)
        return out


def _beside(held: Ints, new: Ints) -> Ints:
    """Columns of both, the shorter filled up with nothing."""
    most = max(len(held), len(new))
    return np.hstack([np.pad(part, ((0, most - len(part)), (0, 0))) for part in (held, new)])


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
    """The same table as in ``distance.weighted``, a row of it for all pairs at once.

    Along a row, what is lost on the way is taken off, so that the best way so far is a running least.
    """
    spent = np.zeros((len(b[1]) + 1, b[1].shape[1]), dtype=np.int32)
    np.cumsum(b[1], axis=0, out=spent[1:])
    row = spent.copy()
    for phone, lose in zip(*a, strict=True):
        said = row[:-1] + _COSTS.take(phone * len(_COSTS) + b[0])
        row += lose
        np.minimum(row[1:], said, out=row[1:])
        row -= spent
        for j in range(1, len(row)):
            np.minimum(row[j], row[j - 1], out=row[j])
        row += spent
    out: Ints = row[-1]
    return out
