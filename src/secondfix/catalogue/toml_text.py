"""From bytes to plain values: UTF-8, TOML, bounded in size and depth."""

import re
import reprlib
import tomllib
from dataclasses import dataclass
from typing import Any

LARGEST_FILE_BYTES = 256 * 1024
DEEPEST = 8

_SHORT = reprlib.Repr()
_SHORT.maxlevel, _SHORT.maxstring, _SHORT.maxother, _SHORT.maxlong = 4, 80, 80, 40
_SHORT.maxdict = _SHORT.maxlist = _SHORT.maxtuple = 12
_PLACE = re.compile(r"^(?P<what>.*?) \(at (?P<at>line \d+, column \d+|end of document)\)$", re.DOTALL)

_TWICE = {"Cannot overwrite a value": "a key that stands twice"}


@dataclass(frozen=True, slots=True)
class ModelFault:
    """One fault: file, place in it, what stands, what was expected."""

    where: str
    path: str
    stands: str
    expected: str


def shown(value: Any) -> str:
    """What stands, short enough for one line, however large or deep; nothing in it can steer a screen."""
    return _SHORT.repr(value)[:80]


def read_toml(data: bytes, *, where: str) -> dict[str, Any] | ModelFault:
    """The plain values, or the first fault of the text: past it nothing can be read."""
    if len(data) > LARGEST_FILE_BYTES:
        return ModelFault(
            where, "", f"more than {LARGEST_FILE_BYTES:,} bytes", f"at most {LARGEST_FILE_BYTES:,} bytes"
        )
    try:
        plain = tomllib.loads(data.decode("utf-8-sig"))
    except UnicodeDecodeError as error:
        return ModelFault(where, f"byte {error.start}", "not UTF-8", "text in UTF-8")
    except tomllib.TOMLDecodeError as error:
        told = _PLACE.match(str(error))
        what, at = (told["what"], told["at"]) if told else (str(error), "")
        return ModelFault(where, at, _TWICE.get(what, "not TOML"), f"TOML ({_small(what)})")
    except RecursionError:
        return ModelFault(where, "", "nested too deep", f"at most {DEEPEST} levels")
    except ValueError:
        return ModelFault(where, "", "a number or date that cannot be read", "a whole number")
    return _too_deep(plain, where) or plain


def _small(text: str) -> str:
    return text[:1].lower() + text[1:]


def _too_deep(plain: dict[str, Any], where: str) -> ModelFault | None:
    stack: list[tuple[Any, str, int]] = [(plain, "", 0)]
    while stack:
        value, path, depth = stack.pop()
        if depth > DEEPEST:
            return ModelFault(where, path, "nested too deep", f"at most {DEEPEST} levels")
        if isinstance(value, dict):
            stack += [(v, f"{path}.{k}" if path else k, depth + 1) for k, v in value.items()]
        elif isinstance(value, list):
            stack += [(v, f"{path}.{i}", depth + 1) for i, v in enumerate(value)]
    return None
