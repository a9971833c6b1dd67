"""Random houses and swaps against a brute force, and the entries that a swap expects against the fold."""

from collections import Counter

import pytest

from secondfix.assumptions import default_assumptions
from secondfix.house import schedule, uuid7
from secondfix.journal import Entry, Journal, as_built, journal_of, new_entry
from secondfix.maintenance import Outcome, SwapPlan, swap, written
from secondfix.scenes import resolve
from tests.maintenance import plainly
from tests.maintenance.random_swaps import Case, case

ASSUMED = default_assumptions()


def planned(one: Case, *, nearest: bool = False) -> SwapPlan:
    plan = swap(
        one.house,
        one.failed,
        [one.unit],
        models=one.models,
        assumptions=ASSUMED,
        whole=one.whole,
        nearest=nearest,
    )
    assert isinstance(plan, SwapPlan), plan
    return plan


def agrees(seed: int) -> str:
    one = case(seed)
    plan = planned(one)
    assert plan.outcome.value == plainly.outcome(one), (seed, plan.outcome, plan.reasons, plan.losses)
    assert {r.kind.value for r in plan.reasons} == plainly.refused(one), seed
    if plan.outcome is not Outcome.REFUSED:
        assert {loss.kind.value for loss in plan.losses} == plainly.losses(one), (seed, plan.losses)
        _entries_keep_the_promise(one, plan, seed)
    return plan.outcome.value


def _entries_keep_the_promise(one: Case, plan: SwapPlan, seed: int) -> None:
    plain = written(
        plan.entries, Journal(), house=one.house.id, revision="C", writer="Oda", at="2033-02-01T08:15+01:00",
        new_id=lambda n: uuid7(unix_ms=1_990_000_000_000 + n, random=bytes([seed % 251] * 10)),
    )  # fmt: skip
    entries = [new_entry(e, where="test") for e in plain]
    assert all(isinstance(e, Entry) for e in entries), entries
    built = as_built(one.house, journal_of(e for e in entries if isinstance(e, Entry)), models=one.models)
    assert not [t for t in built.told if t.serious], (seed, built.told)
    assert not built.folded.conflicts
    assert "D1" not in built.house.devices
    assert plan.after is not None
    found = resolve(schedule(built.house, built.house.models))
    assert found == resolve(schedule(plan.after, plan.after.models))
    document = plainly.after(one)
    for resolution in found:
        for load, crossing in resolution.crossings.items():
            said = plainly.does(document, one.models, document["scenes"][resolution.scene_id], load)
            assert (crossing.kind.value, crossing.to, crossing.level_pct) == said[:3], (seed, load)


def test_a_brute_force_agrees_on_sixty_random_swaps() -> None:
    counts = Counter(agrees(seed) for seed in range(60))
    assert set(counts) == {"kept", "kept_with_losses", "refused"}


@pytest.mark.deep
def test_a_brute_force_agrees_on_random_swaps_of_every_outcome() -> None:
    counts = Counter(agrees(seed) for seed in range(1600))
    assert set(counts) == {"kept", "kept_with_losses", "refused"}
    assert min(counts.values()) >= 400, counts


@pytest.mark.deep
def test_every_model_named_as_nearest_comes_to_what_is_said_of_it() -> None:
    for seed in range(150):
        one = case(seed)
        for near in planned(one, nearest=True).nearest:
            assert near.outcome is not Outcome.REFUSED
            alone = swap(
                one.house, one.failed, [type(one.unit)(near.model)], models=one.models, assumptions=ASSUMED,
                whole=one.whole, nearest=False,
            )  # fmt: skip
            assert isinstance(alone, SwapPlan)
            assert (alone.outcome, alone.losses) == (near.outcome, near.losses)
