"""Where nothing fits: changes that would help, each tried for real on a copy of the house."""

from collections.abc import Iterator
from itertools import combinations, product

from secondfix.selection.changes import Change, changes
from secondfix.selection.choice import Fit, Help, Refusal, Spot
from secondfix.selection.ground import Ground
from secondfix.selection.judging import judged
from secondfix.selection.moving import to_the_luminaires


def helps(ground: Ground, spot: Spot, refused: tuple[Refusal, ...]) -> tuple[Help, ...]:
    """What helps: of each kind of change the smallest; a module at the luminaire; else two changes together.

    Empty where none of these brings any model to fit.
    """
    kinds = changes(ground, spot, refused)
    found = [h for kind in kinds if (h := _first(ground, spot, kind))]
    found += _at_luminaires(ground, spot)
    if not found:
        found = [h for a, b in combinations(kinds, 2) if (h := _both(ground, spot, a, b))]
    return tuple(found)


def _first(ground: Ground, spot: Spot, kind: tuple[Change, ...]) -> Help | None:
    """The first of one kind that brings a model to fit."""
    for change in kind:
        fits = _after(change.ground_of(ground), change.spot_of(spot))
        if fits:
            return Help(change.words, spot.place, fits)
    return None


def _both(ground: Ground, spot: Spot, ones: tuple[Change, ...], others: tuple[Change, ...]) -> Help | None:
    """The smallest two of two kinds, where the largest two help at all."""
    if not _after(*_done(ground, spot, ones[-1], others[-1])):
        return None
    for one, other in product(ones, others):
        fits = _after(*_done(ground, spot, one, other))
        if fits:
            return Help(f"{one.words} {other.words}", spot.place, fits)
    return None


def _done(ground: Ground, spot: Spot, one: Change, other: Change) -> tuple[Ground, Spot]:
    return other.ground_of(one.ground_of(ground)), other.spot_of(one.spot_of(spot))


def _after(ground: Ground, spot: Spot) -> tuple[str, ...]:
    fits: tuple[Fit, ...] = judged(ground, spot)[0]
    return tuple(f.model for f in fits)


def _at_luminaires(ground: Ground, spot: Spot) -> Iterator[Help]:
    """Only where every load moved finds its module, and what stays in the box a device."""
    moved = to_the_luminaires(ground, spot)
    if moved is None:
        return
    tried = [Help(words, at.place, _after(moved.ground, at)) for words, at in moved.points]
    stays = not moved.left.outputs or _after(moved.ground, moved.left)
    if stays and all(one.fits for one in tried):
        yield from tried
