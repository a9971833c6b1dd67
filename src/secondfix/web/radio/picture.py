"""The plan of a storey with radio on it: zones, links, and what falls, in the page's own ink."""

from dataclasses import dataclass
from urllib.parse import urlencode

from django.urls import reverse

from secondfix.papers import PlanOnScreen, RadioShown, radio_plan_on_screen
from secondfix.radio import Case, CaseKind, Foreseen, cover
from secondfix.web.frame.ink import INK
from secondfix.web.frame.places import way_to
from secondfix.web.radio.asking import RadioAsked
from secondfix.web.radio.going import Chosen


@dataclass(frozen=True, slots=True)
class Wanted:
    """Which picture: a network on a storey, a case or none, with margins or without."""

    network: str
    storey: str
    case: Chosen | None
    numbers: bool

    @property
    def name(self) -> str:
        """What it is kept under."""
        return f"picture {self.network} {self.storey} {self.case and self.case.value} {self.numbers}"


def drawn(air: RadioAsked, wanted: Wanted, foreseen: Foreseen | None) -> PlanOnScreen:
    """The picture, drawn once."""
    name = f"{wanted.name} {foreseen is not None}"
    return air.once(name, lambda: _drawn(air, wanted, foreseen))


def drawn_before(air: RadioAsked, wanted: Wanted, foreseen: Foreseen | None) -> PlanOnScreen | None:
    """The picture where it was drawn already: a large house takes a second or two."""
    made: PlanOnScreen | None = air.made(f"{wanted.name} {foreseen is not None}")
    return made


def _drawn(air: RadioAsked, wanted: Wanted, foreseen: Foreseen | None) -> PlanOnScreen:
    about, reached, network = air.about, air.reached, wanted.network
    case = _case_of(wanted)
    zones = None
    if network in reached.networks:
        zones = cover(
            about.rows,
            about.settled,
            reached,
            network,
            wanted.storey,
            gone=case.gone if case else (),
            learned=air.learned if air.measured else None,
        )
    words = foreseen.networks[network].words if foreseen else {}
    shown = RadioShown(reached, network, zones, words, case, numbers=wanted.numbers)
    return radio_plan_on_screen(about.rows, wanted.storey, shown, palette=INK, ways=_ways(air, wanted))


def _case_of(wanted: Wanted) -> Case | None:
    """The case to draw; of a device that passes on for nobody, that it is gone."""
    chosen = wanted.case
    if chosen is None or chosen.case is not None:
        return chosen.case if chosen else None
    device = chosen.gone[0]
    return Case(CaseKind.REPEATER_GONE, wanted.network, device, chosen.words, chosen.gone, {}, (), (), 0.0)


def _ways(air: RadioAsked, wanted: Wanted) -> dict[str, str]:
    """From a device to what becomes of the others without it; from all else to where it is changed."""
    house = air.about.house
    ways = {i: way_to(house, i) for i in (*house.boxes, *house.places)}
    for key, device in house.devices.items():
        if device.network == wanted.network:
            asked = {
                "network": wanted.network,
                "storey": wanted.storey,
                "case": f"{CaseKind.REPEATER_GONE}:{key}",
            }
            way = f"{reverse('radio', args=[house.id])}?{urlencode(asked)}#then"
            ways[air.about.rows.place_of_device(key)] = ways[key] = way
    return ways
