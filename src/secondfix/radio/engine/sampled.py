"""One way a house may be: what draws of its links start from."""

from dataclasses import dataclass

from secondfix.radio.crossing import Floats


@dataclass(frozen=True, slots=True, eq=False)
class Sampled:
    """One way a network may be: margins of its links in dB, and what its draws still spread.

    ``margin_db`` and ``own_db`` have a value a link (the weaker direction; the standard deviation of the
    link's own part), ``around_db`` one a station (the standard deviation of what its surroundings add to
    all its links in one draw).
    """

    margin_db: Floats
    own_db: Floats
    around_db: Floats
