"""The scenes of a house under check: resolved once, with what their direct commands reach."""

from collections.abc import Iterator
from functools import cached_property

from secondfix.assumptions import Assumptions
from secondfix.findings import Finding, Rule, passes
from secondfix.house import Schedule
from secondfix.scenes.air import Air
from secondfix.scenes.crossing import Resolution
from secondfix.scenes.reaching import Reach, reaches, unfed
from secondfix.scenes.resolving import resolve
from secondfix.scenes.timing import SceneTime, scene_times


class Asked:
    """What every check of scenes looks at."""

    def __init__(
        self,
        schedule: Schedule,
        assumptions: Assumptions,
        air: Air,
        resolutions: tuple[Resolution, ...] | None = None,
    ) -> None:
        self.schedule = schedule
        self.assumptions = assumptions
        self.air = air
        self.resolutions = resolve(schedule) if resolutions is None else resolutions
        """One per scene."""

    @cached_property
    def reaches(self) -> dict[str, tuple[Reach, ...]]:
        """What each direct command of each scene reaches."""
        loose = unfed(self.schedule)
        return {
            key: reaches(self.schedule, scene, loose) for key, scene in self.schedule.house.scenes.items()
        }

    @cached_property
    def times(self) -> tuple[SceneTime, ...]:
        """How long each scene takes, in the order of the resolutions."""
        return scene_times(self.schedule, self.resolutions, self.assumptions, self.air)

    def load_words(self, load_id: str) -> str:
        """``L07 Ceiling``."""
        return f"{load_id} {self.schedule.house.loads[load_id].name}"

    def reaches_any_load(self, resolution: Resolution) -> bool:
        """Whether a direct command meets a gang that leaves it open.

        Such a gang may extend any other, so that no load of the house is beyond doubt; this is told
        once, at the command, and not at every load.
        """
        return any(r.open_gangs for r in self.reaches[resolution.scene_id])

    def settled(self, resolution: Resolution) -> bool:
        """Whether every crossing can be told and no direct command may reach any load."""
        return resolution.decided and not self.reaches_any_load(resolution)

    def or_passes(self, found: list[Finding], rule: Rule, resolution: Resolution) -> Iterator[Finding]:
        """The findings; without any, a pass, but none while something about the scene is open."""
        yield from found
        if not found and self.settled(resolution):
            yield passes(rule, resolution.scene_id)
