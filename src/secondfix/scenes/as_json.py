"""Scenes as plain JSON values."""

from dataclasses import asdict

from secondfix.scenes.crossing import Crossing, Resolution


def scenes_as_json(resolutions: tuple[Resolution, ...]) -> dict[str, object]:
    """``{"scenes": [...]}``, in the order of the document.

    A scene holds ``scene``, ``name``, ``starts``, ``ledger``, ``crossings``, ``commands``.

    ``ledger`` counts ``switched``, ``left_alone``, ``conflict``, ``cannot_tell``; their sum is ``loads``.
    A crossing holds ``load``, ``kind`` (one of those four), ``reason``, ``why``, ``by``, and, null where
    they do not apply, ``to``, ``level_pct``, ``asked_level_pct``, ``device``, ``entry``, ``worst``;
    ``refused`` and ``looks`` are lists. A command holds ``device``, ``entry``, ``to``, ``level_pct``.
    """
    return {"scenes": [_scene(resolution) for resolution in resolutions]}


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
