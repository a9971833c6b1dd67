"""Documents as edits hold them: whole, compressed, with the digest of what was sent."""

import zlib
from hashlib import sha256


def pack(data: bytes) -> bytes:
    """Compressed, by a form that any language reads (zlib, RFC 1950)."""
    return zlib.compress(data, 6)


def unpack(packed: bytes | memoryview) -> bytes:
    """The bytes again, as they were."""
    return zlib.decompress(bytes(packed))


def digest_of(base: int, data: bytes) -> bytes:
    """What tells a save sent twice from another save under the same id."""
    return sha256(b"%d\n" % base + data).digest()
