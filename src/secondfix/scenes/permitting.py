"""What the policy of a purpose lets a scene do (terms.PURPOSES, with the source beside each purpose)."""

from enum import Enum, auto

from secondfix.catalogue import Model, Stated
from secondfix.house import Load, settled
from secondfix.scenes.crossing import To
from secondfix.terms import PURPOSES, AllOff, Purpose, UnattendedOn


class Permit(Enum):
    """Allowed; kept: this rule does not reach the load; refused: no rule may, and the asker is told."""

    ALLOWED = auto()
    KEPT = auto()
    REFUSED = auto()


def permit(purpose: Purpose, to: To, *, named: bool, fit: bool) -> Permit:
    """Whether a demand stands.

    ``named``: it names the load itself. ``fit``: the load has a stated thermostat of its own and a
    limit to its time on. Off by a general rule only where the purpose allows it; a purpose that is
    only left alone can still be named; one that is never switched off refuses even its name. On is
    refused where nobody may switch it on unattended, however it is asked.
    """
    policy = PURPOSES[purpose]
    if to == "off":
        if policy.all_off is AllOff.OFF or (named and policy.all_off is AllOff.LEAVE):
            return Permit.ALLOWED
        return Permit.REFUSED if named and policy.all_off is AllOff.NEVER else Permit.KEPT
    on = policy.unattended_on
    if on is UnattendedOn.NEVER or (on is UnattendedOn.OWN_THERMOSTAT and not fit):
        return Permit.REFUSED
    return Permit.KEPT if on is UnattendedOn.NAMED_ONLY and not named else Permit.ALLOWED


def needs_fitness(purpose: Purpose) -> bool:
    """Whether switching it on leans on a thermostat and a time limit."""
    return PURPOSES[purpose].unattended_on is UnattendedOn.OWN_THERMOSTAT


def fitness(load: Load, model: Model | None) -> bool | None:
    """Whether it may heat unattended: own thermostat and a limit to its time on; None is not known.

    The limit is the load's, or the device's own where its sheet states one. A thermostat that is
    only assumed counts as not known. (Common practice, no source.)
    """
    thermostat = settled(load.own_thermostat)
    if thermostat is False:
        return False
    limited = load.time_limit_s is not None or (model is not None and model.own_time_limit is Stated.YES)
    return True if thermostat and limited else None
