"""What `select` answers, in words: the same on the command line and on the desk."""

from secondfix.house import House
from secondfix.selection import Doubt, Fit, Spot, WantedGang
from secondfix.terms import POWER_LOSS_LABELS, PROTOCOLS, PowerLossState

NO_HELP = (
    "No change and no two of those tried bring a model to fit: neutral, joint, deeper or larger box, label, "
    "lamps, another protocol, a module at the luminaire."
)
BEST_FIRST = "best first: fewest unknowns, then the widest margin; that is no price"


def spot_words(house: House, spot: Spot) -> str:
    """``B07 Dining room, mounts 1, 2, now D07 plimmet-osier-three@1``."""
    room = house.boxes[spot.place].room if spot.in_box else house.places[spot.place].room
    mounts = (
        f", {'mount' if len(spot.mounts) == 1 else 'mounts'} {', '.join(spot.mounts)}" if spot.mounts else ""
    )
    device = house.devices[spot.device_id].model if spot.device_id else None
    now = f", now {spot.device_id} {device or 'not decided'}" if spot.device_id else ""
    now += f", instead of gang {' and '.join(spot.instead_of)}" if spot.instead_of else ""
    return f"{spot.place} {house.rooms[room].name}{mounts}{now}"


def wanted_words(house: House, spot: Spot) -> str:
    """What the gangs are to do, by which protocol, at which voltage."""
    gangs = "; ".join(_gang(house, g, in_box=spot.in_box) for g in spot.gangs) or "no gang"
    radio = " or ".join(PROTOCOLS[p].label for p in spot.protocols) or "any protocol"
    mains = f"{house.mains_voltage_v} V" if house.mains_voltage_v else "mains voltage not known"
    return f"{gangs}; {radio}; {mains}"


def fit_words(fit: Fit) -> str:
    """Margin, the state it must be set to, gangs to spare; begins with a comma where anything is said."""
    return f"{margin_words(fit)}{_setting(fit.set_to)}{_spare(fit.spare_gangs)}"


def margin_words(one: Fit | Doubt) -> str:
    """How much of the tightest printed current is used."""
    if one.used_permille is None:
        return ", margin not known"
    return f", uses {-(-one.used_permille // 10)} % of what is printed" if one.used_permille else ""


def _gang(house: House, gang: WantedGang, *, in_box: bool) -> str:
    dimmed = ", to be dimmed" if gang.dimmed else ""
    if gang.load_id:
        name = f"{house.loads[gang.load_id].name} ({gang.load_id})"
        return f"{gang.id} feeds {name}{dimmed}" if in_box else f"{name}{dimmed}"
    if gang.extends:
        return f"{gang.id} extends {gang.extends}"
    return f"{gang.id} {gang.duty.value.replace('_', ' ')}"


def _setting(set_to: PowerLossState | None) -> str:
    return f", set so that it {POWER_LOSS_LABELS[set_to]}" if set_to else ""


def _spare(gangs: int) -> str:
    return f", {gangs} gang{'' if gangs == 1 else 's'} spare" if gangs > 0 else ""
