"""The verb ``serve``."""

import os
import socket
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.opening import FirmFolder, refuse, verb_app
from secondfix.files import open_firm
from secondfix.house import Fault
from secondfix.store.start import Whereabouts, begin

app = verb_app()
HOST = "127.0.0.1"
EVERY = "0.0.0.0"  # noqa: S104 - what --lan is for: encrypted, and refused to whoever has no account


@app.command()
def run(
    data: Annotated[Path, typer.Option("--data", help="The folder that keeps the book.")] = Path(
        "secondfix-data"
    ),
    port: Annotated[int, typer.Option("--port", min=0, max=65534, help="0 takes any free one.")] = 8731,
    lan: Annotated[
        bool,
        typer.Option(
            "--lan", help="Encrypted to this network's machines too; the next port tells phones how."
        ),
    ] = False,
    firm_folder: FirmFolder = None,
) -> None:
    """Serve the pages of the desk to this machine's browser, until interrupted (Ctrl-C).

    With --lan also to the phones and computers of this network: the desk makes a certificate authority of
    its own in the data folder, and a page says how a phone comes to trust it.
    """
    firm = open_firm(firm_folder)
    if isinstance(firm, list):
        refuse(firm)
    if firm_folder is not None:
        os.environ["SECONDFIX_FIRM"] = str(firm_folder.resolve())
    try:
        serving = _to_network(data, port) if lan else _to_this_machine(data, port)
    except (OSError, ValueError) as error:
        refuse([Fault("serve", "", str(error), "a folder that can be written, and a free port")])
    from secondfix.store import door  # noqa: PLC0415 - tables load once Django has begun

    if not door.accounts():
        _say("Nobody can come in yet: the first page makes the first account.")
    serving()


def _to_this_machine(data: Path, port: int) -> Callable[[], None]:
    begin(Whereabouts.of_environment(data))
    held = _listening(HOST, port)
    from secondfix.web.serving import serve  # noqa: PLC0415 - pages load once Django has begun

    _say(f"Secondfix stands at http://{HOST}:{held.getsockname()[1]}/ (Ctrl-C to stop)")
    return lambda: serve(held)


def _to_network(data: Path, port: int) -> Callable[[], None]:
    from secondfix.web.serving import (  # noqa: PLC0415 - paid for by those who serve
        Doors,
        addresses_here,
        keep_authority,
        names_here,
        serve_lan,
    )

    asked = Whereabouts.of_environment(data)
    addresses = tuple(a for a in addresses_here() if ":" not in a)
    names = tuple(dict.fromkeys((*asked.hosts, *addresses, *names_here(), HOST)))

    def fresh() -> str:
        return str(keep_authority(folder, names, now=datetime.now(UTC)).served)

    folder = asked.folder.resolve() / "authority"
    begin(replace(asked, hosts=names, https=True, own_tls=True))
    authority = keep_authority(folder, names, now=datetime.now(UTC))
    doors = Doors(_listening(EVERY, port), _listening(EVERY, port + 1 if port else 0))
    at, beside = (door.getsockname()[1] for door in (doors.encrypted, doors.plain))
    _say(f"Secondfix stands at https://{names[0]}:{at}/ (Ctrl-C to stop)")
    _say(f"A phone is told how to trust it at http://{names[0]}:{beside}/phone")
    _say(f"Its authority's SHA-256: {authority.fingerprint}")
    if authority.left_out:
        left = ", ".join(authority.left_out)
        _say(f"○ Not vouched for: {left}. Take {folder} away and begin again for an authority that may.")
    return lambda: serve_lan(doors, hosts=names, fresh=fresh)


def _listening(host: str, port: int) -> socket.socket:
    """The port, taken before anything is promised. Raises OSError."""
    held = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    held.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    held.bind((host, port))
    held.listen(128)
    return held


def _say(words: str) -> None:
    print(words, flush=True)  # noqa: T201 - the command line prints
