"""The assumptions that an answer uses: defaults, over them the firm's, the house's, the command line's."""

import re
from collections.abc import Iterator, Mapping, Sequence
from difflib import get_close_matches
from math import inf

from secondfix.assumptions import Assumption, Assumptions, Override
from secondfix.house import Fault, House

COMMAND_LINE = "command line"
_OPTION = "--assume"
_WHOLE = re.compile(r"-?[0-9]{1,9}")


def settled_assumptions(house: House, given: Assumptions) -> Assumptions:
    """The resolved set for a house that ``read_house`` accepted (so its choices name what exists).

    ``given`` are the firm's, or the defaults; what was set on the command line stands over the house too.
    """
    choices = {
        name: Override(c.value, c.low, c.high, c.source)
        for name, c in house.assumptions.items()
        if given[name].set_by != COMMAND_LINE
    }
    return given.overridden(choices, set_by="house")


def assumed(given: Assumptions, choices: Sequence[str]) -> Assumptions | list[Fault]:
    """``given`` with every ``name=value`` of ``choices`` over it, each taken as certain; or all faults."""
    faults: list[Fault] = []
    chosen: dict[str, Override] = {}
    for choice in choices:
        wrong = list(_wrong(given, chosen, choice))
        faults += wrong
        if not wrong:
            name, _, value = choice.partition("=")
            chosen[name] = Override(int(value))
    return faults or given.overridden(chosen, set_by=COMMAND_LINE)


def _wrong(given: Assumptions, chosen: Mapping[str, Override], choice: str) -> Iterator[Fault]:
    name, equals, value = choice.partition("=")
    if not equals:
        yield Fault(_OPTION, "", _shown(choice), "name=value, the value a whole number")
        return
    known = given.get(name)
    if known is None:
        close = get_close_matches(name, given, n=1)
        perhaps = f", perhaps '{close[0]}'" if close else ""
        expected = f"the name of an assumption{perhaps}: secondfix assumptions lists them"
        yield Fault(_OPTION, "", _shown(name), expected)
    if not _WHOLE.fullmatch(value):
        unit = f" of {known.unit}" if known else ""
        expected = f"a whole number{unit}, of nine digits at most"
        yield Fault(_OPTION, _shown(name, quote=""), _shown(value), expected)
    elif known and not _bounds(known)[0] <= int(value) <= _bounds(known)[1]:
        least, most = _bounds(known)
        yield Fault(_OPTION, name, _shown(value), f"{least} to {most} {known.unit}, its legal bounds")
    elif name in chosen:
        yield Fault(_OPTION, name, _shown(value), f"one value: it is set to {chosen[name].value} already")


def _bounds(a: Assumption) -> tuple[float, float]:
    return -inf if a.least is None else a.least, inf if a.most is None else a.most


def _shown(text: str, *, quote: str = "'") -> str:
    return f"{quote}{text[:60]}{quote}"
