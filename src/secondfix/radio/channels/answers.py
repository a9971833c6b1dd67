"""What `channels` answers: figures of each channel, and for each network which one and by how much."""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from secondfix.findings import Finding, Look
from secondfix.radio.channels.heard import Transmitter


class Choice(StrEnum):
    """What is to be done about the channel of a network."""

    STAY = "stay"
    CHANGE = "change"
    CANNOT_TELL = "cannot_tell"
    NO_CHOICE = "no_choice"


@dataclass(frozen=True, slots=True)
class Share:
    """Share of frames, over the whole range of what is assumed: least, assumed and greatest."""

    low: float
    assumed: float
    high: float


@dataclass(frozen=True, slots=True)
class ChannelFigures:
    """One channel of one network; shares from 0 to 1.

    ``lost`` is the share of frames not acknowledged at the first try along a device's route, mean over its
    devices; ``devices`` the same by device, ``worst`` the device that loses most. ``added`` is what those
    heard add to what is lost on a quiet channel, mean over the devices. ``clear``: the centre of everybody
    heard is at least 12 MHz away (at least one channel, for a mesh).
    """

    channel: int
    mhz: int
    lost: Share
    added: Share
    devices: Mapping[str, Share]
    worst: str
    clear: bool


@dataclass(frozen=True, slots=True)
class NetworkChannels:
    """One network: channels in order, the one in use (None: not stated) and the best one.

    ``gain`` is the share of frames that the best channel loses less than the one in use, None where
    either is not known. ``quiet`` is what each device loses with nobody else on the air. ``not_known`` are
    devices without a route, of which nothing is computed. ``words`` say the answer, ``needs`` what would
    settle it.
    """

    network: str
    choice: Choice
    words: str
    in_use: int | None = None
    best: int | None = None
    gain: Share | None = None
    channels: tuple[ChannelFigures, ...] = ()
    quiet: Mapping[str, Share] | None = None
    not_known: tuple[str, ...] = ()
    needs: tuple[Look, ...] = ()

    @property
    def clear(self) -> tuple[int, ...]:
        """Channels that nobody heard reaches into."""
        return tuple(c.channel for c in self.channels if c.clear)

    def of(self, channel: int | None) -> ChannelFigures | None:
        """The figures of one channel, if there are any."""
        return next((c for c in self.channels if c.channel == channel), None)


@dataclass(frozen=True, slots=True)
class Channels:
    """The answer for a house, networks in the document's order; ``heard`` is what it rests on.

    ``measured`` links stand behind it. ``notes`` are sentences on what the figures lean on, ``assumptions``
    names of those that entered.
    """

    networks: Mapping[str, NetworkChannels]
    heard: tuple[Transmitter, ...]
    measured: int
    findings: tuple[Finding, ...]
    notes: tuple[str, ...]
    assumptions: tuple[str, ...]
