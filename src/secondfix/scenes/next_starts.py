"""When each start by time or sun comes next, in the house's zone."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, tzinfo

from secondfix.house import House, Start
from secondfix.scenes.sun import sun_times
from secondfix.scenes.wording import start_words

_DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
FIRST_DAY, LAST_DAY = date(1900, 1, 1), date(2199, 12, 31)
"""Days that anybody may ask about: years that a calendar of this kind and the sun's formulas both hold."""
_SEARCHED_DAYS = 370  # a polar night ends within the year


@dataclass(frozen=True, slots=True)
class Coming:
    """One start: its words, when it comes (with the zone's offset), and what is odd about that.

    ``at`` is None where it cannot be told or does not come within 370 days: ``note`` says why.
    """

    scene_id: str
    start: str
    at: datetime | None
    note: str = ""


def coming(house: House, *, day: date, zone: tzinfo | None) -> tuple[Coming, ...]:
    """Give the first time on or after a day (in the zone) of every start by time or sun.

    ``zone`` is the rule of the house's time zone, None where the house states none. Scenes and starts
    in the document's order. A time that the clock skips is taken as if it had not been put forward (02:30
    comes at 03:30 by the new clock); of a time that comes twice the first is taken (both ours: PEP 495,
    fold 0). The days of a start by the sun are those of the sunrise or sunset itself, before the offset.
    ``day`` lies between ``FIRST_DAY`` and ``LAST_DAY``.
    Leaves out: what a controller does with such times; it may differ, and is to be tried.
    """
    return tuple(
        _next(house, scene_id, start, day, zone)
        for scene_id, scene in house.scenes.items()
        for start in dict.fromkeys(scene.starts)
        if start.by in {"time", "sun"}
    )


def _next(house: House, scene_id: str, start: Start, day: date, zone: tzinfo | None) -> Coming:
    words = start_words(start)
    if zone is None:
        return Coming(scene_id, words, None, "the time zone of the house is not known")
    if start.sun and (house.latitude_mdeg is None or house.longitude_mdeg is None):
        return Coming(scene_id, words, None, "the latitude and longitude of the house are not known")
    found = _by_clock(start, day, zone) if start.at else _by_sun(house, start, day, zone)
    at, note = next(found, (None, f"not within {_SEARCHED_DAYS} days"))
    return Coming(scene_id, words, at, note)


def _days(start: Start, first: date) -> Iterator[date]:
    for n in range(_SEARCHED_DAYS):
        one = first + timedelta(days=n)
        if not start.days or _DAYS[one.weekday()] in start.days:
            yield one


def _by_clock(start: Start, day: date, zone: tzinfo) -> Iterator[tuple[datetime, str]]:
    assert start.at is not None  # the caller asks
    for one in _days(start, day):
        yield on_the_clock(datetime.combine(one, time.fromisoformat(start.at)), zone)


def on_the_clock(shown: datetime, zone: tzinfo) -> tuple[datetime, str]:
    """The moment at which a clock of the zone shows a time (given without zone), and what is odd about it."""
    first = shown.replace(tzinfo=zone, fold=0)
    real = first.astimezone(UTC).astimezone(zone)
    if real.replace(tzinfo=None, fold=0) != shown:
        return real, f"the clock skips {shown:%H:%M} that day; taken at {real:%H:%M}"
    if first.utcoffset() != shown.replace(tzinfo=zone, fold=1).utcoffset():
        return first, f"the clock shows {shown:%H:%M} twice that day; the first is taken"
    return first, ""


def _by_sun(house: House, start: Start, day: date, zone: tzinfo) -> Iterator[tuple[datetime, str]]:
    offset = timedelta(minutes=start.offset_min or 0)
    missed = 0
    for one in _days(start, day - timedelta(days=1)):
        event = _event(house, start, one, zone)
        if event is None:
            missed += one >= day
        elif (event + offset).astimezone(zone).date() >= day:
            note = (
                f"no {start.sun} on {missed} such {'day' if missed == 1 else 'days'} before it"
                if missed
                else ""
            )
            yield (event + offset).astimezone(zone), note


def _event(house: House, start: Start, day: date, zone: tzinfo) -> datetime | None:
    """The sunrise or sunset of a day of the zone, to the minute, in UTC.

    A zone may lie far from the sun's own day there: the event is looked for on the days around, too.
    """
    assert house.latitude_mdeg is not None
    assert house.longitude_mdeg is not None  # the caller asks
    for around in (0, -1, 1):
        sun_day = day + timedelta(days=around)
        found = sun_times(sun_day, latitude_mdeg=house.latitude_mdeg, longitude_mdeg=house.longitude_mdeg)
        minute = found.sunrise_min if start.sun == "sunrise" else found.sunset_min
        if minute is not None:
            at = datetime.combine(sun_day, time(), UTC) + timedelta(minutes=round(minute))
            if at.astimezone(zone).date() == day:
                return at
    return None
