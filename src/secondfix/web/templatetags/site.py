"""Small look-ups for the templates of the journal."""

from collections.abc import ItemsView, Mapping

from django import template

register = template.Library()


@register.filter
def of(lists: Mapping[str, Mapping[str, str]], name: str) -> ItemsView[str, str]:
    """The choices of one list by its name."""
    return lists[name].items()


@register.filter
def spaced(word: str) -> str:
    """A word of the code as people read it."""
    return str(word).replace("_", " ")
