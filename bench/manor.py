"""A manor: an invented house of any size, no room like another, drawn anew for each seed.

Two to four storeys, boxes of plastic and metal, sockets, circuits, one Zigbee and one Z-Wave network with
repeaters and battery devices, and here and there a fact that nobody has looked up.
"""

from __future__ import annotations

import json
import random
from typing import Any

from bench.manor_plan import Building, surveyed
from secondfix.files import shipped_models
from secondfix.house import House, Schedule, read_house, schedule

NAMES = ("Quillmere", "Fenharrow", "Brackholt", "Eskumber", "Stoatley Rise", "Umberwick")
SWITCHES = {  # by network, then gangs
    "N1": {
        1: ("plimmet-osier-one@1", "plimmet-sedge@1"),
        2: ("plimmet-osier-two@1", "plimmet-withy@1"),
        3: ("plimmet-osier-three@2",),
    },
    "N2": {
        1: ("ostrabeck-gannet@1",),
        2: ("ostrabeck-gull-two@2",),
        3: (),
    },
}
PLUGS = {"N1": "plimmet-tern@1", "N2": "murrowfen-moss@1"}
BUTTON = "plimmet-wick@1"
MODULES = {"N1": "plimmet-rush@1", "N2": "murrowfen-tarn@1"}
BY_CIRCUIT = 7  # rooms on one lighting circuit


def manor_rows(places: int, seed: int) -> Schedule:
    """The house of `manor` read, as `reach` takes it."""
    read = read_house(
        json.dumps(manor(places=places, seed=seed)).encode(), where="manor", models=shipped_models()
    )
    if not isinstance(read, House):
        raise RuntimeError(f"the manor is unusable: {read[0]}")
    return schedule(read, read.models)


def manor(*, places: int, seed: int) -> dict[str, Any]:
    """A house document with just so many wall boxes and places together, 12 or more; the same for a seed."""
    if places < 12:
        raise ValueError(f"a manor has 12 places or more, not {places}")
    return _Manor(places, random.Random(seed), seed).document()


class _Manor:
    def __init__(self, places: int, rng: random.Random, seed: int) -> None:
        self.rng, self.seed = rng, seed
        storeys = rng.choice((2, 2, 3) if places < 100 else (2, 3, 4))
        self.building = Building(rng, storeys=storeys, rooms=max(storeys, round(places / 4.5)))
        self.parts: dict[str, dict[str, Any]] = {
            key: {} for key in ("circuits", "boxes", "places", "loads", "devices")
        }
        self.rooms = list(self.building.parts["rooms"])
        self._circuits()
        for network in ("N1", "N2"):
            self._spot(network)
        while len(self.parts["boxes"]) + len(self.parts["places"]) < places:
            self._one_more()

    def _circuits(self) -> None:
        for n in range(-(-len(self.rooms) // BY_CIRCUIT)):
            here = self.rooms[n * BY_CIRCUIT : (n + 1) * BY_CIRCUIT]
            for kind, amps in (("L", 10), ("S", 16)):
                self.parts["circuits"][f"C{kind}{n + 1}"] = {
                    "name": f"{'Lights' if kind == 'L' else 'Sockets'} {n + 1}",
                    "breaker_a": surveyed(amps, "seen_open"),
                    "curve": surveyed("B", "seen_open"),
                    "label_rooms": here,
                }

    def _circuit(self, room: str, kind: str) -> str:
        return f"C{kind}{self.rooms.index(room) // BY_CIRCUIT + 1}"

    def _network(self) -> str:
        return "N1" if self.rng.random() < 0.62 else "N2"

    def _spot(self, network: str) -> None:
        """The place of a controller, in one of the middle rooms."""
        third = len(self.rooms) // 3
        room = self.rooms[self.rng.randrange(third, len(self.rooms) - third)]
        self._place("controller_spot", room, f"Shelf {network}", self.rng.randrange(600, 1900))

    def _place(self, kind: str, room: str, name: str, height_mm: int, circuit: str | None = None) -> str:
        key = f"P{len(self.parts['places']) + 1}"
        x, y = self.building.inside(room)
        place: dict[str, Any] = {"kind": kind, "name": name, "room": room}
        if self.rng.random() > 0.02 or kind == "controller_spot":
            place["position"] = {"x_mm": x, "y_mm": y, "height_mm": height_mm}
        if circuit and self.rng.random() > 0.05:
            place["circuit"] = surveyed(circuit, "told")
        self.parts["places"][key] = place
        return key

    def _one_more(self) -> None:
        room, turn = self.rng.choice(self.rooms), self.rng.random()
        if turn < 0.45:
            self._box(room)
        elif turn < 0.68:
            self._socket(room)
        elif turn < 0.9:
            self._light(room)
        else:
            self._button(room)

    def _device(self, device: dict[str, Any]) -> None:
        self.parts["devices"][f"V{len(self.parts['devices']) + 1}"] = device

    def _box(self, room: str) -> None:
        at = self.building.on_wall(room, 150)
        if at is None:
            self._socket(room)
            return
        rng, key = self.rng, f"B{len(self.parts['boxes']) + 1}"
        network = self._network()
        gangs = rng.choice((1, 1, 2, 2, 3) if network == "N1" else (1, 2, 2))
        circuit = self._circuit(room, "L")
        box: dict[str, Any] = {"room": room, "mounts": {"1": {}}, "gangs": {}}
        if rng.random() > 0.02:
            box["position"] = {"x_mm": at[0], "y_mm": at[1], "height_mm": rng.choice((1050, 1100, 1200, 300))}
        if rng.random() > 0.05:
            box["mounts"]["1"]["neutral"] = surveyed(circuit if rng.random() < 0.8 else "absent", "seen_open")
        for n in range(1, gangs + 1):
            box["gangs"][str(n)] = {"duty": "scene_only"}
        if rng.random() < 0.9:
            box["gangs"]["1"] = {"duty": "feeds", "load": self._load(room, None)}
            if rng.random() > 0.05:
                box["gangs"]["1"]["line"] = surveyed(circuit, "seen_open")
        box |= self._make()
        self.parts["boxes"][key] = box
        if rng.random() < 0.9:
            device: dict[str, Any] = {"network": network, "box": key, "mounts": ["1"]}
            device["gangs"] = [str(n) for n in range(1, gangs + 1)]
            if rng.random() < 0.95:
                device["model"] = rng.choice(SWITCHES[network][gangs])
            else:
                device |= {"power_source": surveyed("mains", "told"), "repeats": surveyed(True, "told")}
            self._device(device)

    def _make(self) -> dict[str, Any]:
        """What a box and its surroundings are made of; each fact is missing now and then."""
        rng = self.rng
        metal = rng.random() < 0.3
        facts = {
            "shell": "metal" if metal else "plastic",
            "plate": "plastic" if metal or rng.random() < 0.85 else "glass",
            "finish": rng.choice(("plaster", "plaster", "tile", "timber")),
        }
        return {name: surveyed(value, "seen_open") for name, value in facts.items() if rng.random() > 0.03}

    def _load(self, room: str, place: str | None) -> str:
        key = f"L{len(self.parts['loads']) + 1}"
        load: dict[str, Any] = {"name": f"light {key[1:]}", "room": room, "purpose": "lighting"}
        load["kind"] = surveyed(self.rng.choice(("led_lamp", "led_driver", "tungsten")), "told")
        if place:
            load["place"] = place
        self.parts["loads"][key] = load
        return key

    def _socket(self, room: str) -> None:
        key = self._place("socket", room, "socket", 300, self._circuit(room, "S"))
        if self.rng.random() < 0.15:
            network = self._network()
            self._device({"network": network, "place": key, "model": PLUGS[network]})

    def _light(self, room: str) -> None:
        height = self.building.height_mm
        key = self._place("light_point", room, "light point", height, self._circuit(room, "L"))
        if self.rng.random() < 0.35:
            network, load = self._network(), self._load(room, key)
            self._device(
                {"network": network, "place": key, "model": MODULES[network], "outputs": {"1": load}}
            )

    def _button(self, room: str) -> None:
        key = self._place("surface", room, "button", self.rng.choice((1000, 1300)))
        self._device({"network": "N1", "place": key, "model": BUTTON})

    def document(self) -> dict[str, Any]:
        """The whole house."""
        networks: dict[str, dict[str, Any]] = {
            "N1": {"name": "Manor mesh", "protocol": "zigbee", "controller_place": "P1", "channel": 15},
            "N2": {"name": "Manor wings", "protocol": "zwave", "controller_place": "P2"},
        }
        networks["N1"] |= {"transmit_power_dbm": 8, "sensitivity_dbm": -100}
        if self.rng.random() < 0.7:
            networks["N2"] |= {"transmit_power_dbm": 4, "sensitivity_dbm": -97}
        return {
            "format": 1,
            "id": f"0193f1c2-0a00-7{self.seed % 4096:03x}-9a00-{self.seed:012x}",
            "name": f"{NAMES[self.seed % len(NAMES)]} {self.seed}",
            "mains_voltage_v": 230,
            "mains_frequency_hz": 50,
            "wiring_rules": "iec",
            "radio_region": self.rng.choice(("eu", "eu", "anz", "in")),
            **self.building.parts,
            **self.parts,
            "networks": networks,
        }
