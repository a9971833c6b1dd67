"""The sheet of circuits: breaker, label, what hangs on each, the sum against its limit, what is open."""

from collections.abc import Iterator, Sequence

from secondfix.assumptions import Assumptions
from secondfix.electrical import CircuitSum, circuit_sums
from secondfix.findings import Finding
from secondfix.house import Circuit, House, Schedule, is_nec, settled
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    column,
    ident,
    lines,
    marked,
    para,
    soft,
    strong,
    table,
)
from secondfix.papers.drawing import SHAPE_WORDS, Keynote, keynotes
from secondfix.papers.figures import NOT_KNOWN, known_value, watts
from secondfix.papers.leaned import leaned_blocks, names_of
from secondfix.papers.places import id_words
from secondfix.terms import WiringRules, said

_RULE = "circuit_load"


def circuits_sheet(
    schedule: Schedule, answers: Sequence[Finding], assumptions: Assumptions, number: str
) -> Sheet:
    """One row a circuit; a residual-current device is written in, for no house document holds one."""
    house = schedule.house
    nec = is_nec(house)
    sums = circuit_sums(schedule, assumptions)
    notes = keynotes(answers)
    rows = [
        _row(schedule, circuit_id, sums.get(circuit_id), answers, _own(notes, circuit_id))
        for circuit_id in house.circuits
    ]
    columns = [
        column("Circuit", fr=1.3),
        column("Breaker", mm=26),
        column("GFCI, AFCI seen" if nec else "RCD seen", mm=16),
        column(said("Board label", nec=nec), fr=1.2),
        column("Loads", fr=2),
        column("Sum against limit", fr=1.5),
        column("Places on it", fr=1.6),
        column("Open", fr=1.4),
    ]
    leaned = {name for total in sums.values() for name in total.assumptions}
    leaned |= set(names_of(n.finding for n in notes if _names_a_circuit(house, n.finding)))
    blocks: list[Block] = [table(columns, rows)] if rows else [para("No circuit is stated.")]
    return Sheet(number, "Circuits", _says(house), [*blocks, *leaned_blocks(assumptions, leaned, nec=nec)])


def _says(house: House) -> str:
    device = "A ground-fault or arc-fault interrupter" if is_nec(house) else "A residual-current device"
    limit = {
        WiringRules.NEC: "what runs three hours or more counts 125 %, against the breaker (NEC 210.20(A))",
        WiringRules.IEC: "the sum of currents against the breaker's rated current",
        None: "the wiring rules are not known, so what runs for hours may count 125 %",
    }[house.wiring_rules]
    look = said("look at the board and write it in", nec=is_nec(house))
    return (
        f"Limit: {limit}. {device} is not in the house's document: {look}. "
        "What is open bears the number of the list of what is open."
    )


def _row(
    schedule: Schedule,
    circuit_id: str,
    total: CircuitSum | None,
    answers: Sequence[Finding],
    own: Sequence[Keynote],
) -> list[Cell]:
    house = schedule.house
    circuit = house.circuits[circuit_id]
    return [
        lines(ident(circuit_id), circuit.name, *(soft(w) for w in _feeding(circuit))),
        _breaker(circuit),
        "",
        _label(house, circuit),
        _loads(house, circuit, total),
        _sum(circuit_id, total, answers),
        _places(schedule, circuit_id),
        lines(*(_open(house, note) for note in own)) if own else soft("nothing known"),
    ]


def _feeding(circuit: Circuit) -> Iterator[str]:
    """Phase, feeder and shared neutral, where they are stated."""
    if circuit.phase:
        yield f"phase {known_value(circuit.phase, circuit.phase.value)}"
    if circuit.feeder:
        yield f"fed by {known_value(circuit.feeder, circuit.feeder.value)}"
    shared = settled(circuit.shares_neutral_with)
    if shared:
        together = settled(circuit.opens_together)
        how = {
            True: "open together",
            False: "do not open together",
            None: "whether both open together: not known",
        }
        yield f"shares its neutral with {', '.join(shared)}; {how[together]}"


def _breaker(circuit: Circuit) -> Cell:
    rated, curve = circuit.breaker_a, circuit.curve
    letter = curve.value if curve else ""
    words = known_value(
        rated, f"{letter}{rated.value}" if letter and rated else f"{rated.value} A" if rated else ""
    )
    meaning = soft(f"{rated.value} A, curve {letter}") if letter and rated else ""
    return lines(strong(words), meaning) if rated else words


def _label(house: House, circuit: Circuit) -> Cell:
    words = f"“{circuit.label}”" if circuit.label else NOT_KNOWN
    if circuit.label_rooms is None:
        return lines(words, soft("rooms that it names: not known"))
    rooms = ", ".join(house.rooms[r].name for r in circuit.label_rooms) or "no room"
    return lines(words, soft(f"names {rooms}"))


def _loads(house: House, circuit: Circuit, total: CircuitSum | None) -> Cell:
    listed = []
    for load_id in total.load_ids if total else ():
        load = house.loads[load_id]
        power = watts(load.power_mw.value) if load.power_mw else NOT_KNOWN
        times = f"{load.count.value} × " if load.count and load.count.value > 1 and load.power_mw else ""
        listed.append(f"{load_id} {load.name} {times}{power}")
    other = circuit.other_load_ma
    beside = known_value(other, f"{other.value / 1000:g} A" if other else "")
    return lines("; ".join(listed) or soft("no load of this house"), soft(f"beside them: {beside}"))


def _sum(circuit_id: str, total: CircuitSum | None, answers: Sequence[Finding]) -> Cell:
    """The sum and its limit, and what the rule answers: three answers, or that it was not asked."""
    if total is None:
        return lines(marked("cannot_tell", "Cannot tell"), soft("the mains voltage is not known"))
    told = next((f for f in answers if f.rule == _RULE and f.place == circuit_id), None)
    figures = (strong(total.value), f"limit: {total.limit}")
    if told is None and total.high_ma is None:
        return lines(
            *figures, marked("cannot_tell", "Cannot tell"), soft("what else hangs on it is not stated")
        )
    if told is None:
        return lines(*figures, soft("not asked: no load of this house"))
    shape = told.severity.value if told.outcome.value == "fails" and told.severity else told.outcome.value
    word = SHAPE_WORDS[shape]
    return lines(*figures, soft(word) if shape == "passes" else marked(shape, word))


def _places(schedule: Schedule, circuit_id: str) -> Cell:
    """Gangs by their line, mounts by their neutral, places by their circuit."""
    house = schedule.house
    gangs = [r.id for r in schedule.rows.values() if settled(r.gang.line) == circuit_id]
    neutrals = [
        f"{box_id}/{mount_id}"
        for box_id, box in house.boxes.items()
        for mount_id, mount in box.mounts.items()
        if settled(mount.neutral) == circuit_id
    ]
    lined = {g.split(".")[0] for g in gangs}
    only_neutral = [n for n in neutrals if n.split("/")[0] not in lined]
    places = [p for p, place in house.places.items() if settled(place.circuit) == circuit_id]
    return (
        lines(
            f"line: {', '.join(gangs)}" if gangs else "",
            f"neutral alone: {', '.join(only_neutral)}" if only_neutral else "",
            f"points: {', '.join(places)}" if places else "",
        )
        if gangs or only_neutral or places
        else soft("none known")
    )


def _own(notes: Sequence[Keynote], circuit_id: str) -> list[Keynote]:
    """What is open at the circuit itself, or names it."""
    return [n for n in notes if n.finding.place == circuit_id or circuit_id in n.finding.also]


def _names_a_circuit(house: House, finding: Finding) -> bool:
    return finding.place in house.circuits or any(i in house.circuits for i in finding.also)


def _open(house: House, note: Keynote) -> Cell:
    words = f"{SHAPE_WORDS[note.shape]}, {id_words(house, note.finding.place)}"
    return {"words": words, "style": "", "shape": note.shape, "number": str(note.number)}
