"""A scene that takes long although a group command would do."""

from collections.abc import Iterator

from secondfix.assumptions import OF_LINKS
from secondfix.findings import Finding, Look, Rule, Severity, cannot_tell, fails
from secondfix.house import network_look
from secondfix.scenes.asked import Asked
from secondfix.scenes.timing import Group, NetworkTime, SceneTime
from secondfix.scenes.wording import span_words
from secondfix.terms import PROTOCOLS

RULE = Rule(
    "scenes.time",
    "Would a command to a group spare people a slow scene?",
    "frames: IEEE 802.15.4-2006 (secondary), ITU-T G.9959 (secondary), octets from memory; "
    "what is slow: common practice, no source",
    ("scene_slow_ms", "scene_controller_ms", "scene_device_ms", "scene_links", *OF_LINKS),
)
RULES = (RULE,)


def check(asked: Asked) -> Iterator[Finding]:
    """One answer per scene, or one per network on which it is slow or may be."""
    for resolution, time in zip(asked.resolutions, asked.times, strict=True):
        found = [f for network in time.networks for f in _network(asked, time, network)]
        found += _loose(asked, time)
        yield from asked.or_passes(found, RULE, resolution)


def _limit(asked: Asked) -> tuple[float, float]:
    low, _, high = asked.assumptions.span("scene_slow_ms")
    return low, high


def _network(asked: Asked, time: SceneTime, network: NetworkTime) -> Iterator[Finding]:
    least, most = _limit(asked)
    if network.one_by_one_ms.high + time.most_loose_ms <= least:
        return
    if network.saves is False:
        return
    if network.one_by_one_ms.low > most and network.saves:
        yield _advice(asked, time, network)
        return
    name = asked.schedule.house.networks[network.network_id].name
    looks = network.looks
    if network.one_by_one_ms.low <= most or not looks:
        looks = (*looks, Look(time.scene_id, "time", f"time the scene on {name}, first load to last"))
    yield cannot_tell(
        RULE,
        Severity.ADVICE,
        time.scene_id,
        f"Whether a group command would spare people a slow scene on {name} is not known."
        + (f" {network.why}" if network.group is Group.NOT_STATED else ""),
        looks=looks,
        value=f"one by one {span_words(network.one_by_one_ms)}",
        limit=f"{most / 1000:g} s",
        also=(network.network_id, *network.devices),
    )


def _advice(asked: Asked, time: SceneTime, network: NetworkTime) -> Finding:
    assert network.as_group_ms is not None  # it saves time
    name = asked.schedule.house.networks[network.network_id].name
    return fails(
        RULE,
        Severity.ADVICE,
        time.scene_id,
        f"{network.commands} commands one by one on {name} take {span_words(network.one_by_one_ms)}; "
        f"a group command would do.",
        value=f"one by one {span_words(network.one_by_one_ms)}",
        limit=f"{_limit(asked)[1] / 1000:g} s",
        remedy=f"Make a {PROTOCOLS[network.protocol].label} group of what is told the same: "
        f"{span_words(network.as_group_ms)}.",
        also=(network.network_id,),
    )


def _loose(asked: Asked, time: SceneTime) -> list[Finding]:
    """Devices of no network may form a slow scene of their own."""
    if not time.loose or time.most_loose_ms <= _limit(asked)[0]:
        return []
    return [
        cannot_tell(
            RULE,
            Severity.ADVICE,
            time.scene_id,
            f"How long the scene takes is not known. {time.why}",
            looks=[network_look(device) for device in time.loose],
            limit=f"{_limit(asked)[1] / 1000:g} s",
            also=time.loose,
        )
    ]
