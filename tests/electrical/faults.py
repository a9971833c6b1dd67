"""Injected faults, to be found at their place and nowhere else."""

from tests.electrical.sound import ratings
from tests.example_house import seen

LED = "models.wexcombe-pair@1.ratings"
EXTRA = [ratings(resistive=8000)[0], ratings(tungsten=4000)[0]]

# What is spoilt, and every answer that is then not a pass: (rule, place, outcome, severity).
FAULTS: dict[str, tuple[dict[str, object], set[tuple[str, str, str, str | None]]]] = {
    "a load above the rating for its kind": (
        {"loads.L3.power_mw": seen(30_000)},
        {("contact", "B2.1", "fails", "danger")},
    ),
    "a load at the rating only at the better end of its power factor": (
        {"loads.L3.power_mw": seen(17_000)},
        {("contact", "B2.1", "cannot_tell", "danger")},
    ),
    "more lamps than the contact carries": (
        {"loads.L2.count": seen(23)},
        {("contact", "B1.2", "fails", "danger")},
    ),
    "gangs within their ratings, not within the total": (
        {"models.wexcombe-pair@1.module_total_ma": 1700},
        {("module_total", "D1", "fails", "danger")},
    ),
    "a peak above the contact's": (
        {"loads.L1.inrush_peak_ma": seen(31_000)},
        {("inrush", "B1.1", "fails", "fault")},
    ),
    "a peak that lasts longer than the contact's": (
        {"loads.L1.inrush_width_us": seen(401)},
        {("inrush", "B1.1", "cannot_tell", "fault")},
    ),
    "a driver without a printed peak": (
        {"loads.L1.inrush_peak_ma": None, "loads.L1.inrush_width_us": None},
        {("inrush", "B1.1", "cannot_tell", "fault")},
    ),
    "a load below the least": (
        {"loads.L3.count": seen(2)},
        {("least_load", "B2.1", "fails", "fault")},
    ),
    "no neutral where one is needed": (
        {"boxes.B1.mounts.1.neutral": seen("absent")},
        {("neutral", "D1", "fails", "fault"), ("multiway_supply", "B1.1", "fails", "fault")},
    ),
    "earth for neutral, even where none is needed": (
        {"boxes.B2.mounts.1.neutral": seen("earth")},
        {("earth_as_neutral", "B2", "fails", "danger")},
    ),
    "earth for neutral in a box that nobody works in": (
        {"boxes.B4.mounts.1.neutral": seen("earth")},
        {("earth_as_neutral", "B4", "fails", "danger")},
    ),
    "a neutral of another circuit at the mount": (
        {"boxes.B3.mounts.1.neutral": seen("C1")},
        {("neutral_circuit", "B3.1", "fails", "danger"), ("two_supplies", "B3", "cannot_tell", "advice")},
    ),
    "a neutral borrowed at the luminaire": (
        {"loads.L2.neutral": seen("C2")},
        {("borrowed_neutral", "B1.2", "fails", "danger")},
    ),
    "a shallow box": (
        {"boxes.B2.depth_mm": seen(31)},
        {("depth", "B2", "fails", "fault")},
    ),
    "a box that is deep enough only with thin cables": (
        {"boxes.B2.depth_mm": seen(40)},
        {("depth", "B2", "cannot_tell", "fault")},
    ),
    "a module that leaves no room for the switch in front": (
        {"boxes.B3.depth_mm": seen(39)},
        {("depth", "B3", "fails", "fault")},
    ),
    "a fan that runs on behind a contact": (
        {"loads.L5.permanent_supply": seen(True)},
        {("permanent_supply", "D5.1", "fails", "fault")},
    ),
    "an alarm behind a contact": (
        {"loads.L3.purpose": "alarm", "loads.L3.permanent_supply": seen(False)},
        {
            ("permanent_supply", "B2.1", "fails", "danger"),
            ("power_loss", "B2.1", "cannot_tell", "fault"),
        },
    ),
    "a fixed heater without a thermostat of its own": (
        {"loads.L4.own_thermostat": seen(False)},
        {("hazard", "B3.1", "fails", "danger")},
    ),
    "a fixed heater without a time limit": (
        {"loads.L4.time_limit_s": None},
        {("hazard", "B3.1", "fails", "fault")},
    ),
    "a time limit that hangs on the controller": (
        {"models.orrinby-nub@1.own_time_limit": "no"},
        {("hazard", "B3.1", "fails", "fault")},
    ),
    "a portable heater, off only": (
        {"loads.L4.purpose": "heater_portable"},
        {("hazard", "B3.1", "fails", "advice")},
    ),
    "a sauna heater": (
        {"loads.L4.purpose": "sauna"},
        {("hazard", "B3.1", "fails", "danger")},
    ),
    "a gate on a plain contact": (
        {"loads.L4.purpose": "gate"},
        {("hazard", "B3.1", "fails", "fault")},
    ),
    "a heater that returns on": (
        {"devices.D3.after_power_loss": "on"},
        {("power_loss", "B3.1", "fails", "danger")},
    ),
    "a heater set to return on, though delivered otherwise": (
        {
            "devices.D3.after_power_loss": "on",
            "models.orrinby-nub@1.power_loss": {"settable": ["off", "on"], "as_delivered": "off"},
        },
        {("power_loss", "B3.1", "fails", "danger")},
    ),
    "a heater whose device may be set to return on": (
        {"devices.D3.after_power_loss": None},
        {("power_loss", "B3.1", "cannot_tell", "danger")},
    ),
    "a lamp that does not return as was asked for": (
        {"loads.L2.after_power_loss": "last"},
        {("power_loss_wanted", "B1.2", "fails", "fault")},
    ),
    "a label that names another room": (
        {"circuits.C2.label_rooms": ["R2"]},
        {("board_label", "B3.1", "fails", "danger")},
    ),
    "a gang that nobody can explain": (
        {
            "boxes.B1.gangs.2.duty": "not_known",
            "boxes.B1.gangs.2.load": None,
        },
        {
            ("duty", "B1.2", "cannot_tell", "danger"),
            ("module_total", "D1", "cannot_tell", "danger"),
            ("circuit_load", "C1", "cannot_tell", "fault"),
        },
    ),
    "an LED load within a tenth of the rating for filament lamps, none being printed for it": (
        {LED: EXTRA, "loads.L1.power_mw": seen(25_000)},
        {("contact", "B1.1", "fails", "advice")},
    ),
    "an LED load above a tenth of it": (
        {LED: EXTRA},
        {("contact", "B1.1", "cannot_tell", "danger")},
    ),
    "an LED load above the whole of it": (
        {LED: EXTRA, "loads.L1.power_mw": seen(330_000)},
        {("contact", "B1.1", "fails", "danger")},
    ),
    "a motor without a printed rating": (
        {"models.tarnlow-leaf@1.ratings": ratings(resistive=4000)},
        {("contact", "D5.1", "cannot_tell", "danger")},
    ),
    "a motor above the resistive rating": (
        {"models.tarnlow-leaf@1.ratings": ratings(resistive=100)},
        {("contact", "D5.1", "fails", "danger")},
    ),
    "a rating printed for another mains voltage": (
        {"models.tarnlow-leaf@1.ratings.0.at_voltage_v": 120},
        {("contact", "D5.1", "cannot_tell", "danger")},
    ),
    "a rating printed for a mains voltage far above": (
        {"models.tarnlow-leaf@1.ratings.0.at_voltage_v": 300},
        {("contact", "D5.1", "cannot_tell", "danger")},
    ),
    "a light whose switches switch its neutral": (
        {"loads.L1.multiway.arrangement": seen("switched_neutral")},
        {("multiway_arrangement", "B1.1", "fails", "danger")},
    ),
    "a second module in line": (
        {"loads.L1.multiway.others": seen("in_series")},
        {("multiway_series", "B1.1", "fails", "fault")},
    ),
    "a second output beside": (
        {"loads.L1.multiway.others": seen("in_parallel")},
        {("multiway_parallel", "B1.1", "fails", "fault")},
    ),
    "an extension of another circuit": (
        {"boxes.B4.gangs.1.line": seen("C2"), "circuits.C2.label_rooms": ["R1", "R2"]},
        {("multiway_other_circuit", "B4.1", "fails", "danger")},
    ),
    "a module at the end where no load is": (
        {"loads.L1.multiway.arrangement": seen("opposite_ends")},
        {("multiway_supply", "B1.1", "fails", "fault")},
    ),
}
