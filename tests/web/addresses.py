"""Every address of the desk, with values that make it ask for something that stands."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from django.urls import URLPattern, URLResolver, get_resolver, resolve, reverse

# What stands for each argument of an address; the house is that of the fixture.
VALUES: dict[str, Any] = {
    "name": "findings.pdf",
    "scene_id": "S1",
    "device_id": "D01",
    "drawing_file": "elevations-R01",
    "job_id": "0" * 32,
    "kind": "fitted",
    "kept": 1,
    "thing_id": "R01",
    "storey_id": "G",
    "place_id": "B01",
    "room_id": "R01",
    "form": "csv",
    "box_id": "B01",
    "number": 1,
    "letter": "A",
    "paper": "findings",
}


@dataclass(frozen=True)
class Address:
    """One address: its name in the table of rights, and its arguments."""

    name: str
    arguments: tuple[str, ...]

    def url(self, house_id: str, **other: str) -> str:
        """The address in full; ``other`` stands for arguments that a house names otherwise."""
        values = {"house_id": house_id, **VALUES, **other}
        return reverse(self.name, kwargs={a: values[a] for a in self.arguments})


def addresses() -> list[Address]:
    """All of them, by name."""
    return sorted(_walk(get_resolver(), ""), key=lambda a: a.name)


def _walk(resolver: URLResolver, space: str) -> Iterator[Address]:
    for entry in resolver.url_patterns:
        if isinstance(entry, URLResolver):
            inner = f"{space}{entry.namespace}:" if entry.namespace else space
            yield from _walk(entry, inner)
        else:
            assert isinstance(entry, URLPattern)
            yield Address(f"{space}{entry.name}", tuple(entry.pattern.converters))


@dataclass(frozen=True)
class Call:
    """One call of a program: its name in the table of rights, its method, and its address."""

    name: str
    method: str
    url: str


def calls(house_id: str) -> list[Call]:
    """Every call that the description names, about one house."""
    from secondfix.web.api.calls import api  # noqa: PLC0415 - after the desk has begun

    urls = {
        path: path.format(house_id=house_id, **{k: VALUES[k] for k in ("number", "letter")})
        for path in api.get_openapi_schema()["paths"]
    }
    return [
        Call(resolve(urls[path]).view_name, method, urls[path])
        for path, methods in api.get_openapi_schema()["paths"].items()
        for method in methods
    ]
