"""The verb ``code``."""

import sys
from typing import Annotated

import typer

from secondfix.actions.code import CodeAnswer, code, code_as_json
from secondfix.cli.opening import AsJson, print_json, verb_app
from secondfix.cli.page import para, table
from secondfix.joining import CODE_KINDS

app = verb_app()
Text = Annotated[str, typer.Argument(metavar="TEXT", help="The code; - reads it from standard input.")]


@app.command()
def run(
    text: Text = "-",
    address: Annotated[
        str | None, typer.Option(help="The device's address, beside a Zigbee install code.")
    ] = None,
    kind: Annotated[str | None, typer.Option(help=f"Which code it is: {', '.join(CODE_KINDS)}.")] = None,
    manual: Annotated[
        str | None, typer.Option(help="The manual code printed beside a Matter QR text.")
    ] = None,
    reveal: Annotated[bool, typer.Option("--reveal", help="Show keys, PINs and passcodes.")] = False,
    as_json: AsJson = False,
) -> None:
    """Read an onboarding code or address, and tell what is wrong with it. Secrets stay hidden.

    A code on the command line may stay in the shell's history; - keeps it out.
    Exit: 1 where the code has a fault or the two do not agree, else 0.
    """
    if kind is not None and kind not in CODE_KINDS:
        raise typer.BadParameter(f"'{kind}'; expected one of {', '.join(CODE_KINDS)}", param_hint="--kind")
    given = sys.stdin.buffer.read(65_536).decode("utf-8", "replace") if text == "-" else text
    answer = code(given.strip(), address=address, kind=kind, manual=manual)
    if as_json:
        print_json(code_as_json(answer, reveal=reveal))
    else:
        print(as_text(answer, reveal=reveal))  # noqa: T201 - the command line prints
    raise typer.Exit(0 if answer.ok else 1)


def as_text(answer: CodeAnswer, *, reveal: bool) -> str:
    """The reading as a page of text."""
    plain = code_as_json(answer, reveal=reveal)
    lines = [
        f"{str(plain['kind']).replace('-', ' ')}: "
        + ("no fault found" if answer.reading.ok else "has a fault")
    ]
    lines += _reading(plain)
    if answer.agreement is not None:
        lines.append(para(answer.agreement.says))
    return "\n".join(lines)


def _reading(plain: dict[str, object]) -> list[str]:
    lines = [para(f"◆ {r['says']}", hang=2) for r in plain["faults"]]  # type: ignore[attr-defined] # shape: docs/json.md
    lines += [para(f"○ {r['says']}", hang=2) for r in plain["warnings"]]  # type: ignore[attr-defined] # as above
    rows = [
        (f["name"].replace("_", " "), "hidden (--reveal shows it)" if f["value"] is None else str(f["value"]))
        for f in plain["fields"]  # type: ignore[attr-defined] # as above
    ]
    if rows:
        lines.append(table(("field", "value"), rows, indent=2))
    for part in plain["parts"]:  # type: ignore[attr-defined] # as above
        lines += _reading(part)
    return lines
