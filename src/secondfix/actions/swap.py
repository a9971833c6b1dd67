"""Swap: replace a failed device, find out which it is, or put a network back after its controller went."""

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import asdict, dataclass

from secondfix import joining, maintenance, naming, radio
from secondfix.actions.settle import settled_assumptions
from secondfix.assumptions import Assumptions
from secondfix.catalogue import Model
from secondfix.findings import finding_as_json
from secondfix.house import Fault, House, schedule
from secondfix.journal import AsBuilt, Journal, as_built
from secondfix.maintenance import Kept, Outcome, Rebuilt, Suspects, SwapPlan, Unit


@dataclass(frozen=True, slots=True)
class Swapped:
    """The plan over the as-built house."""

    built: AsBuilt
    plan: SwapPlan


def swap(
    house: House,
    journal: Journal,
    failed: str,
    units: Sequence[Unit],
    *,
    models: Mapping[str, Model],
    assumptions: Assumptions,
    whole: bool = True,
    progress: Callable[[str], None] = lambda _: None,
) -> Swapped | list[Fault]:
    """Work out a swap in the house as its journal found it. ``failed`` is a device, box, gang or place.

    ``progress`` is told the words of each model that is tried, before it is, and may raise.
    """
    built = as_built(house, journal, models=models)
    device = maintenance.device_at(built.house, failed)
    if isinstance(device, list):
        return device
    settled = settled_assumptions(built.house, assumptions)
    reach = radio.reach(schedule(built.house, built.house.models), settled)
    plan = maintenance.swap(
        built.house,
        device,
        units,
        models=models,
        assumptions=settled,
        journal=journal,
        reach=reach,
        whole=whole,
        progress=progress,
    )
    return plan if isinstance(plan, list) else Swapped(built, plan)


def suspects(
    house: House,
    journal: Journal,
    *,
    models: Mapping[str, Model],
    silent: Sequence[str],
    answering: Sequence[str],
) -> Suspects:
    """Which device has fallen silent, from what no longer answers and what still does."""
    built = as_built(house, journal, models=models)
    return maintenance.suspects(built.house, built.folded, silent=silent, answering=answering)


def controller(
    house: House,
    journal: Journal,
    network: str,
    kept: Kept,
    *,
    models: Mapping[str, Model],
    assumptions: Assumptions,
    not_in_backup: Collection[str] = (),
) -> Rebuilt | list[Fault]:
    """What is to be done after the controller of a network was replaced; or every fault of the question."""
    built = as_built(house, journal, models=models)
    if network not in built.house.networks:
        known = ", ".join(built.house.networks) or "there is none"
        return [Fault("FAILED", "", f"'{network}'", f"a network: {known}")]
    members = [d for d, o in built.house.devices.items() if o.network == network]
    strange = [d for d in not_in_backup if d not in members]
    if strange:
        expected = f"a device on {network}: {', '.join(members)}"
        return [Fault("--not-in-backup", "", f"'{d}'", expected) for d in strange]
    rows = schedule(built.house, built.house.models)
    settled = settled_assumptions(built.house, assumptions)
    links = joining.links_of(radio.reach(rows, settled), settled)
    return maintenance.controller_replaced(
        rows,
        network,
        kept,
        walk=joining.walk(rows, links, settled),
        names=naming.names(rows),
        assumptions=settled,
        not_in_backup=not_in_backup,
    )


def exit_code(plan: SwapPlan) -> int:
    """1 where it is refused, 3 where something at the place cannot be told, else 0."""
    if plan.outcome is Outcome.REFUSED:
        return 1
    return 3 if plan.open else 0


def swapped_as_json(swapped: Swapped) -> dict[str, object]:
    """The plan (docs/json.md)."""
    p = swapped.plan
    return {
        "device": p.failed,
        "title": p.title,
        "place": p.place,
        "outcome": p.outcome.value,
        "for_tonight": p.for_tonight,
        "fits": [
            {
                "device": f.device, "model": f.model.key, "network": f.network, "box": f.box,
                "mounts": list(f.mounts), "gangs": list(f.gangs), "place": f.place,
                "outputs": dict(f.outputs), "takes_over": dict(f.takes_over),
            }
            for f in p.fits
        ],
        "losses": [asdict(loss) for loss in p.losses],
        "reasons": [asdict(reason) for reason in p.reasons],
        "nearest": [
            {"model": n.model, "outcome": n.outcome.value, "losses": [asdict(loss) for loss in n.losses]}
            for n in p.nearest
        ],
        "notes": list(p.notes),
        "open": [finding_as_json(f) for f in p.open],
        "removal": {
            "way": p.removal.way.value, "keeps_node": p.removal.keeps_node, "source": p.removal.source,
        },
        "outside_uses": [asdict(a) for a in p.asks],
        "teach": [asdict(t) for t in p.teach],
        "children": None if p.children is None else list(p.children),
        "open_snags": [asdict(s) for s in p.snags],
        "steps": [asdict(s) for s in p.steps],
        "entries": [{"kind": e.kind, "subject": e.subject, **e.own} for e in p.entries],
    }  # fmt: skip


def rebuilt_as_json(rebuilt: Rebuilt) -> dict[str, object]:
    """The answer about a controller (docs/json.md)."""
    return {
        "network": rebuilt.network,
        "kept": rebuilt.kept.value,
        "survives": list(rebuilt.survives),
        "again": list(rebuilt.again),
        "outside_uses": list(rebuilt.asks),
        "order": [asdict(one) for one in rebuilt.order],
        "parts": [{"what": p.what, "count": p.count, "minutes": list(p.minutes)} for p in rebuilt.parts],
        "minutes": list(rebuilt.minutes),
        "assumptions": list(rebuilt.assumptions),
        "entries": [{"kind": e.kind, "subject": e.subject, **e.own} for e in rebuilt.entries],
    }


def suspects_as_json(found: Suspects) -> dict[str, object]:
    """Who has fallen silent (docs/json.md)."""
    return {"suspects": [asdict(s) for s in found.suspects], "unknown": list(found.unknown)}
