"""Words of radio for the templates."""

from collections.abc import Sequence

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString

from secondfix.house import House
from secondfix.web.radio.devices import FALLS, NO_POWER
from secondfix.web.radio.measuring import called as called_end
from secondfix.web.radio.words import signed, thing_called

register = template.Library()

_LOUD = {"unlikely", FALLS, NO_POWER}
_MOST = 8


@register.simple_tag
def told_word(word: str) -> SafeString:
    """A word of reach; strong where nobody should rely on it."""
    return format_html('<strong class="accent">{}</strong>' if word in _LOUD else "{}", str(word))


@register.simple_tag
def called(house: House, thing: str) -> str:
    """The id with name and room."""
    return thing_called(house, thing)


@register.simple_tag
def some(ids: Sequence[str]) -> str:
    """The first of many ids, and how many more."""
    more = len(ids) - _MOST
    return ", ".join(ids[:_MOST]) + (f" and {more} more" if more > 0 else "")


@register.filter
def gained(devices: float) -> str:
    """How many more devices, or fewer."""
    return signed(devices)


@register.simple_tag
def end_called(house: House, end: str) -> str:
    """An end of a link; a network's id is its controller."""
    return called_end(house, end)
