"""The base of every part of a model: frozen, strict, unknown keys refused."""

from pydantic import BaseModel, ConfigDict


class Part(BaseModel):
    """Frozen and strict; enumerated words are given by their value."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True)
