"""Freeze what sionna-rt, a general ray tracer, says of slabs and of a small house: see README.md beside it.

    python make_numbers.py numbers.json

It imports nothing of this project; the test reads the file that it writes.
"""

import json
import math
import sys
from itertools import pairwise
from pathlib import Path
from typing import Any

import drjit as dr
import mitsuba as mi
from sionna import rt
from sionna.rt.radio_materials.itu import ITU_MATERIALS_PROPERTIES
from sionna.rt.utils import itu_coefficients_single_layer_slab

FREQUENCIES_MHZ = (868.4, 908.4, 2440.0)
ANGLES_DEG = (0, 30, 60)
LIGHT_M_PER_S = 299_792_458.0
VACUUM_PERMITTIVITY = 8.854_187_8188e-12  # F/m, CODATA 2022
DEEPEST = 8  # surfaces that a path may pass
RAYS = 1_000_000
SEED = 7

Layer = tuple[str, float]  # material, a row of the ray tracer's table; thickness in mm
Corners = list[tuple[float, float, float]]  # in metres

LAYERS: tuple[Layer, ...] = (
    ("plasterboard", 12.5),
    ("plasterboard", 25),
    ("brick", 100),
    ("brick", 115),
    ("brick", 240),
    ("concrete", 100),
    ("concrete", 150),
    ("concrete", 160),
    ("glass", 6),
    ("wood", 40),
    ("chipboard", 22),
    ("plywood", 18),
    ("ceiling_board", 15),
    ("floorboard", 22),
    ("marble", 20),
)

# An invented house, in mm: ten walls from floor to floor, two of them askew; two doors, two panes, a floor.
STOREY_MM = 2800
STOREYS = {"S0": 0, "S1": STOREY_MM}
FLOOR: dict[str, Any] = {
    "layer": ("concrete", 160),
    "from_mm": (-1000, -1000),
    "to_mm": (12200, 9400),
}
WALLS: dict[str, dict[str, Any]] = {
    key: {"storey": storey, "from_mm": start, "to_mm": end, "layer": layer}
    for key, storey, start, end, layer in (
        ("W1", "S0", (3000, 0), (3000, 8400), ("brick", 115)),
        ("W2", "S0", (6600, 0), (6600, 4300), ("concrete", 150)),
        ("W3", "S0", (3000, 4300), (11200, 4300), ("plasterboard", 25)),
        ("W4", "S0", (7900, 4300), (7900, 8400), ("brick", 240)),
        ("W5", "S0", (0, 2900), (3000, 2100), ("glass", 6)),
        ("W6", "S1", (0, 3700), (11200, 3700), ("brick", 115)),
        ("W7", "S1", (4100, 3700), (4100, 8400), ("plasterboard", 25)),
        ("W8", "S1", (8300, 3700), (8300, 8400), ("chipboard", 22)),
        ("W9", "S1", (5600, 0), (5600, 3700), ("concrete", 100)),
        ("W10", "S1", (0, 1500), (5600, 2600), ("plywood", 18)),
    )
}
# Along the wall from its start, width, sill above the storey's floor, height.
OPENINGS: dict[str, dict[str, Any]] = {
    key: {
        "wall": wall,
        "along_mm": along,
        "width_mm": width,
        "sill_mm": sill,
        "height_mm": height,
        "layer": layer,
    }
    for key, wall, along, width, sill, height, layer in (
        ("D1", "W1", 5200, 900, 0, 2000, ("wood", 40)),
        ("D2", "W6", 5000, 900, 0, 2000, ("wood", 40)),
        ("G1", "W6", 9000, 1300, 900, 1200, ("glass", 6)),
        ("G2", "W3", 5300, 800, 0, 2000, ("glass", 6)),
    )
}
# Storey, x, y, height above its floor.
DEVICES = {
    "P1": ("S0", 713, 1127, 1150),
    "P2": ("S0", 1409, 6211, 350),
    "P3": ("S0", 4331, 911, 1430),
    "P4": ("S0", 5717, 3209, 1090),
    "P5": ("S0", 9803, 2017, 2210),
    "P6": ("S0", 5171, 7307, 1130),
    "P7": ("S0", 10103, 6737, 410),
    "P8": ("S1", 1013, 613, 1170),
    "P9": ("S1", 2213, 7013, 1310),
    "P10": ("S1", 6107, 5903, 2290),
    "P11": ("S1", 9907, 7517, 370),
    "P12": ("S1", 8009, 1319, 1110),
}


def electrical(material: str, *, mhz: float) -> tuple[float, float]:
    """Relative permittivity and conductivity; by hand, since the ray tracer refuses what it extrapolates."""
    rows = ITU_MATERIALS_PROPERTIES[material]
    a, b, c, d = rows[min(rows)]
    return a * (mhz / 1000) ** b, c * (mhz / 1000) ** d


def slab_losses(layer: Layer) -> list[list[float]]:
    """Rows of MHz, degrees from the normal, loss in dB across (TE) and within (TM) the plane of incidence."""
    out = []
    for mhz in FREQUENCIES_MHZ:
        real, conductivity = electrical(layer[0], mhz=mhz)
        eta = mi.Complex2f(real, -conductivity / (2 * math.pi * mhz * 1e6 * VACUUM_PERMITTIVITY))
        for angle in ANGLES_DEG:
            *_, te, tm = itu_coefficients_single_layer_slab(
                mi.Float(math.cos(math.radians(angle))),
                eta,
                mi.Float(layer[1] / 1000),
                mi.Float(LIGHT_M_PER_S / (mhz * 1e6)),
            )
            powers = (float(dr.squared_norm(through)[0]) for through in (te, tm))
            out.append([mhz, angle, *(round(-10 * math.log10(power), 4) for power in powers)])
    return out


def panels() -> list[tuple[str, Corners, Layer]]:
    """Walls cut at their openings, the openings, and the floor."""
    out: list[tuple[str, Corners, Layer]] = []
    for key, wall in WALLS.items():
        low, high = STOREYS[wall["storey"]], STOREYS[wall["storey"]] + STOREY_MM
        edges: list[float] = [0]
        for name, o in OPENINGS.items():
            if o["wall"] != key:
                continue
            near, far = o["along_mm"], o["along_mm"] + o["width_mm"]
            foot, head = low + o["sill_mm"], low + o["sill_mm"] + o["height_mm"]
            edges += [near, far]
            out.append((name, upright(wall, near, far, foot, head), o["layer"]))
            out.append((f"{key}-above-{name}", upright(wall, near, far, head, high), wall["layer"]))
            if foot > low:
                out.append((f"{key}-below-{name}", upright(wall, near, far, low, foot), wall["layer"]))
        edges.append(math.dist(wall["from_mm"], wall["to_mm"]))
        for near, far in list(pairwise(edges))[::2]:
            out.append((f"{key}-from-{near}", upright(wall, near, far, low, high), wall["layer"]))
    (x1, y1), (x2, y2) = FLOOR["from_mm"], FLOOR["to_mm"]
    corners = [(x / 1000, y / 1000, STOREY_MM / 1000) for x, y in ((x1, y1), (x2, y1), (x2, y2), (x1, y2))]
    return [*out, ("floor", corners, FLOOR["layer"])]


def upright(wall: dict[str, Any], near: float, far: float, foot: float, head: float) -> Corners:
    """Corners of a stretch of a wall, all in mm."""
    (x1, y1), (x2, y2) = wall["from_mm"], wall["to_mm"]
    long = math.dist((x1, y1), (x2, y2))
    (xa, ya), (xb, yb) = ((x1 + (x2 - x1) * at / long, y1 + (y2 - y1) * at / long) for at in (near, far))
    places = ((xa, ya, foot), (xb, yb, foot), (xb, yb, head), (xa, ya, head))
    return [(x / 1000, y / 1000, z / 1000) for x, y, z in places]


def rectangle(name: str, corners: Corners, material: Any) -> Any:
    """Two triangles between four corners."""
    mesh = mi.Mesh(name, 4, 2)
    kept = mi.traverse(mesh)
    kept["vertex_positions"] = mi.Float([at for corner in corners for at in corner])
    kept["faces"] = mi.UInt32([0, 1, 2, 0, 2, 3])
    kept.update()
    return rt.SceneObject(mi_mesh=mesh, name=name, radio_material=material)


def scene_at(mhz: float) -> Any:
    """The house with a sender and a receiver at each device: all directions alike, upright polarisation."""
    scene = rt.load_scene()
    scene.frequency = mhz * 1e6
    materials: dict[Layer, Any] = {}
    for name, corners, layer in panels():
        if layer not in materials:
            real, conductivity = electrical(layer[0], mhz=mhz)
            materials[layer] = rt.RadioMaterial(
                f"{layer[0]}-{layer[1]}",
                thickness=layer[1] / 1000,
                relative_permittivity=real,
                conductivity=conductivity,
            )
        scene.edit(add=[rectangle(name, corners, materials[layer])])
    plain = {"num_rows": 1, "num_cols": 1, "pattern": "iso", "polarization": "V"}
    scene.tx_array, scene.rx_array = rt.PlanarArray(**plain), rt.PlanarArray(**plain)
    for name, (storey, x, y, height) in DEVICES.items():
        at = mi.Point3f(x / 1000, y / 1000, (STOREYS[storey] + height) / 1000)
        scene.add(rt.Receiver(f"at-{name}", position=at))
        scene.add(rt.Transmitter(f"from-{name}", position=at))
    return scene


def link_losses(mhz: float) -> dict[str, dict[str, float | None]]:
    """Loss in dB from each device (outer key) to each other; null where no path comes back.

    Refraction alone: waves go straight through, none is thrown back. A second path would raise an error.
    """
    found = rt.PathSolver()(
        scene_at(mhz),
        max_depth=DEEPEST,
        samples_per_src=RAYS,
        los=True,
        specular_reflection=False,
        refraction=True,
        seed=SEED,
    )
    real, imaginary = (part.numpy()[:, 0, :, 0, :] for part in found.a)
    power = (real**2 + imaginary**2) * found.valid.numpy().reshape(real.shape)
    out: dict[str, dict[str, float | None]] = {}
    for t, sender in enumerate(DEVICES):
        out[sender] = {}
        for r, receiver in enumerate(DEVICES):
            one = power[r, t][power[r, t] > 0]
            if len(one) > 1:
                raise RuntimeError(f"{len(one)} paths from {sender} to {receiver}: refraction gives one")
            if t != r:
                out[sender][receiver] = round(-10 * math.log10(one[0]), 4) if len(one) else None
    return out


def by_lines(numbers: dict[str, dict[str, Any]]) -> str:
    """JSON with a line for each inner entry."""
    blocks = []
    for key, entries in numbers.items():
        lines = (f"  {json.dumps(name)}: {json.dumps(entry)}" for name, entry in entries.items())
        blocks.append(f" {json.dumps(key)}: {{\n" + ",\n".join(lines) + "\n }")
    return "{\n" + ",\n".join(blocks) + "\n}\n"


def main(target: Path) -> None:
    """Compute and write."""
    numbers: dict[str, dict[str, Any]] = {
        "made_by": {"sionna-rt": rt.__version__, "mitsuba": mi.__version__, "drjit": dr.__version__},
        "storeys_mm": STOREYS,
        "floors": {"S1": FLOOR},
        "walls": WALLS,
        "openings": OPENINGS,
        "devices": DEVICES,
        "slabs": {f"{material} {mm:g}": slab_losses((material, mm)) for material, mm in LAYERS},
    }
    for mhz in FREQUENCIES_MHZ:
        numbers[f"links_{mhz:g}"] = link_losses(mhz)
    target.write_text(by_lines(numbers), encoding="utf-8")


if __name__ == "__main__":
    main(Path(sys.argv[1]))
