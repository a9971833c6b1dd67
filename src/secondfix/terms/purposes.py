"""Purposes: what a load is for, and what may be done to it when nobody looks.

Purpose is never derived from kind. The class names lean on IFC (ISO 16739-1) and the task
words of SAREF (ETSI TS 103 264); the policy beside each is common practice, no source,
except where a note names one. A scene engine is class A at best in the sense of IEC 60730-1
Annex H: not to be relied on for safety.
"""

from dataclasses import dataclass
from enum import StrEnum


class Purpose(StrEnum):
    """What a load is for."""

    LIGHTING = "lighting"
    NIGHT_LIGHT = "night_light"
    EMERGENCY_LIGHT = "emergency_light"
    SECURITY_LIGHT = "security_light"
    COMFORT_FAN = "comfort_fan"
    EXTRACT_FAN = "extract_fan"
    COVERING = "covering"
    ENTERTAINMENT = "entertainment"
    GENERAL_SOCKET = "general_socket"
    HEATER_PORTABLE = "heater_portable"
    HEATER_RADIANT = "heater_radiant"
    HEATER_FIXED = "heater_fixed"
    WATER_HEATER = "water_heater"
    COOKING = "cooking"
    SAUNA = "sauna"
    REFRIGERATION = "refrigeration"
    NETWORK_EQUIPMENT = "network_equipment"
    ALARM = "alarm"
    MEDICAL = "medical"
    LIFT = "lift"
    ANIMAL_CARE = "animal_care"
    PUMP = "pump"
    GATE = "gate"


class AllOff(StrEnum):
    """What a scene that selects by purpose, room, storey or tag may do on *off*."""

    OFF = "off"
    LEAVE = "leave"  # only a rule that names the load itself switches it
    NEVER = "never"  # no rule may switch it off


class UnattendedOn(StrEnum):
    """Whether a scene may switch it on."""

    YES = "yes"
    NAMED_ONLY = "named_only"  # only a rule that names the load itself
    OWN_THERMOSTAT = "own_thermostat"  # with a stated own thermostat, and a time limit
    NEVER = "never"


@dataclass(frozen=True, slots=True)
class PurposePolicy:
    """Policy of one purpose; ``hazard`` is what a reader must know, empty where there is none."""

    label: str
    all_off: AllOff
    unattended_on: UnattendedOn
    hazard: str
    source: str


_CP = "common practice, no source"


def _p(label: str, off: AllOff, on: UnattendedOn, hazard: str = "", source: str = _CP) -> PurposePolicy:
    return PurposePolicy(label, off, on, hazard, source)


_OFF, _LEAVE, _KEEP = AllOff.OFF, AllOff.LEAVE, AllOff.NEVER
_YES, _NAMED, _THERM, _NO = (
    UnattendedOn.YES,
    UnattendedOn.NAMED_ONLY,
    UnattendedOn.OWN_THERMOSTAT,
    UnattendedOn.NEVER,
)

PURPOSES: dict[Purpose, PurposePolicy] = {
    Purpose.LIGHTING: _p("lighting", _OFF, _YES),
    Purpose.NIGHT_LIGHT: _p("night light", _LEAVE, _YES),
    Purpose.EMERGENCY_LIGHT: _p("emergency light", _KEEP, _YES, "must keep its supply"),
    Purpose.SECURITY_LIGHT: _p("security light", _LEAVE, _YES),
    Purpose.COMFORT_FAN: _p("comfort fan", _OFF, _YES),
    Purpose.EXTRACT_FAN: _p("extract fan", _LEAVE, _YES),
    Purpose.COVERING: _p("blind, shutter or awning", _LEAVE, _NAMED, "moves: crush hazard"),
    Purpose.ENTERTAINMENT: _p("entertainment socket", _LEAVE, _YES),
    Purpose.GENERAL_SOCKET: _p("general socket", _LEAVE, _NAMED, "anything may be plugged in"),
    Purpose.HEATER_PORTABLE: _p(
        "portable heater",
        _OFF,
        _NO,
        "may set fire to what stands before it",
        "Electrical Safety First / SFRS advice 2014 (secondary)",
    ),
    Purpose.HEATER_RADIANT: _p(
        "radiant heater",
        _OFF,
        _NO,
        "may set fire to what stands before it",
        "Electrical Safety First / SFRS advice 2014 (secondary); IEC 60335-2-30 (from memory)",
    ),
    Purpose.HEATER_FIXED: _p("fixed heater", _OFF, _THERM, "heats unattended"),
    Purpose.WATER_HEATER: _p("water heater", _LEAVE, _THERM, "heats unattended"),
    Purpose.COOKING: _p(
        "cooking or ironing", _OFF, _NO, "heats unattended", "IEC 60335-1 cl. 22.49-22.51 (from memory)"
    ),
    Purpose.SAUNA: _p(
        "sauna heater",
        _OFF,
        _NO,
        "must be readied by hand before each remote start",
        "EN 60335-2-53 (secondary)",
    ),
    Purpose.REFRIGERATION: _p("refrigerator or freezer", _KEEP, _NAMED, "food spoils"),
    Purpose.NETWORK_EQUIPMENT: _p("network equipment", _KEEP, _NAMED, "the house loses its network"),
    Purpose.ALARM: _p("alarm", _KEEP, _NAMED, "loss of supply is the hazard"),
    Purpose.MEDICAL: _p("medical equipment", _KEEP, _NO, "loss of supply is the hazard"),
    Purpose.LIFT: _p("lift", _KEEP, _NO, "loss of supply is the hazard"),
    Purpose.ANIMAL_CARE: _p("animal care", _KEEP, _NAMED, "animals depend on it"),
    Purpose.PUMP: _p("pump", _KEEP, _NO, "motor duty; may run dry or flood"),
    Purpose.GATE: _p("gate or garage door", _KEEP, _NO, "moves: crush hazard"),
}
