"""What an entry speaks of: a thing of the house, typed as ``kind:id``."""

import re
from dataclasses import dataclass

_ID = r"[A-Z][A-Za-z0-9_-]{0,15}"
_UUID = r"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}"

COLLECTION_OF = {
    "storey": "storeys", "room": "rooms", "wall": "walls", "door": "doors", "window": "windows",
    "circuit": "circuits", "box": "boxes", "place": "places", "load": "loads", "network": "networks",
    "device": "devices", "scene": "scenes",
}  # fmt: skip
"""Kinds of subject that are one object of the house document, and the collection that holds it."""

SUBJECT = (
    rf"^(house:{_UUID}|({'|'.join(COLLECTION_OF)}):{_ID}"
    rf"|gang:{_ID}\.[1-9][0-9]?|entry:{_ID}\.(0|[1-9][0-9]{{0,2}})|link:{_ID}>{_ID})$"
)
"""``gang:B07.2`` box and gang; ``entry:D01.2`` device and number of its entry in the controller (0 the
whole device); ``link:D01>P1`` what stands at D01, heard at P1 (devices or places)."""

_MATCH = re.compile(SUBJECT)


@dataclass(frozen=True, slots=True)
class Subject:
    """``kind`` and ``id`` of a subject; ``owner`` is the id of the box, device or thing that carries it."""

    kind: str
    id: str

    @property
    def owner(self) -> str:
        """``B07`` of gang B07.2, ``D01`` of entry D01.2 and of link D01>P1, else the id itself."""
        return re.split(r"[.>]", self.id, maxsplit=1)[0]

    @property
    def part(self) -> str:
        """``2`` of gang B07.2 and of entry D01.2, ``P1`` of link D01>P1, else empty."""
        return self.id[len(self.owner) + 1 :]


def subject_of(text: str) -> Subject:
    """The subject that the text names (ValueError if it names none)."""
    if not _MATCH.match(text):
        raise ValueError(f"'{text}' names no subject")
    kind, _, name = text.partition(":")
    return Subject(kind, name)
