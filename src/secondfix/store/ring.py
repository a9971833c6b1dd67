"""The key ring of the desk: codes sealed (AES-256-GCM) under a key of the data folder; who was shown them.

A sealed code is bound to its house and reference: a row copied to another place does not open.
"""

import os
from hmac import digest as keyed_digest
from pathlib import Path

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from django.conf import settings
from django.db import transaction

from secondfix.actions.ring import ready_for_ring
from secondfix.house import Fault
from secondfix.store.accounts import require_writer
from secondfix.store.answers import KeptCode, NoRingKeyError, Refused, Shown, UnknownError
from secondfix.store.houses import found
from secondfix.store.models import Account, KeyEntry, KeyShown
from secondfix.store.secrets_kept import secret_of


def keep_code(
    house_id: str,
    reference: str,
    code: str,
    *,
    by: Account,
    address: str | None = None,
    replace: bool = False,
) -> Refused | None:
    """Keep a code under a reference such as ``K07``; None when it is kept.

    Refused where the code has a fault, or where one stands there and ``replace`` is not said; the one
    replaced stays, sealed. ``address`` is that of the device, beside a Zigbee install code. Raises
    UnknownError, NotAllowedError, NoRingKeyError.
    """
    require_writer(by)
    _, why_not = ready_for_ring(reference, code, address=address)
    if why_not:
        return Refused((Fault("the code", reference[:10], why_not, "a code without fault"),))
    with transaction.atomic():
        house = found(house_id, lock=True)
        stands = house.keys.filter(reference=reference, replaced=False).first()
        if stands is not None and not replace:
            fault = Fault("key ring", reference, "a code stands there", "a free reference, or replace it")
            return Refused((fault,))
        if stands is not None:
            stands.replaced = True
            stands.save(update_fields=["replaced"])
        nonce = os.urandom(12)
        sealed = nonce + _box().encrypt(nonce, code.encode(), _bound(house_id, reference))
        KeyEntry.objects.create(house=house, reference=reference, sealed=sealed, by=by)
    return None


def references(house_id: str) -> tuple[str, ...]:
    """The references on the ring of a house, and no code. Raises UnknownError."""
    rows = found(house_id).keys.filter(replaced=False).order_by("reference")
    return tuple(rows.values_list("reference", flat=True))


def kept_codes(house_id: str) -> tuple[KeptCode, ...]:
    """The codes on the ring of a house by reference, each without itself. Raises UnknownError."""
    rows = found(house_id).keys.filter(replaced=False).select_related("by").defer("sealed")
    return tuple(KeptCode(r.reference, r.at, r.by.username) for r in rows.order_by("reference"))


def show_code(house_id: str, reference: str, *, by: Account) -> str:
    """One code, to be shown now; that it was shown, and to whom, is on the disk before it is given out.

    Raises UnknownError, NotAllowedError, NoRingKeyError.
    """
    require_writer(by)
    entry = found(house_id).keys.filter(reference=reference, replaced=False).first()
    if entry is None:
        raise UnknownError(f"no code under {reference[:10]}")
    sealed = bytes(entry.sealed)
    try:
        code = _box().decrypt(sealed[:12], sealed[12:], _bound(house_id, reference))
    except InvalidTag as error:
        raise NoRingKeyError("this code was sealed with another key, or altered") from error
    KeyShown.objects.create(entry=entry, by=by)
    return code.decode()


def shown(house_id: str) -> tuple[Shown, ...]:
    """Who was shown which reference, the latest first. Raises UnknownError."""
    rows = KeyShown.objects.filter(entry__house=found(house_id)).select_related("entry", "by")
    return tuple(Shown(r.entry.reference, r.at, r.by.username) for r in rows.order_by("-at", "-id"))


def key_print() -> str:
    """What tells one key from another without telling anything of it. Raises NoRingKeyError."""
    return keyed_digest(_key(), b"print of the ring's key", "sha256").hex()[:16]


def _box() -> AESGCM:
    return AESGCM(_key())


def _key() -> bytes:
    try:
        return secret_of(Path(settings.DATA or "") / "ring.key")
    except (OSError, ValueError) as error:
        raise NoRingKeyError("ring.key is missing from the data folder, or not whole") from error


def _bound(house_id: str, reference: str) -> bytes:
    return f"{house_id} {reference}".encode()
