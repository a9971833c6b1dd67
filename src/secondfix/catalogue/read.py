"""Read one model from the text of its TOML file: all its faults at once, or the model."""

import re

from pydantic import ValidationError
from pydantic_core import ErrorDetails

from secondfix.catalogue.expecting import expected
from secondfix.catalogue.model import Model
from secondfix.catalogue.toml_text import ModelFault, read_toml, shown

_KEY = re.compile(r"^[a-z][a-z0-9-]{1,62}@[1-9][0-9]?$")


def model_key(text: str) -> str:
    """``text`` if it is shaped as a model key; ValueError if not."""
    if not _KEY.fullmatch(text):
        raise ValueError("expected <maker>-<name>@<edition>")
    return text


def read_model(text: str | bytes, *, where: str) -> Model | list[ModelFault]:
    """The model, or every fault of the file. Pure: the caller reads the file."""
    raw = read_toml(text.encode() if isinstance(text, str) else text, where=where)
    if isinstance(raw, ModelFault):
        return [raw]
    try:
        return Model.model_validate(raw)
    except ValidationError as error:
        return [fault for e in _own(error.errors()) for fault in _faults(e, where)]


def _own(errors: list[ErrorDetails]) -> list[ErrorDetails]:
    """Without the lists that are short only because what stands in them has faults of its own."""
    within = {e["loc"][:n] for e in errors for n in range(1, len(e["loc"]))}
    return [e for e in errors if e["type"] != "too_short" or e["loc"] not in within]


def _faults(e: ErrorDetails, where: str) -> list[ModelFault]:
    """One for each line that is told: what the keys say together stands for the file as a whole."""
    path = ".".join(str(part) for part in e["loc"])
    whole = "what the keys say together"
    stands = "nothing" if e["type"] == "missing" else shown(e["input"]) if path else whole
    return [ModelFault(where, path, stands, line) for line in expected(e).splitlines()]
