"""The assumptions that an answer uses: defaults, over them the firm's, the house's, the command line's."""

import re

from secondfix.assumptions import Assumptions, Override
from secondfix.house import Fault, House

COMMAND_LINE = "command line"
_CHOICE = re.compile(r"^([a-z0-9_]+)=(-?[0-9]{1,9})$")


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


def assumed(given: Assumptions, choices: list[str]) -> Assumptions | list[Fault]:
    """``given`` with every ``name=value`` of ``choices`` over it, each taken as certain; or all faults."""
    faults: list[Fault] = []
    for choice in choices:
        match = _CHOICE.match(choice)
        if match is None:
            faults.append(Fault("--assume", "", f"'{choice}'", "name=value, the value a whole number"))
        elif match[1] not in given:
            expected = "the name of an assumption: secondfix assumptions lists them"
            faults.append(Fault("--assume", "", f"'{match[1]}'", expected))
        else:
            try:
                given = given.overridden({match[1]: Override(int(match[2]))}, set_by=COMMAND_LINE)
            except ValueError as error:
                faults.append(Fault("--assume", "", str(error), "a value within its legal bounds"))
    return faults or given
