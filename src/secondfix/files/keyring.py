"""The key ring: codes and keys apart from the house, encrypted under a passphrase.

Form of the file: one JSON object with the salt and the AES-256-GCM box of the entries; the key is
derived by scrypt (RFC 7914; N = 2^17, r = 8, p = 1, so that one guess costs 128 MiB). Nothing of an
entry, not even its reference, stands in the clear.
"""

import json
import os
from base64 import b64decode, b64encode
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from secondfix.files.whole import write_whole

_N, _R, _P = 2**17, 8, 1


class WrongPassphraseError(ValueError):
    """The passphrase is not the ring's, or the file was altered: which of the two cannot be told."""


@dataclass(frozen=True, slots=True)
class KeyRing:
    """References (``K07``) to codes. Its repr shows no code."""

    codes: Mapping[str, str] = field(default_factory=dict, repr=False)

    def holding(self, reference: str, code: str) -> "KeyRing":
        """A ring that also holds ``code``."""
        return KeyRing({**self.codes, reference: code})


def open_ring(path: Path, passphrase: str) -> KeyRing:
    """Open a ring. Raises WrongPassphraseError, OSError, or ValueError where the file is no key ring."""
    from cryptography.exceptions import InvalidTag  # noqa: PLC0415 - only those who open a ring pay for it
    from cryptography.hazmat.primitives.ciphers.aead import AESGCM  # noqa: PLC0415 - as above

    try:
        raw = json.loads(path.read_bytes())
        salt, nonce, sealed = (b64decode(raw[k], validate=True) for k in ("salt", "nonce", "sealed"))
    except (ValueError, KeyError, TypeError) as error:
        raise ValueError("not a key ring") from error
    try:
        plain = AESGCM(_key(passphrase, salt)).decrypt(nonce, sealed, salt)
    except InvalidTag as error:
        raise WrongPassphraseError(
            "the passphrase does not open this ring, or the file was altered"
        ) from error
    return KeyRing(json.loads(plain))


def save_ring(path: Path, ring: KeyRing, passphrase: str) -> None:
    """Write the ring whole, under a fresh salt and nonce, readable by its owner alone."""
    from cryptography.hazmat.primitives.ciphers.aead import AESGCM  # noqa: PLC0415 - as above

    salt, nonce = os.urandom(16), os.urandom(12)
    plain = json.dumps(dict(sorted(ring.codes.items()))).encode()
    sealed = AESGCM(_key(passphrase, salt)).encrypt(nonce, plain, salt)
    parts = {"salt": salt, "nonce": nonce, "sealed": sealed}
    write_whole(
        path, json.dumps({k: b64encode(v).decode() for k, v in parts.items()}).encode() + b"\n", mode=0o600
    )


def _key(passphrase: str, salt: bytes) -> bytes:
    from cryptography.hazmat.primitives.kdf.scrypt import Scrypt  # noqa: PLC0415 - as above

    return Scrypt(salt=salt, length=32, n=_N, r=_R, p=_P).derive(passphrase.encode())
