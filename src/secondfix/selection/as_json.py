"""The choice at one place as plain JSON values; the shape is described in docs/json.md."""

from secondfix.findings import finding_as_json
from secondfix.selection.choice import Doubt, Fit, PlaceChoice, Spot


def choice_as_json(choice: PlaceChoice) -> dict[str, object]:
    """``place``, ``wanted``, and the four lists ``fits``, ``cannot_tell``, ``refused``, ``helps``."""
    return {
        "place": choice.spot.place,
        "device": choice.spot.device_id,
        "wanted": _wanted(choice.spot),
        "fits": [_fit(f) for f in choice.fits],
        "cannot_tell": [_doubt(d) for d in choice.doubts],
        "refused": [{"model": r.model, "because": finding_as_json(r.because)} for r in choice.refused],
        "helps": [{"words": h.words, "place": h.place, "fits": list(h.fits)} for h in choice.helps],
    }


def _wanted(spot: Spot) -> dict[str, object]:
    return {
        "mounts": list(spot.mounts),
        "protocols": [p.value for p in spot.protocols],
        "instead_of": list(spot.instead_of),
        "gangs": [
            {"id": g.id, "duty": g.duty.value, "load": g.load_id, "extends": g.extends, "dimmed": g.dimmed}
            for g in spot.gangs
        ],
    }


def _fit(fit: Fit) -> dict[str, object]:
    return {
        "model": fit.model,
        "after_power_loss": fit.set_to.value if fit.set_to else None,
        "used_permille": fit.used_permille,
        "spare_gangs": fit.spare_gangs,
        "advice": [finding_as_json(f) for f in fit.advice],
    }


def _doubt(doubt: Doubt) -> dict[str, object]:
    return {
        "model": doubt.model,
        "after_power_loss": doubt.set_to.value if doubt.set_to else None,
        "used_permille": doubt.used_permille,
        "unknown": [finding_as_json(f) for f in doubt.unknown],
    }
