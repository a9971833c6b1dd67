"""Whether a Matter QR text and a manual code belong to one device: the only check that a typed QR text has.

Source: the fields of both codes in the standard body's SDK (project-chip/connectedhomeip,
src/setup_payload), read: the manual code carries the passcode and the top 4 bits of the discriminator.
"""

from __future__ import annotations

from dataclasses import dataclass

from .reading import CodeReading, Kind


@dataclass(frozen=True, slots=True)
class Agreement:
    """Whether two codes belong to one device: True, False, or None where it cannot be told; and why."""

    agrees: bool | None
    says: str


def agree(qr: CodeReading, manual: CodeReading) -> Agreement:
    """Compare a QR text with a manual code: passcode and top 4 discriminator bits, and vendor and product if
    both name them.

    Of a QR for several devices one must agree. A code with a fault is never compared: None.
    """
    if qr.kind is not Kind.MATTER_QR or manual.kind is not Kind.MATTER_MANUAL:
        return Agreement(None, "A Matter QR text and a manual code are needed to compare: give one of each.")
    if not (qr.ok and manual.ok):
        return Agreement(
            None, "One of the two codes has a fault, so they cannot be compared: put that right first."
        )
    differing = [_differing(part, manual) for part in qr.parts or (qr,)]
    if [] in differing:
        return Agreement(True, "The QR text and the manual code agree.")
    if len(differing) > 1:
        says = (
            f"None of the {len(differing)} codes in the QR text agrees with the manual code; one was "
            "expected to: check that both belong to this device."
        )
        return Agreement(False, says)
    says = (
        f"The QR text and the manual code differ in {', '.join(differing[0])}: one is misread, or "
        "belongs to another device."
    )
    return Agreement(False, says)


def _differing(qr: CodeReading, manual: CodeReading) -> list[str]:
    names = ["passcode", "short_discriminator"]
    if manual.value("vendor") not in (None, "0x0000") and qr.value("vendor") != "0x0000":
        names += ["vendor", "product"]
    return [name.replace("_", " ") for name in names if qr.value(name) != manual.value(name)]
