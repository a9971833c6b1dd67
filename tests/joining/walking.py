"""Walks of small houses: what stands where, and in which order it was joined."""

from secondfix.assumptions import default_assumptions
from secondfix.house import Schedule
from secondfix.joining import Links, Walk, walk
from tests.joining.houses import (
    a_model,
    with_front_off,
    zigbee_relay,
)

RELAY, BACK, WREN = a_model(), with_front_off(), zigbee_relay()
DEFAULTS = default_assumptions()


def in_boxes(model: str, *boxes: str, network: str = "N1") -> dict[str, dict[str, object]]:
    """Devices D1, D2, … one in each box."""
    return {
        f"D{n}": {"model": model, "network": network, "box": box, "mounts": ["1"], "gangs": ["1"]}
        for n, box in enumerate(boxes, 1)
    }


def walked(house: Schedule, links_: Links) -> Walk:
    return walk(house, links_, DEFAULTS)


def joined_order(found: Walk) -> list[str | None]:
    return [s.device for s in found.joins()]
