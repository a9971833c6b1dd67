"""The verb ``serve``."""

import os
import socket
from pathlib import Path
from typing import Annotated

import typer

from secondfix.cli.opening import FirmFolder, refuse, verb_app
from secondfix.files import open_firm
from secondfix.house import Fault
from secondfix.store.start import Whereabouts, begin

app = verb_app()
HOST = "127.0.0.1"


@app.command()
def run(
    data: Annotated[Path, typer.Option("--data", help="The folder that keeps the book.")] = Path(
        "secondfix-data"
    ),
    port: Annotated[int, typer.Option("--port", min=0, max=65535, help="0 takes any free one.")] = 8731,
    firm_folder: FirmFolder = None,
) -> None:
    """Serve the pages of the desk to this machine's browser, until interrupted (Ctrl-C)."""
    firm = open_firm(firm_folder)
    if isinstance(firm, list):
        refuse(firm)
    if firm_folder is not None:
        os.environ["SECONDFIX_FIRM"] = str(firm_folder.resolve())
    try:
        begin(Whereabouts.of_environment(data))
        held = _listening(port)
    except (OSError, ValueError) as error:
        refuse([Fault("serve", "", str(error), "a folder that can be written, and a free port")])
    from secondfix.store import door  # noqa: PLC0415 - tables load once Django has begun
    from secondfix.web.serving import serve  # noqa: PLC0415 - as above

    print(f"Secondfix stands at http://{HOST}:{held.getsockname()[1]}/ (Ctrl-C to stop)", flush=True)  # noqa: T201 - the command line prints
    if not door.accounts():
        print("Nobody can come in yet: the first page makes the first account.", flush=True)  # noqa: T201 - as above
    serve(held)


def _listening(port: int) -> socket.socket:
    """The port, taken before anything is promised. Raises OSError."""
    held = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    held.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    held.bind((HOST, port))
    held.listen(128)
    return held
