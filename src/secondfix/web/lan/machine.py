"""Under which names and addresses other machines of the same network reach this one."""

import re
import socket
from contextlib import closing, suppress
from ipaddress import ip_address

_NAME = re.compile(r"[a-z0-9]([a-z0-9.-]{0,250}[a-z0-9])?")
# Addresses kept for documentation (RFC 5737, RFC 3849): asking the way to them sends nothing.
_FAR = ((socket.AF_INET, "192.0.2.1"), (socket.AF_INET6, "2001:db8::1"))


def addresses_here() -> tuple[str, ...]:
    """The addresses of this machine, the one that the network knows first, loopback left out."""
    found = [_way_out(family, far) for family, far in _FAR]
    with suppress(OSError):  # a machine without a name that resolves: its addresses above are enough
        found += [str(entry[4][0]) for entry in socket.getaddrinfo(socket.gethostname(), None)]
    clean = (a.partition("%")[0] for a in found if a)
    return tuple(dict.fromkeys(a for a in clean if not ip_address(a).is_loopback))


def names_here() -> tuple[str, ...]:
    """This machine's names, as a browser may ask for them."""
    name = socket.gethostname().lower()
    short = name.partition(".")[0]
    wanted = ("localhost", name, f"{short}.local", socket.getfqdn().lower())
    return tuple(dict.fromkeys(n for n in wanted if _NAME.fullmatch(n) and not n.endswith(".arpa")))


def _way_out(family: socket.AddressFamily, far: str) -> str:
    with closing(socket.socket(family, socket.SOCK_DGRAM)) as asking:
        try:
            asking.connect((far, 9))
            return str(asking.getsockname()[0])
        except OSError:
            return ""
