"""A firm's own folder: ``models/*.toml`` and ``assumptions.toml``."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from secondfix.assumptions import Assumptions, Override, default_assumptions
from secondfix.catalogue import Model, ModelFault, read_model, read_toml, shown
from secondfix.files.shipped import shipped_models
from secondfix.files.whole import read_bytes
from secondfix.house import Fault

_KEYS = {"value", "low", "high", "source"}


@dataclass(frozen=True, slots=True)
class Firm:
    """The editions at hand and the assumptions as the firm sets them."""

    models: Mapping[str, Model] = field(default_factory=dict)
    assumptions: Assumptions = field(default_factory=default_assumptions)


def open_firm(folder: Path | None) -> Firm | list[Fault]:
    """The shipped catalogue and defaults, with the firm's own over them; or every fault of its files."""
    if folder is None:
        return Firm(models=shipped_models())
    if not folder.is_dir():
        return [Fault(str(folder), "", "no such folder", "the firm's folder")]
    faults: list[Fault] = []
    models = dict(shipped_models())
    faults += _strangers(folder)
    for path in sorted((folder / "models").glob("*.toml")):
        _take_model(path, models, faults)
    overrides = dict(_overrides(folder / "assumptions.toml", faults))
    if faults:
        return faults
    return Firm(models, default_assumptions().overridden(overrides, set_by="firm"))


def _strangers(folder: Path) -> Iterator[Fault]:
    """Files that nobody would read: a slip in a name must not be ignored in silence."""
    known = {folder / "models", folder / "assumptions.toml"}
    for path in sorted(folder.iterdir()):
        if path not in known and not path.name.startswith("."):
            yield Fault(str(path), "", "a file that is not read", "models/<key>.toml or assumptions.toml")
    inside = sorted((folder / "models").iterdir()) if (folder / "models").is_dir() else []
    for path in inside:
        if path.suffix != ".toml" and not path.name.startswith("."):
            yield Fault(str(path), "", "a file that is not read", "<maker>-<name>@<edition>.toml")


def _take_model(path: Path, models: dict[str, Model], faults: list[Fault]) -> None:
    data = read_bytes(str(path))
    if isinstance(data, Fault):
        faults.append(data)
        return
    read = read_model(data, where=str(path))
    if isinstance(read, list):
        faults += map(_fault, read)
    elif path.stem != read.key:
        faults.append(Fault(str(path), "", f"a file that holds {read.key}", f"the name {read.key}.toml"))
    elif models.get(read.key, read) != read:
        expected = "a new edition: a published edition is never changed"
        faults.append(Fault(str(path), "edition", f"{read.key}, which stands already and differs", expected))
    else:
        models[read.key] = read


def _fault(f: ModelFault) -> Fault:
    return Fault(f.where, f.path, f.stands, f.expected)


def _overrides(path: Path, faults: list[Fault]) -> Iterator[tuple[str, Override]]:
    if not path.exists():
        return
    data = read_bytes(str(path))
    raw = data if isinstance(data, Fault) else read_toml(data, where=str(path))
    if not isinstance(raw, dict):
        faults.append(raw if isinstance(raw, Fault) else _fault(raw))
        return
    known = default_assumptions()
    for name, entry in raw.items():
        override = _override(entry)
        if name not in known:
            faults.append(Fault(str(path), name, "a name nobody reads", "the name of an assumption"))
        elif override is None:
            faults.append(
                Fault(str(path), name, shown(entry), "whole numbers: value, perhaps low, high, source")
            )
        else:
            try:
                known.overridden({name: override}, set_by="firm")
            except ValueError as error:
                faults.append(
                    Fault(str(path), name, str(error), "low <= value <= high, within what anybody may set")
                )
            yield name, override


def _override(entry: Any) -> Override | None:
    if isinstance(entry, int) and not isinstance(entry, bool):
        entry = {"value": entry}
    if not isinstance(entry, dict) or not set(entry) <= _KEYS or "value" not in entry:
        return None
    numbers = [entry.get(k) for k in ("value", "low", "high") if k in entry]
    if not all(isinstance(n, int) and not isinstance(n, bool) for n in numbers):
        return None
    source = entry.get("source")
    return Override(
        entry["value"], entry.get("low"), entry.get("high"), source if isinstance(source, str) else None
    )
