"""Swap: a failed device and what goes in its place, so that every button does again what it did."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.house import Fault, House, Schedule
from secondfix.journal import Joined, Journal, fold
from secondfix.maintenance.asked import faults_of
from secondfix.maintenance.dangers import idle
from secondfix.maintenance.expected import (
    Expected,
    setting_entries,
    snag_entries,
    test_entries,
)
from secondfix.maintenance.nearest import nearest_of, outcome_of
from secondfix.maintenance.plan import Nearest, Outcome, SwapPlan
from secondfix.maintenance.removal import removal_of
from secondfix.maintenance.replacing import Site, Unit, site_of
from secondfix.maintenance.sheets import sheets_of
from secondfix.maintenance.snags import open_there, with_snags
from secondfix.maintenance.swap_steps import notes_of, steps_of
from secondfix.maintenance.teaching import asking, starts_again, teaching
from secondfix.maintenance.trying import Ground, Tried, ground_of, tried
from secondfix.radio import Reach


def swap(
    house: House,
    failed: str,
    units: Sequence[Unit],
    *,
    models: Mapping[str, Model],
    assumptions: Assumptions,
    journal: Journal = Journal(),  # noqa: B008 - frozen and empty
    reach: Reach | None = None,
    whole: bool = True,
    nearest: bool = True,
    progress: Callable[[str], None] = lambda _: None,
) -> SwapPlan | list[Fault]:
    """What it comes to, or every fault of the question. Pure; nothing is written.

    ``house`` is the as-built house, ``journal`` what it came from (node numbers, and what a writer has
    seen). ``units`` go in for the device ``failed`` (KeyError if the house lacks it). ``reach`` is radio's
    answer for this house: without it nobody can say who hangs on the device. ``whole``: lead commands to
    the old whole-device entry to the new one; else scenes lose them and are taught gang by gang.
    ``nearest``: also try every other model in its place; ``progress`` is told the words of each try before
    it is made, and may raise. Identity is address and endpoint: names decide nothing. Leaves out: the firm's
    stock, prices, and what another's controller holds.
    """
    asked = tuple(units)
    faults = faults_of(house, failed, asked, {**models, **house.models})
    if faults:
        return faults
    site = site_of(house, failed, models, _taken(house, journal))
    children = None if reach is None else children_of(failed, reach)
    ground = ground_of(site, assumptions, models, children=children or (), node=_node(house, journal, failed))
    one = tried(ground, asked, whole=whole)
    outcome = outcome_of(one)
    others: tuple[Nearest, ...] = ()
    if nearest and outcome is not Outcome.KEPT:
        others = nearest_of(ground, asked, whole=whole, progress=progress)
    plan = _plan(ground, one, outcome, children=children, others=others)
    return with_snags(plan, open_there(site, fold(house, journal).open_snags))


def _plan(
    ground: Ground,
    one: Tried,
    outcome: Outcome,
    *,
    children: tuple[str, ...] | None,
    others: tuple[Nearest, ...],
) -> SwapPlan:
    site, fits = ground.site, one.fits
    removal = removal_of(site, fits, node=ground.node)
    asks = asking(site, fits)
    bare = SwapPlan(
        failed=site.failed,
        title=site.model.title if site.model else "model not known",
        place=site.rows.place_of_device(site.failed),
        outcome=outcome,
        fits=fits,
        losses=one.losses,
        reasons=one.reasons,
        notes=notes_of(site, one),
        open=one.open,
        changes=one.changes,
        removal=removal,
        asks=asks,
        children=children,
        after=one.after,
        nearest=others,
    )
    if outcome is Outcome.REFUSED or one.rows is None or one.names is None:
        return bare
    teach = teaching(site, fits, one.resolutions, same=removal.keeps_node)
    sheets = sheets_of(one.rows.house, one.names, fits, ground.assumptions)
    steps = steps_of(
        site,
        one,
        sheets,
        removal=removal,
        asks=asks,
        teach=teach,
        starts=starts_again(site, fits),
        children=children,
    )
    entries = _entries(site, one, one.rows)
    return replace(bare, teach=teach, steps=steps, sheets=sheets, entries=entries)


def _entries(site: Site, one: Tried, rows: Schedule) -> tuple[Expected, ...]:
    """In the order of the work; a snag for each load that now nothing works, and for each loss."""
    lost = tuple(load for load in site.loads().values() if idle(rows, load))
    assert one.names is not None  # asked where the house can be
    return (
        *one.standing,
        *setting_entries(one.names, one.fits),
        *test_entries(rows, one.fits),
        *snag_entries(site, one.fits, lost, one.losses),
    )


def _taken(house: House, journal: Journal) -> frozenset[str]:
    """Ids in the house and ids that the journal ever spoke of: none is used again."""
    spoken = {entry.subject.partition(":")[2].partition(".")[0].partition(">")[0] for entry in journal}
    return frozenset({*house.devices, *house.places, *spoken})


def _node(house: House, journal: Journal, failed: str) -> int | None:
    joined = fold(house, journal).settled(f"device:{failed}", "joining", Joined)
    return joined.node if joined else None


def children_of(device: str, reach: Reach) -> tuple[str, ...]:
    """Devices whose route goes through this one, or that hang on it alone."""
    return tuple(d.id for d in reach.devices if device in d.hangs_on or device in d.route)
