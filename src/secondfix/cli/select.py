"""The verb ``select``."""

from typing import Annotated

import typer

from secondfix.actions.choice_words import BEST_FIRST, NO_HELP, fit_words, spot_words, wanted_words
from secondfix.actions.select import exit_code, leaning, select, selected_as_json
from secondfix.cli.check import UNKNOWN, sign_of
from secondfix.cli.leaning import leaning_text
from secondfix.cli.opening import (
    AsJson,
    Assume,
    FirmFolder,
    HouseFile,
    leave,
    opened,
    print_json,
    refuse,
    verb_app,
)
from secondfix.cli.page import para
from secondfix.findings import Finding, Rule
from secondfix.house import Fault, House
from secondfix.selection import RULES, Doubt, Fit, Help, PlaceChoice, Refusal, Spot
from secondfix.terms import Protocol

app = verb_app()


@app.command()
def run(
    house_file: HouseFile,
    firm_folder: FirmFolder = None,
    place: Annotated[
        list[str] | None, typer.Option("--place", help="Only this box or place; may be given again.")
    ] = None,
    protocol: Annotated[Protocol | None, typer.Option("--protocol", help="Only this protocol.")] = None,
    assume: Assume = None,
    as_json: AsJson = False,
    in_full: Annotated[
        bool, typer.Option("--all", help="Each refusal in its own words, with value, limit and source.")
    ] = False,
) -> None:
    """For every place: which models fit, which rule refuses each other one, and what would help."""
    house, firm = opened(house_file, firm_folder, assume)
    for one in place or ():
        if one not in house.boxes and one not in house.places:
            refuse([Fault("--place", "", f"'{one}'", "the id of a box or place of this house")])
    choices = select(
        house,
        models=firm.models,
        assumptions=firm.assumptions,
        places=place or None,
        protocol=protocol,
    )
    leaned = leaning(house, choices, assumptions=firm.assumptions)
    if as_json:
        print_json(selected_as_json(choices, leaned))
    else:
        print("\n\n".join([as_text(house, choices, in_full=in_full), *leaning_text(house, leaned)]))  # noqa: T201 - the command line prints
    leave(exit_code(choices))


def as_text(house: House, choices: tuple[PlaceChoice, ...], *, in_full: bool = False) -> str:
    """One block of text for each place."""
    if not choices:
        return f"{house.name}: nothing to choose there."
    return "\n\n".join("\n".join(_block(house, choice, in_full=in_full)) for choice in choices)


def _block(house: House, choice: PlaceChoice, *, in_full: bool) -> list[str]:
    spot = choice.spot
    lines = [para(f"{spot_words(house, spot)}. Wanted: {wanted_words(house, spot)}.", hang=4)]
    if choice.fits:
        lines += [f"  Fits ({BEST_FIRST}):", *(para(_fit(f), indent=4, hang=4) for f in choice.fits)]
    else:
        lines.append("  Nothing fits." if not choice.doubts else "  Nothing fits as far as is known.")
    lines += [line for doubt in choice.doubts for line in _doubt(doubt)]
    if choice.refused:
        lines += ["  Refused, by the first rule that does:", *_refused(choice.refused, in_full=in_full)]
    if choice.helps:
        lines += ["  What would help:", *(para(_help(spot, h), indent=4, hang=4) for h in choice.helps)]
    elif not choice.fits and not choice.doubts:
        lines.append(para(NO_HELP, indent=2))
    return lines


def _fit(fit: Fit) -> str:
    advice = f"; {len(fit.advice)} advice: {fit.advice[0].says}" if fit.advice else ""
    return f"{fit.model}{fit_words(fit)}{advice}"


def _doubt(doubt: Doubt) -> list[str]:
    return [
        para(
            f"{UNKNOWN}, {doubt.model} ({', '.join(dict.fromkeys(f.rule for f in doubt.unknown))}):", indent=2
        ),
        *(para(look.words, indent=6, hang=2) for look in doubt.looks),
    ]


def _refused(refused: tuple[Refusal, ...], *, in_full: bool) -> list[str]:
    """What the place asks first, a line a rule; then the electrical rules in their own words."""
    plain = [] if in_full else [line for rule in RULES if (line := _plain(rule, refused))]
    told = {rule.id for rule in RULES} if not in_full else set()
    return plain + _own_words([r for r in refused if r.because.rule not in told])


def _plain(rule: Rule, refused: tuple[Refusal, ...]) -> str:
    models = [r.model for r in refused if r.because.rule == rule.id]
    return para(f"{rule.asks} No ({rule.id}): {', '.join(models)}", indent=4, hang=4) if models else ""


def _own_words(refused: list[Refusal]) -> list[str]:
    """Models that one rule refuses in the same words share a line."""
    groups: dict[tuple[str, str, str, str], list[Refusal]] = {}
    for one in refused:
        f = one.because
        groups.setdefault((f.rule, f.says, f.value, f.limit), []).append(one)
    return [line for ones in groups.values() for line in _group(ones)]


def _group(ones: list[Refusal]) -> list[str]:
    f: Finding = ones[0].because
    told = f"{', '.join(r.model for r in ones)}: {sign_of(f)}, {f.place} ({f.rule}). {f.says}"
    stands = f"stands: {f.value or 'not known'}; limit: {f.limit or 'none'}; source: {f.source}"
    lines = [para(told, indent=4, hang=4), para(stands, indent=8, hang=2)]
    return lines if f.rule.startswith("select.") else [*lines, para(f"do: {f.remedy}", indent=8, hang=2)]


def _help(spot: Spot, one: Help) -> str:
    where = "" if one.place == spot.place else f" at {one.place}"
    return f"{one.words} Then fits{where}: {', '.join(one.fits)}."
