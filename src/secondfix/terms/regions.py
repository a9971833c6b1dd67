"""Radio regions (frequency plans of ITU-T G.9959) and wiring rules."""

from enum import StrEnum


class RadioRegion(StrEnum):
    """Frequency plan for sub-gigahertz radio; 2.4 GHz is the same everywhere."""

    EU = "eu"
    US = "us"
    ANZ = "anz"
    CN = "cn"
    HK = "hk"
    IN = "in"
    IL = "il"
    JP = "jp"
    KR = "kr"


class WiringRules(StrEnum):
    """Which family of wiring rules the house follows: IEC 60364 or NFPA 70."""

    IEC = "iec"
    NEC = "nec"
