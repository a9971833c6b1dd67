"""The verb ``keys``: add to the key ring, list it, show one code."""

import os
import sys
from pathlib import Path
from typing import Annotated

import typer

from secondfix.actions.ring import ready_for_ring
from secondfix.cli.opening import refuse, verb_app
from secondfix.files import KeyRing, WrongPassphraseError, open_ring, save_ring
from secondfix.house import Fault

app = verb_app()
RingFile = Annotated[Path, typer.Argument(metavar="RING", help="The key ring's file.")]
Reference = Annotated[str, typer.Argument(metavar="REFERENCE", help="What the house calls it, such as K07.")]
ENVIRONMENT = "SECONDFIX_PASSPHRASE"


@app.callback()
def about() -> None:
    """The key ring holds codes apart from the house, encrypted; houses and journals hold references only.

    The passphrase is asked for, or taken from the environment (SECONDFIX_PASSPHRASE).
    """


@app.command()
def add(
    ring: RingFile,
    reference: Reference,
    address: Annotated[
        str | None, typer.Option(help="The device's address, beside a Zigbee install code.")
    ] = None,
    replace: Annotated[bool, typer.Option("--replace", help="Put it in place of what stands there.")] = False,
) -> None:
    """Read one code (asked for, not shown) and keep it under a reference."""
    passphrase = asked_passphrase(new=not ring.exists())
    held = opened_ring(ring, passphrase) if ring.exists() else KeyRing()
    if reference in held.codes and not replace:
        refuse([Fault(str(ring), reference, "a code stands there", "a free reference, or --replace")])
    text = _asked("Code")
    reading, why_not = ready_for_ring(reference, text, address=address)
    if why_not:
        refuse([Fault("the code", reference, why_not, "a code without fault")])
    save_ring(ring, held.holding(reference, text), passphrase)
    print(f"{reference} is kept: {str(reading.kind).replace('-', ' ')}.")  # noqa: T201 - the command line prints
    for warning in reading.warnings:
        print(f"○ {warning.says}")  # noqa: T201 - as above


@app.command("list")
def list_references(ring: RingFile) -> None:
    """The references on the ring, and no code."""
    for reference in sorted(opened_ring(ring, asked_passphrase()).codes):
        print(reference)  # noqa: T201 - as above


@app.command()
def show(ring: RingFile, reference: Reference) -> None:
    """Show one code on the screen."""
    codes = opened_ring(ring, asked_passphrase()).codes
    if reference not in codes:
        refuse([Fault(str(ring), reference, "nothing", f"one of {', '.join(sorted(codes)) or 'none'}")])
    print(codes[reference])  # noqa: T201 - as above


def asked_passphrase(*, new: bool = False) -> str:
    """The passphrase from the environment, else asked for (twice for a new ring)."""
    given = os.environ.get(ENVIRONMENT)
    if given:
        return given
    passphrase = _asked("Passphrase of the key ring", twice=new)
    if not passphrase:
        refuse([Fault("the passphrase", "", "nothing", f"one at the terminal, or in {ENVIRONMENT}")])
    return passphrase


def _asked(words: str, *, twice: bool = False) -> str:
    """A secret typed unseen at a terminal, else one line of standard input."""
    if sys.stdin.isatty():
        return str(typer.prompt(words, hide_input=True, confirmation_prompt=twice))
    return sys.stdin.readline(65_536).strip()


def opened_ring(path: Path, passphrase: str) -> KeyRing:
    """The ring, or exit 2 saying why it does not open."""
    try:
        return open_ring(path, passphrase)
    except WrongPassphraseError as error:
        refuse([Fault(str(path), "", str(error), "the passphrase it was closed with")])
    except ValueError as error:
        refuse([Fault(str(path), "", str(error), "a key ring made by secondfix keys add")])
    except OSError as error:
        refuse([Fault(str(path), "", (error.strerror or "cannot be read").lower(), "a key ring")])
