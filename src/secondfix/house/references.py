"""What a shape cannot say: ids that exist, loads fed once, chains that end, geometry that closes."""

from secondfix.house.document import House
from secondfix.house.faults import Fault


def reference_faults(house: House, *, where: str) -> list[Fault]:
    """Every dangling or contradictory statement of a house of the right shape."""
    return []
