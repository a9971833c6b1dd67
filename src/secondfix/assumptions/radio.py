"""Assumptions of the radio answers."""

from secondfix.assumptions.assumption import Assumption

ASSUMPTIONS: tuple[Assumption, ...] = ()
