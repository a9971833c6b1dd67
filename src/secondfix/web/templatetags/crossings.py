"""Crossings of the scene schedule for the templates."""

from django import template
from django.utils.safestring import SafeString, mark_safe

from secondfix.house import House, load_words
from secondfix.scenes import Cell
from secondfix.web.scenes.chart import words_of

register = template.Library()


@register.simple_tag
def crossed(cell: Cell | None) -> SafeString:
    """A crossing as the chart has it; that the scene does not stand where there is none."""
    shown = words_of(cell) if cell else '<span class="soft">no such scene</span>'
    return mark_safe(shown)  # noqa: S308 - words of our own, escaped there


@register.simple_tag
def loaded(house: House, load_id: str) -> str:
    """Room, name and id of a load."""
    return load_words(house, load_id)
