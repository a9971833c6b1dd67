# ruff: noqa: E501 - a case of the table stays one line
"""A fault for every rule of radio, names, scenes and joining in both worlds, and every answer that is then not a pass."""

from tests.actions.worlds import Answers, Change, mended, told, troubled
from tests.example_house import seen

PINTLE, THOLE = (f"models.skelverin-{key}" for key in ("pintle-two@2", "thole@1"))


def crowd(count: int) -> Change:
    """So many more switches on Thread that could repeat, each in a box like B03."""
    house = mended("iec")
    changes: Change = {}
    for n in range(count):
        changes[f"boxes.X{n}"] = house["boxes"]["B03"] | {
            "gangs": {"1": {"duty": "capped", "line": seen("C3")}}
        }
        changes[f"devices.T{n}"] = house["devices"]["D03"] | {"box": f"X{n}", "gangs": ["1"]}
    return changes


def thread_crowd(count: int) -> Change:
    """A Thread network, and so many repeaters for it beside its controller."""
    tern = mended("iec")["models"]["plimmet-tern@1"]
    at = mended("nec")["places"]["P81"]["position"]
    changes: Change = {
        "models.plimmet-tarn@1": tern | {"name": "tarn", "protocol": "matter_thread", "code": "matter"},
        "networks.N3": {"name": "Hobbet threads", "protocol": "matter_thread", "controller_place": "P81"},
    }
    for n in range(count):
        socket = {
            "kind": "socket",
            "name": f"socket {n}",
            "room": "R01",
            "position": at,
            "circuit": seen("C1"),
        }
        changes[f"places.X{n}"] = socket
        changes[f"devices.T{n}"] = {
            "model": "plimmet-tarn@1", "network": "N3", "place": f"X{n}", "code_ref": f"K{80 + n}",
        }  # fmt: skip
    return changes


def pergola(world: str, place: str, *, far_m: int) -> Change:
    """The battery button of the place out in the pergola, so far from the controller of its network."""
    house = mended(world)
    storey = {"iec": "U", "nec": "S"}[world]
    at = house["places"]["P81"]["position"]
    return {
        "rooms.R80": {"name": "Pergola", "storey": storey},
        f"places.{place}.room": "R80",
        f"places.{place}.position": {**at, "x_mm": at["x_mm"] + 1000 * far_m},
    }


def repeater_half_way(far_m: int) -> Change:
    """The button in the pergola, and a repeater half way to it that alone hears both."""
    at = mended("nec")["places"]["P81"]["position"]
    half = {**at, "x_mm": at["x_mm"] + 500 * far_m}
    return pergola("nec", "P91", far_m=far_m) | {
        "places.P80": {
            "kind": "socket",
            "name": "gate",
            "room": "R80",
            "position": half,
            "circuit": seen("C1"),
        },
        "models.plimmet-tern@1": mended("iec")["models"]["plimmet-tern@1"],
        "devices.D80": {
            "model": "plimmet-tern@1",
            "network": "N1",
            "place": "P80",
            "name": "Tern",
            "code_ref": "K80",
        },
    }


def rules_of(world: str, scene: str, *more: dict[str, object]) -> list[object]:
    return [*mended(world)["scenes"][scene]["rules"], *more]


def front_off(world: str) -> Change:
    """Devices in an edition that joins with its front off, while live parts can be touched."""
    if world == "iec":
        return {
            "models.tavrindo-slate-two@1": troubled("iec")["models"]["tavrindo-slate-two@1"],
            "devices.D09.model": "tavrindo-slate-two@1",
        }
    steps = mended("nec")["models"]["skelverin-thole@1"]["join"]["steps"]
    return {f"{THOLE}.join.steps": [{"act": "release_front"}, *steps, {"act": "refit_front"}]}


def radiant(load: str, world: str, scene: str) -> Change:
    return {
        f"loads.{load}.purpose": "heater_radiant",
        f"scenes.{scene}.rules": rules_of(world, scene, {"select": {"load": load}, "to": "on"}),
    }


GULL_FOUR = "models.ostrabeck-gull-four@2"
BINNACLE = "models.skelverin-binnacle@1"

ONES: dict[tuple[str, str], tuple[Change, Answers]] = {
    ("radio.reach", "iec"): (pergola("iec", "P94", far_m=60), told("radio.reach P94 fault", "no_parent P94 fault")),
    ("radio.reach", "nec"): (pergola("nec", "P91", far_m=60), told("radio.reach P91 fault", "no_parent P91 fault")),
    ("radio.one_repeater", "iec"): ({"devices.D34": None}, told("radio.one_repeater P91 advice")),
    ("radio.one_repeater", "nec"): (repeater_half_way(36), told("radio.one_repeater P80 advice")),
    ("radio.thread_routers", "iec"): (crowd(30), told("radio.thread_routers P83 advice")),
    ("radio.thread_routers", "nec"): (thread_crowd(33), told("radio.thread_routers P81 advice")),
    ("names.unique", "iec"): ({"loads.L05.name": "light"}, told("names.unique L04 fault")),
    ("names.unique", "nec"): ({"loads.L04.name": "light"}, told("names.unique L04 fault")),
    ("names.characters", "iec"): ({"loads.L05.name": "work\u202etop"}, told("names.characters L05 fault")),
    ("names.characters", "nec"): ({"loads.L04.name": "si\u202enk"}, told("names.characters L04 fault")),
    ("names.length", "iec"): ({"loads.L05.name": "under the cupboards"}, told("names.length L05 advice")),
    ("names.length", "nec"): ({"loads.L14.name": "light over the long bench"}, told("names.length L14 advice")),
    ("names.whole_device", "iec"): ({"loads.L20.name": "B08"}, told("names.whole_device D08 fault", "names.unique L20 fault")),
    ("names.whole_device", "nec"): ({"loads.L28.name": "B17"}, told("names.whole_device D21 fault", "names.unique L28 fault")),
    ("names.by_ear", "iec"): ({"naming.spoken_language": "en", "loads.L05.name": "lamp", "loads.L06.name": "ramp"}, told("names.by_ear L03 advice", "names.by_ear L05 advice", "names.by_ear L53 advice", "names.by_ear R03 ?advice")),
    ("names.by_ear", "nec"): ({"loads.L30.name": "torch"}, told("names.by_ear L02 advice")),
    ("names.explained", "iec"): ({"loads.L20.purpose": None}, told("names.explained L20 ?advice", "hazard B08.1 ?danger", "permanent_supply B08.1 ?danger", "power_loss B08.1 ?danger", "scenes.decided S1 ?fault", "scenes.decided S2 ?fault", "scenes.decided S6 ?fault")),
    ("names.explained", "nec"): ({"loads.L26.purpose": None}, told("names.explained L26 ?advice", "hazard B16.1 ?danger", "permanent_supply B16.1 ?danger", "power_loss B16.1 ?danger", "scenes.decided S1 ?fault")),
    ("scenes.refused", "iec"): (radiant("L17", "iec", "S5"), told("scenes.refused S5 danger", "hazard B17.2 advice")),
    ("scenes.refused", "nec"): (radiant("L31", "nec", "S5"), told("scenes.refused S5 danger", "hazard B11.1 advice")),
    ("scenes.conflict", "iec"): ({"scenes.S3.rules": rules_of("iec", "S3", {"select": {"load": "L08"}, "to": "off"})}, told("scenes.conflict S3 fault")),
    ("scenes.conflict", "nec"): ({"scenes.S5.rules": rules_of("nec", "S5", {"select": {"load": "L09"}, "to": "off"})}, told("scenes.conflict S5 fault")),
    ("scenes.decided", "iec"): ({"loads.L20.purpose": None}, told("scenes.decided S1 ?fault", "scenes.decided S2 ?fault", "scenes.decided S6 ?fault", "hazard B08.1 ?danger", "names.explained L20 ?advice", "permanent_supply B08.1 ?danger", "power_loss B08.1 ?danger")),
    ("scenes.decided", "nec"): ({"loads.L26.purpose": None}, told("scenes.decided S1 ?fault", "hazard B16.1 ?danger", "names.explained L26 ?advice", "permanent_supply B16.1 ?danger", "power_loss B16.1 ?danger")),
    ("scenes.whole_entry", "iec"): ({"scenes.S2.commands": [{"device": "D08", "entry": 0, "to": "off"}]}, told("scenes.whole_entry S2 danger", "scenes.whole_entry S2 fault")),
    ("scenes.whole_entry", "nec"): ({"scenes.S7.commands": [{"device": "D21", "entry": 0, "to": "off"}]}, told("scenes.whole_entry S7 fault")),
    ("scenes.entry", "iec"): ({"scenes.S3.commands": [{"device": "D36", "entry": 1, "to": "off"}]}, told("scenes.entry S3 advice")),
    ("scenes.entry", "nec"): ({"scenes.S5.commands": [{"device": "D31", "entry": 1, "to": "off"}]}, told("scenes.entry S5 advice")),
    ("scenes.level", "iec"): ({"scenes.S5.rules.0.level_pct": 40}, told("scenes.level S5 advice")),
    ("scenes.level", "nec"): ({"scenes.S7.rules.0.level_pct": 40}, told("scenes.level S7 advice")),
    ("scenes.selects", "iec"): ({"scenes.S4.rules": rules_of("iec", "S4", {"select": {"tag": "seaside"}, "to": "on"})}, told("scenes.selects S4 advice")),
    ("scenes.selects", "nec"): ({"scenes.S4.rules": rules_of("nec", "S4", {"select": {"tag": "lakeside"}, "to": "on"})}, told("scenes.selects S4 advice")),
    ("scenes.start", "iec"): ({"scenes.S7.starts": [{"by": "sensor", "device": "D31"}]}, told("scenes.start S7 fault")),
    ("scenes.start", "nec"): ({"scenes.S7.starts": [{"by": "gang", "gang": "B09.1", "press": "once"}]}, told("scenes.start S7 fault")),
    ("scenes.start_twice", "iec"): ({"scenes.S2.starts.0.press": "held"}, told("scenes.start_twice B11.3 fault")),
    ("scenes.start_twice", "nec"): ({"scenes.S7.starts": [{"by": "gang", "gang": "B04.2", "press": "held"}]}, told("scenes.start_twice B04.2 fault")),
    ("scenes.times_clash", "iec"): ({"scenes.S8.starts": [*mended("iec")["scenes"]["S8"]["starts"], {"by": "time", "at": "06:40"}], "scenes.S8.rules": rules_of("iec", "S8", {"select": {"load": "L06"}, "to": "off"})}, told("scenes.times_clash S5 fault")),
    ("scenes.times_clash", "nec"): ({"scenes.S2.rules.0.leave_out": []}, told("scenes.times_clash S2 fault")),
    ("scenes.time", "iec"): ({"assumptions.scene_slow_ms": {"value": 250}}, told("scenes.time S1 ?advice", "scenes.time S2 ?advice", "scenes.time S6 ?advice", "scenes.time S6 advice")),
    ("scenes.time", "nec"): ({"assumptions.scene_slow_ms": {"value": 200}}, told("scenes.time S1 advice", "scenes.time S2 ?advice")),
    ("no_parent", "iec"): ({"assumptions.parent_margin_db": {"value": 18}}, told("no_parent B20 fault", "no_parent B22 fault", "no_parent P91 fault")),
    ("no_parent", "nec"): ({"assumptions.parent_margin_db": {"value": 27}}, told("no_parent B06 fault", "no_parent B09 fault", "no_parent B11 fault")),
    ("circuit_known", "iec"): ({"boxes.B06.gangs.1.line": None}, told("circuit_known B06 ?danger", "board_label B06.1 ?danger", "borrowed_neutral B06.1 ?danger", *(f"circuit_load C{n} ?fault" for n in range(1, 8)))),
    ("circuit_known", "nec"): ({"boxes.B13.gangs.1.line": None}, told("circuit_known B13 ?danger", "board_label B13.1 ?danger", "borrowed_neutral B13.1 ?danger", "circuit_load C1 ?fault", "circuit_load C2 ?fault", "circuit_load C3 ?fault", "circuit_load C4 ?fault", "circuit_load C5 ?fault", "circuit_load C6 ?fault", "circuit_load C7 ?fault", "circuit_load C8 ?fault")),
    ("removal_first", "iec"): ({f"{GULL_FOUR}.remove": None, f"{GULL_FOUR}.reset": None}, told("removal_first B08 advice")),
    ("removal_first", "nec"): ({f"{BINNACLE}.remove": None, f"{BINNACLE}.reset": None, f"{BINNACLE}.removal_before_join": "always"}, told("removal_first B09 advice", "removal_first B11 advice")),
    ("code_captured", "iec"): ({"devices.D08.code_ref": None}, told("code_captured B08 advice")),
    ("code_captured", "nec"): ({"devices.D12.code_ref": None}, told("code_captured B09 advice")),
    ("front_on", "iec"): (front_off("iec"), told("front_on B09 advice")),
    ("front_on", "nec"): (front_off("nec"), told("front_on B06 advice", "front_on B12 advice", "front_on B13 advice", "front_on B15 advice", "front_on B18 advice")),
}  # fmt: skip
