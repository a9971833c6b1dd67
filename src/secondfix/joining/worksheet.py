"""A worksheet: one device, one sheet to stand before it with."""

from dataclasses import dataclass

from secondfix.catalogue import CodeKind
from secondfix.joining.steps import Mark
from secondfix.joining.usual_cautions import Caution
from secondfix.joining.when_nothing import Try


@dataclass(frozen=True, slots=True)
class CodeLine:
    """The code to capture before fitting; ``key_ref`` is the key ring's number, never the code."""

    kind: CodeKind
    words: str
    printed_at: str
    key_ref: str | None


@dataclass(frozen=True, slots=True)
class EntryRow:
    """One entry that must appear: what it stands for, its endpoint where the protocol numbers it, its
    name and purpose to set, and what to mind."""

    label: str
    endpoint: int | None
    name: str
    purpose: str
    note: str


@dataclass(frozen=True, slots=True)
class FunctionTestRow:
    """One line of the function test: what to press, and what must answer."""

    label: str
    press: str
    answer: str


@dataclass(frozen=True, slots=True)
class Worksheet:
    """All that one device asks of whoever fits and joins it.

    ``number`` counts worksheets in walk order; ``stage`` is that of joining (``stage_words``). ``joins`` is
    false for an extension unit, which has no radio: ``extending`` then says what it extends and by which
    core, and all that speaks of joining is empty.
    ``circuits`` and ``isolate`` are the whole group that is isolated when it is fitted. ``removal``
    begins with when it is asked for; a sentence there that ends in a colon leads a block of its own.
    Sentences are complete; an empty tuple means that nothing is asked. ``entries_expected`` is None
    where the model is not known.
    """

    number: int
    stage: int
    device: str
    device_title: str
    place: str
    place_title: str
    where: str
    circuits: tuple[str, ...]
    isolate: str
    cautions: tuple[Caution, ...]
    code: CodeLine | None
    joins: bool
    extending: tuple[str, ...]
    removal: tuple[str, ...]
    window: tuple[str, ...]
    procedure: tuple[str, ...]
    through: str
    time: str
    entries_expected: int | None
    entries_words: str
    entries: tuple[EntryRow, ...]
    tell_apart: tuple[str, ...]
    power_loss: str
    time_limits: tuple[str, ...]
    when_nothing: tuple[Try, ...]
    tests: tuple[FunctionTestRow, ...]
    marks: tuple[Mark, ...]
