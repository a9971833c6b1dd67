"""Fields of loads: all that the switch schedule has of them, and the rest."""

from secondfix.exchange.switch_sheet import Choice, Figure, Known, Words, YesNo
from secondfix.exchange.things.cells import Several
from secondfix.exchange.things.field import MS, NAME, NOTE, RETURNS, ROOM, TAGS, Field, ThingKind, of_sheet
from secondfix.house import Arrangement, OthersAct
from secondfix.terms import KIND_LABELS

_ARRANGEMENTS = {
    Arrangement.TOGETHER: "line and load together",
    Arrangement.OPPOSITE_ENDS: "line and load at opposite ends",
    Arrangement.SWITCH_LOOP: "switch loop",
    Arrangement.FEED_AT_LUMINAIRE: "feed at the luminaire",
    Arrangement.SWITCHED_NEUTRAL: "switched neutral",
    Arrangement.NOT_JOINED: "not joined",
}
_OTHERS = {
    OthersAct.INPUT: "by its input", OthersAct.RADIO: "by radio", OthersAct.IN_SERIES: "in series",
    OthersAct.IN_PARALLEL: "in parallel",
}  # fmt: skip
_LOAD_OF_SHEET = {f.key: f for f in of_sheet("load")}
LOAD_KIND = ThingKind(
    "load", "loads", "load", "L", (
        NAME,
        ROOM,
        Field("place", "Hangs at", "place", Known("places", "a place")),
        _LOAD_OF_SHEET["purpose"],
        _LOAD_OF_SHEET["kind"],
        _LOAD_OF_SHEET["power"],
        _LOAD_OF_SHEET["count"],
        _LOAD_OF_SHEET["load-neutral"],
        Field(
            "also-kinds", "Beside a transformer, also", "also_kinds",
            Several(Choice({k.value: v for k, v in KIND_LABELS.items()}), ";"), fact=True,
            hint="kinds with semicolons between; none for nothing",
        ),
        Field("factor", "Power factor", "power_factor_permille", Figure("", MS, 3), fact=True),
        Field("inrush", "Inrush peak, A", "inrush_peak_ma", Figure("A", MS, 3), fact=True),
        Field("inrush-width", "Inrush width, µs", "inrush_width_us", Figure("µs"), fact=True),
        Field("transformer", "Transformer, VA", "transformer_va", Figure("VA"), fact=True),
        Field(
            "transformer-least", "Least load of the transformer, W", "transformer_least_mw",
            Figure("W", MS, 3), fact=True,
        ),
        Field("bypass", "Bypass, nF", "bypass_nf", Figure("nF"), fact=True, hint="0 for none"),
        Field("dimmable", "May be dimmed", "dimmable", YesNo(), fact=True),
        Field("to-be-dimmed", "To be dimmed", "to_be_dimmed", YesNo()),
        Field("continuous", "On for 3 h or more", "continuous", YesNo(), fact=True),
        Field("reversing", "Motor that turns both ways", "reversing", YesNo(), fact=True),
        Field("other-direction", "Its other direction", "other_direction", Known("loads", "a load")),
        Field("permanent", "Needs its supply at all times", "permanent_supply", YesNo(), fact=True),
        Field("thermostat", "Thermostat of its own", "own_thermostat", YesNo(), fact=True),
        Field("limit", "Longest time on, s", "time_limit_s", Figure("s")),
        Field("returns", "After a power loss it", "after_power_loss", RETURNS),
        Field(
            "arrangement", "Arrangement, if multi-way", "multiway.arrangement",
            Choice({a.value: words for a, words in _ARRANGEMENTS.items()}), fact=True,
        ),
        Field(
            "places", "Gangs along the conductors", "multiway.gangs", Several(Words(), empty=""),
            hint="in their order, such as B01.1, B11.1",
        ),
        Field(
            "others", "The others act on the one that feeds", "multiway.others",
            Choice({o.value: words for o, words in _OTHERS.items()}), fact=True,
        ),
        Field("spare-cores", "Spare cores", "multiway.spare_cores", Figure(""), fact=True),
        TAGS,
        NOTE,
    ),
)  # fmt: skip
