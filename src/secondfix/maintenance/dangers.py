"""Why a swap is refused: what may not be fitted, joined or left to a scene."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from secondfix.assumptions import Assumptions
from secondfix.catalogue import Output
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import Schedule
from secondfix.maintenance.comparing import REFUSED, Change, load_words
from secondfix.maintenance.replacing import Fit, Site
from secondfix.selection import printed_for
from secondfix.terms import PROTOCOLS, PURPOSES, AllOff


class Refusal(StrEnum):
    """What kind of reason stands against it."""

    DANGER = "danger"
    FAULT = "fault"
    SCENE = "scene"
    MOTOR = "motor"
    SUPPLY = "supply"
    NO_NETWORK = "no_network"
    NO_ROOM = "no_room"
    CANNOT_BE = "cannot_be"


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason, with what would do away with it; ``about`` is the place, or scene and load."""

    kind: Refusal
    about: str
    words: str
    remedy: str
    source: str


_CP = "common practice, no source"
_LABEL = "board_label"


def before_building(site: Site, fits: tuple[Fit, ...]) -> Iterator[Reason]:
    """Reasons that need no house after the swap: no room, no network, a motor's output gone."""
    for fit in fits:
        if fit.box and len(fit.mounts) != fit.model.mounts:
            says = (
                f"{fit.model.title} takes {fit.model.mounts} mounts; {fit.box} has {len(fit.mounts)} for it."
            )
            remedy = "Take a narrower model, a module, or a wider box."
            yield Reason(Refusal.NO_ROOM, fit.box, says, remedy, "the model's data sheet")
        if fit.network is None and site.device.network is not None:
            protocol = fit.model.protocol
            none = (
                f"no network of this house speaks {PROTOCOLS[protocol].label}"
                if protocol
                else "it has no radio"
            )
            says = f"No scene would reach {fit.device}: {none}."
            yield Reason(
                Refusal.NO_NETWORK, fit.device, says, "Take a model that joins a network of this house.", _CP
            )
        own = site.model.output if site.model else fit.model.output
        if own is not fit.model.output and Output.SHUTTER in {own, fit.model.output}:
            says = "A shutter output holds the two directions of a motor apart; no other output does."
            remedy = "Take a shutter output for a motor with two directions, and for nothing else."
            yield Reason(Refusal.MOTOR, fit.device, says, remedy, _CP)


def of_voltage(site: Site, fits: tuple[Fit, ...], assumptions: Assumptions) -> Iterator[Reason]:
    """Models none of whose ratings is printed for the mains voltage of the house."""
    mains = site.house.mains_voltage_v
    for fit in fits:
        if mains and not printed_for(fit.model, mains_voltage_v=mains, assumptions=assumptions):
            printed = ", ".join(f"{v} V" for v in sorted({r.at_voltage_v for r in fit.model.ratings}))
            says = f"The ratings of {fit.model.title} are printed at {printed}; the house has {mains} V."
            remedy = "Take a model whose ratings are printed for the mains voltage of the house."
            yield Reason(Refusal.DANGER, fit.device, says, remedy, "the model's data sheet")


def of_scenes(changes: Sequence[Change]) -> Iterator[Reason]:
    """Scenes that would reach what they leave alone, or do what the policy of a purpose refuses."""
    for change in changes:
        if change.turn in REFUSED:
            yield Reason(
                Refusal.SCENE, f"{change.scene}/{change.load}", change.words,
                "Take the direct command out of the scene or teach it gang by gang; or take another model.",
                _CP,
            )  # fmt: skip


def of_supply(site: Site, after: Schedule) -> Iterator[Reason]:
    """Loads whose hazard is the loss of their supply, and which nothing would feed after the swap."""
    for load_id in site.loads().values():
        load = site.house.loads[load_id]
        policy = PURPOSES[load.purpose] if load.purpose else None
        if policy and policy.all_off is AllOff.NEVER and idle(after, load_id):
            says = (
                f"{load_words(site.house, load_id)} would have no supply ({policy.label}: {policy.hazard})."
            )
            remedy = "Let a model with enough gangs work it, or have it fed without a switch first."
            yield Reason(Refusal.SUPPLY, load_id, says, remedy, policy.source)


def idle(rows: Schedule, load_id: str) -> bool:
    """Whether no device works a load: its gang has none, or what stands there has no output."""
    feed = rows.fed_by.get(load_id)
    model = rows.model_of(feed.device_id) if feed is not None and feed.device_id else None
    return feed is None or feed.device_id is None or (model is not None and model.output is Output.NONE)


def of_wiring(
    site: Site, fits: tuple[Fit, ...], before: Sequence[Finding], after: Sequence[Finding]
) -> tuple[list[Reason], list[Finding]]:
    """Every danger at the place, every fault there that did not stand before; and what cannot be told there.

    A fault that stood before the swap is not of the swap: it stays a finding of the house.
    """
    places = places_of(site, fits)
    stood = {_key(f, site, fits) for f in before if f.outcome is Outcome.FAILS}
    reasons, open_ = [], []
    for f in (f for f in after if f.place in places):
        if f.outcome is Outcome.CANNOT_TELL:
            open_.append(f)
        elif _stands_against(f, new=_key(f, site, fits) not in stood):
            kind = Refusal.DANGER if f.severity is Severity.DANGER else Refusal.FAULT
            reasons.append(Reason(kind, f.place, f.says, f.remedy, f.source))
    return reasons, open_


def _stands_against(f: Finding, *, new: bool) -> bool:
    """A label at the board is nothing of the device: it is minded when isolating, and stays a finding."""
    if f.outcome is not Outcome.FAILS or f.rule == _LABEL:
        return False
    return f.severity is Severity.DANGER or (f.severity is Severity.FAULT and new)


def places_of(site: Site, fits: tuple[Fit, ...]) -> frozenset[str]:
    """Where hands go in the swap: the box and its gangs, the new devices and their outputs."""
    box = site.device.box
    gangs = {f"{box}.{g}" for g in site.device.gangs} | {f"{fit.box}.{g}" for fit in fits for g in fit.gangs}
    own = {fit.device for fit in fits}
    outputs = {f"{fit.device}.{n}" for fit in fits for n in fit.outputs}
    return frozenset({*gangs, *own, *outputs, *({box} if box else ())})


def _key(f: Finding, site: Site, fits: tuple[Fit, ...]) -> tuple[str, str]:
    """Rule and place, with the new device counted as the one it replaces."""
    ids = {site.failed, *(fit.device for fit in fits)}
    head, dot, tail = f.place.partition(".")
    return f.rule, f"{site.failed}{dot}{tail}" if head in ids else f.place
