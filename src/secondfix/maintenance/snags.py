"""Snags that stand open where a swap is made: an earlier swap's losses above all, which this one may undo."""

import re
from collections.abc import Sequence
from dataclasses import replace

from secondfix.journal import SnagRaised, subject_of
from secondfix.maintenance.plan import OpenSnag, Outcome, StepKind, SwapPlan, SwapStep
from secondfix.maintenance.replacing import Site


def open_there(site: Site, snags: Sequence[SnagRaised]) -> tuple[OpenSnag, ...]:
    """Open snags of the failed device, its box, gangs and loads, and those whose words name the device."""
    owners = {site.failed, site.device.box or "", site.device.place or "", *site.loads().values()}
    named = re.compile(rf"\b{re.escape(site.failed)}\b")
    return tuple(
        OpenSnag(s.id, s.subject, s.words)
        for s in snags
        if subject_of(s.subject).owner in owners or named.search(s.words)
    )


def with_snags(plan: SwapPlan, snags: tuple[OpenSnag, ...]) -> SwapPlan:
    """The plan with a step for each: whether it is undone is seen on site, never supposed."""
    if plan.outcome is Outcome.REFUSED:
        return replace(plan, snags=snags)
    words = [f"Open since earlier: {s.words} Clear it if this put it right ({s.subject})." for s in snags]
    last = len(plan.steps)
    steps = [SwapStep(last + n, StepKind.RECORD, said) for n, said in enumerate(words, 1)]
    return replace(plan, snags=snags, steps=(*plan.steps, *steps))
