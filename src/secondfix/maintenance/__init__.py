"""Maintenance: what is done in a house that stands, so that nothing that uses it is lost."""

from secondfix.maintenance.asked import device_at
from secondfix.maintenance.comparing import Change, Turn
from secondfix.maintenance.dangers import Reason, Refusal
from secondfix.maintenance.expected import Expected, written
from secondfix.maintenance.losses import Loss, LossKind
from secondfix.maintenance.plan import OUTCOME_WORDS, Nearest, Outcome, StepKind, SwapPlan, SwapStep
from secondfix.maintenance.removal import Removal, Way
from secondfix.maintenance.replacing import Fit, Unit
from secondfix.maintenance.swapping import swap
from secondfix.maintenance.teaching import Ask, Teach

__all__ = [
    "OUTCOME_WORDS",
    "Ask",
    "Change",
    "Expected",
    "Fit",
    "Loss",
    "LossKind",
    "Nearest",
    "Outcome",
    "Reason",
    "Refusal",
    "Removal",
    "StepKind",
    "SwapPlan",
    "SwapStep",
    "Teach",
    "Turn",
    "Unit",
    "Way",
    "device_at",
    "swap",
    "written",
]
