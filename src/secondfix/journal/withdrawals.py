"""Which entries are withdrawn: a withdrawal may itself be withdrawn."""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Withdrawals:
    """``gone`` are the entries withdrawn; ``rings`` withdrawals of one another, none of which counts."""

    gone: frozenset[str]
    rings: frozenset[str]


def withdrawn_of(targets: Mapping[str, str]) -> Withdrawals:
    """``targets`` gives for each withdrawal the entry it withdraws. Time linear.

    An entry is withdrawn when a withdrawal of it stands; a withdrawal stands unless withdrawn.
    Withdrawals in a ring cannot be honest; they are void, and so is what they would do.
    """
    waiting = dict.fromkeys(targets, 0)
    for target in targets.values():
        if target in waiting:
            waiting[target] += 1
    gone: set[str] = set()
    free = [i for i, n in waiting.items() if n == 0]
    while free:
        here = free.pop()
        target = targets[here]
        if here not in gone:
            gone.add(target)
        if target in waiting:
            waiting[target] -= 1
            if waiting[target] == 0:
                free.append(target)
    # Each withdrawal has one target, so what is left is rings alone.
    return Withdrawals(frozenset(gone), frozenset(i for i, n in waiting.items() if n))
