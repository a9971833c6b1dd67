"""Ask every bench file for its figures: python -m bench.run out/bench.json [part of a name]."""

from __future__ import annotations

import importlib
import json
import sys
from pathlib import Path

from bench.figures import REGISTER, Figure, Register


def bench_modules() -> list[str]:
    """The files of this folder called bench_*.py, in the order of their names."""
    return [f"bench.{path.stem}" for path in sorted(Path(__file__).parent.glob("bench_*.py"))]


def measured(register: Register, part: str = "") -> list[Figure]:
    """Every figure whose name holds `part`, printed as it comes."""
    figures = []
    for name in register.names():
        if part in name:
            figures.append(register.measure(name))
            print(row(figures[-1]), flush=True)
    return figures


def row(figure: Figure) -> str:
    json_row = figure.as_json()
    value, baseline, ratio = (json_row[key] for key in ("value", "baseline", "ratio"))
    return f"{value:>10} {figure.unit:<6} {baseline:>10} {ratio:>8} x  {figure.name}"


def main(target: Path, part: str = "") -> None:
    for module in bench_modules():
        importlib.import_module(module)
    print(f"{'value':>10} {'unit':<6} {'baseline':>10} {'ratio':>8}    figure")
    figures = measured(REGISTER, part)
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_text(json.dumps([figure.as_json() for figure in figures], indent=2) + "\n", encoding="utf-8")
    print(f"{len(figures)} figures in {target}")


if __name__ == "__main__":
    main(Path(sys.argv[1]), *sys.argv[2:3])
