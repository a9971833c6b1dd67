"""A new house: nothing surveyed yet, an id of its own."""

from uuid import UUID

from secondfix.house.document import FORMAT, House


def uuid7(*, unix_ms: int, random: bytes) -> str:
    """A UUID of version 7 (RFC 9562, 5.7): 48 bits of time, version, 12 random bits, variant, 62 random bits.

    ``unix_ms`` milliseconds since 1970-01-01 UTC (0 to 2^48 - 1), ``random`` at least 10 bytes (ValueError).
    """
    if not 0 <= unix_ms < 1 << 48 or len(random) < 10:
        raise ValueError("expected 48 bits of milliseconds and 10 random bytes")
    bits = int.from_bytes(random[:10], "big")
    rand_a, rand_b = bits >> 68, bits & ((1 << 62) - 1)
    return str(UUID(int=unix_ms << 80 | 7 << 76 | rand_a << 64 | 2 << 62 | rand_b))


def begin(*, house_id: str, name: str) -> House:
    """The least house: one room and one box with one gang, for a person to go on from."""
    return House.model_validate(
        {
            "format": FORMAT,
            "id": house_id,
            "name": name,
            "rooms": {"R1": {"name": "Hall"}},
            "boxes": {"B1": {"room": "R1", "mounts": {"1": {}}, "gangs": {"1": {}}}},
        }
    )
