"""What would settle a crossing that cannot be told."""

from collections.abc import Iterable, Iterator

from secondfix.catalogue import Stated
from secondfix.findings import Look
from secondfix.house import (
    Channel,
    Row,
    Schedule,
    duty_look,
    load_words,
    model_look,
    purpose_look,
    settled,
    storey_look,
    thermostat_look,
)
from secondfix.scenes.crossing import Reason
from secondfix.scenes.feeding import model_that_feeds
from secondfix.scenes.reaching import Reach
from secondfix.scenes.supposing import Unknown


def unknown_looks(
    schedule: Schedule, load_id: str, unknowns: Iterable[Unknown], reaches: Iterable[Reach]
) -> tuple[Look, ...]:
    """One look or more for each unknown on which the answer hangs."""
    looks: list[Look] = []
    for unknown in unknowns:
        if unknown is Unknown.PURPOSE:
            looks.append(purpose_look(load_id, load_words(schedule.house, load_id)))
        elif unknown is Unknown.STOREY:
            room = schedule.house.loads[load_id].room
            looks.append(storey_look(room))
        elif unknown is Unknown.FITNESS:
            looks += _fitness(schedule, load_id)
        else:
            looks += [look for one in reaches for look in reach_looks(schedule, one)]
    return tuple(dict.fromkeys(looks))


def _fitness(schedule: Schedule, load_id: str) -> Iterator[Look]:
    load = schedule.house.loads[load_id]
    model = model_that_feeds(schedule, load_id)
    if settled(load.own_thermostat) is None:
        yield thermostat_look(load_id, load_words(schedule.house, load_id))
    if load.time_limit_s is None and not (model and model.own_time_limit is Stated.YES):
        yield Look(load_id, "time_limit_s", "state the longest time on per command")


def reach_looks(schedule: Schedule, reach: Reach) -> Iterator[Look]:
    """What would settle which loads a direct command reaches."""
    device = reach.command.device
    if reach.to_be_tested:
        if schedule.model_of(device) is None:
            yield model_look(device)
        else:
            words = "switch the whole-device entry and see which gangs follow"
            yield Look(device, "whole_switches", words)
    for gang in reach.open_gangs:
        yield _gang(schedule, device, gang)


def _gang(schedule: Schedule, device: str, gang: str) -> Look:
    row = schedule.rows.get(gang)
    if row is None:
        return Look(device, "outputs", f"switch output {gang} of {device} and see what it feeds")
    if row.gang.extends:
        return Look(gang, "extends", "switch its entry and see whether the gang it extends follows")
    return duty_look(row)


def feed_look(schedule: Schedule, load_id: str, why: Reason) -> Look:
    """What would settle how a load can be commanded."""
    feed = schedule.fed_by.get(load_id)
    if isinstance(feed, Channel):
        return Look(feed.device_id, "model", f"decide a model with an output for {feed.device_id}")
    if isinstance(feed, Row):
        return Look(feed.id, "device", "decide which device works this gang")
    assert why is Reason.FED_BY_NOTHING
    return Look(load_id, "load", "find the gang that feeds this load")
