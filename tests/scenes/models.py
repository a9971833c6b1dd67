"""Invented models for tests of scenes and names."""

from typing import Any

from secondfix.catalogue import Model


def model(name: str, **over: Any) -> Model:
    """A relay switch with two gangs on one mount, changed by ``over``."""
    plain: dict[str, Any] = {
        "maker": "veltrane",
        "name": name,
        "edition": 1,
        "title": f"Veltrane {name}",
        "sheet": "VT-77",
        "form": "switch",
        "protocol": "zigbee",
        "supply": "mains",
        "output": "relay",
        "mounts": 1,
        "gangs": 2,
        "whole_entry": False,
        "code": "none",
        "join": {"steps": [{"act": "wait", "wait_ms": 900}]},
    }
    return Model.model_validate(plain | over)


def _zwave(name: str, whole: str | None, **over: Any) -> Model:
    stated = {"whole_switches": whole} if whole else {}
    return model(name, protocol="zwave", whole_entry=True, **(stated | over))


_ALL = (
    model("plain-two"),
    model("plain-one", gangs=1),
    model("dim-two", output="dimmer", reports_presses=["once", "twice", "three_times", "held"]),
    model("timed-two", own_time_limit="yes"),
    model("thread-three", protocol="matter_thread", gangs=3),
    model("zw-one", protocol="zwave", gangs=1),
    _zwave("all-three", "all", gangs=3),
    _zwave("first-two", "first"),
    _zwave("none-two", "none"),
    _zwave("silent-two", None),
    model(
        "button", form="battery_button", supply="battery", output="none", mounts=0, gangs=2,
        reports_presses=["once", "held"],
    ),
    model("sensor", form="sensor", supply="battery", output="none", mounts=0, gangs=0),
    model("lamp-module", form="luminaire_module", mounts=0, gangs=1, output="dimmer"),
    model("plug", form="plug_in", mounts=0, gangs=1),
)  # fmt: skip
MODELS: dict[str, Model] = {m.key: m for m in _ALL}


def key(name: str) -> str:
    """The key of one of these models."""
    return f"veltrane-{name}@1"
