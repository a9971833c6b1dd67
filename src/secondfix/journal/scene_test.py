"""Scenes tested: what answered when a scene ran, against what it should switch."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from secondfix.journal.facts import FunctionTested
from secondfix.journal.folding import Folded


@dataclass(frozen=True, slots=True)
class SceneTest:
    """One scene: loads that should have answered and did not, that should not and did, and those that
    went the wrong way. ``tested`` is the entry's id, None where it was not tested, tests differ, or a device
    that it switches was fitted ``since``."""

    scene: str
    tested: str | None
    disputed: bool
    missing: tuple[str, ...]
    extra: tuple[str, ...]
    wrong_way: tuple[str, ...]
    also_answered: str
    since: str | None = None

    @property
    def as_expected(self) -> bool:
        """Whether it was tested and did what it should."""
        off = self.missing or self.extra or self.wrong_way or self.also_answered
        return self.tested is not None and not off


def scene_tests(
    folded: Folded,
    expected: Mapping[str, Mapping[str, str]],
    *,
    since: Mapping[str, str] = MappingProxyType({}),
) -> tuple[SceneTest, ...]:
    """``expected`` gives each scene the loads it should switch, ``on`` or ``off``.

    A load seen only to change is taken to have gone the right way; one already in its state before the
    scene ran does not answer, so test from the other state.
    """
    return tuple(
        SceneTest(scene, None, False, (), (), (), "", since[f"scene:{scene}"])
        if f"scene:{scene}" in since
        else _scene(folded, scene, expected[scene])
        for scene in sorted(expected)
    )


def _scene(folded: Folded, scene: str, expected: Mapping[str, str]) -> SceneTest:
    subject = f"scene:{scene}"
    test = folded.settled(subject, "working", FunctionTested)
    if test is None:
        return SceneTest(scene, None, (subject, "working") in folded.disputed, (), (), (), "")
    return SceneTest(
        scene,
        test.id,
        False,
        tuple(sorted(expected.keys() - test.answered.keys())),
        tuple(sorted(test.answered.keys() - expected.keys())),
        tuple(
            load
            for load, way in sorted(test.answered.items())
            if way != "changed" and load in expected and way != expected[load]
        ),
        test.also_answered,
    )
