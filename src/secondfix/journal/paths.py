"""Which paths of the house document a correction of the survey may name."""

import re
from dataclasses import dataclass
from functools import lru_cache

from pydantic import BaseModel

from secondfix.house import (
    Box,
    Circuit,
    Device,
    Gang,
    Load,
    Mount,
    Network,
    Opening,
    Place,
    Room,
    Storey,
    Wall,
)
from secondfix.journal.subject import COLLECTION_OF

_PARTS: dict[str, type[BaseModel]] = {
    "storeys": Storey, "rooms": Room, "walls": Wall, "doors": Opening, "windows": Opening,
    "circuits": Circuit, "boxes": Box, "places": Place, "loads": Load, "networks": Network,
    "devices": Device,
}  # fmt: skip
_INNER: dict[str, type[BaseModel]] = {"mounts": Mount, "gangs": Gang}
# Said by a kind of entry of its own, or by a path one level deeper.
_ELSEWHERE = {
    "devices": {"model", "network", "box", "mounts", "gangs", "place", "outputs", "address"},
    "boxes": {"mounts", "gangs"},
    "loads": {"purpose"},
}
OF_BODY = ("after_power_loss", "code_ref")
_SHAPE = re.compile(
    r"^(?P<collection>[a-z]+)\.(?P<id>[A-Z][A-Za-z0-9_-]{0,15})"
    r"(?:\.(?P<inner>mounts|gangs)\.(?P<slot>[1-9][0-9]?))?(?:\.(?P<field>[a-z_]+))?$"
)
_KIND_OF = {collection: kind for kind, collection in COLLECTION_OF.items()}


@dataclass(frozen=True, slots=True)
class Path:
    """``collection.id``, within a box perhaps ``inner.slot``, and the field (empty: the whole object)."""

    collection: str
    id: str
    inner: str
    slot: str
    field: str

    @property
    def of_body(self) -> bool:
        """Whether it is a setting or the code of one body, which goes when another is fitted."""
        return self.collection == "devices" and self.field in OF_BODY

    @property
    def subject(self) -> str:
        """The subject that a correction of this path speaks of."""
        if self.inner == "gangs":
            return f"gang:{self.id}.{self.slot}"
        return f"{_KIND_OF[self.collection]}:{self.id}"

    @property
    def part(self) -> type[BaseModel]:
        """The part of the document that the path leads into."""
        return _INNER[self.inner] if self.inner else _PARTS[self.collection]


@lru_cache(maxsize=4096)
def path_of(text: str) -> Path:
    """The path, or ValueError in words: no such path, or one that another kind of entry speaks for."""
    match = _SHAPE.match(text)
    if (
        match is None
        or match["collection"] not in _PARTS
        or (match["inner"] and match["collection"] != "boxes")
    ):
        raise ValueError(f"'{text}' is no path of a surveyed fact, such as boxes.B07.depth_mm")
    path = Path(
        match["collection"], match["id"], match["inner"] or "", match["slot"] or "", match["field"] or ""
    )
    if path.field:
        _known_field(path, text)
    return path


def _known_field(path: Path, text: str) -> None:
    elsewhere = {"load", "extends"} if path.inner == "gangs" else set()
    if not path.inner:
        elsewhere = {"name", *_ELSEWHERE.get(path.collection, ())}
    fields = set(path.part.model_fields)
    if path.field in fields & elsewhere:
        raise ValueError(f"'{text}' is not corrected by itself: another entry or a deeper path says it")
    if path.field not in fields:
        known = ", ".join(sorted(fields - elsewhere))
        raise ValueError(f"'{text}' ends in a key that the document does not know (one of {known})")
