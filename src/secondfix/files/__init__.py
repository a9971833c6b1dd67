"""Plain folders: houses, a firm's models and assumptions, and papers; every write whole or not at all."""

from secondfix.files.firm import Firm, open_firm
from secondfix.files.houses import open_house
from secondfix.files.keyring import KeyRing, WrongPassphraseError, open_ring, save_ring
from secondfix.files.shipped import demo_houses, shipped_models
from secondfix.files.whole import append_line, read_bytes, write_whole

__all__ = [
    "Firm",
    "KeyRing",
    "WrongPassphraseError",
    "append_line",
    "demo_houses",
    "open_firm",
    "open_house",
    "open_ring",
    "read_bytes",
    "save_ring",
    "shipped_models",
    "write_whole",
]
