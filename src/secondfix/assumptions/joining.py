"""Assumptions of the joining order and worksheets."""

from secondfix.assumptions.assumption import Assumption

ASSUMPTIONS: tuple[Assumption, ...] = (
    Assumption(
        "parent_margin_db",
        10,
        10,
        10,
        "dB",
        "margin, after spread, that a link to a parent must keep at the moment of joining",
        "common practice, no source; firm setting",
    ),
)
