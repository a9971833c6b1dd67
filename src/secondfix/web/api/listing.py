"""The calls as rows of a sheet: method, address, what it takes, what it answers."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any

from ninja import NinjaAPI

HERE, _HOUSE = "…", "/api/houses/{house_id}"


@dataclass(frozen=True, slots=True)
class Call:
    """One call; ``takes`` are the parameters of its address, ``does`` its first sentence.

    ``shown`` is its address with ``HERE`` for that of the house; ``address`` the whole of it where a look
    at it in a browser answers, else nothing.
    """

    method: str
    shown: str
    address: str
    takes: tuple[str, ...]
    does: str


def listed(api: NinjaAPI, house_id: str) -> dict[str, list[Call]]:
    """Every call under the head of its group, with the id of a house in its place."""
    groups: dict[str, list[Call]] = defaultdict(list)
    for path, methods in _paths(api).items():
        for method, described in methods.items():
            groups[described["tags"][0]].append(_call(path, method, described, house_id))
    return dict(groups)


@cache
def _paths(api: NinjaAPI) -> dict[str, Any]:
    """The description of the calls, made once: nothing in it changes while the desk stands."""
    paths: dict[str, Any] = api.get_openapi_schema()["paths"]
    return paths


def _call(path: str, method: str, described: dict[str, Any], house_id: str) -> Call:
    whole = path.replace("{house_id}", house_id)
    needs = (
        path == _HOUSE
        or "{" in whole
        or any(p["in"] == "query" and p.get("required") for p in described["parameters"])
    )
    return Call(
        method.upper(),
        path.replace(_HOUSE, HERE),
        whole if method == "get" and not needs else "",
        tuple(_takes(described)),
        described["description"].split("\n\n")[0].replace("``", ""),
    )


def _takes(described: dict[str, Any]) -> Iterator[str]:
    for parameter in described.get("parameters", ()):
        if parameter["in"] == "query":
            yield parameter["name"] + ("" if parameter.get("required") else " (may be left out)")
    if "requestBody" in described:
        yield f"body: {', '.join(described['requestBody']['content'])}"
