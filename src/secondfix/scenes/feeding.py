"""The output that feeds a load, or why nothing can be commanded there."""

from secondfix.catalogue import Model, Output
from secondfix.house import Channel, Schedule
from secondfix.scenes.crossing import Reason


def feed_of(schedule: Schedule, load_id: str) -> Channel | Reason:
    """The channel to command; else: fed by nothing known, its gang has no device, its device no output."""
    feed = schedule.fed_by.get(load_id)
    if feed is None:
        return Reason.FED_BY_NOTHING
    if not isinstance(feed, Channel):
        return Reason.NO_DEVICE
    model = schedule.model_of(feed.device_id)
    return Reason.NO_OUTPUT if model and model.output is Output.NONE else feed


def model_that_feeds(schedule: Schedule, load_id: str) -> Model | None:
    """The model of the device that feeds a load, None where there is none or it is not decided."""
    feed = schedule.fed_by.get(load_id)
    return schedule.model_of(feed.device_id) if isinstance(feed, Channel) else None
