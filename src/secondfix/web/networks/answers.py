"""What `select` says of one spot, as the sheet shows it."""

from collections.abc import Mapping
from dataclasses import dataclass

from secondfix.actions.choice_words import NO_HELP, fit_words, margin_words, spot_words, wanted_words
from secondfix.catalogue import Model
from secondfix.findings import Finding
from secondfix.house import House
from secondfix.selection import PlaceChoice


@dataclass(frozen=True, slots=True)
class Offer:
    """A model that fits, or of which it cannot be told."""

    key: str
    title: str
    words: str
    told: tuple[Finding, ...]
    looks: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Refused:
    """Models that one rule refuses in the same words."""

    models: tuple[str, ...]
    because: Finding


@dataclass(frozen=True, slots=True)
class Answer:
    """What is said of one spot; ``joined`` where its device has an address, so that another is a swap."""

    number: int
    device_id: str
    head: str
    wanted: str
    fits: tuple[Offer, ...]
    doubts: tuple[Offer, ...]
    refused: tuple[Refused, ...]
    count_refused: int
    helps: tuple[str, ...]
    no_help: str
    joined: bool


def answer_of(house: House, models: Mapping[str, Model], number: int, choice: PlaceChoice) -> Answer:
    """The answer at one spot; ``number`` is its place among those of its place."""
    spot = choice.spot
    device = house.devices[spot.device_id] if spot.device_id else None
    nothing = not choice.fits and not choice.doubts and not choice.helps
    return Answer(
        number,
        spot.device_id or "",
        spot_words(house, spot),
        wanted_words(house, spot),
        tuple(
            Offer(f.model, models[f.model].title, fit_words(f).removeprefix(", "), f.advice, ())
            for f in choice.fits
        ),
        tuple(
            Offer(
                d.model,
                models[d.model].title,
                margin_words(d).removeprefix(", "),
                d.unknown,
                tuple(look.words for look in d.looks),
            )
            for d in choice.doubts
        ),
        tuple(_grouped(choice)),
        len(choice.refused),
        tuple(
            f"{h.words} Then fits{'' if h.place == spot.place else f' at {h.place}'}: {', '.join(h.fits)}."
            for h in choice.helps
        ),
        NO_HELP if nothing else "",
        device is not None and device.address is not None,
    )


def _grouped(choice: PlaceChoice) -> list[Refused]:
    groups: dict[tuple[str, str], list[str]] = {}
    first: dict[tuple[str, str], Finding] = {}
    for one in choice.refused:
        key = (one.because.rule, one.because.says)
        groups.setdefault(key, []).append(one.model)
        first.setdefault(key, one.because)
    return [Refused(tuple(models), first[key]) for key, models in groups.items()]
