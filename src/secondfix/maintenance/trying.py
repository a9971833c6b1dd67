"""One swap tried in thought: the house that it would give, and what that house says."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.electrical import check as check_electrical
from secondfix.findings import Finding
from secondfix.house import House, Schedule, schedule
from secondfix.journal import as_built
from secondfix.maintenance.comparing import Change, compare
from secondfix.maintenance.dangers import (
    Reason,
    Refusal,
    before_building,
    of_scenes,
    of_supply,
    of_voltage,
    of_wiring,
)
from secondfix.maintenance.expected import Expected, standing_entries, supposed
from secondfix.maintenance.losses import Both, Loss, losses_of
from secondfix.maintenance.replacing import Fit, Site, Unit, fits_of
from secondfix.naming import Names, names
from secondfix.scenes import Resolution, resolve


@dataclass(frozen=True, slots=True)
class Ground:
    """What every try at one place shares: the house before, asked once."""

    site: Site
    assumptions: Assumptions
    models: Mapping[str, Model]
    before: tuple[Resolution, ...]
    wiring: tuple[Finding, ...]
    names: Names
    children: tuple[str, ...]
    node: int | None


@dataclass(frozen=True, slots=True)
class Tried:
    """What one choice of units comes to; ``after`` is None where no such house can be."""

    fits: tuple[Fit, ...]
    standing: tuple[Expected, ...]
    after: House | None
    rows: Schedule | None
    names: Names | None
    resolutions: tuple[Resolution, ...]
    changes: tuple[Change, ...]
    reasons: tuple[Reason, ...]
    losses: tuple[Loss, ...]
    open: tuple[Finding, ...]


def ground_of(
    site: Site,
    assumptions: Assumptions,
    models: Mapping[str, Model],
    *,
    children: Sequence[str],
    node: int | None,
) -> Ground:
    """Ask the house before the swap."""
    return Ground(
        site, assumptions, models, resolve(site.rows), tuple(check_electrical(site.rows, assumptions)),
        names(site.rows), tuple(children), node,
    )  # fmt: skip


def tried(ground: Ground, units: tuple[Unit, ...], *, whole: bool) -> Tried:
    """Try these units; ``faults_of`` must have found none."""
    site = ground.site
    fits = fits_of(site, units, whole=whole)
    excluded = not keeps_node(site, fits)
    standing = standing_entries(site, fits, excluded=excluded, node=None if excluded else ground.node)
    reasons = [*before_building(site, fits), *of_voltage(site, fits, ground.assumptions)]
    if reasons:
        return _refused(fits, standing, reasons)
    built = as_built(site.house, supposed(site, standing), models=site.models)
    serious = [t for t in built.told if t.serious]
    if serious:
        remedy = "Choose other gangs, another place or another model."
        reasons = [Reason(Refusal.CANNOT_BE, site.failed, t.words, remedy, "") for t in serious]
        return _refused(fits, standing, reasons)
    return _asked(ground, fits, tuple(standing), built.house)


def _refused(fits: tuple[Fit, ...], standing: list[Expected], reasons: list[Reason]) -> Tried:
    """No such house can be asked anything."""
    return Tried(fits, tuple(standing), None, None, None, (), (), tuple(dict.fromkeys(reasons)), (), ())


def keeps_node(site: Site, fits: tuple[Fit, ...]) -> bool:
    """Whether the failed device is replaced as a failed node."""
    network = site.house.networks.get(site.device.network or "")
    return (
        network is not None and network.protocol.value == "zwave" and fits[0].network == site.device.network
    )


def _asked(ground: Ground, fits: tuple[Fit, ...], standing: tuple[Expected, ...], house: House) -> Tried:
    site = ground.site
    rows = schedule(house, house.models)
    wiring = check_electrical(rows, ground.assumptions)
    after, named = resolve(rows), names(rows)
    changes = compare(house, ground.before, after)
    reasons, open_ = of_wiring(site, fits, ground.wiring, wiring)
    both = Both(site, fits, rows, ground.names, named, changes, ground.children)
    return Tried(
        fits=fits,
        standing=standing,
        after=house,
        rows=rows,
        names=named,
        resolutions=after,
        changes=changes,
        reasons=(*reasons, *of_scenes(changes), *of_supply(site, rows)),
        losses=losses_of(both),
        open=tuple(open_),
    )
