"""Which scenes must be taught or tried again after a swap, entry by entry; and who must be asked first."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from secondfix.house import Start
from secondfix.maintenance.comparing import load_words
from secondfix.maintenance.losses import taken_over
from secondfix.maintenance.replacing import Fit, Site
from secondfix.scenes import CrossingKind, Resolution


@dataclass(frozen=True, slots=True)
class Teach:
    """One command of one scene, to an entry of a new device. ``again`` is False where trying it is enough."""

    scene: str
    name: str
    device: str
    entry: int
    load: str
    to: str
    level_pct: int | None
    again: bool
    words: str


@dataclass(frozen=True, slots=True)
class Ask:
    """One use that the house does not own: its owner is asked before anything is removed."""

    use: str
    kind: str
    entry: int | None
    now: str
    words: str


def teaching(
    site: Site, fits: tuple[Fit, ...], after: Sequence[Resolution], *, same: bool
) -> tuple[Teach, ...]:
    """Every load that a scene switches through a new device.

    ``same``: node and entry numbers are as before, so that the controller may still hold the scene.
    """
    return tuple(_teaching(site, fits, after, same=same))


def _teaching(
    site: Site, fits: tuple[Fit, ...], after: Sequence[Resolution], *, same: bool
) -> Iterator[Teach]:
    own = {fit.device for fit in fits}
    kept = {(d, n) for old, (d, n) in taken_over(fits).items() if same and old == n}
    for one in after:
        for load_id, c in one.crossings.items():
            if c.kind is not CrossingKind.SWITCHED or c.device_id not in own or not c.to or not c.entry:
                continue
            again = (c.device_id, c.entry) not in kept
            what = f"{c.to}{f' {c.level_pct} %' if c.level_pct else ''}"
            deed = "Teach" if again else "Try"
            which = f"{c.device_id} entry {c.entry} {what}: {load_words(site.house, load_id)}"
            words = f"{deed} '{one.name}': {which}."
            yield Teach(
                one.scene_id, one.name, c.device_id, c.entry, load_id, c.to, c.level_pct, again, words
            )


def starts_again(site: Site, fits: tuple[Fit, ...]) -> tuple[str, ...]:
    """A sentence for each scene that a press of the failed device starts."""
    gangs = {f"{site.device.box}.{slot}" for slot in site.device.gangs}
    heirs = {slot: (fit.device, n) for fit in fits for n, slot in enumerate(fit.gangs, 1)}

    def ours(start: Start) -> bool:
        return start.gang in gangs or start.device == site.failed

    found = []
    for scene in site.house.scenes.values():
        for start in dict.fromkeys(scene.starts):
            if not ours(start):
                continue
            slot = (start.gang or "").partition(".")[2]
            if start.gang and slot not in heirs:
                continue
            where = (
                f"{start.gang}, now entry {heirs[slot][1]} of {heirs[slot][0]},"
                if start.gang
                else fits[0].device
            )
            press = f" {start.press.replace('_', ' ')}" if start.press else ""
            found.append(
                f"Let {where} pressed{press} start '{scene.name}' again."
                if start.gang
                else f"Let {where} start '{scene.name}' again."
            )
    return tuple(found)


def asking(site: Site, fits: tuple[Fit, ...]) -> tuple[Ask, ...]:
    """One question for each outside use of the failed device."""
    over = taken_over(fits)
    found = []
    for use_id, use in site.house.outside_uses.items():
        if use.device != site.failed:
            continue
        now = ""
        if use.entry is None:
            now = fits[0].device if len(fits) == 1 else ""
        elif use.entry in over:
            now = "{}.{}".format(*over[use.entry])
        goes = f"it would then use {now}" if now else "it has nothing to go to"
        words = (
            f"Ask the owner before anything is removed: {use.kind} '{use.words}' uses {site.failed}; {goes}."
        )
        found.append(Ask(use_id, use.kind, use.entry, now, words))
    return tuple(found)
