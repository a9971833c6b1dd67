"""A house begun: from its name alone, from a demo house, or from a file."""

import json
import os
import time
from dataclasses import dataclass
from functools import cache

from django.core.files.uploadedfile import UploadedFile
from django.http import HttpRequest

from secondfix.files import demo_houses
from secondfix.house import LARGEST_FILE_BYTES, Fault, begin, plain_of, uuid7
from secondfix.store import door
from secondfix.web.access import person


@dataclass(frozen=True, slots=True)
class Begun:
    """The house to go to, and whether it stood there before; or the faults of what was sent."""

    house_id: str = ""
    known: bool = False
    faults: tuple[Fault, ...] = ()


@cache
def demo_names() -> dict[str, str]:
    """The name of each demo house at hand."""
    return {key: str(json.loads(data)["name"]) for key, data in demo_houses().items()}


def begun(request: HttpRequest) -> Begun:
    """Begin what the form says."""
    sent, demo = request.FILES.get("file"), request.POST.get("demo", "")
    if isinstance(sent, UploadedFile):
        return _taken(request, bytes(sent.read(LARGEST_FILE_BYTES + 1)))
    if demo:
        return _demo(request, demo)
    # The store reads it, and tells what is wrong with the name.
    plain = plain_of(begin(house_id=_new_id(), name="House"))
    return _taken(request, json.dumps({**plain, "name": request.POST.get("name", "")}).encode())


def _demo(request: HttpRequest, key: str) -> Begun:
    """A demo house under an id of its own, so that every desk has its own; one that stands is opened."""
    documents = demo_houses()
    if key not in documents:
        expected = f"one of {', '.join(documents) or 'none: no demo house came with this desk'}"
        return Begun(faults=(Fault("form", "demo", f"'{key[:40]}'", expected),))
    words = f"begun from the demo house {demo_names()[key]}"
    standing = door.house_begun_with(words)
    if standing is not None:
        return Begun(standing, known=True)
    document = {**json.loads(documents[key]), "id": _new_id()}
    return _taken(request, json.dumps(document).encode(), words)


def _taken(request: HttpRequest, document: bytes, words: str = "") -> Begun:
    answer = door.begin_house(document, by=person(request), words=words)
    if isinstance(answer, door.Known):
        return Begun(answer.house_id, known=True)
    if isinstance(answer, door.Refused):
        return Begun(faults=answer.faults)
    return Begun(str(json.loads(document)["id"]))


def _new_id() -> str:
    return uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10))
