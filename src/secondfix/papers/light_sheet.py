"""The sheet of a light worked from several places: cautions, test at the box, drawing, every conductor."""

from collections.abc import Iterator, Sequence

from secondfix.assumptions import Assumptions
from secondfix.electrical import (
    ARRANGEMENTS,
    BETWEEN,
    END_BOX,
    LIVE_TEST,
    QUESTIONS,
    Conversion,
    Light,
    Role,
    Way,
    drawn,
    lights,
    patterns,
    point_words,
    spoken,
)
from secondfix.findings import Finding, Outcome, Severity
from secondfix.house import Arrangement, House, Schedule, is_nec
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    bullets,
    cautions,
    column,
    heading,
    lines,
    para,
    picture,
    soft,
    steps,
    strong,
    table,
    tick_box,
    together,
)
from secondfix.papers.drawing import SHAPE_WORDS, conductor_pictures, shape_of
from secondfix.papers.leaned import leaned_blocks, names_of
from secondfix.papers.palette import PRINT
from secondfix.papers.places import id_words
from secondfix.papers.words import sentence
from secondfix.terms import said_around_names

_PUT_RIGHT = frozenset(
    {
        "borrowed_neutral",
        "earth_as_neutral",
        "multiway_arrangement",
        "multiway_other_circuit",
        "multiway_supply",
        "neutral_circuit",
        "shared_neutral",
        "two_supplies",
    }
)
_MOST_OF_A_TITLE = 40
_MOST_TOGETHER, _MOST_POINTS = 14, 5  # of a conversion that stays on one page: conductors, points
_FIRST = 3  # of group S4: the switch schedule and the sheet of circuits come before them
_STAR = "A star: re-mark it. A bar at both ends: cap it. Numbers are those of the table."


def light_sheets(
    schedule: Schedule,
    findings: Sequence[Finding],
    assumptions: Assumptions,
    *,
    wide: float,
) -> list[tuple[Light, Sheet]]:
    """A sheet for every light worked from several places; their numbers are the same in every paper.

    ``wide`` is the sheet's width inside its frame, in units of 1/96 inch.
    """
    return [
        (light, _sheet(schedule, light, findings, assumptions, number=f"S4/{n:02d}", wide=wide))
        for n, light in enumerate(lights(schedule, assumptions), _FIRST)
    ]


def _sheet(
    schedule: Schedule,
    light: Light,
    findings: Sequence[Finding],
    assumptions: Assumptions,
    *,
    number: str,
    wide: float,
) -> Sheet:
    house = schedule.house
    rules = house.wiring_rules
    own = [f for f in findings if _concerns(f, light)]
    pictures: dict[str, str] = {}
    blocks = [
        _cautions(house, light),
        *_answers(house, own),
        *_test(house, light),
        *_conversion(house, light, own, pictures, wide=wide),
        *_untold(house, light),
        para(_sources(light), style="small"),
        *leaned_blocks(assumptions, names_of(own), nec=is_nec(house)),
    ]
    load = house.loads[light.load_id]
    named = f"{light.load_id} {load.name}, {house.rooms[load.room].name}"
    # A title block holds so much; a longer name stands beneath the title.
    fits = len(named) <= _MOST_OF_A_TITLE
    title = f"{named if fits else light.load_id}: worked from several places"
    name = ARRANGEMENTS[light.arrangement] if light.arrangement else None
    heard = "" if fits else f"{named}. "
    order = ", ".join(light.gangs) or "none is known"
    says = (
        f"{sentence(name.name)[:-1]}: {name.means}."
        if name
        else "How its conductors are arranged is not known."
    )
    where = (
        f"Its places, from the end where line comes in: {order}."
        if light.ordered
        else f"Its places: {order}."
    )
    return Sheet(number, title, f"{heard}{spoken(f'{says} {where}', rules)}", blocks, pictures)


def _concerns(finding: Finding, light: Light) -> bool:
    """Whether a finding of the wiring speaks of this light, or of one of its places."""
    rule = finding.rule
    if "." in rule or not (rule.startswith("multiway") or rule in _PUT_RIGHT):
        return False
    return finding.place in {light.load_id, light.place, *light.gangs} or (
        light.load_id in finding.also and finding.place.split(".")[0] in light.boxes
    )


def _cautions(house: House, light: Light) -> Block:
    named = "; ".join(f"{c} {house.circuits[c].name}" for c in light.circuits) or "none is known yet"
    first = spoken("Isolate every circuit in these boxes, lock off, prove dead.", house.wiring_rules)
    title = f"{first} Known in them: {named}."
    return cautions(title, [spoken(c.words, house.wiring_rules) for c in LIVE_TEST])


def _answers(house: House, own: Sequence[Finding]) -> Iterator[Block]:
    """What the rules answer of this light, by word and shape; nothing where nobody asked."""
    if not own:
        return
    rows: list[list[Cell]] = []
    passed: list[str] = []
    for f in own:
        if f.outcome is Outcome.PASSES:
            passed.append(f"{f.rule} ({id_words(house, f.place)}: {f.value})" if f.value else f.rule)
        else:
            mark: Cell = {"words": SHAPE_WORDS[shape_of(f)], "style": "strong", "shape": shape_of(f)}
            rows.append(
                [mark, id_words(house, f.place), lines(f.says, soft(sentence(f.remedy))), soft(f.rule)]
            )
    yield heading("What is found of it")
    if rows:
        columns = [
            column("Answer", mm=31),
            column("Place", mm=19),
            column("What", fr=1),
            column("Rule", mm=34),
        ]
        yield table(columns, rows, dense=True)
    if passed:
        yield para(f"No fault found: {'; '.join(passed)}.", style="small")


def _test(house: House, light: Light) -> Iterator[Block]:
    """The test at the box: what to ask, what this arrangement answers, room for what was seen."""
    rules = house.wiring_rules
    if light.arrangement is Arrangement.NOT_JOINED:
        yield heading("The test at the box")
        yield para(
            spoken(
                f"{END_BOX} Seen, not measured: no core runs from one of these boxes to another. If one "
                "does, it is another arrangement: nothing is parted before it is told which.",
                rules,
            )
        )
        return
    yield heading("The test at the box" if light.arrangement else "The test at the box, to find which it is")
    yield para(spoken(END_BOX, rules))
    yield para(spoken(QUESTIONS[0].how, rules), style="small")
    yield _questions(house, light)
    if light.arrangement is None:
        yield _patterns()
        yield para(
            spoken(
                "With 1 and 2 exchanged for 3 and 4, the order begins at the other end. Anything else has no "
                f"name: draw what is there, convert nothing. {sentence(BETWEEN[0])[:-1]}: {BETWEEN[1]}.",
                rules,
            ),
            style="small",
        )
    else:
        yield para(
            "Other answers, or none: it is another arrangement. Nothing is parted before it is told which.",
            style="strong",
        )


def _questions(house: House, light: Light) -> Block:
    ends = (light.gangs[0], light.gangs[-1]) if light.ordered else ("one end", "the other end")
    where = (ends[0], ends[0], ends[1], ends[1], "luminaire")
    expected = [answers for answers, arrangement in patterns() if arrangement is light.arrangement]
    rows: list[list[Cell]] = []
    for n, question in enumerate(QUESTIONS):
        must = [strong(_yes_no(answers[n])) for answers in expected]
        asks = spoken(question.asks, house.wiring_rules)
        rows.append([str(n + 1), strong(where[n]), asks, *must, tick_box(), tick_box()])
    heads = ["Expected", "or"][: len(expected)]
    columns = [column("", mm=7), column("At", mm=24), column("Asked", fr=1)]
    columns += [column(head, mm=18 if head == "Expected" else 11) for head in heads]
    columns += [column("Yes", mm=11, align="center"), column("No", mm=11, align="center")]
    return table(columns, rows, row_mm=6.5)


def _patterns() -> Block:
    rows: list[list[Cell]] = []
    for answers, arrangement in patterns():
        danger = arrangement is Arrangement.SWITCHED_NEUTRAL
        name = ARRANGEMENTS[arrangement].name
        told: Cell = strong(name)
        if danger:
            told = {
                "words": f"{name}: danger, rewired before anything else",
                "style": "strong",
                "shape": "danger",
            }
        rows.append([*(_yes_no(a) for a in answers), told])
    columns = [*(column(str(n), mm=12) for n in range(1, len(QUESTIONS) + 1)), column("It is", fr=1)]
    return table(columns, rows, dense=True)


def _yes_no(answer: bool) -> str:
    return "yes" if answer else "no"


def _conversion(
    house: House, light: Light, own: Sequence[Finding], pictures: dict[str, str], *, wide: float
) -> Iterator[Block]:
    """Drawing and conductors of each way; nothing while a danger stands, for it is put right first."""
    dangers = [f for f in own if f.outcome is Outcome.FAILS and f.severity is Severity.DANGER]
    if dangers:
        places = ", ".join(dict.fromkeys(id_words(house, f.place) for f in dangers))
        yield heading("Conversion")
        yield para(
            f"No conversion is drawn while a danger stands at {places}: it is put right first, then this "
            "sheet is printed anew.",
            style="strong",
        )
        return
    if not light.ways:
        yield heading("Conversion")
        yield para("None can be drawn before what is not yet told below is known.", style="strong")
    for n, way in enumerate(light.ways, 1):
        shown = [heading(f"Conversion, {way.words}"), *_way(house, way, pictures, f"way{n}", wide=wide)]
        short = len(way.made.changes) <= _MOST_TOGETHER and len(way.made.chain.points) <= _MOST_POINTS
        yield from [together(shown)] if short else shown


def _way(house: House, way: Way, pictures: dict[str, str], name: str, *, wide: float) -> Iterator[Block]:
    rules = house.wiring_rules
    if not way.made.possible:
        instead = (
            f" Possible instead: {', or '.join(way.instead)}."
            if way.instead
            else " A further core is pulled."
        )
        yield para(f"Impossible. {way.made.why_not}{instead}", style="strong")
        return
    shown = conductor_pictures(drawn(way.made), palette=PRINT, width=wide, say=lambda w: spoken(w, rules))
    for n, one in enumerate(shown, 1):
        pictures[f"{name}-{n}"] = one.svg
        yield picture(f"{name}-{n}", one.alt, width=one.width, height=one.height)
    if way.made.changes:
        yield para(_STAR, style="small")
        yield _conductors(house, way.made)
    else:
        yield para("No conductor joins the boxes: none changes.")
    yield steps([spoken(s, rules) for s in way.made.steps(cores=False)])


def _conductors(house: House, made: Conversion) -> Block:
    """Every conductor: what it was, what it becomes, what is done to it."""
    rules = house.wiring_rules
    rows: list[list[Cell]] = []
    last = ""
    for n, c in enumerate(made.changes, 1):
        run = f"{point_words(c.a, made.names)} to {point_words(c.b, made.names)}"
        becomes = spoken(c.becomes.value, rules)
        is_cap = c.becomes is Role.CAPPED
        if c.altered:
            done = strong(spoken(sentence(c.mark if is_cap else f"re-mark: {c.mark}")[:-1], rules))
        else:
            done = soft("capped, or cap it" if is_cap else "stays")
        named = "" if run == last else sentence(run)[:-1]
        last = run
        cell = strong(becomes) if c.altered else soft(becomes)
        rows.append([str(n), named, spoken(c.core.name, rules), spoken(c.core.was.value, rules), cell, done])
    columns = [
        column("", mm=7),
        column("From, to", fr=1.2),
        column("Conductor", fr=1.1),
        column("As found", fr=1),
        column("Becomes", fr=0.9),
        column("To do at both ends", fr=1.9),
    ]
    return table(columns, rows, dense=True)


def _untold(house: House, light: Light) -> Iterator[Block]:
    if not light.untold:
        return
    yield heading("Not yet told")
    if light.ways:
        yield para("Until it is, each counts at its worst.", style="small")
    nec = is_nec(house)
    yield bullets([sentence(said_around_names(look.words, nec=nec)) for look in light.untold])


def _sources(light: Light) -> str:
    sources = [s for c in LIVE_TEST for s in c.source.split("; ")]
    sources += [s for way in light.ways for s in way.made.source.split("; ")]
    return f"Sources: {'; '.join(dict.fromkeys(sources))}."
