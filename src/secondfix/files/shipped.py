"""The catalogue that comes with Secondfix."""

from functools import cache
from importlib.resources import files

from secondfix.catalogue import Model, read_model


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
