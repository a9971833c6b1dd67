"""How many octets a command of a scene has, above the MAC, by protocol.

All counted from the published layouts from memory, so not verified. Ten octets more or less move a frame by
0.3 ms (Zigbee, Thread) or 0.8 ms (Z-Wave at 100 kbit/s), less than what a device spends on it.
"""

from secondfix.terms import Protocol

# Zigbee: network header 8, its security 14 + 4, application support header 8 (to a group 9), cluster
# header 3.
_ZIGBEE, _ZIGBEE_GROUP = 37, 38
# Matter: 6LoWPAN 15, message header 8, protocol header 6, code 16, invoke request 32; to a group: group and
# source 10 and the address of all 14 more. The answer confirms the message that it answers: 4, and a
# status 4.
_MATTER, _MATTER_GROUP, _MATTER_ANSWER = 77, 101, 85
# Z-Wave: Security 2 header 4 and code 8; Supervision 4; Binary or Multilevel Switch Set 4; Report 5.
_ZWAVE, _ZWAVE_ANSWER, _MULTI_CHANNEL = 20, 17, 4
_ZWAVE_MANY = 30 + 3  # the list of those addressed, and the group of Security 2; no Supervision
_LEVEL = {Protocol.ZIGBEE: 3, Protocol.ZWAVE: 0, Protocol.MATTER_THREAD: 10}


def command_octets(protocol: Protocol, *, level: bool, links: int, several_gangs: bool) -> int:
    """Octets of one command to one entry. Z-Wave: a list of repeaters 2 + n where there are any."""
    if protocol is Protocol.ZWAVE:
        return _ZWAVE + _around(links=links, several_gangs=several_gangs)
    return (_ZIGBEE if protocol is Protocol.ZIGBEE else _MATTER) + (_LEVEL[protocol] if level else 0)


def answer_octets(protocol: Protocol, *, links: int, several_gangs: bool) -> int:
    """Octets of what the device answers: default response, Supervision report, invoke response."""
    if protocol is Protocol.ZWAVE:
        return _ZWAVE_ANSWER + _around(links=links, several_gangs=several_gangs)
    return _ZIGBEE + 2 if protocol is Protocol.ZIGBEE else _MATTER_ANSWER


def group_octets(protocol: Protocol, *, level: bool) -> int:
    """Octets of one command to many: groupcast, or on Z-Wave multicast."""
    if protocol is Protocol.ZWAVE:
        return _ZWAVE - 4 + _ZWAVE_MANY + _MULTI_CHANNEL
    return (_ZIGBEE_GROUP if protocol is Protocol.ZIGBEE else _MATTER_GROUP) + (
        _LEVEL[protocol] if level else 0
    )


def _around(*, links: int, several_gangs: bool) -> int:
    return (_MULTI_CHANNEL if several_gangs else 0) + (links + 1 if links > 1 else 0)
