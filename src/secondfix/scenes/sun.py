"""When the sun rises and sets at a place."""

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from math import acos, asin, cos, degrees, radians, sin

_J2000 = date(2000, 1, 1).toordinal() + 0.5  # noon
_MINUTES = 1440
_CENTURY = 36525
# Altitude of the sun's centre when its upper edge is seen on a level horizon: 34' of refraction and 16' of
# its own half width.
_ALTITUDE = radians(-50 / 60)
_ROUNDS = 5
# Beyond it, some days have no sunrise or no sunset: 90° less the obliquity of 23.44°, less those 50'.
ALWAYS_BELOW_MDEG = 65_700


class SunState(StrEnum):
    """What the sun does on one day at one place."""

    RISES_AND_SETS = "rises_and_sets"
    POLAR_DAY = "polar_day"
    POLAR_NIGHT = "polar_night"


@dataclass(frozen=True, slots=True)
class SunTimes:
    """Minutes after 00:00 UTC of the day; below 0 or beyond 1440 where the sun's day lies across it.

    Both are None on a polar day (it does not set) and in a polar night (it does not rise).
    """

    state: SunState
    sunrise_min: float | None = None
    sunset_min: float | None = None


def sun_times(day: date, *, latitude_mdeg: int, longitude_mdeg: int) -> SunTimes:
    """Sunrise and sunset around the solar noon of a day, in UTC minutes.

    Latitude −90 000 to 90 000, longitude −180 000 to 180 000 thousandths of a degree, north and east positive
    (ValueError outside). Equation: UT = (180° − E − longitude ∓ t) / 15 with cos t = (sin h − sin φ sin δ) /
    (cos φ cos δ), h = −50', repeated until the sun stands where it does at that minute. Source: low-precision
    formulas of the U.S. Naval Observatory (secondary), the Sun within 0.01° from 1950 to 2050. Within 0.3
    minutes up to 65° of latitude and 1 minute up to 75° (held by tests against another theory of the sun).
    Leaves out: hills, height above the horizon, the weather's part in refraction; where the sun only grazes
    the horizon, a minute's error may be the whole event.
    """
    if abs(latitude_mdeg) > 90_000 or abs(longitude_mdeg) > 180_000:
        raise ValueError(f"latitude {latitude_mdeg} or longitude {longitude_mdeg} is beyond the earth")
    latitude, longitude = radians(latitude_mdeg / 1000), longitude_mdeg / 1000
    noon = 720 - 4 * longitude
    noon -= 4 * _sun(day, noon)[1]
    hour_angle = _hour_angle(latitude, _sun(day, noon)[0])
    if isinstance(hour_angle, SunState):
        return SunTimes(hour_angle)
    rise, fall = (_event(day, latitude, longitude, noon, sign * hour_angle) for sign in (-1, 1))
    return SunTimes(SunState.RISES_AND_SETS, rise, fall)


def _event(day: date, latitude: float, longitude: float, noon: float, angle: float) -> float:
    """The minute at which the hour angle (degrees, negative before noon) is what the altitude asks for."""
    minute = noon + 4 * angle
    for _ in range(_ROUNDS):
        declination, equation = _sun(day, minute)
        found = _hour_angle(latitude, declination)
        # Where the first or last sunset grazes the horizon, the sun of that minute may have none.
        if not isinstance(found, SunState):
            angle = found if angle > 0 else -found
        minute = 720 - 4 * (longitude + equation) + 4 * angle
    return minute


def _hour_angle(latitude: float, declination: float) -> float | SunState:
    """Degrees from noon at which the sun stands on the horizon."""
    above = sin(_ALTITUDE) - sin(latitude) * sin(declination)
    span = cos(latitude) * cos(declination)
    if above >= span:
        return SunState.POLAR_NIGHT
    return SunState.POLAR_DAY if above <= -span else degrees(acos(above / span))


def _sun(day: date, minute: float) -> tuple[float, float]:
    """Declination in radians, and the equation of time as an angle in degrees."""
    t = (day.toordinal() + minute / _MINUTES - _J2000) / _CENTURY
    mean_longitude = 280.460 + 36000.770 * t
    anomaly = radians(357.528 + 35999.050 * t)
    centre = 1.915 * sin(anomaly) + 0.020 * sin(2 * anomaly)
    ecliptic = radians(mean_longitude + centre)
    obliquity = radians(23.4393 - 0.01300 * t)
    equation = -centre + 2.466 * sin(2 * ecliptic) - 0.053 * sin(4 * ecliptic)
    return asin(sin(obliquity) * sin(ecliptic)), equation
