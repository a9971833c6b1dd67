"""The question: which channel does each network at 2.4 GHz do best on, and by how much?"""

from collections.abc import Mapping, Sequence

import numpy as np

from secondfix.assumptions import OF_AIR, Assumptions
from secondfix.house import Schedule
from secondfix.radio.answers import Reach
from secondfix.radio.channels.answers import ChannelFigures, Channels, NetworkChannels, Share
from secondfix.radio.channels.carrying import off_plan
from secondfix.radio.channels.disturbing import READINGS, Disturbing, disturbing
from secondfix.radio.channels.heard import Transmitter
from secondfix.radio.channels.losing import Routes, lost, routes_of
from secondfix.radio.channels.overlap import MESH_CHANNELS, is_clear
from secondfix.radio.channels.telling import finding_of, no_choice, told, untold
from secondfix.radio.crossing import Floats
from secondfix.radio.ieee802154 import channel_mhz
from secondfix.radio.links import Links
from secondfix.radio.stations import link_look
from secondfix.terms import Protocol


def channels_of(
    rows: Schedule, assumptions: Assumptions, answer: Reach, heard: Sequence[Transmitter]
) -> Channels:
    """Say, for every network of ``answer`` (that of `reach`), what its devices lose on each channel.

    Meaning: the share of frames not acknowledged at the first try along each device's route, in three
    readings of everything assumed together, among those ``heard`` by a channel survey; the channel that loses
    least in the mean over the devices, and by how much less than the one in use. Three answers: without a
    survey, a channel in use or a device with a route it cannot be told; Z-Wave has no channel to choose.
    Source: see `lost`, `carried` and `taken_in_db`. Leaves out: how those heard change over the day, the
    house's own networks among one another unless they were heard too.
    """
    out: dict[str, NetworkChannels] = {}
    for key, network in rows.house.networks.items():
        if network.protocol is Protocol.ZWAVE:
            out[key] = no_choice(rows.house, key)
        else:
            out[key] = _network(rows, assumptions, answer, heard, key)
    leans = _leans(answer, heard, out)
    found = (finding_of(rows.house, one, leans) for one in out.values())
    findings = tuple(f for f in found if f is not None)
    return Channels(out, tuple(heard), answer.measured, findings, tuple(_notes(rows, heard, answer)), leans)


def _network(
    rows: Schedule, assumptions: Assumptions, answer: Reach, heard: Sequence[Transmitter], key: str
) -> NetworkChannels:
    members = [d for d in answer.devices if d.network == key]
    links = answer.networks.get(key)
    ways = [] if links is None else [(d.id, _way(links, d.id, d.route)) for d in members if d.hops]
    lacking = tuple(d.id for d in members if not d.hops)
    if not heard or links is None or not ways:
        needs = tuple(look for d in members for look in d.needs)
        return untold(rows.house, key, heard=bool(heard), lacking=lacking, needs=tuple(dict.fromkeys(needs)))
    routes = routes_of(links, ways)
    reaching = disturbing(rows.house, assumptions, heard, links.stations)
    figures = _Figures(links, routes, answer.spread_db)
    quiet = figures.lost(None, None)
    channels = tuple(
        _channel(channel, routes, figures.lost(reaching, channel), quiet, heard) for channel in MESH_CHANNELS
    )
    return told(
        rows.house,
        key,
        channels,
        _by_device(routes, quiet),
        lacking=lacking,
        better_pct=assumptions.span("air_better_channel_pct"),
        duty_known=all(one.duty_permille is not None for one in heard),
        weakest=link_look(_place_of(links, routes, quiet)),
    )


def _place_of(links: Links, routes: Routes, quiet: Floats) -> str:
    """Where the device stands that loses most on a quiet channel."""
    device = routes.devices[int(np.argmax(quiet[2]))]
    return next(s.place for s in links.stations if s.id == device)


def _way(links: Links, device: str, repeaters: Sequence[str]) -> list[int]:
    number = {s.id: n for n, s in enumerate(links.stations)}
    return [number[device], *(number[r] for r in repeaters), 0]


class _Figures:
    """Frames lost along the routes of one network, asked channel by channel."""

    def __init__(self, links: Links, routes: Routes, spread_db: float) -> None:
        self._links, self._routes, self._spread_db = links, routes, spread_db
        self._sensitivity = np.array([s.sensitivity_dbm for s in links.stations], np.float64).T

    def lost(self, reaching: Disturbing | None, channel: int | None) -> Floats:
        """(3, routes); with nobody on the air where none is given."""
        return np.stack(
            [
                lost(
                    self._links,
                    self._routes,
                    reading=k,
                    spread_db=self._spread_db,
                    sensitivity_dbm=self._sensitivity[k],
                    among=reaching.on(channel, k) if reaching and channel else None,
                )
                for k in READINGS
            ]
        )


def _channel(
    channel: int, routes: Routes, losing: Floats, quiet: Floats, heard: Sequence[Transmitter]
) -> ChannelFigures:
    return ChannelFigures(
        channel,
        channel_mhz(channel),
        _share(losing.mean(axis=1)),
        _share((losing - quiet).mean(axis=1)),
        _by_device(routes, losing),
        routes.devices[int(np.argmax(losing[1]))],
        all(is_clear(channel, one) for one in heard),
    )


def _by_device(routes: Routes, losing: Floats) -> Mapping[str, Share]:
    return {device: _share(losing[:, n]) for n, device in enumerate(routes.devices)}


def _share(three: Floats) -> Share:
    return Share(float(three.min()), float(three[1]), float(three.max()))


def _leans(
    answer: Reach, heard: Sequence[Transmitter], networks: Mapping[str, NetworkChannels]
) -> tuple[str, ...]:
    """The assumptions that entered: those of the air, and those of the links."""
    if not heard or not any(one.channels for one in networks.values()):
        return ()
    stated = all(one.duty_permille is not None for one in heard)
    air = [name for name in OF_AIR if name != "air_duty_pct" or not stated]
    return tuple(dict.fromkeys((*air, *(name for d in answer.devices for name in d.assumptions))))


def _notes(rows: Schedule, heard: Sequence[Transmitter], answer: Reach) -> list[str]:
    if not heard:
        return []
    places = dict.fromkeys(one.place for one in heard if one.place is not None)
    where = [f"at {', '.join(places)}"] if places else []
    where += ["in the house at large"] if any(one.place is None for one in heard) else []
    out = [
        f"{_counted(len(heard))} heard {' and '.join(where)}. What was heard at the place nearest to a "
        "device stands for it, less what surrounds the device (engineering judgement).",
    ]
    if lost_places := off_plan(rows.house, heard):
        out.append(f"Not on the plan, so taken for the whole house: {', '.join(lost_places)}.")
    silent = sum(one.duty_permille is None for one in heard)
    if silent:
        out.append(f"Of {_counted(silent)} the share of time is not known, and assumed.")
    if not answer.measured:
        out.append("No link is measured: how weak the links are is assumed, and with it how much they bear.")
    return out


def _counted(rows: int) -> str:
    return "1 transmitter" if rows == 1 else f"{rows} transmitters"
