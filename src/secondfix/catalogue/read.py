"""Read one model from the text of its TOML file: all its faults at once, or the model."""

import re
import tomllib
from dataclasses import dataclass

from pydantic import ValidationError

from secondfix.catalogue.expecting import expected
from secondfix.catalogue.model import Model

_KEY = re.compile(r"^[a-z][a-z0-9-]{1,62}@[1-9][0-9]?$")
LARGEST_FILE_BYTES = 256 * 1024


@dataclass(frozen=True, slots=True)
class ModelFault:
    """One fault: file, place in it, what stands, what was expected."""

    where: str
    path: str
    stands: str
    expected: str


def model_key(text: str) -> str:
    """``text`` if it is shaped as a model key; ValueError if not."""
    if not _KEY.fullmatch(text):
        raise ValueError("expected <maker>-<name>@<edition>")
    return text


def read_model(text: str, *, where: str) -> Model | list[ModelFault]:
    """The model, or every fault of the file. Pure: the caller reads the file."""
    if len(text.encode()) > LARGEST_FILE_BYTES:
        return [ModelFault(where, "", f"{len(text.encode())} bytes", f"at most {LARGEST_FILE_BYTES}")]
    try:
        raw = tomllib.loads(text)
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        return [ModelFault(where, "", "not TOML", str(error))]
    try:
        return Model.model_validate(raw)
    except ValidationError as error:
        return [
            ModelFault(
                where,
                ".".join(str(part) for part in e["loc"]),
                "nothing" if e["type"] == "missing" else repr(e["input"])[:80],
                expected(e),
            )
            for e in error.errors()
        ]
