"""The words of the trade that documents and rules share: kinds, purposes, protocols, materials, regions."""

from secondfix.terms.kinds import KIND_LABELS, RATING_OF_KIND, Kind, RatingKind
from secondfix.terms.known import KNOWN_LABELS, Known
from secondfix.terms.lengths import (
    drawn_length,
    feet_inches,
    in_feet,
    printed_mm,
    taped_gap,
    taped_height,
    walked_way,
)
from secondfix.terms.materials import Finish, LayerMaterial, PlateMaterial, ShellMaterial
from secondfix.terms.nec_words import said, said_around_names
from secondfix.terms.power import POWER_LOSS_LABELS, PowerLossState
from secondfix.terms.protocols import PROTOCOLS, Protocol, ProtocolWords
from secondfix.terms.purposes import PURPOSES, AllOff, Purpose, PurposePolicy, UnattendedOn
from secondfix.terms.regions import RadioRegion, WiringRules

__all__ = [
    "KIND_LABELS",
    "KNOWN_LABELS",
    "POWER_LOSS_LABELS",
    "PROTOCOLS",
    "PURPOSES",
    "RATING_OF_KIND",
    "AllOff",
    "Finish",
    "Kind",
    "Known",
    "LayerMaterial",
    "PlateMaterial",
    "PowerLossState",
    "Protocol",
    "ProtocolWords",
    "Purpose",
    "PurposePolicy",
    "RadioRegion",
    "RatingKind",
    "ShellMaterial",
    "UnattendedOn",
    "WiringRules",
    "drawn_length",
    "feet_inches",
    "in_feet",
    "printed_mm",
    "said",
    "said_around_names",
    "taped_gap",
    "taped_height",
    "walked_way",
]
