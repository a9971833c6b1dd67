"""The things of a house, each as a form that is filled in: what may be stated of it, as texts and back."""

from secondfix.exchange.things.field import Field, ThingKind
from secondfix.exchange.things.fields import KINDS, fields_of, kind_of
from secondfix.exchange.things.reading import begun, next_id, shown_thing, thing_changes
from secondfix.exchange.things.telling import ToldField, told_field

__all__ = [
    "KINDS",
    "Field",
    "ThingKind",
    "ToldField",
    "begun",
    "fields_of",
    "kind_of",
    "next_id",
    "shown_thing",
    "thing_changes",
    "told_field",
]
