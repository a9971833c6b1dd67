"""Words and marks of the legend for the templates."""

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString, mark_safe

from secondfix.findings import Finding
from secondfix.house import House
from secondfix.papers import SHAPE_WORDS, shape_of
from secondfix.store.door import HouseRow
from secondfix.web.frame.places import beside as words_beside
from secondfix.web.frame.places import way_to
from secondfix.web.register.finding import spoken

register = template.Library()

_SHAPES = {
    "danger": ('<svg class="mark" viewBox="0 0 16 16" aria-hidden="true"><path d="M8 1 15 15H1Z"/></svg>'),
    "fault": (
        '<svg class="mark" viewBox="0 0 16 16" aria-hidden="true"><path d="M8 .5 15.5 8 8 15.5.5 8Z"/></svg>'
    ),
    "advice": (
        '<svg class="mark quiet" viewBox="0 0 16 16" aria-hidden="true"><circle cx="8" cy="8" r="6"/></svg>'
    ),
    "cannot_tell": (
        '<svg class="mark quiet" viewBox="0 0 16 16" aria-hidden="true"><path d="M1 2H15V14H1Z"/>'
        '<text x="8" y="12">?</text></svg>'
    ),
}


_COUNTED = {"danger": "danger", "fault": "fault", "cannot_tell": "cannot be told"}


@register.simple_tag
def mark(severity: str) -> SafeString:
    """The shape of an outcome; its word stands beside it. An answer without fault has none."""
    return mark_safe(_SHAPES.get(severity, ""))  # noqa: S308 - shapes of our own, above


@register.filter
def stage(value: str) -> str:
    """The stage of a job in words."""
    return spoken(value)


@register.simple_tag
def opens(row: HouseRow) -> SafeString:
    """What the last check of a house found, with the edit it belongs to where that is not the last one."""
    held = row.open
    if held is None:
        return mark_safe('<span class="soft">not asked yet</span>')
    counts = (("danger", held.danger), ("fault", held.fault), ("cannot_tell", held.cannot_tell))
    words = [
        format_html(
            "<span>{} {} {}</span>",
            mark(shape),
            n,
            f"{_COUNTED[shape]}{'s' * (n != 1 and shape != 'cannot_tell')}",
        )
        for shape, n in counts
        if n
    ]
    if not words:
        words = [mark_safe("<span>no fault found</span>")]
    if held.number != row.number:
        words.append(format_html('<span class="soft">not asked since edit {}</span>', held.number))
    return format_html('<span class="open-counts">{}</span>', mark_safe(" ".join(words)))  # noqa: S308 - each escaped above


@register.simple_tag
def outcome(finding: Finding) -> SafeString:
    """The shape of a finding and its word, in the accent where something is to be acted on."""
    shape = shape_of(finding)
    act = " act" if shape in {"danger", "fault"} else ""
    return format_html('{} <span class="word{}">{}</span>', mark(shape), act, SHAPE_WORDS[shape])


@register.simple_tag
def way(house: House, thing: str) -> str:
    """The address of the sheet where a thing can be changed."""
    return way_to(house, thing)


@register.simple_tag
def beside(house: House, thing: str) -> str:
    """Name and room of a thing."""
    return words_beside(house, thing)
