"""Kinds of entry about what was found: tests, measurements, corrections of the survey."""

import json
from collections.abc import Hashable
from typing import Annotated, Any, ClassVar, Literal, Self

from pydantic import Field, JsonValue, model_validator

from secondfix.house import Id, Note, Part
from secondfix.journal.entry import BODY, Entry, Loose
from secondfix.journal.paths import path_of
from secondfix.journal.subject import COLLECTION_OF, SUBJECT

Answer = Literal["changed", "on", "off"]


class FunctionTested(Entry):
    """A gang was pressed, an entry commanded or a scene run, and these loads answered (perhaps none).

    ``answered`` gives each load what it did: ``changed`` where only that was seen. ``also_answered``
    holds, in words, what answered and stands in no book.
    """

    speaks_of: ClassVar[frozenset[str]] = frozenset({"gang", "entry", "scene"})
    kind: Literal["function_tested"]
    answered: Annotated[dict[Id, Answer], Field(max_length=500)]
    also_answered: Note = ""

    @property
    def aspect(self) -> str:
        return "working"

    @property
    def value(self) -> Hashable:
        if self.subject.startswith("scene:"):
            return ("answers", tuple(sorted(self.answered.items())), self.also_answered)
        return ("answers", tuple(sorted(self.answered)), self.also_answered)


def two_ends(link: str) -> None:
    """ValueError where a link leads from a thing to itself."""
    one, _, other = link.removeprefix("link:").partition(">")
    if one == other:
        raise ValueError(f"{link} has one end; a link has two")


class HeardLink(Part):
    """One row of a neighbour table: ``link`` as in a subject, with RSSI or LQI, or not heard."""

    link: Annotated[str, Field(max_length=40, pattern=SUBJECT, description="link:D01>P1")]
    rssi_dbm: int | None = Field(None, ge=-130, le=20)
    lqi: int | None = Field(None, ge=0, le=255)
    not_heard: Literal[True] | None = None

    @model_validator(mode="after")
    def _some_value(self) -> Self:
        if (self.rssi_dbm is None and self.lqi is None) == (self.not_heard is None):
            raise ValueError("a measured link states rssi_dbm or lqi, or else that it was not heard")
        if not self.link.startswith("link:"):
            raise ValueError("a measured link names a link")
        two_ends(self.link)
        return self


class Measured(Entry):
    """Signal of one link, or of every link in a neighbour table read out at a device or network.

    RSSI in dBm; LQI as the radio gives it, 0 to 255 (IEEE 802.15.4 leaves its scale to the maker);
    ``not_heard`` where the receiver listened for the sender and heard nothing.
    """

    speaks_of: ClassVar[frozenset[str]] = frozenset({"link", "network", "device"})
    kind: Literal["measured"]
    rssi_dbm: int | None = Field(None, ge=-130, le=20)
    lqi: int | None = Field(None, ge=0, le=255)
    not_heard: Literal[True] | None = None
    table: Annotated[tuple[HeardLink, ...], Loose, Field(max_length=2000)] = ()

    @model_validator(mode="after")
    def _link_or_table(self) -> Self:
        level = self.rssi_dbm is not None or self.lqi is not None
        if self.subject.startswith("link:"):
            two_ends(self.subject)
            if level == (self.not_heard is not None) or self.table:
                raise ValueError(
                    "a measured link states rssi_dbm or lqi, or else that it was not heard, and no table"
                )
        elif level or self.not_heard or not self.table:
            raise ValueError("a measurement at a device or network is a table of links")
        return self


class SurveyCorrected(Entry):
    """A path of the house document, with the fact found there; null: not known any more.

    A whole object (``boxes.B23``) may be given where the book has none. A duty is given with what it
    names: ``{"duty": "feeds", "load": "L4"}``.
    """

    speaks_of: ClassVar[frozenset[str]] = frozenset({*COLLECTION_OF, "gang"})
    kind: Literal["survey_corrected"]
    path: Annotated[str, Field(max_length=80)]
    found: JsonValue

    @model_validator(mode="after")
    def _path_of_subject(self) -> Self:
        path = path_of(self.path)
        if self.subject != path.subject:
            raise ValueError(f"a correction of {self.path} speaks of {path.subject}")
        return self

    @property
    def aspect(self) -> str:
        return "working" if path_of(self.path).field == "duty" else self.path

    @property
    def yields_to(self) -> tuple[str, ...]:
        path = path_of(self.path)
        return (self.aspect, BODY) if path.of_body else (self.aspect,)

    @property
    def value(self) -> Hashable:
        found: Any = self.found
        if self.aspect == "working":  # comparable with what a function test found
            if isinstance(found, dict) and found.get("duty") == "feeds":
                return ("answers", (found.get("load"),), "")
            if found in ({"duty": "capped"}, "capped"):
                return ("answers", (), "")
        return json.dumps(found, sort_keys=True)
