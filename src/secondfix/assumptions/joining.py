"""Assumptions of the joining order and worksheets."""

from secondfix.assumptions.assumption import Assumption

_CP = "common practice, no source"

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption(
        "parent_margin_db",
        10,
        10,
        10,
        "dB",
        "margin, after spread, that a link to a parent must keep at the moment of joining",
        f"{_CP}; firm setting",
        least=0,
        most=60,
    ),
    Assumption(
        "storey_change_m",
        15,
        8,
        30,
        "m",
        "walking that one storey up or down costs, stairs and the way to them",
        _CP,
        least=0,
        most=1_000,
    ),
    Assumption(
        "room_change_m",
        6,
        2,
        15,
        "m",
        "walking between two rooms of one storey where a position is not known",
        _CP,
        least=0,
        most=1_000,
    ),
)
