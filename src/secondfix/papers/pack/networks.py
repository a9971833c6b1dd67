"""Networks, the devices on them, and the name of every entry."""

from secondfix.house import Schedule
from secondfix.naming import EntryKind, names
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    column,
    heading,
    ident,
    lines,
    para,
    soft,
    strong,
    table,
)
from secondfix.papers.figures import NOT_KNOWN
from secondfix.papers.places import device_words, thing_words
from secondfix.terms import POWER_LOSS_LABELS, PROTOCOLS, PURPOSES

_ENTRY_WORDS = {
    EntryKind.GANG: "gang",
    EntryKind.WHOLE_DEVICE: "whole-device entry",
    EntryKind.PLACE_DEVICE: "device",
}


def networks_sheet(schedule: Schedule, number: str) -> Sheet:
    """The networks, then the devices; keys and codes by reference only."""
    house = schedule.house
    networks = [
        [
            ident(network_id),
            n.name,
            PROTOCOLS[n.protocol].label,
            thing_words(house, n.controller_place) if n.controller_place else NOT_KNOWN,
            NOT_KNOWN if n.channel is None else str(n.channel),
            n.key_ref or "",
        ]
        for network_id, n in house.networks.items()
    ]
    heads = [
        column("Network", mm=20),
        column("Name", fr=2),
        column("Protocol", fr=1.3),
        column("Controller at", fr=2),
        column("Channel", mm=22),
        column("Key", mm=18),
    ]
    blocks = [
        table(heads, networks) if networks else para("No network is stated."),
        heading("Devices"),
        _devices(schedule) if house.devices else para("No device is chosen."),
    ]
    says = "Keys and codes stand on the key ring alone; here are their references."
    return Sheet(number, "Networks and devices", says, blocks)


def _devices(schedule: Schedule) -> Block:
    house = schedule.house
    rows: list[list[Cell]] = []
    for device_id, d in house.devices.items():
        model = schedule.model_of(device_id)
        loss = POWER_LOSS_LABELS[d.after_power_loss] if d.after_power_loss else "not set here"
        rows.append(
            [
                ident(device_id),
                thing_words(house, schedule.place_of_device(device_id)),
                lines(device_words(schedule, device_id), soft(d.model or "")),
                thing_words(house, d.network) if d.network else NOT_KNOWN,
                d.address or NOT_KNOWN,
                model.repeats.value.replace("_", " ") if model else NOT_KNOWN,
                loss,
                d.code_ref or "",
            ]
        )
    heads = [
        column("Device", mm=17),
        column("Place", fr=1.8),
        column("Model", fr=2),
        column("Network", fr=1.6),
        column("Address", mm=36),
        column("Repeats", mm=18),
        column("After power loss", mm=28),
        column("Code", mm=14),
    ]
    return table(heads, rows)


def names_sheet(schedule: Schedule, number: str) -> Sheet:
    """Every entry as it is to be called in the controller."""
    house = schedule.house
    rows: list[list[Cell]] = []
    for device_id, entries in names(schedule).of_device.items():
        for n, e in enumerate(entries):
            doubt = [soft("appears only if the model shows one")] if not e.stands else []
            doubt += [soft("provisional: what the gang does is not known")] if not e.explained else []
            rows.append(
                [
                    ident(device_id) if n == 0 else "",
                    soft(thing_words(house, e.place)),
                    NOT_KNOWN if e.endpoint is None else str(e.endpoint),
                    f"gang {e.number}" if e.kind is EntryKind.GANG else _ENTRY_WORDS[e.kind],
                    lines(strong(e.name), *doubt),
                    PURPOSES[e.purpose].label if e.purpose else soft("no purpose"),
                ]
            )
    heads = [
        column("Device", mm=17),
        column("Place", fr=1.5),
        column("Endpoint", mm=20),
        column("Entry", mm=36),
        column("Name", fr=2.6),
        column("Purpose", fr=1.3),
    ]
    says = "A device is known by its address and endpoint; a name is only a name. Set each as it stands here."
    blocks = [table(heads, rows)] if rows else [para("No device is chosen.")]
    return Sheet(number, "Names", says, blocks)
