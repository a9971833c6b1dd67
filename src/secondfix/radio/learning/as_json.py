"""What was learned as plain JSON values; the shape is described in docs/json.md."""

from collections.abc import Iterator, Sequence

import numpy as np

from secondfix.radio.learning.learned import Learned, Parameter, Predicted
from secondfix.radio.learning.measured import LEAST_FOR_NUMBERS
from secondfix.radio.learning.next_links import NextLink, named
from secondfix.radio.links import Links

_SURE = 1.644854  # nine in ten


def learned_as_json(
    learned: Learned, *, next_links: Sequence[NextLink], notes: Sequence[str] = ()
) -> dict[str, object]:
    """``count``, ``not_heard``, ``parameters``, ``links``, ``next_links`` and ``notes``.

    What was learned in numbers is null below five measured links.
    """
    shown = learned.count >= LEAST_FOR_NUMBERS
    links = [link for key, n in learned.networks.items() for link in _links(key, n.links, n.predicted, shown)]
    return {
        "count": learned.count,
        "not_heard": learned.not_heard,
        "parameters": [_parameter(p) for p in learned.parameters] if shown else None,
        "links": links,
        "next_links": [
            {"network": n.network, "a": n.a, "b": n.b, "settles": round(n.settles, 2) if shown else None}
            for n in next_links
        ],
        "notes": [*learned.notes, *notes],
    }


def _parameter(p: Parameter) -> dict[str, object]:
    return {
        "name": p.name,
        "networks": list(p.networks),
        "words": p.words,
        "unit": p.unit,
        "before": _three(p.before),
        "after": _three(p.after),
    }


def _three(values: tuple[float, float, float]) -> dict[str, float]:
    return dict(zip(("low", "value", "high"), (round(v, 2) for v in values), strict=True))


def _links(network: str, links: Links, predicted: Predicted, shown: bool) -> Iterator[dict[str, object]]:
    """The measured links, with what their next reading would be."""
    for n in np.flatnonzero(predicted.measured | predicted.not_heard).tolist():
        sure = _SURE * float(predicted.spread_db[n])
        forth, back = float(predicted.ab_dbm[n]), float(predicted.ba_dbm[n])
        yield {
            "network": network,
            "a": named(links, int(links.a[n])),
            "b": named(links, int(links.b[n])),
            "heard": bool(predicted.measured[n]),
            "ab_dbm": _three((forth - sure, forth, forth + sure)) if shown else None,
            "ba_dbm": _three((back - sure, back, back + sure)) if shown else None,
        }
