"""The one lazy table of verbs, and the way in."""

import sys
from importlib import import_module

VERBS: dict[str, tuple[str, str]] = {
    "demo": ("demo", "Take the invented demo house through the whole job, into a folder."),
    "new": ("new", "Begin a house: a file with an id of its own."),
    "check": ("check", "Everything wrong with a house, and everything that cannot be told."),
    "reach": ("reach", "Whether radio is likely to reach every device."),
    "select": ("select", "Which models fit each place, and what would help where none does."),
    "names": ("names", "What to call every entry, and which names clash."),
    "scenes": ("scenes", "What each scene really switches, load by load."),
    "walk": ("walk", "An order in which every device can join."),
    "worksheet": ("worksheet", "One sheet for each device to join."),
    "pack": ("pack", "The handover pack, the findings and the worksheets as PDF."),
    "record": ("record", "Append one entry to a journal: a test, a fitting, a correction, a snag."),
    "as-built": ("as_built", "The house as its journal found it, and how it differs from the design."),
    "test": ("function_test", "The function test: what each gang really works, crossed or dead gangs."),
    "adopt": ("adopt", "A new revision equal to the as-built house."),
    "swap": ("swap", "Replace a failed device or a controller and lose nothing that used it."),
    "import": ("import_list", "Hold a controller's device list against a house, or begin one from it."),
    "code": ("code", "Read an onboarding code or address."),
    "keys": ("keys", "The key ring: codes apart from the house, encrypted."),
    "models": ("models", "The models of the catalogue; or check a firm's own."),
    "assumptions": ("assumptions", "Every assumption with value, range and source."),
    "serve": ("serve", "The pages of the desk, in this machine's browser."),
    "backup": ("backup", "Everything of the desk in one file, tried before it is called a backup."),
    "restore": ("restore", "Lay a backup into a fresh desk."),
}


def main() -> None:
    """Run the verb that the command line names; without one, say which there are."""
    words = sys.argv[1:]
    if not words or words[0] in {"-h", "--help", "help"}:
        print(_overview())  # noqa: T201 - printing is this module's work
        sys.exit(0 if words else 2)
    if words[0] == "--version":
        from importlib.metadata import version  # noqa: PLC0415 - paid for by those who ask

        print(f"secondfix {version('secondfix')}")  # noqa: T201 - as above
        return
    if words[0] not in VERBS:
        from difflib import get_close_matches  # noqa: PLC0415 - as above

        close = get_close_matches(words[0], VERBS, n=1)
        hint = f"perhaps '{close[0]}'" if close else f"one of {', '.join(VERBS)}"
        print(f"secondfix: '{words[0]}'; expected {hint}", file=sys.stderr)  # noqa: T201 - as above
        sys.exit(2)
    app = import_module(f"secondfix.cli.{VERBS[words[0]][0]}").app
    app(words[1:], prog_name=f"secondfix {words[0]}")


def _overview() -> str:
    width = max(map(len, VERBS))
    rows = "\n".join(f"  {verb:<{width}}  {words}" for verb, (_, words) in VERBS.items())
    return (
        "secondfix VERB [--help]\n\n"
        "The book for the switches of a house: survey, check, reach, names, scenes, joining, hand-over.\n"
        "It advises. It never calls a circuit safe; work on mains is for a licensed person.\n\n"
        f"{rows}\n\n"
        "A house is a file, or - for standard input. Exit: 2 unusable input, 1 a danger or fault,\n"
        "3 something cannot be told, 0 otherwise."
    )
