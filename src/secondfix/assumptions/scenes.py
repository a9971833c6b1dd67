"""Assumptions about how long a scene takes."""

from secondfix.assumptions.assumption import Assumption

_CP = "common practice, no source"

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption(
        "scene_slow_ms",
        2000,
        2000,
        2000,
        "ms",
        "a scene whose commands take longer than this, one by one, is called slow",
        f"{_CP}; firm setting",
        least=0,
        most=600_000,
    ),
    Assumption(
        "scene_controller_ms",
        10,
        5,
        20,
        "ms",
        "what a controller spends between the end of one command and the next",
        _CP,
        least=0,
        most=60_000,
    ),
    Assumption(
        "scene_device_ms",
        5,
        2,
        10,
        "ms",
        "what a device spends before it answers a frame or passes it on",
        _CP,
        least=0,
        most=60_000,
    ),
    Assumption(
        "scene_links",
        2,
        1,
        5,
        "links",
        "links from the controller to a device for which no route is known",
        _CP,
        least=1,
        most=10,
    ),
)
