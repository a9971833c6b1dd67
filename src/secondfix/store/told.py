"""Answers of a save kept beside its edit, so that a save sent twice is answered twice alike."""

from typing import Annotated

from pydantic import Field, TypeAdapter

from secondfix.store.answers import Conflicting, Refused, Saved

Answer = Saved | Conflicting | Refused
_ANSWER: TypeAdapter[Answer] = TypeAdapter(Annotated[Answer, Field(discriminator="kind")])


def told(answer: Answer) -> str:
    """An answer as text."""
    return _ANSWER.dump_json(answer).decode()


def told_again(text: str) -> Answer:
    """The answer again."""
    return _ANSWER.validate_json(text)
