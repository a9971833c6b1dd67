"""What to set on a device once it is joined: its state after a power loss, time limits."""

from secondfix.catalogue import Model, PowerLoss
from secondfix.house import Schedule
from secondfix.joining.cautions import HEATERS
from secondfix.terms import POWER_LOSS_LABELS, PURPOSES, PowerLossState, UnattendedOn


def power_loss_words(schedule: Schedule, device_id: str) -> str:
    """The state after a power loss to set or to see to; that of the device first, else of its loads.

    Loads that want different states are named, for one setting serves all gangs unless the maker
    says otherwise. A heater that has no wish stated is to come back off.
    """
    model = schedule.model_of(device_id)
    fed = [c for c in schedule.channels_of[device_id] if c.load_id]
    if not fed:
        return ""
    device_wish = schedule.house.devices[device_id].after_power_loss
    wishes = _wishes(schedule, device_id)
    if device_wish is None and len(set(wishes.values())) > 1:
        told = "; ".join(f"{name}: {POWER_LOSS_LABELS[state]}" for name, state in wishes.items())
        return f"After a power loss the loads want different things ({told}): see the finding."
    wanted = device_wish or next(iter(wishes.values()), None)
    if wanted is None:
        return "After a power loss: what is wanted is not stated; ask, set it, write it down."
    return _how(model, wanted)


def _wishes(schedule: Schedule, device_id: str) -> dict[str, PowerLossState]:
    wishes: dict[str, PowerLossState] = {}
    for channel in schedule.channels_of[device_id]:
        load = schedule.house.loads[channel.load_id] if channel.load_id else None
        if load is None:
            continue
        if load.after_power_loss:
            wishes[load.name] = load.after_power_loss
        elif load.purpose in HEATERS:
            wishes[load.name] = PowerLossState.OFF
    return wishes


def _how(model: Model | None, wanted: PowerLossState) -> str:
    label = POWER_LOSS_LABELS[wanted]
    stated: PowerLoss | None = model.power_loss if model else None
    test = "then switch the supply off and on, and see"
    if stated is None:
        return f"After a power loss it should be one that {label}: not stated whether it can; {test}."
    if wanted in stated.settable:
        return f"Set for a power loss: {label}; {test}."
    if wanted is stated.as_delivered:
        return f"As delivered it {label} after a power loss, as wanted; {test}."
    return f"It should be one that {label} after a power loss, and cannot be set so: see the finding."


def time_limit_words(schedule: Schedule, device_id: str) -> tuple[str, ...]:
    """Time limits to set, and heaters that still lack one."""
    said = []
    for channel in schedule.channels_of[device_id]:
        load = schedule.house.loads[channel.load_id] if channel.load_id else None
        if load is None:
            continue
        policy = PURPOSES[load.purpose] if load.purpose else None
        which = f"gang {channel.number} ({load.name})"
        if load.time_limit_s is not None:
            said.append(f"Set a time limit of {_duration(load.time_limit_s)} on {which}.")
        elif policy and policy.unattended_on is UnattendedOn.OWN_THERMOSTAT:
            said.append(f"No time limit is stated for {which}, a {policy.label}: ask, and set one.")
        if load.purpose in HEATERS and policy and policy.unattended_on is UnattendedOn.NEVER:
            said.append(f"Off only for {which}, a {policy.label}: nothing may switch it on from afar.")
    return tuple(said)


def _duration(seconds: int) -> str:
    if seconds % 60:
        return f"{seconds} s"
    return f"{seconds // 60} min" if seconds % 3600 else f"{seconds // 3600} h"
