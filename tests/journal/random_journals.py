"""Random journals of the example house: several writers who hear of each other now and then."""

import json
from dataclasses import dataclass, field
from typing import Any

from hypothesis import strategies as st

from secondfix.journal import Entry, Unknown, journal_of, latest
from secondfix.journal.kinds import read_entry
from tests.journal.writing import FIT_D31, entry_id, found, plain

_LOADS = [{}, {"L1": "changed"}, {"L2": "changed"}, {"L1": "on", "L2": "changed"}]
_DUTIES = ["capped", {"duty": "feeds", "load": "L1"}, {"duty": "extends", "extends": "B1.2"}, None]
_BOX = {"room": "R2", "mounts": {"1": {}}, "gangs": {"1": {}}}

# kind, subject, fields: each a thing that may happen; several speak of one thing so that writers clash.
DEEDS: list[tuple[str, str, dict[str, Any]]] = [
    *[("named", "load:L1", {"name": name}) for name in ("Ceiling", "Pendant")],
    *[("purpose_set", "load:L2", {"purpose": p}) for p in ("lighting", "night_light")],
    *[("function_tested", g, {"answered": a}) for g in ("gang:B1.1", "gang:B1.2") for a in _LOADS],
    *[("function_tested", "gang:B2.1", {"answered": a}) for a in _LOADS[:3]],
    ("function_tested", "scene:SC1", {"answered": {"L1": "off"}}),
    ("function_tested", "entry:D01.1", {"answered": {"L1": "on"}}),
    *[("survey_corrected", "gang:B1.1", {"path": "boxes.B1.gangs.1.duty", "found": d}) for d in _DUTIES],
    *[("survey_corrected", "box:B1", {"path": "boxes.B1.depth_mm", "found": found(d)}) for d in (35, 61)],
    ("survey_corrected", "box:B9", {"path": "boxes.B9", "found": _BOX}),
    ("survey_corrected", "box:B9", {"path": "boxes.B9.cables", "found": found(3)}),
    ("survey_corrected", "box:B1", {"path": "boxes.B1.depth_mm", "found": "deep"}),
    ("fitted", "device:D01", {}),
    ("fitted", "device:D31", FIT_D31),
    ("fitted", "device:D31", {**FIT_D31, "takes_over": {}, "gangs": ["2", "1"]}),
    ("fitted", "device:D32", {**FIT_D31, "replaces": "D31"}),
    ("fitted", "device:D31", {"model": "corvell-pair@1", "code_ref": "K40"}),
    *[
        ("survey_corrected", f"device:{d}", {"path": f"devices.{d}.after_power_loss", "found": f})
        for d in ("D01", "D31")
        for f in ("off", "last", "on", None)
    ],
    ("survey_corrected", "device:D31", {"path": "devices.D31.code_ref", "found": "K41"}),
    ("removed", "device:D01", {}),
    ("removed", "device:D02", {}),
    ("joined", "device:D31", {"network": "N1", "address": "00124B0000C0FFEE"}),
    *[(kind, "device:D01", {"network": "N1"}) for kind in ("joined", "join_failed", "excluded")],
    ("skipped", "device:D01", {"deed": "join", "reason": "nobody at home"}),
    ("measured", "link:D01>P1", {"rssi_dbm": -71}),
    *[
        ("air_heard", "box:B1", {"transmitters": [{"channel": 6, "level_dbm": level}]})
        for level in (-52, -70)
    ],
    ("snag_raised", "box:B1", {"words": "plate chipped"}),
    ("named", "room:R77", {"name": "No such room"}),
    ("left_for_tea", "box:B1", {"biscuits": 3}),
]

Step = tuple[int, int, int, bool]
STEPS = st.lists(
    st.tuples(
        st.integers(0, 2),  # the writer
        st.integers(0, len(DEEDS) + 2),  # what happens; the last three: clear a snag, withdraw twice as often
        st.integers(0, 40),  # which earlier entry is meant
        st.booleans(),  # whether the writer hears all others first
    ),
    max_size=14,
)


@dataclass
class Writer:
    """What one writer knows, by id."""

    known: dict[str, Entry] = field(default_factory=dict)


def honest(steps: list[Step]) -> list[Entry]:
    """The entries in the order written: each sees what its writer knew of the subject."""
    writers = [Writer(), Writer(), Writer()]
    written: list[Entry] = []
    for number, (who, what, which, hears) in enumerate(steps, start=1):
        writer = writers[who]
        if hears:
            for other in writers:
                writer.known |= other.known
        entry = _next(number, writer, what, which)
        if entry is not None:
            writer.known[entry.id] = entry
            written.append(entry)
    return written


def _next(number: int, writer: Writer, what: int, which: int) -> Entry | None:
    if what < len(DEEDS):
        kind, subject, fields = DEEDS[what]
        return _entry(number, writer, kind, subject, fields)
    earlier = list(writer.known.values())
    if what == len(DEEDS):
        earlier = [e for e in earlier if e.kind == "snag_raised"]
    if not earlier:
        return None
    meant = earlier[which % len(earlier)]
    kind, key = ("snag_cleared", "clears") if what == len(DEEDS) else ("withdrawn", "of")
    return _entry(number, writer, kind, meant.subject, {key: meant.id})


def _entry(number: int, writer: Writer, kind: str, subject: str, fields: dict[str, Any]) -> Entry:
    sees = latest(journal_of(writer.known.values()), subject)
    clock = f"2031-05-{1 + (number * 7) % 28:02}T09:40+02:00"  # clocks run anyhow: they must not matter
    made = plain(number, kind, subject, sees=sees, **fields) | {"at": clock}
    entry = read_entry(made, line=json.dumps(made))
    assert isinstance(entry, Entry), entry
    return entry


Mischief = list[tuple[int, int, int]]
MISCHIEF = st.lists(st.tuples(st.integers(0, 3), st.integers(0, 40), st.integers(0, 40)), max_size=4)


def spoilt(entries: list[Entry], mischief: Mischief) -> list[Entry]:
    """Entries as no honest writer leaves them: rings, lost entries, an id twice, another house."""
    out = list(entries)
    for what, a, b in mischief:
        if not out:
            break
        i, k = a % len(out), b % len(out)
        if what == 0:
            out[i] = out[i].model_copy(update={"sees": (*out[i].sees, out[k].id)})
        elif what == 1:
            del out[i]
        elif what == 2:
            other: dict[str, Any] = {"writer": "Somebody else"}
            if isinstance(out[i], Unknown):
                other["line"] = json.dumps({"kind": "left_for_tea", "biscuits": 4})
            out.append(out[i].model_copy(update=other))
        else:
            out[i] = out[i].model_copy(update={"house": entry_id(9000)})
    return out
