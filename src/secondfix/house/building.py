"""Storeys, rooms, walls, doors and windows (after IFC, ISO 16739-1), and positions.

All lengths are whole millimetres; x to the right and y up on the plan, one origin for the house.
"""

from typing import Annotated

from pydantic import Field, Strict

from secondfix.house.parts import Fact, Id, Name, Part, Tags
from secondfix.terms import LayerMaterial

Coordinate = Annotated[int, Field(ge=-10_000_000, le=10_000_000)]
Point = Annotated[tuple[Coordinate, Coordinate], Strict(False)]
Outline = Annotated[tuple[Point, ...], Strict(False), Field(min_length=3, max_length=500)]


class Position(Part):
    """A point on the plan and its height above the finished floor of its storey."""

    x_mm: Coordinate
    y_mm: Coordinate
    height_mm: int = Field(ge=0, le=12_000)


class Layer(Part):
    """One layer of a wall or floor, outermost first."""

    material: Annotated[LayerMaterial, Strict(False)]
    thickness_mm: int = Field(ge=1, le=2_000)


Layers = Annotated[tuple[Layer, ...], Strict(False), Field(min_length=1, max_length=12)]


class Storey(Part):
    """A storey; ``floor`` is the slab or deck below it, absent where unknown."""

    name: Name
    level_mm: int = Field(ge=-50_000, le=500_000, description="finished floor above the house's datum")
    height_mm: int | None = Field(None, ge=1_500, le=12_000, description="floor to ceiling")
    floor: Fact[Layers] | None = None


class Room(Part):
    """A room; its outline is the inside face of its walls, in order, not closed by repetition."""

    name: Name
    storey: Id | None = None
    outline_mm: Outline | None = None
    tags: Tags = ()


class Wall(Part):
    """A wall as its centre line; ``layers`` from its left face to its right, seen from start to end."""

    storey: Id
    from_mm: Point
    to_mm: Point
    thickness_mm: int | None = Field(None, ge=1, le=3_000)
    layers: Fact[Layers] | None = None


class Opening(Part):
    """A door or window in a wall; ``along_mm`` from the wall's start to the opening's near side."""

    wall: Id
    along_mm: int = Field(ge=0, le=1_000_000)
    width_mm: int = Field(ge=100, le=20_000)
    sill_mm: int = Field(0, ge=0, le=10_000)
    height_mm: int = Field(ge=100, le=10_000)
    leaf: Fact[Layers] | None = None
