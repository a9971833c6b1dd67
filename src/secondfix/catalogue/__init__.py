"""Models of switches and other devices: what each can do and how it is joined, reset, removed."""

from secondfix.catalogue.expecting import expected
from secondfix.catalogue.model import (
    CodeKind,
    Edge,
    Form,
    Model,
    NeutralNeed,
    Output,
    Peak,
    PowerLoss,
    Rating,
    Removal,
    Stated,
    Supply,
    WholeSwitches,
)
from secondfix.catalogue.procedure import Act, Procedure, Step
from secondfix.catalogue.read import model_key, read_model
from secondfix.catalogue.toml_text import ModelFault, read_toml, shown

__all__ = [
    "Act",
    "CodeKind",
    "Edge",
    "Form",
    "Model",
    "ModelFault",
    "NeutralNeed",
    "Output",
    "Peak",
    "PowerLoss",
    "Procedure",
    "Rating",
    "Removal",
    "Stated",
    "Step",
    "Supply",
    "WholeSwitches",
    "expected",
    "model_key",
    "read_model",
    "read_toml",
    "shown",
]
