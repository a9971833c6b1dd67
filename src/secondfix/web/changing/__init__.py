"""Changes to a house: from a form to an edit, and what to do where two people changed one field."""

from secondfix.web.changing.taking import answered, number_of, take, tried

__all__ = ["answered", "number_of", "take", "tried"]
