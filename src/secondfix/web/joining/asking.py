"""The order of joining and its worksheets, asked once for every edit."""

from collections.abc import Collection
from dataclasses import dataclass
from itertools import groupby

from secondfix.actions.walk import Walked, walk
from secondfix.electrical import lights
from secondfix.house import is_nec
from secondfix.joining import WalkStep, Worksheet, stage_words
from secondfix.papers import (
    Setting,
    TextFault,
    caution_words,
    removal_parts,
    sentence,
    settings_of,
    worksheets_pdf,
)
from secondfix.web.frame.asked import Asked, made_before


def walked_of(about: Asked) -> Walked:
    """Steps in order, one worksheet a device, and findings about joining."""
    return about.once("walk", _walked)


def _walked(about: Asked) -> Walked:
    given, earlier = about.firm.assumptions, made_before(about, "walk")
    return walk(about.house, assumptions=given, reached=about.reached, earlier=earlier)


def stages_of(about: Asked) -> list[tuple[str, int, list[WalkStep]]]:
    """Each stage with its words, its number and its steps."""
    steps = groupby(walked_of(about).walk.steps, key=lambda step: step.stage)
    return [(stage_words(n, nec=is_nec(about.house)), n, list(those)) for n, those in steps]


def sheets_of(about: Asked) -> list[tuple[str, int, list[Worksheet]]]:
    """The worksheets of each stage of joining."""
    those = groupby(walked_of(about).worksheets, key=lambda w: w.stage)
    return [(stage_words(n, nec=is_nec(about.house)), n, list(sheets)) for n, sheets in those]


@dataclass(frozen=True)
class Laid:
    """One worksheet laid out, with its neighbours in the order; ``lights`` are worked from several places."""

    sheet: Worksheet
    stage: str
    lead: str
    cautions: tuple[str, ...]
    removal: tuple[tuple[str, list[str]], ...]
    settings: tuple[str, ...]
    tries: tuple[tuple[str, str], ...]
    lights: tuple[str, ...]
    before: Worksheet | None
    after: Worksheet | None


def laid(about: Asked, device_id: str) -> Laid | None:
    """The worksheet of a device; None where the order has none."""
    sheets = walked_of(about).worksheets
    nec = is_nec(about.house)
    for n, w in enumerate(sheets):
        if w.device == device_id:
            lead, items = caution_words(w, nec=nec)
            return Laid(
                w,
                stage_words(w.stage, nec=nec).lower(),
                lead,
                tuple(items),
                tuple(removal_parts(w.removal)),
                tuple(settings_of(w)),
                tuple((t.seen, sentence(t.do)) for t in w.when_nothing),
                _lights_at(about, device_id),
                sheets[n - 1] if n else None,
                sheets[n + 1] if n + 1 < len(sheets) else None,
            )
    return None


def _lights_at(about: Asked, device_id: str) -> tuple[str, ...]:
    box = about.house.devices[device_id].box
    all_of_them = about.once("lights", lambda a: lights(a.rows, a.settled))
    return tuple(light.words for light in all_of_them if box in light.boxes)


def printed_of(about: Asked, setting: Setting, only: Collection[str]) -> bytes | list[TextFault]:
    """The worksheets of some devices as a PDF."""
    walked = walked_of(about)
    findings = about.checked.findings
    return worksheets_pdf(walked.schedule, walked.walk, findings, about.settled, setting=setting, only=only)
