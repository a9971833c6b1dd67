"""What the radio package asks of a house."""

from secondfix.assumptions import OF_LINKS, OF_MEASURED_LINKS
from secondfix.findings import Rule

REACH = Rule(
    "radio.reach",
    "Is radio likely to carry each device to its controller, within its protocol's limits?",
    "ITU-R P.2040-4 eq. 43-44 (secondary), P.525 (from memory); Zigbee R22 3.5.1 depth (secondary); "
    "ITU-T G.9959 routes of four repeaters (secondary)",
    may_lean_on=(*OF_LINKS, *OF_MEASURED_LINKS),
)
ONE_REPEATER = Rule(
    "radio.one_repeater",
    "Do devices hang on one repeater alone?",
    "common practice, no source; links as in radio.reach",
    may_lean_on=(*OF_LINKS, *OF_MEASURED_LINKS),
)
THREAD_ROUTERS = Rule(
    "radio.thread_routers",
    "Has a Thread network more devices that could repeat than may repeat at one time?",
    "Thread: at most 32 active routers (from memory)",
)

RULES: tuple[Rule, ...] = (REACH, ONE_REPEATER, THREAD_ROUTERS)
