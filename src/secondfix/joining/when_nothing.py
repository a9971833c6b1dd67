"""What to try when nothing appears, by protocol, the likeliest first.

What is seen at which stage of a join, put into what a person on a ladder can do about it. The order
is common practice, no source; the causes are those that the protocols' stages name.
"""

from dataclasses import dataclass

from secondfix.terms import Protocol


@dataclass(frozen=True, slots=True)
class Try:
    """What is seen, what it then usually is, what to do; and the source of the cause."""

    seen: str
    do: str
    source: str


_BDB = "Zigbee Base Device Behavior 16-02828 (secondary)"
_MAC = "IEEE 802.15.4 (secondary)"
_S2 = "Z-Wave command classes, Z-Wave Alliance (secondary)"
_MATTER = "Matter setup payload, Connectivity Standards Alliance (secondary)"
_CP = "common practice, no source"

WHEN_NOTHING: dict[Protocol, tuple[Try, ...]] = {
    Protocol.ZIGBEE: (
        Try(
            "What the step says to watch for did not come",
            "do the gesture again: the device was not looking for a network",
            _CP,
        ),
        Try(
            "The window has run out",
            "open the network for joining again, then do the gesture: it closes after 180 to 254 s",
            _BDB,
        ),
        Try(
            "The device was in use before",
            "reset it: in another network it does not answer to this one",
            _BDB,
        ),
        Try(
            "Nothing is heard of it at all",
            "see that it has power, that the coordinator is on, and that a joined repeater is near",
            _MAC,
        ),
        Try(
            "It starts and does not finish",
            "the link is weak one way: bring a repeater nearer, or try with the plate fitted",
            _MAC,
        ),
        Try(
            "It starts again every few seconds",
            "the code or the address given for it is wrong: compare both with the label",
            _BDB,
        ),
        Try("Its parent takes no more", "join another repeater near it first: the parent is full", _MAC),
        Try(
            "It joined and cannot be used",
            "it sleeps: press its button once more and ask for its entries again",
            _CP,
        ),
    ),
    Protocol.ZWAVE: (
        Try(
            "The gesture had no effect",
            "do it again in time: exclude first, then the same gesture once more to include",
            _CP,
        ),
        Try(
            "The device was in use before",
            "exclude it with any controller: a device of another network does not answer",
            _S2,
        ),
        Try("Inclusion has run out", "start inclusion again, then do the gesture: it ends after 60 s", _S2),
        Try(
            "Nothing is heard of it at all",
            "see that it has power, and that device and controller are of one frequency region",
            _S2,
        ),
        Try(
            "It is far from the controller",
            "wait: joins take longer there; else include a repeater nearer first, or include it near "
            "the controller",
            _CP,
        ),
        Try("It stops half way", "remove the half-included entry, then include it closer", _S2),
        Try(
            "It appears without its keys",
            "the code was wrong or came too late: exclude and include again at once; do not leave it so",
            _S2,
        ),
        Try(
            "It should appear by itself and does not",
            "compare the code with the label; it may still belong to another network: exclude it",
            _S2,
        ),
    ),
    Protocol.MATTER_THREAD: (
        Try(
            "The device is not found",
            "its window has closed: switch its supply off and on, or do the gesture again, then "
            "start commissioning",
            _MATTER,
        ),
        Try(
            "The device was in use before",
            "remove it from its fabric, or reset it: it then opens itself for commissioning",
            _CP,
        ),
        Try(
            "The code is refused",
            "read it again from the label: eleven or twenty-one digits, the last a check digit",
            _MATTER,
        ),
        Try(
            "It is found and then lost",
            "stand next to it: the first talk goes over a short-range radio, not yet over the network",
            _MATTER,
        ),
        Try(
            "It never reaches the network",
            "see that a border router of this Thread network is on, and a joined repeater near",
            _CP,
        ),
        Try(
            "It is another than you think",
            "compare its code with the label: the number that tells devices apart is part of the code",
            _MATTER,
        ),
    ),
}
