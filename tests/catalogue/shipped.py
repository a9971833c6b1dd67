"""The shipped models, read from their files for the tests of this folder."""

from pathlib import Path

from secondfix.catalogue import Model, read_model

FOLDER = Path(__file__).resolve().parents[2] / "src" / "secondfix" / "catalogue" / "models"


def texts() -> dict[str, str]:
    """The text of every model file by its name without the ending."""
    return {path.stem: path.read_text(encoding="utf-8") for path in sorted(FOLDER.glob("*.toml"))}


def shipped() -> dict[str, Model]:
    """Every shipped model by its file's name; a file with faults fails the test that asks."""
    models = {}
    for name, text in texts().items():
        model = read_model(text, where=name)
        assert isinstance(model, Model), "\n".join(map(str, model))
        models[name] = model
    return models
