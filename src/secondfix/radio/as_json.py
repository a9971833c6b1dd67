"""The answer of `reach` as plain JSON values; the shape is described in docs/json.md."""

from secondfix.radio.answers import Chances, DeviceReach, Link, Reach


def reach_as_json(answer: Reach, *, numbers: bool = False) -> dict[str, object]:
    """``devices``, ``links``, ``spread_db`` and ``notes``.

    Words and the spread stand always; chances, losses and margins are null unless ``numbers`` asks for
    them, for while nothing is measured they look surer than they are.
    """
    return {
        "spread_db": answer.spread_db,
        "devices": [_device(d, numbers) for d in answer.devices],
        "links": [_link(link, numbers) for link in answer.links()],
        "notes": list(answer.notes),
    }


def _device(device: DeviceReach, numbers: bool) -> dict[str, object]:
    return {
        "id": device.id,
        "place": device.place,
        "network": device.network,
        "word": device.word.value,
        "chance": _chances(device.chances) if numbers and device.chances else None,
        "route": list(device.route),
        "hops": device.hops,
        "hangs_on": list(device.hangs_on),
        "needs": [{"place": k.place, "field": k.field, "words": k.words} for k in device.needs],
    }


def _link(link: Link, numbers: bool) -> dict[str, object]:
    return {
        "network": link.network,
        "a": link.a,
        "b": link.b,
        "word": link.word.value,
        "loss_db": round(link.loss_db, 1) if numbers else None,
        "cost231_loss_db": round(link.cost231_loss_db, 1) if numbers and link.cost231_loss_db else None,
        "margin_ab_db": round(link.margin_ab_db, 1) if numbers else None,
        "margin_ba_db": round(link.margin_ba_db, 1) if numbers else None,
        "chance": _chances(link.chances) if numbers else None,
        "through": list(link.through),
    }


def _chances(chances: Chances) -> dict[str, float]:
    return {
        "low": round(chances.low, 3),
        "assumed": round(chances.assumed, 3),
        "high": round(chances.high, 3),
    }
