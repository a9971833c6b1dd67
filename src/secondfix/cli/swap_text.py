"""Swaps as pages of text."""

from collections.abc import Iterator

from secondfix.cli.page import counted, para
from secondfix.house import House
from secondfix.joining import before_boxes
from secondfix.maintenance import OUTCOME_WORDS, Nearest, Outcome, Rebuilt, Suspects, SwapPlan


def plan_text(house: House, plan: SwapPlan) -> str:
    """The outcome, what is lost or stands against it, what would do better, and the steps."""
    tonight = "; perhaps for tonight" if plan.for_tonight else ""
    goes = ", ".join(f"{f.device} ({f.model.title})" for f in plan.fits)
    which = f"{plan.failed} ({plan.title}) at {plan.place}, replaced by {goes}"
    head = f"{house.name}: {which}: {OUTCOME_WORDS[plan.outcome]}{tonight}"
    parts = [para(head)]
    parts += (
        [_block("Refused, since:", [f"{r.words} do: {r.remedy}" for r in plan.reasons])]
        if plan.reasons
        else []
    )
    parts += [_block("Lost:", [loss.words for loss in plan.losses])] if plan.losses else []
    earlier = [f"{s.words} ({s.subject}, {s.entry})" for s in plan.snags]
    parts += (
        [_block("Open there since earlier; see whether this swap undoes it:", earlier)] if earlier else []
    )
    looks = dict.fromkeys(look.words for f in plan.open for look in f.looks)
    parts += [_block("Cannot be told yet; look before fitting:", list(looks))] if looks else []
    parts += [_block("Models that would do there:", [*map(_near, plan.nearest)])] if plan.nearest else []
    if plan.outcome is not Outcome.REFUSED:
        parts += [_block("To note:", list(plan.notes))] if plan.notes else []
        parts.append(_block("Before hands go into the box:", [c.words for c in before_boxes(house)]))
        parts.append("\n".join(["Steps:", *_steps(plan)]))
        parts.append(
            _block(
                f"{counted(len(plan.entries), 'entry', 'entries')} to expect in the journal:",
                [f"{e.kind} {e.subject}" for e in plan.entries],
            )
        )
    return "\n\n".join(parts)


def _steps(plan: SwapPlan) -> Iterator[str]:
    for step in plan.steps:
        yield para(f"{step.number:>3}. {step.kind.value}: {step.words}", indent=2, hang=5)


def _near(near: Nearest) -> str:
    kinds = ", ".join(dict.fromkeys(loss.kind.value.replace("_", " ") for loss in near.losses))
    return f"{near.model} ({near.title}): {'kept' if near.outcome is Outcome.KEPT else f'loses {kinds}'}"


def _block(head: str, lines: list[str]) -> str:
    return "\n".join([head, *(para(f"- {line}", indent=2, hang=2) for line in lines)])


def suspects_text(house: House, found: Suspects) -> str:
    """Who has fallen silent, most likely first."""
    parts = []
    for one in found.suspects:
        sure = "it is this one" if one.sure else "perhaps"
        against = f"; still answers: {', '.join(one.answers)}" if one.answers else ""
        parts.append(
            para(f"{one.device} at {one.place}: {sure}. Silent: {', '.join(one.silent)}{against}.", hang=2)
        )
    if not found.suspects:
        parts.append(
            "Nothing of the book is known to be silent: name entries, addresses or gangs with --silent."
        )
    elif not found.suspects[0].sure:
        parts.append(
            para("Before a switch is taken out, look for what the silent ones share: a circuit, a repeater.")
        )
    parts += [para(f"'{text}' names nothing in this house.") for text in found.unknown]
    return "\n".join([f"{house.name}: which device fell silent", *parts])


def rebuilt_text(house: House, rebuilt: Rebuilt) -> str:
    """What survives, what is done again, in which order, and how long it takes."""
    low, value, high = (f"{m / 60:.1f}" for m in rebuilt.minutes)
    kept = "the backup with its keys" if rebuilt.kept.value == "backup_with_keys" else "nothing"
    left = f"a new controller; of the old one {kept} is left"
    head = f"{house.name}, {rebuilt.network}: {left}: about {value} h ({low} to {high} h) for one person"
    parts = [para(head), _block("Survives:", list(rebuilt.survives))]
    parts += [_block("Ask first:", list(rebuilt.asks))] if rebuilt.asks else []
    if rebuilt.order:
        parts.append(
            _block(
                "Join again, in this order:",
                [f"{o.device} at {o.place}: {o.removal} {o.words}" for o in rebuilt.order],
            )
        )
    parts.append(_block("Again:", list(rebuilt.again)))
    work = [
        f"{p.what}: {p.count}, about {p.minutes[1]:.0f} min ({p.minutes[0]:.0f} to {p.minutes[2]:.0f})"
        for p in rebuilt.parts
        if p.count
    ]
    parts += [_block("Time, common practice, no source:", work)]
    return "\n\n".join(parts)
