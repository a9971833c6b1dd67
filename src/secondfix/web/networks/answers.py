"""What `select` says of one spot, as the sheet shows it."""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from secondfix.actions.choice_words import NO_HELP, fit_words, margin_words, spot_words, wanted_words
from secondfix.actions.words import in_words_of
from secondfix.catalogue import Model
from secondfix.findings import Finding
from secondfix.house import House
from secondfix.selection import RULES, Doubt, PlaceChoice


@dataclass(frozen=True, slots=True)
class Offer:
    """A model that fits, or of which it cannot be told."""

    key: str
    title: str
    words: str
    told: tuple[Finding, ...]
    rules: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Refused:
    """Models that one rule refuses in the same words."""

    models: tuple[str, ...]
    because: Finding

    @property
    def asked(self) -> bool:
        """Whether what the place itself asks refuses them, and no rule about a danger or fault."""
        return self.because.rule in _ORDER


@dataclass(frozen=True, slots=True)
class Answer:
    """What is said of one spot; ``joined`` where its device has an address, so that another is a swap.

    ``looks`` would settle what cannot be told, each with the number of models that wait for it.
    """

    number: int
    device_id: str
    head: str
    wanted: str
    fits: tuple[Offer, ...]
    doubts: tuple[Offer, ...]
    looks: tuple[tuple[str, int], ...]
    refused: tuple[Refused, ...]
    count_refused: int
    helps: tuple[str, ...]
    no_help: str
    joined: bool


def answer_of(house: House, models: Mapping[str, Model], number: int, choice: PlaceChoice) -> Answer:
    """The answer at one spot; ``number`` is its place among those of its place."""
    spot = choice.spot
    device = house.devices[spot.device_id] if spot.device_id else None
    fits = [
        Offer(f.model, models[f.model].title, fit_words(f).removeprefix(", "), _said(house, f.advice))
        for f in choice.fits
    ]
    doubts = [_doubt(house, models[d.model], d) for d in choice.doubts]
    nothing = not fits and not doubts and not choice.helps
    return Answer(
        number,
        spot.device_id or "",
        spot_words(house, spot),
        wanted_words(house, spot),
        tuple(fits),
        tuple(doubts),
        _looks(doubts),
        tuple(_grouped(house, choice)),
        len(choice.refused),
        tuple(
            f"{h.words} Then fits{'' if h.place == spot.place else f' at {h.place}'}: {', '.join(h.fits)}."
            for h in choice.helps
        ),
        NO_HELP if nothing else "",
        device is not None and device.address is not None,
    )


def _said(house: House, findings: Iterable[Finding]) -> tuple[Finding, ...]:
    return tuple(in_words_of(house, findings))


def _doubt(house: House, model: Model, doubt: Doubt) -> Offer:
    told = _said(house, doubt.unknown)
    rules = tuple(dict.fromkeys(f.rule for f in told))
    return Offer(doubt.model, model.title, margin_words(doubt).removeprefix(", "), told, rules)


def _looks(doubts: Iterable[Offer]) -> tuple[tuple[str, int], ...]:
    """Every look with the number of models that it would tell of, the most first."""
    waiting = ({look.words: None for f in d.told for look in f.looks} for d in doubts)
    return tuple(Counter(words for own in waiting for words in own).most_common())


_ORDER = {rule.id: number for number, rule in enumerate(RULES)}


def _asked_first(key: tuple[str, str]) -> tuple[int, str, str]:
    """What the place itself asks stands before the electrical rules."""
    rule, says = key
    return _ORDER.get(rule, len(_ORDER)), rule, says


def _grouped(house: House, choice: PlaceChoice) -> list[Refused]:
    groups: dict[tuple[str, str], list[str]] = {}
    first: dict[tuple[str, str], Finding] = {}
    for one, because in zip(choice.refused, _said(house, (r.because for r in choice.refused)), strict=True):
        key = (because.rule, because.says)
        groups.setdefault(key, []).append(one.model)
        first.setdefault(key, because)
    return [Refused(tuple(groups[key]), first[key]) for key in sorted(groups, key=_asked_first)]
