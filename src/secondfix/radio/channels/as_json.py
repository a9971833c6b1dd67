"""The answer about channels as plain JSON values; the shape is described in docs/json.md."""

from collections.abc import Mapping

from secondfix.radio.channels.answers import ChannelFigures, Channels, NetworkChannels, Share
from secondfix.radio.channels.heard import Transmitter
from secondfix.radio.channels.telling import cost_words


def channels_as_json(answer: Channels, *, numbers: bool) -> dict[str, object]:
    """``heard``, ``networks``, ``notes`` and ``assumptions``; shares are null unless ``numbers``."""
    return {
        "heard": [transmitter_as_json(one) for one in answer.heard],
        "networks": [_network(one, numbers) for one in answer.networks.values()],
        "notes": list(answer.notes),
        "assumptions": list(answer.assumptions),
    }


def transmitter_as_json(one: Transmitter) -> dict[str, object]:
    """One of those heard, keys as an entry of the journal has them."""
    return {
        "kind": one.kind.value,
        "channel": one.channel,
        "second_channel": one.second_channel,
        "width_mhz": one.width_mhz,
        "level_dbm": one.level_dbm,
        "duty_permille": one.duty_permille,
        "place": one.place,
        "name": one.name,
    }


def _network(one: NetworkChannels, numbers: bool) -> dict[str, object]:
    return {
        "network": one.network,
        "choice": one.choice.value,
        "words": one.words,
        "in_use": one.in_use,
        "best": one.best,
        "gain": _share(one.gain, numbers),
        "clear": list(one.clear),
        "channels": [_channel(c, numbers) for c in one.channels],
        "quiet": _shares(one.quiet or {}, numbers),
        "not_known": list(one.not_known),
        "needs": [{"place": k.place, "field": k.field, "words": k.words} for k in one.needs],
    }


def _channel(c: ChannelFigures, numbers: bool) -> dict[str, object]:
    return {
        "channel": c.channel,
        "mhz": c.mhz,
        "cost": cost_words(c.added),
        "lost": _share(c.lost, numbers),
        "added": _share(c.added, numbers),
        "worst": c.worst,
        "clear": c.clear,
        "devices": _shares(c.devices, numbers),
    }


def _shares(of: Mapping[str, Share], numbers: bool) -> dict[str, object] | None:
    if not numbers:
        return None
    return {device: _share(share, numbers) for device, share in of.items()}


def _share(share: Share | None, numbers: bool) -> dict[str, float] | None:
    if share is None or not numbers:
        return None
    return {"low": round(share.low, 4), "assumed": round(share.assumed, 4), "high": round(share.high, 4)}
