"""Names hold ink: no control characters, no direction overrides, and not nothing at all."""

from collections.abc import Iterator

from secondfix.findings import Finding, Rule, Severity, fails, passes
from secondfix.house import House
from secondfix.naming.folding import composed, folded, unprinted
from secondfix.naming.named import Called

RULE = Rule(
    "names.characters",
    "Does every name show what it holds?",
    "Unicode Standard, general categories Cc, Cf, Zl, Zp (from memory); that a name may not hold them is "
    "common practice, no source",
)


def check(called: Called) -> Iterator[Finding]:
    """One answer per name that a person has written."""
    for place, name in _written(called.schedule.house):
        found = unprinted(name)
        if found:
            yield _unprinted(place, name, found)
        elif not folded(name):
            yield fails(
                RULE,
                Severity.FAULT,
                place,
                "This name is blank.",
                value="no letters",
                limit="a name that can be read",
                remedy="Give it a name.",
            )
        else:
            yield passes(RULE, place, value=name)
    between = unprinted(called.schedule.house.naming.between)
    if between:
        yield _unprinted("house", "between", between)


def _unprinted(place: str, name: str, found: tuple[str, ...]) -> Finding:
    return fails(
        RULE,
        Severity.FAULT,
        place,
        f"The name '{composed(name)}' holds characters that are not printed.",
        value=", ".join(found),
        limit="letters, figures, signs and spaces",
        remedy="Type the name anew.",
    )


def _written(house: House) -> Iterator[tuple[str, str]]:
    named = (
        house.storeys,
        house.rooms,
        house.places,
        house.loads,
        house.networks,
        house.devices,
        house.scenes,
    )
    for collection in named:
        for key, thing in collection.items():
            if thing.name is not None:
                yield key, thing.name
