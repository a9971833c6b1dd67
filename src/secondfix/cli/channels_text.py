"""Channels on the command line: the survey opened, and its answer as a page of text."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Annotated

import typer

from secondfix.actions.channels import (
    OnAir,
    both,
    channels,
    channels_as_json,
    heard_in_file,
    heard_in_journal,
)
from secondfix.assumptions import Assumptions
from secondfix.cli.opening import refuse
from secondfix.cli.page import counted, para, percent, table
from secondfix.files import read_bytes
from secondfix.findings import Finding
from secondfix.house import Fault, House
from secondfix.journal import Journal
from secondfix.radio import ChannelFigures, Channels, Choice, NetworkChannels, Reach, Share, cost_words

AirOption = Annotated[
    str | None,
    typer.Option(
        "--air",
        metavar="FILE",
        help="A channel survey at 2.4 GHz, CSV or XLSX: which channel is better, and by how much.",
    ),
]


LARGEST_FILE_BYTES = 16 * 1024 * 1024  # what is above the survey's own limit is told by its reader


@dataclass(frozen=True, slots=True)
class OpenedAir:
    """A survey and what it says of the channels; ``answer`` is None where there is no survey."""

    on_air: OnAir
    answer: Channels | None

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What the channels give to be told."""
        return self.answer.findings if self.answer else ()

    def as_json(self, *, numbers: bool) -> dict[str, object] | None:
        """The answer as JSON, null where there is no survey."""
        return channels_as_json(self.answer, self.on_air, numbers=numbers) if self.answer else None

    def as_text(self, house: House, *, numbers: bool) -> list[str]:
        """Paragraphs and tables, one network after another; shares of frames where asked for."""
        if self.answer is None:
            return []
        out = [f"Channels at 2.4 GHz: {counted(len(self.answer.heard), 'transmitter')} heard"]
        for one in self.answer.networks.values():
            out += _network(house.networks[one.network].name, one, numbers=numbers)
        return out + [para(note) for note in (*self.on_air.notes, *self.answer.notes)]


def opened_survey(house: House, file: str) -> OnAir:
    """The survey in a file; exit 2 with every fault of it."""
    data = read_bytes(file, most=LARGEST_FILE_BYTES)
    read = [data] if isinstance(data, Fault) else heard_in_file(house, data, where=file)
    if isinstance(read, list):
        refuse(read)
    return read


def opened_air(
    house: House, journal: Journal, file: str | None, reached: Reach, assumptions: Assumptions
) -> OpenedAir:
    """What the journal and the file heard on the air, and what it says of the channels."""
    on_air = heard_in_journal(house, journal)
    if file is not None:
        on_air = both(on_air, opened_survey(house, file))
    if not on_air.surveyed:
        return OpenedAir(on_air, None)
    return OpenedAir(on_air, channels(house, reached, on_air, assumptions=assumptions))


def _network(name: str, one: NetworkChannels, *, numbers: bool) -> Iterator[str]:
    told_below = one.choice in {Choice.CHANGE, Choice.CANNOT_TELL}
    yield f"{one.network} ({name}):" if told_below and one.channels else para(f"{one.network}: {one.words}")
    if not one.channels:
        return
    now, best = one.of(one.in_use), one.of(one.best)
    if numbers and now and best and one.gain and now is not best:
        yield para(
            f"On {now.channel} {_span(now.lost)} of the frames are not acknowledged at the first try, on "
            f"{best.channel} {_span(best.lost)}."
        )
    yield table(_head(numbers), [_row(one, c, numbers=numbers) for c in one.channels])
    if numbers:
        shown = [c for c in (now, best) if c is not None]
        shown = shown[:1] if len(shown) == 2 and shown[0] is shown[1] else shown
        head = ("device", "lost on a quiet channel", *(f"lost on {c.channel}" for c in shown))
        yield table(
            head, [(d, _span(q), *(_span(c.devices[d]) for c in shown)) for d, q in (one.quiet or {}).items()]
        )
    if one.not_known:
        yield para(f"Without a route, so not counted: {', '.join(one.not_known)}.")


def _head(numbers: bool) -> tuple[str, ...]:
    more = ("lost in the mean",) if numbers else ()
    return ("channel", "MHz", *more, "worst device", "clear", "frames that those heard cost")


def _row(one: NetworkChannels, c: ChannelFigures, *, numbers: bool) -> tuple[str, ...]:
    mark = {one.in_use: " in use", one.best: " best"}.get(c.channel, "")
    if c.channel == one.in_use == one.best:
        mark = " in use, best"
    more = (_span(c.lost),) if numbers else ()
    return (
        f"{c.channel}{mark}",
        str(c.mhz),
        *more,
        c.worst,
        "yes" if c.clear else "no",
        cost_words(c.added),
    )


def _span(share: Share) -> str:
    low, high = (percent(end).removesuffix(" %") for end in (share.low, share.high))
    return f"{percent(share.assumed)} ({low} to {high})" if low != high else percent(share.assumed)
