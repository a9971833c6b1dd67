"""What measured links taught of a house, as a page of text."""

from collections.abc import Sequence

from secondfix.actions.measured import NEXT_LINKS
from secondfix.cli.page import counted, para, table
from secondfix.radio import LEAST_FOR_NUMBERS, Learned, Parameter


def learned_text(learned: Learned, notes: Sequence[str]) -> list[str]:
    """How many links were measured, what they say of the house, and which to measure next."""
    parts = []
    if learned.count:
        heard = learned.count - learned.not_heard
        parts.append(
            para(f"Measured: {counted(learned.count, 'link')}, {heard} heard, {learned.not_heard} not heard.")
        )
    if learned.count >= LEAST_FOR_NUMBERS:
        head = ("in 9 of 10", "before", "now", "what")
        parts.append(table(head, [_row(p) for p in learned.parameters]))
    elif learned.count:
        parts.append(
            para(f"Below {LEAST_FOR_NUMBERS} measured links figures look surer than they are: words alone.")
        )
    following = learned.next_links(NEXT_LINKS)
    if following:
        settling = [f"{link.a} > {link.b}" for link in following if link.settles]
        telling = [f"{link.a} > {link.b}" for link in following if not link.settles]
        said = []
        if settling:
            said.append(f"tells most of who is reached: {', '.join(settling)}")
        if telling:
            said.append(f"tells most of the other links: {', '.join(telling)}")
        parts.append(para(f"To measure next, with plates and covers fitted: {'; '.join(said)}."))
    return parts + [para(note) for note in notes]


def _row(p: Parameter) -> tuple[str, str, str, str]:
    return ", ".join(p.networks), _between(p.before, p.unit), _between(p.after, p.unit), p.words


def _between(values: tuple[float, float, float], unit: str) -> str:
    low, _, high = (f"{v:.0f}" if unit == "%" else f"{v:.1f}" for v in values)
    return f"{low} to {high} {unit}".rstrip()
