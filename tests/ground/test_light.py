"""`check` stays light: it loads nothing that only pages, papers, plans, solvers or keys need."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

HEAVY = {
    *("django", "numba", "ortools", "ifcopenshell", "ezdxf", "scapy"),  # the design names these
    *("typst", "segno", "cryptography", "scipy", "pandas", "openpyxl"),  # papers, keys, tables
    *("pysqlite3", "psycopg", "waitress", "csp", "axes"),  # the desk
}
# Runs the command in this process's own interpreter, then tells on standard error what stands loaded.
ASK = """
import json, sys
from secondfix.cli import main
sys.argv = ["secondfix", *sys.argv[1:]]
ended = 0
try:
    main()
except SystemExit as end:
    ended = end.code
json.dump([ended, sorted({name.partition(".")[0] for name in sys.modules})], sys.stderr)
"""


def asked(*words: str) -> tuple[object, str, set[str]]:
    """(exit, standard output, top-level modules loaded) of one cold command."""
    run = subprocess.run([sys.executable, "-c", ASK, *words], capture_output=True, text=True, check=True)
    ended, modules = json.loads(run.stderr)
    return ended, run.stdout, set(modules)


@pytest.mark.parametrize("house", ["demo/house.json"])
def test_check_loads_nothing_heavy(tree: Path, house: str) -> None:
    ended, output, modules = asked("check", str(tree / house), "--json")
    assert ended in {0, 1, 3}
    assert json.loads(output)["findings"]
    assert "secondfix" in modules
    assert modules & HEAVY == set()
