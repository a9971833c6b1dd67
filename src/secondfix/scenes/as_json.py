"""Scenes as plain JSON values."""

from collections.abc import Iterable
from dataclasses import asdict

from secondfix.scenes.crossing import Crossing, Resolution
from secondfix.scenes.next_starts import Coming
from secondfix.scenes.span import Span
from secondfix.scenes.timing import SceneTime


def scenes_as_json(resolutions: tuple[Resolution, ...], times: Iterable[SceneTime] = ()) -> dict[str, object]:
    """``{"scenes": [...]}``, in the order of the document.

    A scene holds ``scene``, ``name``, ``starts``, ``ledger``, ``crossings``, ``commands``.

    ``ledger`` counts ``switched``, ``left_alone``, ``conflict``, ``cannot_tell``; their sum is ``loads``.
    A crossing holds ``load``, ``kind`` (one of those four), ``reason``, ``why``, ``by``, and, null where
    they do not apply, ``to``, ``level_pct``, ``asked_level_pct``, ``device``, ``entry``, ``worst``;
    ``refused`` and ``looks`` are lists. A command holds ``device``, ``entry``, ``to``, ``level_pct``.
    ``time`` is null where no times are given; its times are null or hold ``low``, ``value``, ``high`` in ms.
    """
    by_scene = {time.scene_id: _time(time) for time in times}
    return {"scenes": [_scene(r) | {"time": by_scene.get(r.scene_id)} for r in resolutions]}


def coming_as_json(found: Iterable[Coming]) -> list[dict[str, object]]:
    """A list of ``scene``, ``start``, ``at`` (ISO 8601 with the zone's offset, or null), ``note``."""
    return [
        {"scene": c.scene_id, "start": c.start, "at": c.at.isoformat() if c.at else None, "note": c.note}
        for c in found
    ]


def _time(time: SceneTime) -> dict[str, object]:
    networks = [
        {
            "network": n.network_id,
            "protocol": n.protocol.value,
            "commands": n.commands,
            "one_by_one_ms": _span(n.one_by_one_ms),
            "group": n.group.value,
            "as_group_ms": _span(n.as_group_ms),
            "why": n.why,
        }
        for n in time.networks
    ]
    return {
        "one_by_one_ms": _span(time.one_by_one_ms),
        "as_group_ms": _span(time.as_group_ms),
        "why": time.why,
        "networks": networks,
    }


def _span(span: Span | None) -> dict[str, int] | None:
    return {end: round(ms) for end, ms in asdict(span).items()} if span else None


def _scene(resolution: Resolution) -> dict[str, object]:
    ledger = resolution.ledger
    return {
        "scene": resolution.scene_id,
        "name": resolution.name,
        "starts": list(resolution.starts),
        "ledger": {**asdict(ledger), "loads": ledger.loads},
        "crossings": [_crossing(c) for c in resolution.crossings.values()],
        "commands": [
            {"device": c.device_id, "entry": c.entry, "to": c.to, "level_pct": c.level_pct}
            for c in resolution.commands
        ],
    }


def _crossing(crossing: Crossing) -> dict[str, object]:
    return {
        "load": crossing.load_id,
        "kind": crossing.kind.value,
        "reason": crossing.reason.value,
        "why": crossing.why,
        "by": list(crossing.by),
        "to": crossing.to,
        "level_pct": crossing.level_pct,
        "asked_level_pct": crossing.asked_level_pct,
        "device": crossing.device_id,
        "entry": crossing.entry,
        "refused": list(crossing.refused),
        "worst": crossing.worst.value if crossing.worst else None,
        "looks": [{"place": k.place, "field": k.field, "words": k.words} for k in crossing.looks],
    }
