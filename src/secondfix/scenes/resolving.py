"""What each scene does to every load of the house."""

from secondfix.house import Scene, Schedule
from secondfix.scenes.crossing import Crossing, CrossingKind, Planned, Resolution
from secondfix.scenes.feeding import model_that_feeds
from secondfix.scenes.judging import Judgement, judged
from secondfix.scenes.natural import natural
from secondfix.scenes.permitting import fitness
from secondfix.scenes.reaching import by_load, reaches, unfed
from secondfix.scenes.supposing import Known, known, mentioned
from secondfix.scenes.telling import decided, undecided
from secondfix.scenes.wording import command_words, start_words


def resolve(schedule: Schedule) -> tuple[Resolution, ...]:
    """One resolution per scene, in the order of the document.

    Every load of the house has exactly one crossing per scene. The commands to send switch each load
    at most once, through the entry of its gang; a whole-device entry that the document commands
    directly is judged by what its model states and replaced by the gangs it reaches. Policy of
    purposes: terms.PURPOSES, with the source beside each. Leaves out the time a scene takes, the
    order on the air, and what somebody else's controller does (outside uses are noted, not executed).
    """
    loose = unfed(schedule)
    scenes = schedule.house.scenes.items()
    return tuple(_Resolver(schedule, key, scene, loose).resolution() for key, scene in scenes)


class _Resolver:
    """One scene under resolution; loads that its rules treat alike are judged once."""

    def __init__(self, schedule: Schedule, scene_id: str, scene: Scene, loose: tuple[str, ...]) -> None:
        self.schedule = schedule
        self.scene_id = scene_id
        self.scene = scene
        self.reached = by_load(reaches(schedule, scene, loose))
        self.mentioned = mentioned(scene.rules)
        self.judgements: dict[Known, Judgement] = {}

    def resolution(self) -> Resolution:
        crossings = {load_id: self._crossing(load_id) for load_id in self.schedule.house.loads}
        starts = tuple(start_words(start) for start in self.scene.starts)
        return Resolution(self.scene_id, self.scene.name, starts, crossings, _planned(crossings))

    def _crossing(self, load_id: str) -> Crossing:
        house = self.schedule.house
        commands = self.reached.get(load_id, [])
        one = known(
            house,
            load_id,
            self.mentioned,
            fit=fitness(house.loads[load_id], model_that_feeds(self.schedule, load_id)),
            surely=frozenset((r.via, r.command.to) for r, sure in commands if sure),
            perhaps=frozenset((r.via, r.command.to) for r, sure in commands if not sure),
        )
        if one not in self.judgements:
            self.judgements[one] = judged(house, self.scene.rules, one, self.mentioned)
        judgement = self.judgements[one]
        at = (self.scene_id, load_id)
        spoken = {command_words(r.command) for r, _ in commands}
        by = tuple(sorted({*judgement.rules, *spoken})) if spoken else judgement.rules
        if judgement.unknowns:
            return undecided(self.schedule, at, judgement, reaches=[r for r, _ in commands], by=by)
        return decided(self.schedule, at, judgement, by=by)


def _planned(crossings: dict[str, Crossing]) -> tuple[Planned, ...]:
    """One command per load that is switched, by device and entry."""
    planned = [
        Planned(c.device_id, c.entry, c.to, c.level_pct)
        for c in crossings.values()
        if c.kind is CrossingKind.SWITCHED and c.device_id and c.entry and c.to
    ]
    return tuple(sorted(planned, key=lambda p: (natural(p.device_id), p.entry)))
