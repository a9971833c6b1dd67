"""How a failed device leaves its network, by the protocol's own way.

Zigbee: the leave command, or the coordinator forgets it (Zigbee specification 3.2.2.16 and 3.6.1.10, from
memory). Z-Wave: a node that no longer answers is replaced as a failed node and keeps its node number; one
that answers is excluded, by any controller (Z-Wave network management, secondary). Matter: removed from the
fabric, by the administrator or by a factory reset (Matter core specification, from memory).
"""

from dataclasses import dataclass
from enum import StrEnum

from secondfix.maintenance.replacing import Fit, Site
from secondfix.terms import Protocol


class Way(StrEnum):
    """How the failed device leaves."""

    LEAVE = "leave"
    EXCLUDE = "exclude"
    REPLACE_FAILED_NODE = "replace_failed_node"
    REMOVE_FROM_FABRIC = "remove_from_fabric"
    NOT_JOINED = "not_joined"


@dataclass(frozen=True, slots=True)
class Removal:
    """The way, in sentences; ``keeps_node`` where the new device gets the node number of the old."""

    way: Way
    words: tuple[str, ...]
    source: str
    keeps_node: bool = False


def removal_of(site: Site, fits: tuple[Fit, ...], *, node: int | None) -> Removal:
    """Z-Wave's replacement of a failed node is preferred wherever the first new device speaks it too."""
    network = site.device.network
    if network is None:
        return Removal(Way.NOT_JOINED, (f"{site.failed} is on no network: nothing to remove.",), "")
    protocol = site.house.networks[network].protocol
    if protocol is Protocol.ZIGBEE:
        return _leave(site.failed)
    if protocol is Protocol.MATTER_THREAD:
        return _fabric(site.failed)
    return _replace_node(site.failed, fits[0], node) if fits[0].network == network else _exclude(site.failed)


def _leave(failed: str) -> Removal:
    return Removal(
        Way.LEAVE,
        (
            f"While {failed} still has power, tell it from the coordinator to leave, without its children.",
            "If it does not answer, remove its entry in the coordinator; powered again within reach it may "
            "come back, so reset it before it goes anywhere else.",
        ),
        "Zigbee specification, leave (from memory)",
    )


def _fabric(failed: str) -> Removal:
    return Removal(
        Way.REMOVE_FROM_FABRIC,
        (
            f"Remove {failed} from the fabric at the controller; ask whether other controllers share it.",
            "If it does not answer, remove its entry there, and reset it before it goes anywhere else.",
        ),
        "Matter core specification (from memory)",
    )


def _exclude(failed: str) -> Removal:
    return Removal(
        Way.EXCLUDE,
        (
            f"While {failed} still answers, exclude it.",
            "If it does not answer, let the controller find it failed, then remove the failed node.",
        ),
        "Z-Wave network management (secondary)",
    )


def _replace_node(failed: str, fit: Fit, node: int | None) -> Removal:
    number = f"node {node}" if node is not None else "its node number: write it down first"
    return Removal(
        Way.REPLACE_FAILED_NODE,
        (
            f"Do not exclude {failed}. Taken out, it no longer answers: let the controller find that.",
            f"Then choose to replace the failed node, and include {fit.device} in its stead.",
            f"It keeps {number}.",
            "If the controller refuses, since the old one still answers, exclude it and include the new one: "
            "it then gets another node number, and every scene must be taught.",
        ),
        "Z-Wave network management, replace failed node (secondary)",
        keeps_node=True,
    )
