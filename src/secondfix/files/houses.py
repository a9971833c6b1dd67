"""A house from a file or from standard input."""

from collections.abc import Mapping

from secondfix.catalogue import Model
from secondfix.files.whole import read_bytes
from secondfix.house import Fault, House, read_house


def open_house(name: str, models: Mapping[str, Model]) -> House | list[Fault]:
    """The house in file ``name`` (``-`` is standard input), or all of its faults."""
    data = read_bytes(name)
    if isinstance(data, Fault):
        return [data]
    return read_house(data, where="standard input" if name == "-" else name, models=models)
