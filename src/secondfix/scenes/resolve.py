"""What each scene does to every load of the house."""

from secondfix.house import Scene, SceneRule, Schedule
from secondfix.scenes.crossing import Crossing, CrossingKind, Planned, Resolution
from secondfix.scenes.deciding import Supposed, decide, speaking
from secondfix.scenes.feeding import model_that_feeds
from secondfix.scenes.permitting import fitness
from secondfix.scenes.reaching import Reach, by_load, reach, unfed
from secondfix.scenes.selecting import selects
from secondfix.scenes.supposing import mentioned, suppositions
from secondfix.scenes.telling import decided, undecided
from secondfix.scenes.wording import command_words, rule_words, start_words


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
    """One scene under resolution."""

    def __init__(self, schedule: Schedule, scene_id: str, scene: Scene, loose: tuple[str, ...]) -> None:
        self.schedule = schedule
        self.scene_id = scene_id
        self.scene = scene
        self.reached = by_load(tuple(reach(schedule, c, loose) for c in dict.fromkeys(scene.commands)))
        self.mentioned = mentioned(scene.rules)

    def resolution(self) -> Resolution:
        crossings = {load_id: self._crossing(load_id) for load_id in self.schedule.house.loads}
        starts = tuple(start_words(start) for start in self.scene.starts)
        return Resolution(self.scene_id, self.scene.name, starts, crossings, _planned(crossings))

    def _crossing(self, load_id: str) -> Crossing:
        house = self.schedule.house
        commands = self.reached.get(load_id, [])
        supposed = suppositions(
            house,
            load_id,
            self.mentioned,
            fit=fitness(house.loads[load_id], model_that_feeds(self.schedule, load_id)),
            surely=frozenset((one.via, one.command.to) for one, sure in commands if sure),
            perhaps=frozenset((one.via, one.command.to) for one, sure in commands if not sure),
        )
        reaches = [one for one, _ in commands]
        verdicts = {values: decide(self.scene.rules, one) for values, one in supposed.items()}
        by = self._by(list(supposed.values()), reaches)
        if len({v.answer for v in verdicts.values()}) > 1:
            return undecided(self.schedule, self.scene_id, load_id, verdicts, reaches=reaches, by=by)
        return decided(self.schedule, self.scene_id, load_id, verdicts, by=by)

    def _by(self, supposed: list[Supposed], reaches: list[Reach]) -> tuple[str, ...]:
        """Rules that speak under some supposition, or leave it out, and commands that may reach, in words."""
        spoken = [rule for one in supposed for rule in self._heard(one)]
        words = {rule_words(self.schedule.house, rule) for rule in dict.fromkeys(spoken)}
        return tuple(sorted(words | {command_words(one.command) for one in reaches}))

    def _heard(self, supposed: Supposed) -> list[SceneRule]:
        active, _ = speaking(self.scene.rules, supposed.seen)
        return active or [rule for rule in self.scene.rules if selects(rule.select, supposed.seen)]


def _planned(crossings: dict[str, Crossing]) -> tuple[Planned, ...]:
    """One command per load that is switched, by device and entry."""
    planned = [
        Planned(c.device_id, c.entry, c.to, c.level_pct)
        for c in crossings.values()
        if c.kind is CrossingKind.SWITCHED and c.device_id and c.entry and c.to
    ]
    return tuple(sorted(planned, key=lambda p: (_natural(p.device_id), p.entry)))


def _natural(key: str) -> tuple[str, int]:
    head = key.rstrip("0123456789")
    return head, int(key[len(head) :] or -1)
