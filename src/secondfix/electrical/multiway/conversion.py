"""From plain switches to one module: what each conductor becomes, what is marked, capped, impossible."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from secondfix.electrical.multiway.as_found import LAMP
from secondfix.electrical.multiway.conductors import (
    Chain,
    Core,
    Plan,
    Role,
    Wish,
    assigned,
    chain_of,
    plan,
)
from secondfix.electrical.multiway.words import MARK_SOURCE, mark_words, point_words
from secondfix.house import Arrangement
from secondfix.terms import WiringRules


@dataclass(frozen=True, slots=True)
class Change:
    """One conductor of one run: what it carried as found, what it carries then, and its mark or cap."""

    a: str
    b: str
    core: Core
    becomes: Role
    mark: str

    @property
    def altered(self) -> bool:
        """Whether somebody has to do anything to it."""
        unused = self.core.was is Role.SPARE and self.becomes is Role.CAPPED
        return self.becomes is not self.core.was and not unused


@dataclass(frozen=True, slots=True)
class Conversion:
    """One way to do it, or why it cannot be done. ``changes`` are empty where it cannot, or nothing joins."""

    chain: Chain
    wish: Wish
    possible: bool
    why_not: str
    changes: tuple[Change, ...]
    source: str
    names: dict[str, str] = field(default_factory=dict)

    def steps(self, *, cores: bool = True) -> tuple[str, ...]:
        """The work in words, in its order; each line is true of this conversion alone.

        Without ``cores`` the lines of single conductors are left to a table of ``changes``.
        """
        return tuple(_steps(self, cores=cores)) if self.possible else (self.why_not,)


def convert(
    arrangement: Arrangement,
    places: int,
    wish: Wish,
    *,
    spare_cores: int = 0,
    rules: WiringRules = WiringRules.IEC,
    names: dict[str, str] | None = None,
) -> Conversion:
    """The conversion of an arrangement to one module at ``wish.module``.

    The others become extension units wired to its input (``wish.inputs``) or radio buttons. ``names``
    gives the gang of each box's number. Legal range: 2 to 8 places. Raises ``ValueError`` for a switched
    neutral. Source: IEC 60445, NEC 200.7(C) for the marks (secondary); common practice, no source, for the
    rest. Left out: whether the model has an input, and how its maker wires it: the sheet rules.
    """
    chain = chain_of(arrangement, places, spare_cores=spare_cores)
    called, source = names or {}, f"{MARK_SOURCE[rules]}; common practice, no source"
    crossing = plan(chain, wish)
    if crossing is None:
        return Conversion(chain, wish, False, _why_not(chain, wish, called), (), source, called)
    return Conversion(chain, wish, True, "", tuple(_changes(chain, crossing, rules)), source, called)


def _changes(chain: Chain, crossing: Plan, rules: WiringRules) -> Iterator[Change]:
    for run, roles in zip(chain.runs, crossing, strict=True):
        for core, becomes in assigned(run, roles):
            change = Change(run.a, run.b, core, becomes, "")
            yield replace(change, mark=mark_words(becomes, rules)) if change.altered else change
        for core in run.kept:
            yield Change(run.a, run.b, core, core.was, "")


def _why_not(chain: Chain, wish: Wish, names: dict[str, str]) -> str:
    """The first thing without which it could be done."""
    at = point_words(wish.module, names)
    if wish.inputs and not chain.runs:
        return "No conductor joins the places: the others can act by radio only."
    if wish.needs_neutral and plan(chain, replace(wish, needs_neutral=False)) is not None:
        return f"No core is left to bring a neutral to {at}: impossible there with a module that needs one."
    if wish.inputs and plan(chain, replace(wish, inputs=frozenset())) is not None:
        return f"Too few cores for extensions wired to a module at {at}: the others can act by radio only."
    if wish.inputs and wish.needs_neutral:
        return f"Too few cores for a neutral and for wired extensions, with the module at {at}."
    return f"Too few cores to bring permanent line to {at} and the switched line to the luminaire."


def alternatives(
    arrangement: Arrangement, places: int, wish: Wish, *, spare_cores: int, names: dict[str, str]
) -> tuple[str, ...]:
    """What can be done instead, in words: first the same kind of module elsewhere, then less of it."""
    chain = chain_of(arrangement, places, spare_cores=spare_cores)
    wired = frozenset(chain.points) - {LAMP}
    found: list[str] = []
    for module in sorted(chain.points, key=lambda p: (p == LAMP, p)):
        for inputs, how in ((wired - {module}, "wired extensions"), (frozenset[str](), "radio buttons")):
            tried = replace(wish, module=module, inputs=inputs)
            if tried != wish and plan(chain, tried) is not None and (inputs or not wish.inputs or not found):
                found.append(f"the module at {point_words(module, names)} with {how}")
    if wish.needs_neutral and plan(chain, replace(wish, needs_neutral=False)) is not None:
        found.append(f"a module at {point_words(wish.module, names)} that needs no neutral")
    return tuple(dict.fromkeys(found))


def _steps(made: Conversion, *, cores: bool) -> Iterator[str]:
    names, wish = made.names, made.wish
    yield "Isolate every circuit in these boxes, lock off, prove dead; note and photograph each terminal."
    boxes = [p for p in made.chain.points if p != LAMP]
    if made.chain.runs:
        yield "Take out the two-way switches (NEC: 3-way)" + (
            " and the intermediate ones (NEC: 4-way)." if len(boxes) > 2 else "."
        )
    for change in made.changes if cores else ():
        yield _change_words(change, names)
    if made.changes and not cores:
        yield "Part, mark and cap the conductors, run by run, as the table has them."
    yield (
        f"At {point_words(wish.module, names)}: the module takes permanent line"
        f"{', neutral' if wish.needs_neutral else ''} and the switched line."
    )
    for point in boxes:
        if point in wish.inputs:
            where = point_words(point, names)
            yield f"At {where}: an extension unit joins permanent line to signal while it is pressed."
        elif point != wish.module:
            yield f"At {point_words(point, names)}: a radio button; it joins no conductor of this light."
    yield "One output feeds the lamp and one circuit feeds it all: no second module, no plain switch in line."
    yield "Prove dead again, close the boxes, then test every place in turn (function test)."


def _change_words(change: Change, names: dict[str, str]) -> str:
    between = f"{point_words(change.a, names)} to {point_words(change.b, names)}"
    if not change.altered:
        return f"{between}: {change.core.name} stays."
    verb = "is" if change.becomes is Role.CAPPED else "becomes"
    return f"{between}: {change.core.name} {verb} {change.becomes.value}; {change.mark}."
