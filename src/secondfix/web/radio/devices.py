"""The devices of one network as rows: their words, their route, and what becomes of them in a case."""

from collections.abc import Iterator
from dataclasses import dataclass

from secondfix.house import House
from secondfix.radio import DeviceChance, DeviceReach, Foreseen, Reach, Word
from secondfix.web.radio.going import Chosen
from secondfix.web.radio.words import percent, spanned, thing_called


@dataclass(frozen=True, slots=True)
class Row:
    """One device. ``best`` is the word of its best route, ``any`` that of any route, in the draws.

    ``then`` says what becomes of it in the chosen case; ``figures`` are its chances where numbers are shown.
    """

    id: str
    beside: str
    best: Word
    any: Word | None
    way: str
    hangs_on: tuple[str, ...]
    then: str
    figures: tuple[str, ...]

    @property
    def bad(self) -> bool:
        """Whether nobody should rely on it."""
        return Word.UNLIKELY in {self.best, self.any} or self.then in {FALLS, NO_POWER}


FALLS, RISES, NO_POWER = "falls", "becomes likely", "gone itself"


def rows_of(
    house: House,
    reached: Reach,
    network_id: str,
    *,
    foreseen: Foreseen | None,
    case: Chosen | None,
    numbers: bool,
) -> list[Row]:
    """Every device of a network in the document's order."""
    drawn = foreseen.networks[network_id] if foreseen else None
    chances = {d.id: d for d in drawn.devices} if drawn else {}
    return [
        Row(
            d.id,
            thing_called(house, d.id).removeprefix(d.id).strip(),
            d.word,
            drawn.words.get(d.id) if drawn else None,
            way_of(d),
            d.hangs_on,
            _then(case, d.id),
            tuple(_figures(chances.get(d.id), case)) if numbers and drawn else (),
        )
        for d in reached.devices
        if d.network == network_id
    ]


def way_of(device: DeviceReach) -> str:
    """By way of whom, or what is to be looked at first."""
    if device.needs:
        return "; ".join(dict.fromkeys(look.words for look in device.needs))
    if not device.hops:
        return "no route"
    return f"by way of {', '.join(device.route)}" if device.route else "straight to the controller"


def _then(case: Chosen | None, device: str) -> str:
    if case is None:
        return ""
    if device in case.gone:
        return NO_POWER
    return FALLS if device in case.falls else RISES if device in case.rises else ""


def _figures(d: DeviceChance | None, case: Chosen | None) -> Iterator[str]:
    if d is None:
        yield from ("", "", "", *([""] if case else []))
        return
    one = d.reached
    share, leave = percent(one.share), spanned(one.low, one.high)
    yield share if share == leave else f"{share} ({leave})"
    yield spanned(d.model_low, d.model_high)
    yield percent(d.any_gone.share)
    if case:
        there = case.case.chance.get(d.id) if case.case else None
        yield "" if d.id in case.gone else percent(there.share if there else one.share)


HEADS = ("Chance (draws leave)", "Model leaves", "Whichever one goes")
