"""What radio tells about a house, handed in from above: how long a frame takes, and over how many links."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from secondfix.scenes.span import Span
from secondfix.terms import Protocol

Three = tuple[float, float, float]
Sending = Callable[[Protocol, int, bool], Three]


@dataclass(frozen=True, slots=True)
class Air:
    """How frames travel.

    ``sending`` gives (low, value, high) in ms of one frame over one link, from the protocol, the octets
    that the MAC frame carries, and whether an acknowledgement is waited for. ``links`` is the count of
    links on the best route of a device, 1 or more; a device without a route is not in it.
    """

    sending: Sending
    links: Mapping[str, int] = field(default_factory=dict)

    def one_link(self, protocol: Protocol, *, octets: int, acknowledged: bool) -> Span:
        """One frame over one link, in ms."""
        return Span(*self.sending(protocol, octets, acknowledged))
