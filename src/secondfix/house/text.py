"""From bytes to plain values: encoding, JSON, size, depth, and no key twice."""

import json
from typing import Any

from secondfix.house.faults import Fault

LARGEST_FILE_BYTES = 20 * 1024 * 1024
DEEPEST = 32


class _Twice(dict[str, Any]):
    """An object in which some key stood twice."""

    keys_twice: list[str]


def _object(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    plain = dict(pairs)
    if len(plain) == len(pairs):
        return plain
    seen: set[str] = set()
    twice = _Twice(plain)
    twice.keys_twice = [k for k, _ in pairs if k in seen or seen.add(k)]  # type: ignore[func-returns-value] # set.add returns None, which is false
    return twice


def _no_constant(name: str) -> Any:
    raise ValueError(f"{name} is not a JSON number")


def parse(data: bytes, *, where: str) -> tuple[Any, list[Fault]]:
    """The plain value and the faults of the text; the value is None where there are any."""
    if len(data) > LARGEST_FILE_BYTES:
        return None, [Fault(where, "", f"{len(data):,} bytes", f"at most {LARGEST_FILE_BYTES:,} bytes")]
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        return None, [Fault(where, f"byte {error.start}", "not UTF-8", "text in UTF-8")]
    try:
        plain = json.loads(text, object_pairs_hook=_object, parse_constant=_no_constant)
    except json.JSONDecodeError as error:
        path = f"line {error.lineno}, column {error.colno}"
        return None, [Fault(where, path, "not JSON", f"JSON ({error.msg[0].lower()}{error.msg[1:]})")]
    except RecursionError:
        return None, [Fault(where, "", "nested too deep", f"at most {DEEPEST} levels")]
    except ValueError as error:
        return None, [Fault(where, "", "a number that cannot be read", str(error))]
    faults = _walk(plain, where=where)
    return (None, faults) if faults else (plain, [])


def _walk(plain: Any, *, where: str) -> list[Fault]:
    faults: list[Fault] = []
    stack: list[tuple[Any, str, int]] = [(plain, "", 0)]
    while stack:
        value, path, depth = stack.pop()
        if depth > DEEPEST:
            return [Fault(where, path, "nested too deep", f"at most {DEEPEST} levels")]
        if isinstance(value, _Twice):
            faults += [
                Fault(where, _at(path, k), "this key stands twice", "each key once") for k in value.keys_twice
            ]
        if isinstance(value, dict):
            stack += [(v, _at(path, k), depth + 1) for k, v in value.items()]
        elif isinstance(value, list):
            stack += [(v, f"{path}[{i}]", depth + 1) for i, v in enumerate(value)]
    return faults


def _at(path: str, key: str) -> str:
    return f"{path}.{key}" if path else key
