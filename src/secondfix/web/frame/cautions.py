"""What stands on every sheet that leads to hands in a wall box, in the words of the house."""

from secondfix.house import House, is_nec
from secondfix.terms import said

_BEFORE = (
    "Before a box is opened: isolate, lock off, prove dead. "
    "A licensed person opens it; local code decides who may."
)


def before_box(house: House) -> str:
    """The caution, as IEC houses or NEC houses say it."""
    return said(_BEFORE, nec=is_nec(house))
