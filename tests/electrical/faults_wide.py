"""More injected faults: circuits, dimmers, motors, boxes; and the same for a house under the NEC."""

from tests.electrical.faults import FAULTS
from tests.electrical.sound import PEG, SOUND, ratings
from tests.example_house import seen

Change = dict[str, object]
Answers = set[tuple[str, str, str, str | None]]
ARC, ARCH, WINCH, KEEL = (
    f"models.{key}@1" for key in ("orrinby-arc", "orrinby-arch", "tarnlow-winch", "marlsett-keel")
)
RATED = f"{KEEL}.ratings.0.current_ma"


def switches(circuits: list[str], *, feeders: bool) -> Change:
    """A switch without neutral and its lamp for each circuit named, in roomy boxes."""
    changes: Change = {}
    for n, circuit in enumerate(circuits, start=20):
        changes |= {
            f"boxes.B{n}": {
                "room": "R1",
                "mounts": {"1": {"neutral": seen("absent"), "largest_awg": seen("14")}},
                "gangs": {"1": {"duty": "feeds", "load": f"L{n}", "line": seen(circuit)}},
                "depth_mm": seen(89),
                "shell": seen("plastic"),
                "plate": seen("plastic"),
                "volume_mm3": seen(400_000),
                "conductors": seen({"14": 2}),
                **{key: seen({}) for key in ("loops", "grounds")},
                "clamps": seen(False),
                "fittings": seen(0),
            },
            f"devices.D{n}": {"model": "marlsett-keel@1", "box": f"B{n}", "mounts": ["1"], "gangs": ["1"]},
            f"loads.L{n}": {
                "name": "lamp",
                "room": "R1",
                "kind": seen("resistive"),
                "purpose": "lighting",
                "power_mw": seen(30_000),
                "count": seen(1),
                "continuous": seen(False),
            },
        }
        fed: dict[str, object] = {"name": circuit, "label_rooms": ["R1"], "breaker_a": seen(15)}
        if feeders:
            fed["feeder"] = seen("main panel")
        changes |= {} if circuit == "C1" else {f"circuits.{circuit}": fed}
    return changes


def three_dimmers() -> Change:
    """A third dimmer beside the other two of box B5, its lamps like the first's."""
    return {
        "boxes.B5.mounts.3": {"neutral": seen("C1")},
        "boxes.B5.gangs.3": {"mount": "3", "duty": "feeds", "load": "L12", "line": seen("C1")},
        "devices.D10": {"model": "orrinby-arc@1", "box": "B5", "mounts": ["3"], "gangs": ["3"]},
        "loads.L12": SOUND["loads"]["L6"] | {"name": "niche"},
    }


MANY = ["C3"] * 5 + ["C4"] * 5 + ["C5"] * 5 + ["C6"] * 5 + ["C7"] * 5

FAULTS_WIDE: dict[str, tuple[Change, Answers]] = {
    "more on a circuit than its breaker is for": (
        {"circuits.C2.breaker_a": seen(6)},
        {("circuit_load", "C2", "fails", "fault")},
    ),
    "what else hangs on it, too much": (
        {"circuits.C1.other_load_ma": seen(14_500)},
        {("circuit_load", "C1", "fails", "fault")},
    ),
    "loads that are too much by themselves, whatever else hangs on it": (
        {"circuits.C2.breaker_a": seen(6), "circuits.C2.other_load_ma": None},
        {("circuit_load", "C2", "fails", "fault")},
    ),
    "a breaker that nobody has read": (
        {"circuits.C2.breaker_a": None},
        {("circuit_load", "C2", "cannot_tell", "fault")},
    ),
    "more drivers than a breaker surely bears": (
        {"circuits.C1.curve": seen("B")},
        {("breaker_inrush", "B1.1", "cannot_tell", "advice")},
    ),
    "more drivers than any breaker of the kind bears": (
        {
            "circuits.C1.curve": seen("B"),
            "loads.L1.inrush_peak_ma": seen(280_000),
            "models.wexcombe-pair@1.peak.current_ma": 900_000,
        },
        {("breaker_inrush", "B1.1", "fails", "advice")},
    ),
    "lamps that may not be dimmed": (
        {"loads.L3.dimmable": seen(False)},
        {("dimming", "B2.1", "fails", "fault")},
    ),
    "lamps of which nobody knows whether they may": (
        {"loads.L3.dimmable": None},
        {("dimming", "B2.1", "cannot_tell", "fault")},
    ),
    "a trailing edge before an iron core": (
        {f"{ARC}.edge": "trailing", f"{ARC}.ratings": ratings(resistive=900)},
        {
            ("dimming", "B5.1", "fails", "fault"),
            ("contact", "B5.1", "cannot_tell", "danger"),
            ("ganged_dimmers", "B5.1", "cannot_tell", "fault"),
        },
    ),
    "a leading edge before electronics": (
        {f"{ARCH}.edge": "leading", f"{ARCH}.ratings": ratings(resistive=900)},
        {
            ("dimming", "B5.2", "fails", "fault"),
            ("contact", "B5.2", "cannot_tell", "danger"),
            ("ganged_dimmers", "B5.2", "cannot_tell", "fault"),
        },
    ),
    "a motor on a dimmer": (
        {"loads.L3.kind": seen("motor"), "models.orrinby-glow@1.ratings": ratings(resistive=1300)},
        {("dimming", "B2.1", "fails", "fault"), ("contact", "B2.1", "cannot_tell", "danger")},
    ),
    "a socket on a dimmer": (
        {"loads.L3.purpose": "general_socket"},
        {("dimmed_socket", "B2.1", "fails", "fault")},
    ),
    "a lamp at a socket on a dimmer": (
        {"places.P2.kind": "socket"},
        {("dimmed_socket", "B2.1", "fails", "fault")},
    ),
    "a lamp of which nobody knows whether it is plugged in": (
        {"loads.L3.place": None},
        {("dimmed_socket", "B2.1", "cannot_tell", "fault")},
    ),
    "iron cores and electronics on one dimmer": (
        {"loads.L6.also_kinds": seen(["electronic_transformer"])},
        {("mixed_loads", "B5.1", "fails", "fault")},
    ),
    "electronics and a motor on one dimmer": (
        {"loads.L7.also_kinds": seen(["motor"])},
        {("mixed_loads", "B5.2", "fails", "fault")},
    ),
    "transformers beside which nobody knows what hangs": (
        {"loads.L6.also_kinds": None},
        {("mixed_loads", "B5.1", "cannot_tell", "fault")},
    ),
    "an iron core with too little on it": (
        {"loads.L6.transformer_va": seen(75)},
        {("transformer", "B5.1", "fails", "fault")},
    ),
    "an iron core with perhaps too little on it": (
        {"loads.L6.transformer_va": seen(60)},
        {("transformer", "B5.1", "cannot_tell", "fault")},
    ),
    "a transformer with too much on it": (
        {"loads.L7.transformer_va": seen(35)},
        {("transformer", "B5.2", "fails", "fault")},
    ),
    "electronics below their printed least load": (
        {"loads.L7.transformer_least_mw": seen(30_000), "loads.L7.power_mw": seen(28_000)},
        {("transformer", "B5.2", "fails", "fault")},
    ),
    "electronics that perhaps need more, none being printed": (
        {"loads.L7.transformer_least_mw": None, "loads.L7.power_mw": seen(20_000)},
        {("transformer", "B5.2", "cannot_tell", "fault")},
    ),
    "a dimmer between two others, with too much for it": (
        three_dimmers() | {"loads.L7.count": seen(4), "loads.L7.power_factor_permille": seen(950)},
        {("ganged_dimmers", "B5.2", "fails", "fault")},
    ),
    "a dimmer that would do alone, not beside another": (
        {"loads.L6.count": seen(4), "loads.L6.power_factor_permille": seen(850)},
        {("ganged_dimmers", "B5.1", "fails", "fault")},
    ),
    "a dimmer that may do beside another": (
        {"loads.L6.count": seen(3), "loads.L6.power_factor_permille": seen(800)},
        {("ganged_dimmers", "B5.1", "cannot_tell", "fault")},
    ),
    "a bypass that leaves enough to glow": (
        {
            "loads.L3.count": seen(2),
            "loads.L3.bypass_nf": seen(47),
            "models.orrinby-glow@1.standby_mw": 900,
        },
        {("glow", "B2.1", "fails", "advice"), ("least_load", "B2.1", "fails", "fault")},
    ),
    "a bypass before a switch of unknown standby power": (
        {"loads.L3.count": seen(2), "models.orrinby-glow@1.standby_mw": None},
        {("glow", "B2.1", "cannot_tell", "advice"), ("least_load", "B2.1", "fails", "fault")},
    ),
    "a bypass that leaves perhaps enough to glow": (
        {"loads.L3.count": seen(2), "loads.L3.bypass_nf": seen(330)},
        {("glow", "B2.1", "cannot_tell", "advice"), ("least_load", "B2.1", "fails", "fault")},
    ),
    "a motor beyond what the newer edition tests": (
        {"loads.L10.power_mw": seen(700_000), "loads.L10.power_factor_permille": seen(850)},
        {("contact", "B7.1", "fails", "danger")},
    ),
    "a motor on a switch below 10 A": (
        {"models.tarnlow-peg@1.ratings": [{**ratings(resistive=9999)[0], "standard": "EN 60669-1:2018"}]},
        {("contact", "B7.1", "cannot_tell", "danger")},
    ),
    "two directions that may both be on": (
        {f"{WINCH}.interlocked": "no"},
        {("reversing", "B6.1", "fails", "danger"), ("reversing", "B6.2", "fails", "danger")},
    ),
    "an interlock that the sheet does not state": (
        {f"{WINCH}.interlocked": None},
        {("reversing", "B6.1", "cannot_tell", "danger"), ("reversing", "B6.2", "cannot_tell", "danger")},
    ),
    "two directions by two devices": (
        {
            "devices.D8.gangs": ["1"],
            "boxes.B6.mounts.2": {"neutral": seen("C1")},
            "boxes.B6.gangs.2.mount": "2",
            "devices.D10": {"model": "tarnlow-winch@1", "box": "B6", "mounts": ["2"], "gangs": ["2"]},
        },
        {("reversing", "B6.1", "fails", "danger"), ("reversing", "B6.2", "fails", "danger")},
    ),
    "a blind of which one direction is known": (
        {"loads.L8.other_direction": None, "loads.L9.other_direction": None},
        {("reversing", "B6.1", "cannot_tell", "danger"), ("reversing", "B6.2", "cannot_tell", "danger")},
    ),
    "two circuits in a box without a label": (
        {"boxes.B7.two_supplies_label": seen(False)},
        {("two_supplies", "B7", "fails", "advice")},
    ),
    "a label that nobody has looked for": (
        {"boxes.B7.two_supplies_label": None},
        {("two_supplies", "B7", "cannot_tell", "advice")},
    ),
    "a metal box that is not earthed": (
        {"boxes.B1.earthed": seen(False)},
        {("metal_earthed", "B1", "fails", "danger")},
    ),
    "a metal plate that nobody knows to be earthed": (
        {"boxes.B2.plate": seen("metal")},
        {("metal_earthed", "B2", "cannot_tell", "danger")},
    ),
    "a switch within reach of the bath": (
        {"boxes.B2.zone": seen("2")},
        {("bath_zone", "B2", "fails", "advice")},
    ),
    "a bathroom where nobody has measured": (
        {"boxes.B2.zone": None},
        {("bath_zone", "B2", "cannot_tell", "advice")},
    ),
    "breakers of one neutral that open apart": (
        {"circuits.C4.opens_together": seen(False)},
        {("shared_neutral", "C4", "fails", "advice")},
    ),
    "a shared neutral joined through the device": (
        {"boxes.B7.mounts.1.neutral_through": seen(False)},
        {("neutral_through", "B7", "fails", "danger")},
    ),
    "a neutral that may be the shared one, joined through the device": (
        {"boxes.B7.mounts.1.neutral": None, "boxes.B7.mounts.1.neutral_through": seen(False)},
        {
            *(
                ("neutral_through", "B7", "cannot_tell", "danger"),
                ("earth_as_neutral", "B7", "cannot_tell", "danger"),
            ),
            *(
                ("neutral", "D9", "cannot_tell", "danger"),
                ("neutral_circuit", "B7.1", "cannot_tell", "danger"),
            ),
        },
    ),
    "a shared neutral that nobody has traced": (
        {"boxes.B7.mounts.1.neutral_through": None},
        {("neutral_through", "B7", "cannot_tell", "danger")},
    ),
    "a neutral that is not shared after all": (
        {"circuits.C3.shares_neutral_with": seen([]), "circuits.C4.shares_neutral_with": seen([])},
        {("neutral_circuit", "B7.1", "fails", "danger"), ("borrowed_neutral", "B7.1", "fails", "danger")},
    ),
    "lamps behind a fan control": (
        {
            "models.tarnlow-peg@1": PEG
            | {"output": "fan_control", "ratings": ratings(motor=900, tungsten=900)},
            "loads.L10.kind": seen("tungsten"),
            "loads.L10.place": "P3",
        },
        {("dimming", "B7.1", "fails", "fault")},
    ),
}

FAULTS_NEC: dict[str, tuple[Change, Answers]] = {
    "a load that may be a motor": (
        {"loads.L1.kind": None},
        {("contact", "B1.1", "cannot_tell", "danger"), ("nec_motor", "B1.1", "cannot_tell", "danger")},
    ),
    "a motor at a mains voltage that nobody has stated": (
        {"mains_voltage_v": None},
        {
            ("contact", "B1.1", "cannot_tell", "danger"),
            ("nec_motor", "B1.1", "cannot_tell", "danger"),
            ("circuit_load", "C1", "cannot_tell", "fault"),
            ("two_supplies", "B2", "cannot_tell", "fault"),
        },
    ),
    "a motor on a switch that prints no ampere rating": (
        {
            f"{KEEL}.ratings": [
                {"kind": "motor", "current_ma": 10_000, "at_voltage_v": 120, "standard": "UL 20:2018"}
            ]
        },
        {("nec_motor", "B1.1", "cannot_tell", "danger")},
    ),
    "a load that is continuous, and too much so": (
        {"circuits.C1.other_load_ma": seen(7000)},
        {("circuit_load", "C1", "fails", "fault")},
    ),
    "a load that may be continuous": (
        {"circuits.C1.other_load_ma": seen(7000), "loads.L1.continuous": None},
        {("circuit_load", "C1", "cannot_tell", "fault")},
    ),
    "wiring rules that nobody has stated": (
        {"circuits.C1.other_load_ma": seen(7000), "wiring_rules": None},
        {("circuit_load", "C1", "cannot_tell", "fault")},
    ),
    "a motor above four fifths of the rating": (
        {RATED: 8000},
        {("nec_motor", "B1.1", "fails", "danger")},
    ),
    "a motor of unknown power factor, perhaps above": (
        {RATED: 9000, "loads.L1.power_factor_permille": None, "loads.L1.continuous": seen(False)},
        {("nec_motor", "B1.1", "cannot_tell", "danger")},
    ),
    "one conductor too many": (
        {"boxes.B1.conductors": seen({"14": 6})},
        {("box_fill", "B1", "fails", "fault")},
    ),
    "one size too large": (
        {"boxes.B1.mounts.1.largest_awg": seen("12"), "boxes.B1.conductors": seen({"14": 5, "12": 0})},
        {("box_fill", "B1", "fails", "fault")},
    ),
    "a box smaller than the maker asks for": (
        {f"{KEEL}.box_volume_per_yoke_mm3": 300_000},
        {("box_asked", "B1", "fails", "fault")},
    ),
    "a box whose volume nobody knows": (
        {"boxes.B1.volume_mm3": None},
        {("box_fill", "B1", "cannot_tell", "fault"), ("box_asked", "B1", "cannot_tell", "fault")},
    ),
    "conductors that nobody has counted": (
        {"boxes.B1.conductors": None},
        {("box_fill", "B1", "cannot_tell", "fault")},
    ),
    "two phases more than 300 V apart in a box": (
        {"mains_voltage_v": 277},
        {
            ("two_supplies", "B2", "fails", "fault"),
            ("contact", "B1.1", "cannot_tell", "danger"),
            ("nec_motor", "B1.1", "cannot_tell", "danger"),
        },
    ),
    "phases of which one is not known": (
        {"mains_voltage_v": 277, "circuits.C2.phase": None},
        {
            ("two_supplies", "B2", "cannot_tell", "fault"),
            ("contact", "B1.1", "cannot_tell", "danger"),
            ("nec_motor", "B1.1", "cannot_tell", "danger"),
        },
    ),
    "six switches without neutral on a circuit": (
        switches(["C1"] * 5, feeders=True),
        {("nec_no_neutral", "C1", "fails", "fault")},
    ),
    "twenty-six on a feeder": (
        switches(MANY, feeders=True),
        {("nec_no_neutral", "house", "fails", "advice")},
    ),
    "twenty-six, of which nobody knows the feeders": (
        switches(MANY, feeders=False),
        {("nec_no_neutral", "house", "cannot_tell", "advice")},
    ),
}

# Name to the house that is spoilt, the changes, and every answer that is then not a pass.
CASES: dict[str, tuple[str, Change, Answers]] = {
    **{name: ("iec", *case) for name, case in {**FAULTS, **FAULTS_WIDE}.items()},
    **{f"{name} (NEC)": ("nec", *case) for name, case in FAULTS_NEC.items()},
}
