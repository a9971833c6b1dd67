"""Onboarding codes: what stands on a device's label, read, checked and kept out of sight; never repaired."""

from .address import read_eui64
from .label import read_label
from .matter import read_matter_manual, read_matter_qr
from .matter_agree import Agreement, agree
from .reading import CodeReading, Field, Kind, Remark, shown
from .recognise import read_code, recognise
from .zigbee import read_install_code
from .zwave import read_dsk, read_zwave_qr

__all__ = [
    "Agreement",
    "CodeReading",
    "Field",
    "Kind",
    "Remark",
    "agree",
    "read_code",
    "read_dsk",
    "read_eui64",
    "read_install_code",
    "read_label",
    "read_matter_manual",
    "read_matter_qr",
    "read_zwave_qr",
    "recognise",
    "shown",
]
