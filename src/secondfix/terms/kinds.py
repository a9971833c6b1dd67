"""Kinds of load: what the contact sees.

EN 60669-1:2018 (scope) names five kinds of load: tungsten filament lamp, externally
ballasted lamp, self-ballasted lamp, substantially resistive, motor. A survey names what
hangs on the wire more finely; ``RATING_OF_KIND`` says under which printed rating each falls.
Transformers for extra-low-voltage lamps are rated apart by makers of dimmers (common
practice, no source).
"""

from enum import StrEnum


class RatingKind(StrEnum):
    """The kinds under which a maker prints a rating."""

    RESISTIVE = "resistive"
    TUNGSTEN = "tungsten"
    SELF_BALLASTED = "self_ballasted"
    EXTERNALLY_BALLASTED = "externally_ballasted"
    IRON_TRANSFORMER = "iron_transformer"
    ELECTRONIC_TRANSFORMER = "electronic_transformer"
    MOTOR = "motor"


class Kind(StrEnum):
    """What hangs on the wire, as a survey names it."""

    RESISTIVE = "resistive"
    TUNGSTEN = "tungsten"
    LED_LAMP = "led_lamp"
    LED_DRIVER = "led_driver"
    FLUORESCENT_ELECTRONIC = "fluorescent_electronic"
    FLUORESCENT_IRON = "fluorescent_iron"
    IRON_TRANSFORMER = "iron_transformer"
    ELECTRONIC_TRANSFORMER = "electronic_transformer"
    MOTOR = "motor"


RATING_OF_KIND: dict[Kind, RatingKind] = {
    Kind.RESISTIVE: RatingKind.RESISTIVE,
    Kind.TUNGSTEN: RatingKind.TUNGSTEN,
    Kind.LED_LAMP: RatingKind.SELF_BALLASTED,
    Kind.LED_DRIVER: RatingKind.EXTERNALLY_BALLASTED,
    Kind.FLUORESCENT_ELECTRONIC: RatingKind.EXTERNALLY_BALLASTED,
    Kind.FLUORESCENT_IRON: RatingKind.EXTERNALLY_BALLASTED,
    Kind.IRON_TRANSFORMER: RatingKind.IRON_TRANSFORMER,
    Kind.ELECTRONIC_TRANSFORMER: RatingKind.ELECTRONIC_TRANSFORMER,
    Kind.MOTOR: RatingKind.MOTOR,
}

KIND_LABELS: dict[Kind, str] = {
    Kind.RESISTIVE: "resistive",
    Kind.TUNGSTEN: "tungsten filament lamp",
    Kind.LED_LAMP: "LED lamp with built-in driver",
    Kind.LED_DRIVER: "LED on a separate driver",
    Kind.FLUORESCENT_ELECTRONIC: "fluorescent, electronic ballast",
    Kind.FLUORESCENT_IRON: "fluorescent, iron ballast",
    Kind.IRON_TRANSFORMER: "lamp on an iron-core transformer",
    Kind.ELECTRONIC_TRANSFORMER: "lamp on an electronic transformer",
    Kind.MOTOR: "motor",
}
