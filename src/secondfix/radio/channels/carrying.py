"""What was heard at some places, carried to where the devices stand."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import groupby

import numpy as np

from secondfix.house import House
from secondfix.radio.channels.heard import Transmitter
from secondfix.radio.crossing import Bools
from secondfix.radio.sites import Sites, position_needs, sites_of
from secondfix.radio.stations import Station


@dataclass(frozen=True, slots=True, eq=False)
class Carried:
    """``reaches`` (stations, sources): whether a row of the survey stands for a station.

    ``own`` the same shape: it was heard at the very place of the station.
    """

    reaches: Bools
    own: Bools


def carried(house: House, heard: Sequence[Transmitter], stations: Sequence[Station]) -> Carried:
    """Say which rows of a survey stand for which stations.

    What was heard at the surveyed place nearest to a station stands for it: nearest in a straight line, on
    its own level where one was surveyed there. Rows without a place, or whose place is not on the plan,
    stand for the whole house; so do all rows for a station that is not on the plan. Of a named transmitter
    heard both ways, the row of the place stands. Source: engineering judgement, not sourced.
    """
    here = [_placed(house, one) for one in heard]
    surveyed = sites_of(house, dict.fromkeys(place for place in here if place is not None))
    nearest = {
        place: _nearest(surveyed, sites_of(house, [place]))
        for place in dict.fromkeys(s.place for s in stations)
    }
    reaches = np.zeros((len(stations), len(heard)), np.bool_)
    for n, station in enumerate(stations):
        rows = [k for k, place in enumerate(here) if place is None or nearest[station.place] in {None, place}]
        reaches[n, _once(heard, here, rows)] = True
    own = np.array([[one.place == s.place for one in heard] for s in stations], np.bool_)
    return Carried(reaches, own.reshape(reaches.shape) & reaches)


def off_plan(house: House, heard: Sequence[Transmitter]) -> tuple[str, ...]:
    """Places of a survey that cannot be put on the plan."""
    places = dict.fromkeys(one.place for one in heard if one.place is not None)
    return tuple(place for place in places if position_needs(house, place))


def _placed(house: House, one: Transmitter) -> str | None:
    return None if one.place is None or position_needs(house, one.place) else one.place


def _nearest(surveyed: Sites, at: Sites) -> str | None:
    if not surveyed.places or not at.places:
        return None
    away = np.hypot(
        np.hypot(surveyed.x_mm - at.x_mm[0], surveyed.y_mm - at.y_mm[0]), surveyed.z_mm - at.z_mm[0]
    )
    level = surveyed.level == at.level[0]
    if level.any():
        away = np.where(level, away, np.inf)
    return surveyed.places[int(np.argmin(away))]


def _once(heard: Sequence[Transmitter], here: Sequence[str | None], rows: Sequence[int]) -> list[int]:
    """The rows, without those of the whole house whose transmitter was heard at a place too."""
    at_place = {_who(heard[k]) for k in rows if here[k] is not None and heard[k].name}
    return [k for k in rows if here[k] is not None or _who(heard[k]) not in at_place]


def _who(one: Transmitter) -> tuple[object, ...]:
    return one.kind, one.channel, one.second_channel, one.name


def put_together(surveys: Sequence[Sequence[Transmitter]]) -> tuple[Transmitter, ...]:
    """One list of several surveys of the same places whose writers did not know of each other.

    The loudest of one survey is taken to be the loudest of the same kind, channel, width, place and name in
    another; of two readings the higher level and the greater share of time stand.
    """
    if len(surveys) == 1:
        return tuple(surveys[0])
    numbered: dict[tuple[object, ...], list[Transmitter]] = {}
    for survey in surveys:
        for key, same in groupby(sorted(survey, key=_key), _key):
            loudest = sorted(same, key=lambda one: (-one.level_dbm, -(one.duty_permille or 0)))
            for n, one in enumerate(loudest):
                numbered.setdefault((*key, n), []).append(one)
    return tuple(_stronger(same) for same in numbered.values())


def _key(one: Transmitter) -> tuple[object, ...]:
    second = one.second_channel or 0
    return one.place or "", one.kind.value, one.channel, second, one.width_mhz, one.name


def _stronger(same: Sequence[Transmitter]) -> Transmitter:
    duties = [one.duty_permille for one in same if one.duty_permille is not None]
    level = max(one.level_dbm for one in same)
    return replace(same[0], level_dbm=level, duty_permille=max(duties) if duties else None)
