"""Fields of networks, devices and the uses that others make of them."""

from secondfix.exchange.switch_sheet import Choice, Figure, Known, Words, YesNo
from secondfix.exchange.things.cells import Address, Bare, InRoom, Pairs, Several
from secondfix.exchange.things.field import BY_NAME, NAME, NOTE, RETURNS, Field, ThingKind, words
from secondfix.terms import PROTOCOLS

_OUTPUTS = Pairs("output", "load", empty="")
_NUMBERS = Several(Words(), empty="")

NETWORK_KIND = ThingKind(
    "network", "networks", "network", "N", (
        NAME,
        Field("protocol", "Protocol", "protocol", Choice({p.value: w.label for p, w in PROTOCOLS.items()})),
        Field("controller", "Controller stands at", "controller_place", Known("places", "a place")),
        Field("channel", "Channel", "channel", Figure("")),
        Field("transmit", "Controller transmits, dBm", "transmit_power_dbm", Figure("dBm")),
        Field("hears", "Controller hears down to, dBm", "sensitivity_dbm", Figure("dBm")),
        Field("key-ref", "Reference of its key", "key_ref", Words(), hint=BY_NAME),
    ),
)  # fmt: skip
DEVICE_KIND = ThingKind(
    "device", "devices", "device", "D", (
        Field("model", "Model", "model", Words()),
        Field("network", "Network", "network", Known("networks", "a network")),
        Field("box", "Wall box", "box", InRoom("boxes", "a wall box")),
        Field("mounts", "Mounts it takes", "mounts", _NUMBERS, hint="such as 1, 2"),
        Field("gangs", "Gangs it works", "gangs", _NUMBERS, hint="in its own order, such as 1, 2, 3"),
        Field("place", "Or at a place", "place", Known("places", "a place")),
        Field("outputs", "Outputs there", "outputs", _OUTPUTS, hint="such as 1: L05, 2: L06"),
        Field("device-name", "Name in the controller", "name", Words()),
        Field("source", "Powered by", "power_source", words("mains", "battery"), fact=True),
        Field("repeats", "Carries the radio of others", "repeats", YesNo(), fact=True),
        Field("returns", "After a power loss it", "after_power_loss", RETURNS),
        Field("address", "Address", "address", Address()),
        Field("code-ref", "Reference of its code", "code_ref", Words(), hint=BY_NAME),
        NOTE,
    ),
)  # fmt: skip
USE_KIND = ThingKind(
    "use", "outside_uses", "use of others", "Use", (
        Field("use-kind", "Kind of use", "kind", words("scene", "routine", "binding", "other")),
        Field("device", "Of device", "device", Bare("devices", "a device")),
        Field("entry", "Of its entry", "entry", Figure(""), hint="0 for the whole-device entry"),
        Field("words", "What it does, and for whom", "words", Words(), wide=True),
    ),
)  # fmt: skip

OF_NETWORKS = (NETWORK_KIND, DEVICE_KIND, USE_KIND)
