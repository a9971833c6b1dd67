"""Maintenance: what is done in a house that stands, so that nothing that uses it is lost."""

from secondfix.maintenance.asked import device_at
from secondfix.maintenance.beginning import Begun, begin_from
from secondfix.maintenance.controller import LEANS_ON as TIME_LEANS_ON
from secondfix.maintenance.controller import Kept, Rebuilt, controller_replaced
from secondfix.maintenance.dangers import Reason, Refusal
from secondfix.maintenance.device_list import ListRow
from secondfix.maintenance.expected import Expected, written
from secondfix.maintenance.losses import Loss, LossKind
from secondfix.maintenance.plan import OUTCOME_WORDS, Nearest, Outcome, StepKind, SwapPlan, SwapStep
from secondfix.maintenance.reconciling import (
    CANNOT_TELL,
    FAULTS,
    Difference,
    Reconciled,
    Unlike,
    reconcile,
)
from secondfix.maintenance.removal import Removal, Way
from secondfix.maintenance.replacing import Fit, Unit
from secondfix.maintenance.suspects import Suspect, Suspects, suspects
from secondfix.maintenance.swapping import children_of, swap
from secondfix.maintenance.teaching import Ask, Teach

__all__ = [
    "CANNOT_TELL",
    "FAULTS",
    "OUTCOME_WORDS",
    "TIME_LEANS_ON",
    "Ask",
    "Begun",
    "Difference",
    "Expected",
    "Fit",
    "Kept",
    "ListRow",
    "Loss",
    "LossKind",
    "Nearest",
    "Outcome",
    "Reason",
    "Rebuilt",
    "Reconciled",
    "Refusal",
    "Removal",
    "StepKind",
    "Suspect",
    "Suspects",
    "SwapPlan",
    "SwapStep",
    "Teach",
    "Unit",
    "Unlike",
    "Way",
    "begin_from",
    "children_of",
    "controller_replaced",
    "device_at",
    "reconcile",
    "suspects",
    "swap",
    "written",
]
