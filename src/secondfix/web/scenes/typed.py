"""A scene as the texts of a form, and back from them to what the document holds."""

import re
from collections.abc import Iterable, Mapping
from typing import Any

from secondfix.house import Command, House, Scene, SceneRule, Selector, Start

DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_FIELD = re.compile(r"(starts|rules|commands)\.(\d{1,3})\.([a-z_]+(?:\.[0-9a-z_]+)*)")
_OUT = re.compile(r"out\.(\d{1,3})\.([a-z_]+)")
_OF_START = {
    "gang": ("gang", "press"),
    "time": ("at", "days"),
    "sun": ("sun", "offset_min", "days"),
    "sensor": ("device", "button", "press"),
}
_FIGURES = ("offset_min", "button", "level_pct")
_PICKED = ("gang", "device", "load")  # an id, and behind it what it is

Texts = dict[str, str]
Plain = dict[str, Any]


def texts_of(house: House, scene: Scene) -> Texts:
    """Every field of the form by its name."""
    texts = {"name": scene.name, "note": scene.note}
    for n, start in enumerate(scene.starts):
        texts |= {f"starts.{n}.{key}": text for key, text in _of_start(house, start).items()}
    for n, rule in enumerate(scene.rules):
        texts |= {f"rules.{n}.{key}": text for key, text in _of_rule(house, rule).items()}
    for n, command in enumerate(scene.commands):
        texts |= {f"commands.{n}.entry": entry_text(house, command), f"commands.{n}.to": command.to}
    return texts


def _of_start(house: House, start: Start) -> Texts:
    texts = {key: str(value) for key, value in start if value is not None and key != "days"}
    texts |= {f"days.{day}": "on" for day in start.days}
    return _picked_texts(house, texts)


def _of_rule(house: House, rule: SceneRule) -> Texts:
    texts = {"to": rule.to, "level_pct": "" if rule.level_pct is None else str(rule.level_pct)}
    texts |= {f"select.{key}": text for key, text in _of_selector(house, rule.select).items()}
    for n, out in enumerate(rule.leave_out):
        texts |= {f"out.{n}.{key}": text for key, text in _of_selector(house, out).items()}
    return texts


def _of_selector(house: House, selector: Selector) -> Texts:
    texts = {key: "on" if value is True else str(value) for key, value in selector if value is not None}
    return _picked_texts(house, texts)


def _picked_texts(house: House, texts: Texts) -> Texts:
    return {key: picked_text(house, text) if key in _PICKED else text for key, text in texts.items()}


def picked_text(house: House, thing: str) -> str:
    """The id of a load, gang or device with what it is behind it, as its field shows it."""
    head = thing.partition(".")[0]
    if head in house.loads:
        load = house.loads[head]
        return f"{thing} {load.name}, {house.rooms[load.room].name}"
    if head in house.boxes:
        return f"{thing} {house.rooms[house.boxes[head].room].name}"
    if head in house.devices:
        device = house.devices[head]
        stands = (house.boxes.get(device.box or "") or house.places[device.place or ""]).room
        return f"{thing} {house.rooms[stands].name}"
    return thing


def entry_text(house: House, command: Command) -> str:
    """``D08.0 whole-device entry, Parlour``, ``D09.2 Parlour``."""
    text = picked_text(house, f"{command.device}.{command.entry}")
    return text if command.entry else text.replace(".0 ", ".0 whole-device entry, ", 1)


def scene_of(texts: Mapping[str, str]) -> Plain:
    """The scene that the form asks for, as the document would hold it; what is wrong in it the reader tells.

    Rows that are marked to be taken out, and those with every field empty, are left out.
    """
    rows = _rows_of(texts)
    scene: Plain = {"name": texts.get("name", "").strip()}
    for kind, made in (("starts", _start), ("rules", _rule), ("commands", _command)):
        kept = [made(row) for row in rows[kind].values() if not row.get("gone") and any(row.values())]
        if kept:
            scene[kind] = kept
    if texts.get("note", "").strip():
        scene["note"] = texts["note"].strip()
    return scene


def _rows_of(texts: Mapping[str, str]) -> dict[str, dict[int, Texts]]:
    rows: dict[str, dict[int, Texts]] = {"starts": {}, "rules": {}, "commands": {}}
    for name, text in texts.items():
        found = _FIELD.fullmatch(name)
        if found:
            rows[found[1]].setdefault(int(found[2]), {})[found[3]] = text.strip()
    return {kind: dict(sorted(of.items())) for kind, of in rows.items()}


def _start(row: Texts) -> Plain:
    by = row.get("by", "")
    start: Plain = {"by": by}
    for key in _OF_START.get(by, ()):
        if key == "days":
            days = [day for day in DAYS if row.get(f"days.{day}")]
            start |= {"days": days} if days else {}
        elif row.get(key):
            start[key] = _value(key, row[key])
    return start


def _rule(row: Texts) -> Plain:
    outs: dict[int, Texts] = {}
    for name, text in row.items():
        found = _OUT.fullmatch(name)
        if found and text:
            outs.setdefault(int(found[1]), {})[found[2]] = text
    rule: Plain = {
        "select": _selector(
            {k.removeprefix("select."): v for k, v in row.items() if v and k.startswith("select.")}
        )
    }
    if outs:
        rule["leave_out"] = [_selector(out) for _, out in sorted(outs.items())]
    return rule | {key: _value(key, row[key]) for key in ("to", "level_pct") if row.get(key)}


def _selector(row: Texts) -> Plain:
    return {key: True if key == "every_load" else _value(key, text) for key, text in row.items()}


def _command(row: Texts) -> Plain:
    device, _, entry = row.get("entry", "").split(" ", 1)[0].partition(".")
    command: Plain = {"device": device}
    command |= {"entry": int(entry)} if entry.isdecimal() and len(entry) < 6 else {}
    return command | ({"to": row["to"]} if row.get("to") else {})


def _value(key: str, text: str) -> Any:
    if key in _PICKED:
        return text.split(" ", 1)[0]
    if key in _FIGURES and re.fullmatch(r"[-+]?[0-9]{1,6}", text):
        return int(text)
    return text


def form_of(texts: Mapping[str, str], *, more: Iterable[str] = ()) -> dict[str, list[Plain]]:
    """The rows of the form; of the kinds in ``more`` one empty row more, and of each that has none."""
    form: dict[str, list[Plain]] = {}
    for kind, rows in _rows_of(texts).items():
        numbered = dict(rows)
        fresh = max(numbered, default=-1) + 1
        if kind in more or not numbered:
            numbered[fresh] = {}
        form[kind] = [_shown(kind, n, row, fresh=n == fresh) for n, row in numbered.items()]
    return form


def _shown(kind: str, number: int, row: Texts, *, fresh: bool) -> Plain:
    at = f"{kind}.{number}"
    shown: Plain = {"name": at, "fresh": fresh, "number": number + 1}
    shown |= {key: text for key, text in row.items() if "." not in key}
    if kind == "starts":
        shown["days"] = [(day, bool(row.get(f"days.{day}"))) for day in DAYS]
    if kind == "rules":
        outs = sorted({int(found[1]) for name in row if (found := _OUT.fullmatch(name)) and row[name]})
        shown["select"] = _part(at, "select", row)
        shown["outs"] = [_part(at, f"out.{n}", row) for n in (*outs, max(outs, default=-1) + 1)]
    return shown


def _part(at: str, part: str, row: Texts) -> Plain:
    own = {name.removeprefix(f"{part}."): text for name, text in row.items() if name.startswith(f"{part}.")}
    return {**own, "name": f"{at}.{part}", "stated": bool(own)}
