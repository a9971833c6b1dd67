"""The catalogue and the demo houses that come with Secondfix."""

from functools import cache
from importlib.resources import files
from pathlib import Path

from secondfix.catalogue import Model, read_model

DEMO_HOUSES = ("house", "nec-house")


@cache
def shipped_models() -> dict[str, Model]:
    """Every shipped edition by key; a shipped file with a fault is our own fault and raises."""
    models: dict[str, Model] = {}
    for entry in sorted(files("secondfix.catalogue").joinpath("models").iterdir(), key=lambda e: e.name):
        if entry.name.endswith(".toml"):
            model = read_model(entry.read_text(encoding="utf-8"), where=entry.name)
            if isinstance(model, list):
                raise ValueError("; ".join(f"{f.where}: {f.path}: {f.expected}" for f in model))
            models[model.key] = model
    return models


def demo_houses() -> dict[str, bytes]:
    """The documents of the invented demo houses by file name, where they came along with the package."""
    folder = Path(__file__).resolve().parents[3] / "demo"
    return {
        name: (folder / f"{name}.json").read_bytes()
        for name in DEMO_HOUSES
        if (folder / f"{name}.json").is_file()
    }
