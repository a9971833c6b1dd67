"""As-built: the house as its journal found it, how it differs from the revision, and what that shows."""

from collections.abc import Mapping
from dataclasses import dataclass

from secondfix import journal as package
from secondfix.actions.words import in_words_of
from secondfix.catalogue import Model
from secondfix.findings import Finding, finding_as_json, in_order
from secondfix.house import House, schedule
from secondfix.journal import AsBuilt, Journal
from secondfix.scenes import CrossingKind, Resolution, resolve

_OF_TESTS = frozenset({"crossed_gangs", "dead_gang", "test_missing", "scene_tested"})


@dataclass(frozen=True, slots=True)
class Found:
    """The as-built house, its function tests, and findings about the journal, worst first."""

    built: AsBuilt
    test: package.FunctionTest
    scenes: tuple[package.SceneTest, ...]
    findings: tuple[Finding, ...]


def as_built(house: House, journal: Journal, *, models: Mapping[str, Model], now: str | None = None) -> Found:
    """Fold the journal over this revision. ``now`` is a time of day with offset; it decides nothing."""
    built = package.as_built(house, journal, models=models, now=now)
    expected = {r.scene_id: switched(r) for r in resolve(schedule(house, house.models))}
    since = package.fitted_since(built.house, built.folded)
    return Found(
        built,
        package.function_test(house, built.folded, since=since),
        package.scene_tests(built.folded, expected, since=since),
        tuple(in_order(in_words_of(house, package.check(built, expected=expected)))),
    )


def switched(scene: Resolution) -> dict[str, str]:
    """Each load that a scene switches, and which way."""
    return {load: c.to for load, c in scene.crossings.items() if c.kind is CrossingKind.SWITCHED and c.to}


def found_as_json(found: Found) -> dict[str, object]:
    """docs/journal.md says what each key means; ``findings`` as for check."""
    return {
        **package.as_built_as_json(found.built),
        "findings": [finding_as_json(f) for f in found.findings],
    }


def tested_as_json(found: Found) -> dict[str, object]:
    """The function test; ``findings`` are those about tests."""
    return {
        **package.tests_as_json(found.test, found.scenes),
        "findings": [finding_as_json(f) for f in of_tests(found)],
    }


def of_tests(found: Found) -> tuple[Finding, ...]:
    """The findings about function tests alone."""
    return tuple(f for f in found.findings if f.rule in _OF_TESTS)
