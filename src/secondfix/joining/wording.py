"""The words of the walk's steps and of places and devices in them."""

from collections.abc import Sequence

from secondfix.catalogue import Form
from secondfix.house import House, Schedule, is_nec
from secondfix.joining.circuits import Group
from secondfix.joining.links import CONTROLLER
from secondfix.joining.through import Choice
from secondfix.terms import PROTOCOLS, Protocol, ProtocolWords, said

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


def isolate_words(house: House, group: Group, places: Sequence[str]) -> str:
    """What to isolate, all of it and why, and where to prove it: the same on the walk and on each sheet."""
    where, nec = ", ".join(places), is_nec(house)
    if not group.circuits:
        do = said("find it, isolate it, lock off, and prove dead", nec=nec)
        return f"The circuit at {where} is not known: {do} at {where}; {said(LIVE_UNTIL_PROVED, nec=nec)}."
    what = circuits_words(house, group.circuits)
    if len(group.circuits) > 1:
        what += f" together ({'; '.join(group.why)})"
    then = said("lock off, and prove dead", nec=nec)
    return f"{said('Isolate', nec=nec)} {what}: {then} at {where}."


def energise_words(house: House, circuits: Sequence[str]) -> str:
    """What to energise."""
    what = circuits_words(house, circuits) if circuits else "the circuit that was found"
    return f"See that every front is on. {said('Energise', nec=is_nec(house))} {what} again."


def fit_words(schedule: Schedule, device_id: str) -> str:
    """How the device goes into its place."""
    model = schedule.model_of(device_id)
    verb = "Plug in" if model and model.form is Form.PLUG_IN else "Fit"
    place = place_title(schedule.house, schedule.place_of_device(device_id))
    return f"{verb} {device_title(schedule, device_id)} at {place}."


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
    return f"{verb} through {parent_words(chosen, words)}"


def parent_words(chosen: Choice, words: ProtocolWords) -> str:
    """``D04 (in reserve: the controller).``, and what is to be known of that link."""
    parent = named(chosen.parent, words)
    if chosen.margin_db is None:
        return f"{parent}: this link is not known; try it with the plate fitted."
    spare = f" (in reserve: {named(chosen.spare, words)})" if chosen.spare else ""
    thin = ""
    if chosen.thin:
        thin = (
            f" It is the best link now: straight to the {words.controller} less is in reserve than joining "
            "asks for, and once joined it may still go that way."
        )
    return f"{parent}{spare}.{thin}"


def named(parent: str, words: ProtocolWords) -> str:
    """The controller in the protocol's word, or the parent's id."""
    return f"the {words.controller}" if parent == CONTROLLER else parent


def bench_words(schedule: Schedule, device_id: str) -> str:
    """Join it before it is fitted, and why not in its place."""
    words = protocol_words(schedule, device_id)
    if words is None or not schedule.house.devices[device_id].network:
        return f"{device_id} is on no network yet: state its network before joining it."
    return (
        f"{words.join[0].upper()}{words.join[1:]} {device_title(schedule, device_id)} on a bench beside the "
        f"{words.controller}, before it is fitted: the gesture wants its front off and power on, and live "
        "parts can then be touched. Not in its wall box by this sheet; on the bench by a person authorised "
        f"for {said('live work', nec=is_nec(schedule.house))} under local code."
    )


def seated_words(schedule: Schedule, device_id: str, chosen: Choice | None) -> str:
    """That a device joined on a bench is heard where it is fitted, and through which parent."""
    words = protocol_words(schedule, device_id)
    place = schedule.place_of_device(device_id)
    if words is None or not schedule.house.devices[device_id].network:
        return f"{device_id} is on no network yet."
    lead = f"{device_id} was {words.joined} on the bench"
    if chosen is None:
        return f"{lead}: no good parent reaches {place}; see the finding."
    return f"{lead}: see that it is heard at {place}, through {parent_words(chosen, words)}"


def function_test_words(schedule: Schedule, device_id: str) -> str:
    """The function test of one device; its rows stand on the worksheet."""
    channels = schedule.channels_of[device_id]
    if not channels:
        return f"Function test of {device_id}: see that it answers in the network."
    works = [bool(c.load_id or (c.row and c.row.gang.extends)) for c in channels]
    if not any(works):
        return f"Function test of {device_id}: press each button and see that its entry answers."
    text = "press each gang and see that its own load answers, and nothing else"
    bare = "" if all(works) else "; of a gang without a load, that its entry answers"
    return f"Function test of {device_id}: {text}{bare}."
