"""The words of the walk's steps and of places and devices in them."""

from collections.abc import Sequence

from secondfix.catalogue import Form
from secondfix.house import House, Schedule
from secondfix.joining.links import CONTROLLER
from secondfix.joining.through import Choice
from secondfix.terms import PROTOCOLS, Protocol, ProtocolWords

LIVE_UNTIL_PROVED = "treat it as live until proved dead"


def place_title(house: House, place_id: str) -> str:
    """``B07 Dining room``, or ``P3 Socket behind the sofa, Sitting room``."""
    if place_id in house.boxes:
        return f"{place_id} {house.rooms[house.boxes[place_id].room].name}"
    place = house.places[place_id]
    return f"{place_id} {place.name}, {house.rooms[place.room].name}"


def device_title(schedule: Schedule, device_id: str) -> str:
    """``D04 (Ostrabeck Heron, one-gang dimmer)``, or that its model is not known."""
    model = schedule.model_of(device_id)
    return f"{device_id} ({model.title if model else 'model not known'})"


def protocol_of(schedule: Schedule, device_id: str) -> Protocol | None:
    """The device's protocol, by its network, failing that by its model; None if neither is known."""
    network = schedule.house.devices[device_id].network
    if network:
        return schedule.house.networks[network].protocol
    model = schedule.model_of(device_id)
    return model.protocol if model else None


def protocol_words(schedule: Schedule, device_id: str) -> ProtocolWords | None:
    """Words of the device's protocol; None if that is not known."""
    protocol = protocol_of(schedule, device_id)
    return PROTOCOLS[protocol] if protocol else None


def circuits_words(house: House, circuits: Sequence[str]) -> str:
    """``circuit C1 (Lights up)`` or ``circuits C1 (Lights up) and C4 (Sockets)``; ids where unnamed."""
    named = [f"{c} ({house.circuits[c].name})" if c in house.circuits else c for c in circuits]
    return f"circuit {named[0]}" if len(named) == 1 else f"circuits {', '.join(named[:-1])} and {named[-1]}"


def isolate_words(house: House, circuits: Sequence[str], places: Sequence[str], *, again: bool) -> str:
    """What to isolate, and where to prove it."""
    where = ", ".join(places)
    if not circuits:
        return (
            f"The circuit at {where} is not known: find it, isolate it, lock off, and prove dead at {where}; "
            f"{LIVE_UNTIL_PROVED}."
        )
    once_more = " once more, for a front must come off" if again else ""
    together = " together" if len(circuits) > 1 else ""
    what = circuits_words(house, circuits)
    return f"Isolate {what}{together}{once_more}: lock off, and prove dead at {where}."


def energise_words(house: House, circuits: Sequence[str], fronts_off: Sequence[str]) -> str:
    """What to energise, and where fronts are still off."""
    what = circuits_words(house, circuits) if circuits else "the circuit that was found"
    text = f"Energise {what} again."
    if fronts_off:
        text += (
            f" The front is still off at {', '.join(fronts_off)}: live parts can be touched there. "
            "Let nobody near, and do not leave it."
        )
    return text


def fit_words(schedule: Schedule, device_id: str, *, front_stays_off: bool) -> str:
    """How the device goes into its place."""
    model = schedule.model_of(device_id)
    verb = "Plug in" if model and model.form is Form.PLUG_IN else "Fit"
    place = place_title(schedule.house, schedule.place_of_device(device_id))
    stays = " Leave its front off: joining needs it off." if front_stays_off else ""
    return f"{verb} {device_title(schedule, device_id)} at {place}.{stays}"


def join_words(schedule: Schedule, device_id: str, chosen: Choice | None) -> str:
    """Join, include or commission it, and through which parent."""
    words = protocol_words(schedule, device_id)
    if words is None:
        return f"{device_id} is on no network yet: state its network before joining it."
    verb = f"{words.join[0].upper()}{words.join[1:]} {device_id}"
    if not schedule.house.devices[device_id].network:
        return f"{verb}: its network is not stated."
    if chosen is None:
        return f"{verb}: no good parent reaches this place; see the finding."
    through = f"{verb} through {_named(chosen.parent, words)}"
    if chosen.margin_db is None:
        return f"{through}: this link is not known; try it with the plate fitted."
    spare = f" (in reserve: {_named(chosen.spare, words)})" if chosen.spare else ""
    return f"{through}{spare}."


def _named(parent: str, words: ProtocolWords) -> str:
    return f"the {words.controller}" if parent == CONTROLLER else parent


def function_test_words(schedule: Schedule, device_id: str) -> str:
    """The function test of one device; its rows stand on the worksheet."""
    if not schedule.channels_of[device_id]:
        return f"Function test of {device_id}: see that it answers in the network."
    return (
        f"Function test of {device_id}: press each gang and see that its own load answers, and nothing else."
    )
