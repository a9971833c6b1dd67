"""Channels: who was heard on the air, by a survey or the journal, and which channel does best among them."""

from collections.abc import Sequence
from dataclasses import dataclass

from secondfix import journal as package
from secondfix import radio
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.house import Fault, House, schedule
from secondfix.journal import Journal


@dataclass(frozen=True, slots=True)
class OnAir:
    """Who was heard, and a sentence for what a person should know of the reading.

    ``surveyed``: there is a survey, though it may have heard nobody.
    """

    heard: tuple[radio.Transmitter, ...]
    notes: tuple[str, ...]
    surveyed: bool


def heard_in_journal(house: House, journal: Journal) -> OnAir:
    """Who the current surveys of the journal heard: the latest that knew the others, else all together."""
    folded = package.fold(house, journal)
    surveys: list[list[radio.Transmitter]] = []
    strange: dict[str, None] = {}
    for _, entries in sorted(folded.current.items(), key=lambda item: item[0]):
        for entry in entries:
            if isinstance(entry, package.AirHeard):
                survey = [_transmitter(entry.subject, one) for one in entry.transmitters]
                strange |= dict.fromkeys(t.place for t in survey if t.place and not _stands(house, t.place))
                surveys.append(
                    [t if t.place is None or _stands(house, t.place) else _nowhere(t) for t in survey]
                )
    notes = (f"Not in the house, so taken for the whole of it: {', '.join(strange)}.",) if strange else ()
    return OnAir(radio.put_together(surveys) if surveys else (), notes, bool(surveys))


def _stands(house: House, place: str) -> bool:
    return place in house.boxes or place in house.places


def _nowhere(one: radio.Transmitter) -> radio.Transmitter:
    """The same, heard nobody knows where."""
    return radio.Transmitter(
        one.kind,
        one.channel,
        one.width_mhz,
        one.level_dbm,
        one.duty_permille,
        None,
        one.name,
        one.second_channel,
    )


def _transmitter(subject: str, one: package.HeardOnAir) -> radio.Transmitter:
    kind, _, owner = subject.partition(":")
    sends = radio.Sends(one.kind)
    usual = 2 if sends is radio.Sends.MESH else 20
    return radio.Transmitter(
        sends,
        one.channel,
        one.width_mhz or usual,
        one.level_dbm,
        one.duty_permille,
        one.place if kind == "house" else owner,
        one.name,
        one.second_channel,
    )


def heard_in_file(house: House, data: bytes, *, where: str) -> OnAir | list[Fault]:
    """Who a channel survey in a file heard (CSV or XLSX), or all faults of it."""
    from secondfix.exchange import read_air_survey  # noqa: PLC0415 - loaded by those who bring a file

    read = read_air_survey(data, where=where, places={*house.boxes, *house.places})
    return read if isinstance(read, list) else OnAir(read.heard, read.told, surveyed=True)


def both(one: OnAir, other: OnAir) -> OnAir:
    """Two surveys at once: who both heard counts once, with the higher level."""
    surveys = [s.heard for s in (one, other) if s.surveyed]
    heard = radio.put_together(surveys) if surveys else ()
    return OnAir(heard, (*one.notes, *other.notes), bool(surveys))


def as_transmitters(subject: str, heard: Sequence[radio.Transmitter]) -> list[dict[str, object]] | Fault:
    """Who was heard, as an entry `air_heard` on this subject writes it; one place's entry names no other."""
    kind, _, owner = subject.partition(":")
    out = []
    for one in heard:
        if kind != "house" and one.place not in {None, owner}:
            return Fault("survey", "place", f"'{one.place}'", f"{owner} or nothing: the entry is of {owner}")
        place = one.place if kind == "house" else None
        plain = radio.transmitter_as_json(one) | {"place": place, "name": one.name or None}
        out.append({key: value for key, value in plain.items() if value is not None})
    return out


def channels(
    house: House, reached: radio.Reach, on_air: OnAir, *, assumptions: Assumptions
) -> radio.Channels:
    """What each network's devices lose on each channel among those heard; see `radio.channels_of`."""
    rows, settled = schedule(house, house.models), settled_assumptions(house, assumptions)
    return radio.channels_of(rows, settled, reached, on_air.heard)


def heard_by(house: House, on_air: OnAir, *, assumptions: Assumptions) -> radio.Heard | None:
    """For `foresee`: what those heard send into each network's channel; None where nobody was heard."""
    if not on_air.heard:
        return None
    return radio.interference_of(house, settled_assumptions(house, assumptions), on_air.heard)


def channels_as_json(answer: radio.Channels, on_air: OnAir, *, numbers: bool) -> dict[str, object]:
    """The answer with the notes of the reading (docs/json.md)."""
    plain = radio.channels_as_json(answer, numbers=numbers)
    return {**plain, "notes": [*on_air.notes, *answer.notes]}
