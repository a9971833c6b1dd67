"""Answers about radio with what the journal tells: draws, measured links, channels."""

from secondfix.web.api.shapes.base import Shape
from secondfix.web.api.shapes.found import Look


class Drawn(Shape):
    """A share of draws, with the interval that their number leaves."""

    low: float
    share: float
    high: float


class Ends(Shape):
    """Least and greatest, at the ends of everything assumed."""

    low: float
    high: float


class ForeseenDevice(Shape):
    """One device in the draws; numbers are null where they are not shown."""

    id: str
    word: str
    chance: Drawn | None
    model: Ends | None
    whichever_goes: Drawn | None


class Case(Shape):
    """Something gone, moved or added, and what becomes of whom."""

    kind: str
    id: str
    words: str
    gone: list[str]
    falls: list[str]
    rises: list[str]
    holds: list[str]
    gained: float | None
    chances: dict[str, Drawn] | None


class ForeseenNetwork(Shape):
    """One network in the draws."""

    network: str
    devices: list[ForeseenDevice]
    not_known: list[str]
    cases: list[Case]


class Foreseen(Shape):
    """The answer of the draws."""

    draws: int
    seed: int
    measured: int
    likely: float
    networks: list[ForeseenNetwork]
    notes: list[str]


class Three(Shape):
    """A figure with its range."""

    low: float
    value: float
    high: float


class Parameter(Shape):
    """One thing learned of the house, before and after: nine in ten."""

    name: str
    networks: list[str]
    words: str
    unit: str
    before: Three
    after: Three


class MeasuredLink(Shape):
    """One measured link, with what its next reading would be."""

    network: str
    a: str
    b: str
    heard: bool
    ab_dbm: Three | None
    ba_dbm: Three | None


class NextLink(Shape):
    """One link to measure next."""

    network: str
    a: str
    b: str
    settles: float | None


class Learned(Shape):
    """What the measured links taught."""

    count: int
    not_heard: int
    parameters: list[Parameter] | None
    links: list[MeasuredLink]
    next_links: list[NextLink]
    notes: list[str]


class Transmitter(Shape):
    """Somebody heard at 2.4 GHz."""

    kind: str
    channel: int
    second_channel: int | None
    width_mhz: int
    level_dbm: int
    duty_permille: int | None
    place: str | None
    name: str


class Share(Shape):
    """A share of frames, with its range."""

    low: float
    assumed: float
    high: float


class Channel(Shape):
    """One channel of one network."""

    channel: int
    mhz: int
    cost: str
    lost: Share | None
    added: Share | None
    worst: str
    clear: bool
    devices: dict[str, Share] | None


class NetworkChannels(Shape):
    """One network, channel by channel."""

    network: str
    choice: str
    words: str
    in_use: int | None
    best: int | None
    gain: Share | None
    clear: list[int]
    channels: list[Channel]
    quiet: dict[str, Share] | None
    not_known: list[str]
    needs: list[Look]


class Channels(Shape):
    """The answer about channels."""

    heard: list[Transmitter]
    networks: list[NetworkChannels]
    notes: list[str]
    assumptions: list[str]
