# ruff: noqa: E501 - a case of the table stays one line
"""A fault for every electrical rule in both worlds, and every answer that is then not a pass."""

from tests.actions.worlds import Answers, Change, mended, told
from tests.example_house import seen

GULL, MOLE, SEDGE = (
    f"models.{key}" for key in ("ostrabeck-gull-two@2", "tavrindo-mole@1", "plimmet-sedge@1")
)
PINTLE, THOLE, BINNACLE = (f"models.skelverin-{key}" for key in ("pintle-two@2", "thole@1", "binnacle@1"))


def shares(one: str, other: str, *, one_opens: bool = True) -> Change:
    """Two circuits that share their neutral; whether the breaker of the first opens with the other's."""
    return {
        f"circuits.{one}.shares_neutral_with": seen([other]),
        f"circuits.{other}.shares_neutral_with": seen([one]),
        f"circuits.{one}.opens_together": seen(one_opens),
        f"circuits.{other}.opens_together": seen(True),
    }


def both_ways(one: str, other: str) -> Change:
    """Two loads that are the two directions of one motor."""
    changes: Change = {}
    for load, its_other in ((one, other), (other, one)):
        changes |= {
            f"loads.{load}.kind": seen("motor"),
            f"loads.{load}.purpose": "comfort_fan",
            f"loads.{load}.reversing": seen(True),
            f"loads.{load}.other_direction": its_other,
        }
    return changes


def transformers(load: str, kind: str, *, va: int, also: list[str]) -> Change:
    """Four lamps of 30 W on transformers, and what else hangs on the wire."""
    return {
        f"loads.{load}.kind": seen(kind),
        f"loads.{load}.also_kinds": seen(also),
        f"loads.{load}.power_mw": seen(30_000),
        f"loads.{load}.transformer_va": seen(va),
        f"loads.{load}.transformer_least_mw": seen(10_000),
    }


def iron_rated() -> Change:
    """The dimmer of the NEC house with a rating printed for iron cores as well."""
    ratings = mended("nec")["models"]["skelverin-thole@1"]["ratings"]
    return {f"{THOLE}.ratings": [*ratings, {**ratings[0], "kind": "iron_transformer", "current_ma": 3000}]}


def dimmer_beside() -> Change:
    """A second dimmer beside that of box B04, its lamp like the first's; the first with more than it bears there."""
    house = mended("iec")
    return {
        "loads.L08.power_mw": seen(113_000),
        "loads.L80": house["loads"]["L08"] | {"name": "sideboard"},
        "boxes.B04.mounts.2": house["boxes"]["B04"]["mounts"]["1"],
        "boxes.B04.gangs.2": house["boxes"]["B04"]["gangs"]["1"] | {"mount": "2", "load": "L80"},
        "devices.D80": house["devices"]["D04"] | {"mounts": ["2"], "gangs": ["2"], "code_ref": "K80"},
    }


def sixth_without_neutral() -> Change:
    """The gang of box B14 on a dimmer without neutral, the sixth on its circuit."""
    return {
        "boxes.B14.mounts.1.neutral": seen("absent"),
        "boxes.B14.gangs.2": None,
        "devices.D18.model": "skelverin-thole@1",
        "devices.D18.network": "N2",
        "devices.D18.gangs": ["1"],
        "loads.L23.inrush_peak_ma": None,
        "loads.L23.inrush_width_us": None,
    }


def two_lines(world: str) -> Change:
    """A box in which nothing is fitted and two circuits end, without a label that says so."""
    room, circuits = {"iec": ("R07", ("C1", "C7")), "nec": ("R02", ("C3", "C4"))}[world]
    gangs = {str(n): {"duty": "capped", "line": seen(circuit)} for n, circuit in enumerate(circuits, 1)}
    return {
        "boxes.B80": {"room": room, "mounts": {"1": {}}, "gangs": gangs, "two_supplies_label": seen(False)}
    }


ONES: dict[tuple[str, str], tuple[Change, Answers]] = {
    ("duty", "iec"): ({"boxes.B08.gangs.2.duty": "not_known", "boxes.B08.gangs.2.load": None}, told("duty B08.2 ?danger", "circuit_load C1 ?fault", "module_total D08 ?danger", "names.explained B08.2 ?advice", "names.whole_device D08 ?fault", "scenes.decided S1 ?fault", "scenes.decided S2 ?fault", "scenes.decided S6 ?fault")),
    ("duty", "nec"): ({"boxes.B08.gangs.2.duty": "not_known", "boxes.B08.gangs.2.load": None}, told("duty B08.2 ?danger", "circuit_load C1 ?fault", "module_total D11 ?danger", "names.explained B08.2 ?advice", "scenes.decided S7 ?fault")),
    ("board_label", "iec"): ({"circuits.C7.label_rooms": ["R17"]}, told("board_label B17.1 danger", "board_label B17.2 danger")),
    ("board_label", "nec"): ({"circuits.C8.label_rooms": ["R06"]}, told("board_label B09.1 danger")),
    ("two_supplies", "iec"): (two_lines("iec"), told("two_supplies B80 advice")),
    ("two_supplies", "nec"): (two_lines("nec"), told("two_supplies B80 advice")),
    ("earth_as_neutral", "iec"): ({"boxes.B06.mounts.1.neutral": seen("earth")}, told("earth_as_neutral B06 danger")),
    ("earth_as_neutral", "nec"): ({"boxes.B13.mounts.1.neutral": seen("earth")}, told("earth_as_neutral B13 danger")),
    ("metal_earthed", "iec"): ({"boxes.B10.shell": seen("metal"), "boxes.B10.earthed": seen(False)}, told("metal_earthed B10 danger")),
    ("metal_earthed", "nec"): ({"boxes.B01.earthed": seen(False)}, told("metal_earthed B01 danger")),
    ("bath_zone", "iec"): ({"boxes.B13.zone": seen("2")}, told("bath_zone B13 advice")),
    ("bath_zone", "nec"): ({"boxes.B16.zone": seen("2")}, told("bath_zone B16 advice")),
    ("neutral", "iec"): ({"boxes.B10.mounts.1.neutral": seen("absent")}, told("neutral D10 fault")),
    ("neutral", "nec"): ({"boxes.B08.mounts.1.neutral": seen("absent")}, told("neutral D11 fault")),
    ("neutral_circuit", "iec"): ({"boxes.B10.mounts.1.neutral": seen("C3")}, told("neutral_circuit B10.1 danger", "neutral_circuit B10.2 danger", "two_supplies B10 ?advice")),
    ("neutral_circuit", "nec"): ({"boxes.B08.mounts.1.neutral": seen("C5")}, told("neutral_circuit B08.1 danger", "neutral_circuit B08.2 danger", "two_supplies B08 ?advice")),
    ("borrowed_neutral", "iec"): ({"loads.L26.neutral": seen("C2")}, told("borrowed_neutral B10.1 danger")),
    ("borrowed_neutral", "nec"): ({"loads.L14.neutral": seen("C2")}, told("borrowed_neutral B08.1 danger")),
    ("shared_neutral", "iec"): (shares("C5", "C6", one_opens=False), told("shared_neutral C5 advice")),
    ("shared_neutral", "nec"): ({"circuits.C4.opens_together": seen(False)}, told("shared_neutral C4 advice")),
    ("neutral_through", "iec"): (shares("C4", "C6") | {"boxes.B20.mounts.1.neutral_through": seen(False)}, told("neutral_through B20 danger")),
    ("neutral_through", "nec"): ({"boxes.B04.mounts.1.neutral_through": seen(False)}, told("neutral_through B04 danger")),
    ("contact", "iec"): ({"loads.L26.power_mw": seen(32_000)}, told("contact B10.1 danger")),
    ("contact", "nec"): ({"loads.L14.power_mw": seen(100_000)}, told("contact B08.1 danger")),
    ("module_total", "iec"): ({"models.ostrabeck-gull-four@2.module_total_ma": 200}, told("module_total D08 danger")),
    ("module_total", "nec"): ({f"{PINTLE}.module_total_ma": 1600}, told("module_total D04 danger")),
    ("circuit_load", "iec"): ({"circuits.C7.other_load_ma": seen(14_000)}, told("circuit_load C7 fault")),
    ("circuit_load", "nec"): ({"circuits.C8.breaker_a": seen(15)}, told("circuit_load C8 fault")),
    ("inrush", "iec"): ({"loads.L26.inrush_peak_ma": seen(31_000)}, told("inrush B10.1 fault", "breaker_inrush B10.1 ?advice")),
    ("inrush", "nec"): ({"loads.L17.inrush_peak_ma": seen(31_000)}, told("inrush B10.1 fault")),
    ("breaker_inrush", "iec"): ({"loads.L26.inrush_peak_ma": seen(180_000), f"{GULL}.peak.current_ma": 900_000}, told("breaker_inrush B10.1 advice")),
    ("breaker_inrush", "nec"): ({"circuits.C7.curve": seen("B"), "loads.L17.inrush_peak_ma": seen(251_000), f"{PINTLE}.peak.current_ma": 1_500_000}, told("breaker_inrush B10.1 advice")),
    ("least_load", "iec"): ({"loads.L35.count": seen(1)}, told("least_load B15.1 fault")),
    ("least_load", "nec"): ({"loads.L22.count": seen(2)}, told("least_load B13.1 fault")),
    ("glow", "iec"): ({"loads.L35.count": seen(1), "loads.L35.bypass_nf": seen(33)}, told("glow B15.1 advice", "least_load B15.1 fault")),
    ("glow", "nec"): ({"loads.L22.count": seen(2), "loads.L22.bypass_nf": seen(33)}, told("glow B13.1 advice", "least_load B13.1 fault")),
    ("dimming", "iec"): ({"loads.L35.dimmable": seen(False)}, told("dimming B15.1 fault")),
    ("dimming", "nec"): ({"loads.L22.dimmable": seen(False)}, told("dimming B13.1 fault")),
    ("dimmed_socket", "iec"): ({"places.P35.kind": "socket"}, told("dimmed_socket B15.1 fault")),
    ("dimmed_socket", "nec"): ({"places.P22.kind": "socket"}, told("dimmed_socket B13.1 fault")),
    ("mixed_loads", "iec"): (transformers("L35", "electronic_transformer", va=40, also=["iron_transformer"])|{f"{SEDGE}.edge":"trailing"}, told("mixed_loads B15.1 fault")),
    ("mixed_loads", "nec"): (transformers("L22", "iron_transformer", va=35, also=["electronic_transformer"]) | iron_rated(), told("mixed_loads B13.1 fault")),
    ("transformer", "iec"): (transformers("L35", "electronic_transformer", va=20, also=[]), told("transformer B15.1 fault")),
    ("transformer", "nec"): (transformers("L22", "iron_transformer", va=25, also=[]) | iron_rated(), told("transformer B13.1 fault")),
    ("ganged_dimmers", "iec"): (dimmer_beside(), told("ganged_dimmers B04.1 fault")),
    ("ganged_dimmers", "nec"): ({"loads.L20.power_mw": seen(31_500)}, told("ganged_dimmers B12.1 fault")),
    ("nec_motor", "nec"): ({f"{PINTLE}.ratings.4.current_ma": 9500, "loads.L07.power_mw": seen(750_000)}, told("nec_motor B03.3 danger")),
    ("reversing", "iec"): (both_ways("L26", "L27") | {f"{GULL}.interlocked": "no"}, told("reversing B10.1 danger", "reversing B10.2 danger")),
    ("reversing", "nec"): (both_ways("L28", "L29"), told("reversing B17.1 danger", "reversing B17.2 danger")),
    ("nec_no_neutral", "nec"): (sixth_without_neutral(), told("nec_no_neutral C2 fault")),
    ("depth", "iec"): ({"boxes.B10.depth_mm": seen(29)}, told("depth B10 fault")),
    ("depth", "nec"): ({"boxes.B08.depth_mm": seen(40)}, told("depth B08 fault")),
    ("box_fill", "nec"): ({"boxes.B01.conductors": seen({"14": 6})}, told("box_fill B01 fault")),
    ("box_asked", "nec"): ({f"{BINNACLE}.box_volume_per_yoke_mm3": 340_000}, told("box_asked B09 fault", "box_asked B11 fault")),
    ("permanent_supply", "iec"): ({"loads.L16.permanent_supply": seen(True)}, told("permanent_supply B17.1 fault")),
    ("permanent_supply", "nec"): ({"loads.L28.permanent_supply": seen(True)}, told("permanent_supply B17.1 fault")),
    ("hazard", "iec"): ({"loads.L17.own_thermostat": seen(False)}, told("hazard B17.2 danger")),
    ("hazard", "nec"): ({"loads.L16.own_thermostat": seen(False)}, told("hazard B09.1 danger", "scenes.refused S7 danger")),
    ("power_loss", "iec"): ({"devices.D17.after_power_loss": "on", "loads.L16.after_power_loss": None, "loads.L17.after_power_loss": None}, told("power_loss B17.2 danger")),
    ("power_loss", "nec"): ({f"{BINNACLE}.power_loss.settable": ["off", "on"], "devices.D12.after_power_loss": "on", "loads.L16.after_power_loss": None}, told("power_loss B09.1 danger")),
    ("power_loss_wanted", "iec"): ({"loads.L26.after_power_loss": "on"}, told("power_loss_wanted B10.1 fault")),
    ("power_loss_wanted", "nec"): ({"loads.L14.after_power_loss": "on"}, told("power_loss_wanted B08.1 fault")),
    ("multiway_arrangement", "iec"): ({"loads.L01.multiway.arrangement": seen("switched_neutral")}, told("multiway_arrangement B01.1 danger")),
    ("multiway_arrangement", "nec"): ({"loads.L01.multiway.arrangement": seen("switched_neutral")}, told("multiway_arrangement B01.1 danger")),
    ("multiway_series", "iec"): ({"loads.L01.multiway.others": seen("in_series")}, told("multiway_series B01.1 fault")),
    ("multiway_series", "nec"): ({"loads.L08.multiway.others": seen("in_series")}, told("multiway_series B04.1 fault")),
    ("multiway_parallel", "iec"): ({"loads.L01.multiway.others": seen("in_parallel")}, told("multiway_parallel B01.1 fault")),
    ("multiway_parallel", "nec"): ({"loads.L08.multiway.others": seen("in_parallel")}, told("multiway_parallel B04.1 fault")),
    ("multiway_other_circuit", "iec"): ({"boxes.B11.gangs.1.line": seen("C5"), "loads.L01.multiway.others": seen("input"), "loads.L01.multiway.arrangement": seen("together")}, told("multiway_other_circuit B11.1 danger", "neutral_circuit B11.1 danger", "two_supplies B11 ?advice")),
    ("multiway_other_circuit", "nec"): ({"boxes.B05.gangs.2.line": seen("C3")}, told("multiway_other_circuit B05.2 danger", "board_label B05.2 danger", "two_supplies B05 ?advice")),
    ("multiway_supply", "iec"): ({"loads.L03.multiway.others": seen("input")}, told("multiway_supply B12.1 fault", "multiway_other_circuit B01.3 danger")),
    ("multiway_supply", "nec"): ({"loads.L08.multiway.others": seen("radio")}, told("multiway_supply B04.1 fault")),
}  # fmt: skip
