"""What the radio package asks of a house."""

from secondfix.assumptions import OF_AIR, OF_LINKS, OF_MEASURED_LINKS
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
CHANNEL = Rule(
    "radio.channel",
    "Would a network at 2.4 GHz lose fewer frames on another channel, by what a channel survey heard?",
    "IEEE 802.15.4-2006 E.4.1.7 (secondary); IEEE 802.11 transmit masks (from memory); how a level heard at "
    "one place is carried to devices is engineering judgement, not sourced",
    may_lean_on=(*OF_AIR, *OF_LINKS, *OF_MEASURED_LINKS),
)

RULES: tuple[Rule, ...] = (REACH, ONE_REPEATER, THREAD_ROUTERS)
"""What `check` asks; a channel is asked for by those who bring a survey of it."""
