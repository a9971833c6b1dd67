"""Materials of walls and floors, boxes, plates and finishes."""

from enum import StrEnum


class LayerMaterial(StrEnum):
    """A layer of a wall or floor: the rows of ITU-R P.2040 that dwellings use, air and metal."""

    CONCRETE = "concrete"
    BRICK = "brick"
    PLASTERBOARD = "plasterboard"
    WOOD = "wood"
    GLASS = "glass"
    CEILING_BOARD = "ceiling_board"
    CHIPBOARD = "chipboard"
    PLYWOOD = "plywood"
    FLOORBOARD = "floorboard"
    MARBLE = "marble"
    METAL = "metal"
    AIR = "air"


class ShellMaterial(StrEnum):
    """What a wall box is made of."""

    PLASTIC = "plastic"
    METAL = "metal"


class PlateMaterial(StrEnum):
    """What the plate over a wall box is made of."""

    PLASTIC = "plastic"
    GLASS = "glass"
    METAL = "metal"


class Finish(StrEnum):
    """What surrounds a wall box."""

    PLASTER = "plaster"
    TILE = "tile"
    TIMBER = "timber"
    BARE_BRICK = "bare_brick"
    FOIL_PAPER = "foil_paper"
