"""The cautions of the sheets that lead to hands in a wall box."""

from django import template

from secondfix.house import House
from secondfix.web.frame.cautions import before_box

register = template.Library()


@register.simple_tag
def caution(house: House) -> str:
    """What comes before a box is opened, in the words of the house."""
    return before_box(house)
