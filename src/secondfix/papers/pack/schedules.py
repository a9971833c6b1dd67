"""The switch schedule and the scene schedule of a pack."""

from collections.abc import Iterable, Iterator, Sequence

from secondfix.assumptions import Assumptions
from secondfix.electrical import amperes_between, current_of
from secondfix.findings import Finding
from secondfix.house import ABSENT, EARTH, Duty, Fact, Load, Row, Schedule, is_nec
from secondfix.papers.blocks import (
    Block,
    Cell,
    Sheet,
    column,
    ident,
    lines,
    marked,
    notes,
    para,
    soft,
    strong,
    table,
)
from secondfix.papers.duties import duty_words, rows_of_box
from secondfix.papers.figures import NOT_KNOWN, known_value, watts
from secondfix.papers.pack.wall_boxes import wall_box_blocks
from secondfix.papers.places import device_words, thing_words
from secondfix.scenes import Cell as Crossed
from secondfix.scenes import SceneSchedule, SceneTime, by_room, resolve, scene_schedule
from secondfix.terms import KIND_LABELS, PURPOSES

_SCENES_PER_TABLE = 8


def switch_schedule_sheet(
    schedule: Schedule, answers: Sequence[Finding], assumptions: Assumptions, number: str
) -> Sheet:
    """Every gang of every box, every output that stands elsewhere, then the boxes with their room.

    In NEC houses a load has its current beside its power, as ``current_of`` gives it to the rules.
    """
    nec = is_nec(schedule.house)
    gangs = [r for box in schedule.house.boxes for r in rows_of_box(schedule, box)]
    rows = [_gang_cells(schedule, r, assumptions) for r in gangs]
    rows += list(_outputs(schedule, assumptions))
    columns = [
        column("Gang", mm=17),
        column("Room", fr=1.2),
        column("Device", fr=1.9),
        column("Load", fr=1.7),
        column("Kind", fr=1.5),
        column("Purpose", fr=1.2),
        column("Power, current" if nec else "Power", mm=28 if nec else 22),
        column("Line", mm=19),
        column("Neutral at the mount", mm=25),
        column("Neutral of the load", mm=31),
    ]
    says = (
        "Every gang, what it is for, what it feeds. Line and neutral name the circuits they belong to. A "
        "triangle marks a neutral that is not of the line's circuit: it stays live when that is off."
    )
    blocks = [table(columns, rows), *wall_box_blocks(schedule, answers)]
    return Sheet(number, "Switch schedule", says, blocks)


def _gang_cells(schedule: Schedule, r: Row, assumptions: Assumptions) -> list[Cell]:
    house = schedule.house
    model = soft(device_words(schedule, r.device_id)) if r.device_id and r.channel == 1 else ""
    device = lines(f"{r.device_id} gang {r.channel}", model) if r.device_id else soft("no device chosen")
    loaded = _load_cells(schedule, r.load_id, assumptions) if r.load_id else [soft(""), "", ""]
    name = duty_words(schedule, r)
    words = lines(r.load_id or "", name) if r.gang.duty is Duty.FEEDS else soft(name)
    return [
        ident(r.id),
        house.rooms[r.box.room].name,
        device,
        words,
        *loaded,
        known_value(r.gang.line, r.gang.line.value if r.gang.line else ""),
        _neutral_cell(r.mount.neutral, r.gang.line),
        _neutral_cell(r.load.neutral, r.gang.line) if r.load else "",
    ]


def _neutral_cell(neutral: Fact[str] | None, line: Fact[str] | None) -> Cell:
    """The circuit of a neutral, under the danger's shape where the line is known to be of another."""
    words = known_value(neutral, neutral.value if neutral else "")
    if neutral is None or neutral.value == ABSENT:
        return words
    if neutral.value == EARTH:
        return lines(marked("danger", words), soft("danger: never a neutral"))
    if line is None or neutral.value == line.value:
        return words
    return lines(marked("danger", words), soft(f"danger: line is {line.value}"))


def _outputs(schedule: Schedule, assumptions: Assumptions) -> Iterator[list[Cell]]:
    """Outputs of devices that stand at a place of their own."""
    house = schedule.house
    for device_id, channels in schedule.channels_of.items():
        for c in channels:
            if c.row is None and c.load_id:
                load = house.loads[c.load_id]
                place = house.places[c.place]
                circuit = place.circuit
                yield [
                    ident(f"{device_id}.{c.number}"),
                    house.rooms[place.room].name,
                    lines(thing_words(house, c.place), soft(device_words(schedule, device_id))),
                    lines(c.load_id, load.name),
                    *_load_cells(schedule, c.load_id, assumptions),
                    known_value(circuit, circuit.value if circuit else ""),
                    soft("no mount"),
                    _neutral_cell(load.neutral, circuit),
                ]


def _load_cells(schedule: Schedule, load_id: str, assumptions: Assumptions) -> list[Cell]:
    load = schedule.house.loads[load_id]
    kind = known_value(load.kind, KIND_LABELS[load.kind.value] if load.kind else "")
    purpose = PURPOSES[load.purpose].label if load.purpose else NOT_KNOWN
    power = known_value(load.power_mw, watts(load.power_mw.value) if load.power_mw else "")
    if load.count and load.power_mw:
        power = f"{load.count.value} × {power}"
    if not is_nec(schedule.house):
        return [kind, purpose, power]
    return [kind, purpose, lines(power, soft(_current(schedule, load_id, load, assumptions)))]


def _current(schedule: Schedule, load_id: str, load: Load, assumptions: Assumptions) -> str:
    voltage = schedule.house.mains_voltage_v
    if voltage is None:
        return NOT_KNOWN
    current = current_of(load_id, load, load.name, mains_voltage_v=voltage, assumptions=assumptions)
    return amperes_between(current.low_ma, current.high_ma)


def scene_schedule_sheet(schedule: Schedule, number: str, times: Iterable[SceneTime] = ()) -> Sheet:
    """Causes across, effects down, ledger and times beneath; a note for every crossing that needs one."""
    chart = scene_schedule(resolve(schedule), times)
    blocks: list[Block] = []
    tables = -(-len(chart.columns) // _SCENES_PER_TABLE)
    each = -(-len(chart.columns) // max(tables, 1))
    for n in range(tables):
        blocks.append(_scene_table(schedule, chart, slice(n * each, (n + 1) * each)))
    if not blocks:
        blocks = [para("The house has no scenes.")]
    blocks.append(notes(_scene_notes(schedule, chart)))
    says = (
        "Causes across, effects down. A dot is a load that no rule names; left alone is a load that a rule "
        "would reach and that an exception or its purpose keeps out."
    )
    return Sheet(number, "Scene schedule", says, blocks)


def _scene_table(schedule: Schedule, chart: SceneSchedule, part: slice) -> Block:
    house = schedule.house
    shown = chart.columns[part]
    columns = [column("Room", fr=1.1), column("Effect on load", fr=1.7), column("Purpose", fr=1.3)]
    columns += [column(c.name, fr=1) for c in shown]
    starts: list[Cell] = [
        lines(*(soft(s) for s in c.starts)) if c.starts else soft("no start") for c in shown
    ]
    rows: list[list[Cell]] = [[soft("Starts by"), "", "", *starts]]
    last = ""
    for load_id, cells in by_room(house, chart):
        load = house.loads[load_id]
        room = house.rooms[load.room].name
        purpose = PURPOSES[load.purpose].label if load.purpose else NOT_KNOWN
        effects = [_effect(c) for c in cells[part]]
        rows.append(
            [soft(room if load.room != last else ""), f"{load_id} {load.name}", soft(purpose), *effects]
        )
        last = load.room
    ledger = [
        lines(f"{x.switched} + {x.left_alone} + {x.conflict} + {x.cannot_tell}", f"= {x.loads}")
        for x in (c.ledger for c in shown)
    ]
    rows.append(
        [strong("Ledger"), soft("switched + left alone + conflict + cannot tell = all loads"), "", *ledger]
    )
    if any(c.time for c in shown):
        taken = [lines(*(soft(words) for words in c.time or ())) for c in shown]
        rows.append([strong("Time"), lines(soft("one by one"), soft("as a group")), "", *taken])
    return table(columns, rows)


def _effect(cell: Crossed) -> Cell:
    if cell.words.startswith(("on", "off")):
        return strong(cell.words)
    return marked(cell.shape, cell.words) if cell.noted else soft(cell.words)


def _scene_notes(schedule: Schedule, chart: SceneSchedule) -> list[Block]:
    out: list[Block] = []
    for n, c in enumerate(chart.columns):
        for load_id, cells in chart.rows:
            if cells[n].noted:
                head = f"{c.name} × {load_id} {schedule.house.loads[load_id].name}"
                out.append(
                    {"shape": cells[n].shape, "number": "", "head": head, "says": cells[n].why, "soft": ""}
                )
    return out
