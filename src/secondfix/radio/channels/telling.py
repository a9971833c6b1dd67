"""What the figures of the channels say: stay, change, cannot tell, or no choice; in words first."""

from collections.abc import Mapping, Sequence
from enum import StrEnum

from secondfix.findings import Finding, Look, Severity, cannot_tell, fails, passes
from secondfix.house import House
from secondfix.radio.channels.answers import ChannelFigures, Choice, NetworkChannels, Share
from secondfix.radio.rules import CHANNEL

_WEAKER_CHANNEL = 26
_NEVER_WORSE = -0.001  # share of frames: what two channels may differ by and be called as good
_MOVE = (
    "move it at the controller on a day when somebody can go round: a device that sleeps may not follow, and "
    "has to be joined again (common practice, no source); then run the function test"
)


class Cost(StrEnum):
    """How many frames those heard cost, in words."""

    HARDLY_ANY = "hardly any"
    SOME = "some"
    MANY = "many"


# Shares of frames from which they are some, and many: engineering judgement, not sourced.
_SOME_FROM, _MANY_FROM = 0.01, 0.10


def _cost(share: float) -> Cost:
    if share >= _MANY_FROM:
        return Cost.MANY
    return Cost.SOME if share >= _SOME_FROM else Cost.HARDLY_ANY


def cost_words(added: Share) -> str:
    """What those heard cost by what is assumed, and at worst where that is another word."""
    assumed, worst = _cost(added.assumed), _cost(added.high)
    return assumed.value if assumed is worst else f"{assumed.value} (at worst {worst.value})"


def no_choice(house: House, key: str) -> NetworkChannels:
    """Z-Wave: its channels are the region's, and a 2.4 GHz survey says nothing of them."""
    words = (
        f"{house.networks[key].name} has no channel to choose: its frequencies are those of the region, far "
        "from 2.4 GHz."
    )
    return NetworkChannels(key, Choice.NO_CHOICE, words)


def untold(
    house: House, key: str, *, heard: bool, lacking: tuple[str, ...], needs: tuple[Look, ...]
) -> NetworkChannels:
    """Nothing can be computed: nobody was heard, or no device has a route."""
    name = house.networks[key].name
    if not heard:
        looks: tuple[Look, ...] = (_survey_look(key, name),)
        words = f"Nobody was heard on the air, so no channel of {name} is known to be better than another."
    else:
        looks = needs or (Look(key, "devices", f"which devices are on {name}, and where they stand"),)
        words = f"No device of {name} has a route to its controller, so nothing can be told of its channels."
    in_use = house.networks[key].channel
    return NetworkChannels(key, Choice.CANNOT_TELL, words, in_use, not_known=lacking, needs=looks)


def _survey_look(key: str, name: str) -> Look:
    return Look(key, "air_heard", f"a channel survey at 2.4 GHz near the devices of {name}")


def told(
    house: House,
    key: str,
    channels: tuple[ChannelFigures, ...],
    quiet: Mapping[str, Share],
    *,
    lacking: tuple[str, ...],
    better_pct: tuple[int, int, int],
    duty_known: bool,
    weakest: Look,
) -> NetworkChannels:
    """The answer for one network whose figures stand.

    Another channel is better where it loses at least ``better_pct`` fewer frames by what is assumed, and no
    more over the whole range; the one in use stays where none is so anywhere in the range. ``weakest`` is the
    link that would tell most of what the devices bear.
    """
    network = house.networks[key]
    best = _best(channels, network.channel, by_pct=better_pct[1])
    now = next((c for c in channels if c.channel == network.channel), None)
    gain = _gain(now, best) if now else None
    most = max(_gain(now, c).high for c in channels) if now else 0.0
    choice = _choice(gain, most, better_pct)
    needs: tuple[Look, ...] = ()
    if now is None:
        needs = (Look(key, "channel", f"which channel {network.name} is on: 11 to 26"),)
    elif choice is Choice.CANNOT_TELL:
        more = "at more places" if duty_known else "with the share of time that each sends"
        needs = (Look(key, "air_heard", f"a channel survey for {network.name} {more}"), weakest)
    words = " ".join(_words(network.name, now, best, choice))
    return NetworkChannels(
        key,
        choice,
        words,
        network.channel,
        best.channel,
        gain,
        channels,
        quiet,
        lacking,
        needs,
    )


def _best(channels: Sequence[ChannelFigures], in_use: int | None, *, by_pct: int) -> ChannelFigures:
    """Fewest frames lost; of those as good the one in use, then a clear one; 26 only if better by enough."""

    def rank(c: ChannelFigures) -> tuple[object, ...]:
        weaker = by_pct / 100 if c.channel == _WEAKER_CHANNEL != in_use else 0.0
        lost = round(c.lost.assumed + weaker, 3)
        return lost, c.channel != in_use, not c.clear, round(c.lost.high, 3), c.channel

    return min(channels, key=rank)


def _gain(now: ChannelFigures, best: ChannelFigures) -> Share:
    """Frames that the best channel loses less, over the three readings that they share."""
    three = [getattr(now.lost, k) - getattr(best.lost, k) for k in ("low", "assumed", "high")]
    return Share(min(three), three[1], max(three))


def _choice(gain: Share | None, most: float, better_pct: tuple[int, int, int]) -> Choice:
    if gain is None:
        return Choice.CANNOT_TELL
    if gain.assumed * 100 >= better_pct[1] and gain.low >= _NEVER_WORSE:
        return Choice.CHANGE
    return Choice.STAY if most * 100 < better_pct[2] else Choice.CANNOT_TELL


def _words(name: str, now: ChannelFigures | None, best: ChannelFigures, choice: Choice) -> Sequence[str]:
    fewest = f"On {best.channel}, where fewest are lost: {cost_words(best.added)}."
    if now is None:
        first = f"The channel of {name} is not stated. Those heard on the air cost frames on each. {fewest}"
    else:
        costs = f"Those heard on the air cost {cost_words(now.added)} of its frames on {now.channel}."
        costs += f" {fewest}" if best is not now else ""
        first = {
            Choice.CHANGE: f"{name} would do better on channel {best.channel} than on {now.channel}. {costs}",
            Choice.STAY: f"{name} does well on channel {now.channel}: none is better by enough. {costs}",
        }.get(choice, f"Whether another channel than {now.channel} is better for {name} hangs on what is "
              f"assumed. {costs}")  # fmt: skip
    last = "Some devices send weaker on 26, or not at all (from memory)."
    return [first, *([last] if best.channel == _WEAKER_CHANNEL and choice is not Choice.STAY else [])]


def finding_of(house: House, one: NetworkChannels, leans: Sequence[str]) -> Finding | None:
    """The answer as a finding at the controller; None where there is no channel to choose."""
    place = house.networks[one.network].controller_place or one.network
    now = "not stated" if one.in_use is None else f"channel {one.in_use}"
    if one.choice is Choice.NO_CHOICE:
        return None
    if one.choice is Choice.STAY:
        return passes(CHANNEL, place, value=now, limit="no better one", also=[one.network], assumptions=leans)
    if one.choice is Choice.CHANGE:
        return fails(
            CHANNEL,
            Severity.ADVICE,
            place,
            one.words,
            value=now,
            limit=f"channel {one.best}",
            remedy=_MOVE,
            also=[one.network],
            assumptions=leans,
        )
    return cannot_tell(
        CHANNEL,
        Severity.ADVICE,
        place,
        one.words,
        looks=one.needs,
        value=now,
        limit="no better one",
        also=[one.network],
        assumptions=leans if one.channels else (),
    )
