"""The journal entries that a swap will leave behind, as objects that a person completes and signs."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from secondfix.findings import Severity
from secondfix.house import Duty, Schedule, uuid7
from secondfix.journal import Entry, Journal, journal_of, latest, new_entry
from secondfix.maintenance.losses import Loss, LossKind
from secondfix.maintenance.replacing import Fit, Site
from secondfix.naming import Names

Plain = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Expected:
    """One entry to expect: its kind, subject and own keys.

    ``to_fill`` are keys that only the site can tell (an address); they may stay out.
    """

    kind: str
    subject: str
    own: Mapping[str, Any] = field(default_factory=dict)
    to_fill: tuple[str, ...] = ()


def standing_entries(
    site: Site, fits: tuple[Fit, ...], *, excluded: bool, node: int | None
) -> list[Expected]:
    """Removed from its network, fitted, joined, set as the failed one was: in the order of the work."""
    found: list[Expected] = []
    device = site.device
    if excluded and device.network:
        found.append(Expected("excluded", f"device:{site.failed}", {"network": device.network}))
    for fit in fits:
        if fit.new_place:
            found.append(_correction(f"places.{fit.place}", f"place:{fit.place}", dict(fit.new_place)))
    found += _gangs(site, fits)
    for fit in fits:
        found.append(Expected("fitted", f"device:{fit.device}", _standing(site, fit)))
        if fit.network:
            own: Plain = {"network": fit.network, "entries": fit.model.entries}
            kept = node is not None and fit is fits[0]
            found.append(
                Expected(
                    "joined", f"device:{fit.device}", {**own, "node": node} if kept else own, ("address",)
                )
            )
        wanted, stated = device.after_power_loss, fit.model.power_loss
        if wanted is not None and stated is not None and wanted in stated.settable:
            path = f"devices.{fit.device}.after_power_loss"
            found.append(_correction(path, f"device:{fit.device}", wanted.value))
        if device.name and fit.unit.load is None:
            found.append(Expected("named", f"device:{fit.device}", {"name": device.name}))
    return found


def _standing(site: Site, fit: Fit) -> Plain:
    own: Plain = {"model": fit.model.key, "replaces": site.failed, "takes_over": dict(fit.takes_over)}
    if fit.box:
        own |= {"box": fit.box, "mounts": list(fit.mounts), "gangs": list(fit.gangs)}
    else:
        own |= {"place": fit.place, "outputs": dict(fit.outputs)}
    return own | ({"code_ref": fit.unit.code_ref} if fit.unit.code_ref else {})


def _gangs(site: Site, fits: tuple[Fit, ...]) -> Iterator[Expected]:
    """Gangs whose load is now fed at the light point, and gangs that now lie in another mount."""
    worked = {slot: fit for fit in fits for slot in fit.gangs}
    moved = {fit.unit.load for fit in fits if fit.unit.load}
    for row in site.rows.rows.values():
        at = f"boxes.{row.box_id}.gangs.{row.gang_no}"
        if row.load_id in moved:
            here = row.box_id == site.device.box and row.gang_no in worked
            duty = Duty.SCENE_ONLY if here else Duty.CAPPED
            yield _correction(f"{at}.duty", f"gang:{row.id}", {"duty": duty.value})
        fit = worked.get(row.gang_no) if row.box_id == site.device.box else None
        if fit and fit.mounts and row.gang.mount not in fit.mounts:
            yield _correction(f"{at}.mount", f"gang:{row.id}", fit.mounts[-1])


def _correction(path: str, subject: str, found: object) -> Expected:
    return Expected("survey_corrected", subject, {"path": path, "found": found})


def setting_entries(names: Names, fits: tuple[Fit, ...]) -> Iterator[Expected]:
    """The name of each new entry, and its purpose where it feeds a load that has one."""
    for fit in fits:
        yield from named_entries(names, fit.device)


def named_entries(names: Names, device: str) -> Iterator[Expected]:
    """The same for one device."""
    for entry in names.of_device.get(device, ()):
        subject = f"entry:{device}.{entry.number}"
        yield Expected("named", subject, {"name": entry.name})
        if entry.purpose is not None:
            yield Expected("purpose_set", subject, {"purpose": entry.purpose.value})


def test_entries(rows: Schedule, fits: tuple[Fit, ...]) -> Iterator[Expected]:
    """The function test of every gang or output whose answer the book knows."""
    for fit in fits:
        for channel in rows.channels_of.get(fit.device, ()):
            subject = f"gang:{channel.row.id}" if channel.row else f"entry:{fit.device}.{channel.number}"
            if channel.load_id:
                yield Expected("function_tested", subject, {"answered": {channel.load_id: "changed"}})
            elif channel.row and channel.row.gang.duty is Duty.CAPPED:
                yield Expected("function_tested", subject, {"answered": {}})


def snag_entries(
    site: Site, fits: tuple[Fit, ...], lost: tuple[str, ...], losses: tuple[Loss, ...]
) -> Iterator[Expected]:
    """A snag for each load that nothing works, and for each loss: open until undone, or accepted for good."""
    for load in lost:
        words = f"After the swap of {site.failed} nothing works {site.house.loads[load].name}."
        yield Expected("snag_raised", f"load:{load}", {"words": words[:500]})
    new = ", ".join(fit.device for fit in fits)
    for loss in losses:
        if loss.kind is LossKind.GANG and site.rows.rows[loss.about].load_id in lost:
            continue  # said of the load
        words = f"Lost when {new} replaced {site.failed}: {loss.words}"
        own = {"words": words[:500], "severity": Severity.ADVICE.value}
        yield Expected("snag_raised", _about(fits, loss), own)


def _about(fits: tuple[Fit, ...], loss: Loss) -> str:
    """The subject of a loss: scene and load are told apart by the scene, an outside use by its device."""
    about, _, _ = loss.about.partition("/")
    if loss.kind in {LossKind.DIMMING, LossKind.SPEED}:
        return f"load:{about}"
    if loss.kind is LossKind.GANG:
        return f"gang:{about}"
    if loss.kind in {LossKind.PRESS, LossKind.WHOLE_COMMAND, LossKind.SCENE}:
        return f"scene:{about}"
    if loss.kind is LossKind.NAME:
        return f"entry:{about}"
    return f"device:{fits[0].device if loss.kind is LossKind.OUTSIDE_USE else about}"


def written(
    expected: tuple[Expected, ...],
    journal: Journal,
    *,
    house: str,
    revision: str,
    writer: str,
    at: str,
    new_id: Callable[[int], str],
) -> list[Plain]:
    """The entries as a person would append them now, in order, each with what its writer has seen.

    ``new_id`` gives a UUIDv7 for each number from 0; ``at`` is printed and decides nothing. Keys of
    ``to_fill`` stay out.
    """
    seen: dict[str, tuple[str, ...]] = {}
    out: list[Plain] = []
    for number, one in enumerate(expected):
        if one.subject not in seen:
            seen[one.subject] = latest(journal, one.subject)
        key = new_id(number)
        out.append(
            {
                "format": 1, "id": key, "house": house, "revision": revision, "kind": one.kind,
                "subject": one.subject, "writer": writer, "at": at, "sees": list(seen[one.subject][:1000]),
                **one.own,
            }
        )  # fmt: skip
        seen[one.subject] = (key,)
    return out


def supposed(site: Site, expected: list[Expected]) -> Journal:
    """A journal of these entries alone, for asking what the house would then be."""
    plain = written(
        tuple(expected),
        Journal(),
        house=site.house.id,
        revision="as-built",
        writer="swap",
        at="2000-01-01T00:00Z",
        new_id=lambda n: uuid7(unix_ms=n, random=bytes(10)),
    )
    entries = [new_entry(one, where="swap") for one in plain]
    assert all(isinstance(e, Entry) for e in entries), entries  # our own fault, never the user's
    return journal_of(e for e in entries if isinstance(e, Entry))
