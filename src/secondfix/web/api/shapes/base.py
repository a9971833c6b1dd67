"""What every shape has in common: no key beside those it names, while clients are told that more may come."""

from typing import Any

from pydantic import BaseModel, ConfigDict


def _open(schema: dict[str, Any]) -> None:
    schema.pop("additionalProperties", None)


class Shape(BaseModel):
    """One object of an answer, as docs/json.md describes it."""

    model_config = ConfigDict(extra="forbid", json_schema_extra=_open)
