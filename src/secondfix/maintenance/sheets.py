"""The worksheets of the new devices: those of any join, for the house as it will be."""

from dataclasses import replace

from secondfix.assumptions import Assumptions
from secondfix.house import House, schedule
from secondfix.joining import Worksheet, walk, worksheets
from secondfix.maintenance.replacing import Fit
from secondfix.naming import Names

_THROUGH = "It looks for its own parent; what carried the failed device is the first to try."
_STAGE = " It is fitted in stage"  # a swap has no stages


def sheets_of(
    after: House, names: Names, fits: tuple[Fit, ...], assumptions: Assumptions
) -> tuple[Worksheet, ...]:
    """One worksheet for each new device, in the order of a walk among them alone: all else stands joined."""
    own = {fit.device: after.devices[fit.device] for fit in fits}
    rows = schedule(after.model_copy(update={"devices": own}), after.models)
    sheets = worksheets(rows, walk(rows, {}, assumptions), names)
    return tuple(
        replace(
            sheet,
            through=_THROUGH if sheet.joins else sheet.through,
            isolate=sheet.isolate.partition(_STAGE)[0],
        )
        for sheet in sheets
    )
