"""What a swap loses besides what scenes do: each named, for the customer to accept or not."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum

from secondfix.catalogue import Form, Model, Output, Stated
from secondfix.house import Duty, Row, Schedule, Start, settled
from secondfix.maintenance.comparing import REFUSED, Change, load_words
from secondfix.maintenance.replacing import Fit, Site
from secondfix.naming import Names


class LossKind(StrEnum):
    """What is lost."""

    DIMMING = "dimming"
    SPEED = "speed"
    GANG = "gang"
    PRESS = "press"
    GROUP_COMMAND = "group_command"
    WHOLE_COMMAND = "whole_command"
    NETWORK = "network"
    NAME = "name"
    POWER_LOSS = "power_loss"
    OUTSIDE_USE = "outside_use"
    REPEATER = "repeater"
    SCENE = "scene"


@dataclass(frozen=True, slots=True)
class Loss:
    """One loss. ``about`` is the load, gang, scene, device or use that it concerns."""

    kind: LossKind
    about: str
    words: str


@dataclass(frozen=True, slots=True)
class Both:
    """The house before and after, as the losses see it; ``children`` hang on the failed device by radio."""

    site: Site
    fits: tuple[Fit, ...]
    after: Schedule
    names_before: Names
    names_after: Names
    changes: tuple[Change, ...]
    children: tuple[str, ...]


def losses_of(both: Both) -> tuple[Loss, ...]:
    """Every loss, each once, the gravest kinds first."""
    found = [
        *_gangs(both), *_outputs(both), *_scenes(both), *_presses(both), *_whole(both), *_groups(both),
        *_network(both), *_repeater(both), *_power_loss(both), *_uses(both), *_names(both),
    ]  # fmt: skip
    return tuple(dict.fromkeys(found))


def _gangs(both: Both) -> Iterator[Loss]:
    worked = {slot for fit in both.fits for slot in fit.gangs}
    moved = {fit.unit.load for fit in both.fits if fit.unit.load}
    for slot in both.site.device.gangs:
        row = both.site.rows.rows[f"{both.site.device.box}.{slot}"]
        if slot in worked or row.gang.duty is Duty.CAPPED:
            continue
        yield Loss(LossKind.GANG, row.id, _gang_words(both, row, at_light=row.load_id in moved))
        for other in both.site.rows.extended_by.get(row.id, ()):
            if row.load_id not in moved:
                yield Loss(LossKind.GANG, other, f"{other} extends {row.id}, which nothing works any more.")


def _gang_words(both: Both, row: Row, *, at_light: bool) -> str:
    if row.load_id:
        words = load_words(both.site.house, row.load_id)
        if at_light:
            return (
                f"Gang {row.id} has no button any more: {words} is worked at its light point, and by scenes."
            )
        return f"Gang {row.id} goes: nothing works {words} until it is fed again."
    if row.gang.extends:
        return f"Gang {row.id} goes: one place fewer from which {row.gang.extends} is worked."
    what = "which nobody could explain" if row.gang.duty is Duty.NOT_KNOWN else "kept for scenes"
    return f"Gang {row.id}, {what}, goes."


def _outputs(both: Both) -> Iterator[Loss]:
    old = both.site.model.output if both.site.model else None
    if old not in {Output.DIMMER, Output.FAN_CONTROL}:
        return
    for fit in both.fits:
        if fit.model.output in {old, Output.NONE}:
            continue
        for channel in both.after.channels_of.get(fit.device, ()):
            load = both.site.house.loads.get(channel.load_id or "")
            if load is None or channel.load_id not in both.site.loads().values():
                continue
            words = load_words(both.site.house, channel.load_id or "")
            if old is Output.FAN_CONTROL:
                yield Loss(
                    LossKind.SPEED, channel.load_id or "", f"{words} loses its speeds: on or off only."
                )
            elif settled(load.dimmable) is not False:
                yield Loss(LossKind.DIMMING, channel.load_id or "", f"{words} is switched, no longer dimmed.")


def _scenes(both: Both) -> Iterator[Loss]:
    for change in both.changes:
        if change.turn not in REFUSED:
            yield Loss(LossKind.SCENE, f"{change.scene}/{change.load}", change.words)


def _presses(both: Both) -> Iterator[Loss]:
    for scene_id, scene in both.site.house.scenes.items():
        for start in dict.fromkeys(scene.starts):
            was, now = _starts(both, start)
            if was is not False and now is not True and was is not now:
                where = start.gang or start.device
                doubt = "is not stated to start" if now is None else "no longer starts"
                yield Loss(LossKind.PRESS, f"{scene_id}/{where}", f"{where} {doubt} '{scene.name}'.")


def _starts(both: Both, start: Start) -> tuple[bool | None, bool | None]:
    """Whether this start works, before and after; the same where the swap does not touch it."""
    if start.gang and start.gang in {f"{both.site.device.box}.{g}" for g in both.site.device.gangs}:
        press = start.press or "once"
        return tells(both.site.rows.rows[start.gang], press), tells(both.after.rows[start.gang], press)
    if start.device == both.site.failed:
        heirs = both.fits if len(both.fits) == 1 else ()
        after = _of_itself(heirs[0].model, start.press) if heirs else False
        return _of_itself(both.site.model, start.press), after
    return True, True


def tells(row: Row, press: str) -> bool | None:
    """Whether a press of this gang reaches the controller; None where no sheet says so.

    As the check of starts (scenes.start): the presses that a sheet states decide, and nothing else does.
    """
    if row.gang.duty is Duty.CAPPED or row.device_id is None:
        return False
    if row.model is None:
        return None
    stated = row.model.reports_presses
    return None if stated is None else press in stated


def _of_itself(model: Model | None, press: str | None) -> bool | None:
    """Whether a sensor or a battery button tells what happens to it; of presses, those of its sheet."""
    if model is None:
        return None
    if model.form not in {Form.SENSOR, Form.BATTERY_BUTTON}:
        return False
    if press is None:
        return True
    return None if model.reports_presses is None else press in model.reports_presses


def _whole(both: Both) -> Iterator[Loss]:
    if any("0" in fit.takes_over for fit in both.fits):
        return
    for scene_id, scene in both.site.house.scenes.items():
        if any(c.device == both.site.failed and c.entry == 0 for c in scene.commands):
            words = f"'{scene.name}' commands the whole device at once: it must be taught gang by gang."
            yield Loss(LossKind.WHOLE_COMMAND, scene_id, words)


def _groups(both: Both) -> Iterator[Loss]:
    model = both.site.model
    if model is None or model.group_commands is not Stated.YES or not _in_scenes(both):
        return
    for fit in both.fits:
        if fit.takes_over and fit.model.group_commands is not Stated.YES:
            stated = "takes no" if fit.model.group_commands is Stated.NO else "is not stated to take"
            yield Loss(
                LossKind.GROUP_COMMAND, fit.device,
                f"{fit.device} ({fit.model.title}) {stated} group commands: it is commanded by itself.",
            )  # fmt: skip


def _in_scenes(both: Both) -> bool:
    scenes = both.site.house.scenes.values()
    return any(s.rules for s in scenes) or any(
        c.device == both.site.failed for s in scenes for c in s.commands
    )


def _network(both: Both) -> Iterator[Loss]:
    old = both.site.device.network
    for fit in both.fits:
        if old and fit.network and fit.network != old:
            was, now = both.site.house.networks[old].name, both.site.house.networks[fit.network].name
            way = f"from {old} {was} to {fit.network} {now}"
            words = f"{fit.device} moves {way}: what the controller of {old} holds does not follow."
            yield Loss(LossKind.NETWORK, fit.device, words)


def _repeater(both: Both) -> Iterator[Loss]:
    model = both.site.model
    if model is None or model.repeats is not Stated.YES:
        return
    stays = any(
        fit.model.repeats is Stated.YES and fit.network == both.site.device.network and fit.unit.load is None
        for fit in both.fits
    )
    if not stays:
        for child in both.children:
            words = f"{child} was carried by {both.site.failed}; nothing there repeats any more."
            yield Loss(LossKind.REPEATER, child, words)


def _power_loss(both: Both) -> Iterator[Loss]:
    wanted = both.site.device.after_power_loss
    for fit in both.fits:
        settable = fit.model.power_loss.settable if fit.model.power_loss else ()
        if wanted is not None and wanted not in settable and fit.model.output is not Output.NONE:
            words = f"{fit.device} cannot be set to '{wanted.value}' after a power loss."
            yield Loss(LossKind.POWER_LOSS, fit.device, words)


def _uses(both: Both) -> Iterator[Loss]:
    for use_id, use in both.site.house.outside_uses.items():
        if use.device == both.site.failed and use_id not in both.after.house.outside_uses:
            yield Loss(LossKind.OUTSIDE_USE, use_id, f"{use_id} ({use.words}) has no entry to go to.")


def _names(both: Both) -> Iterator[Loss]:
    for number, (device, entry) in taken_over(both.fits).items():
        was = both.names_before.of(both.site.failed, number)
        now = both.names_after.of(device, entry)
        if was and now and was.name != now.name:
            words = f"'{was.name}' becomes '{now.name}': whoever calls it by its name must learn the new one."
            yield Loss(LossKind.NAME, f"{device}.{entry}", words)


def taken_over(fits: tuple[Fit, ...]) -> Mapping[int, tuple[str, int]]:
    """Each entry of the failed device that goes on, and the device and entry that it becomes."""
    return {int(old): (fit.device, new) for fit in fits for old, new in sorted(fit.takes_over.items())}
