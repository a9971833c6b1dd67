"""Words and marks of the legend for the templates."""

from django import template
from django.utils.safestring import SafeString, mark_safe

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


@register.simple_tag
def mark(severity: str) -> SafeString:
    """The shape of an outcome; its word stands beside it. An answer without fault has none."""
    return mark_safe(_SHAPES.get(severity, ""))  # noqa: S308 - shapes of our own, above


@register.filter
def stage(value: str) -> str:
    """The stage of a job in words."""
    return spoken(value)
