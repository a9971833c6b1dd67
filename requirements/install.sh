#!/bin/sh
# Lays the lock NAME (run or test) and Secondfix itself into .venv: sh requirements/install.sh NAME
# Nothing is done while the same locks, metadata, folder and Python stand; test holds all of run.
# A .venv that does not start, or whose last laying was cut short, is made anew.
set -eu
name=$1
python=${PYTHON:-python3.11}
command -v "$python" >/dev/null || python=python3
export PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_NO_INPUT=1 PIP_PROGRESS_BAR=off

key() { { cat "requirements/$1.txt" pyproject.toml requirements/install.sh; pwd; "$python" -V; } | cksum; }
stands() { [ "$(cat ".venv/$1.stamp" 2>/dev/null)" = "$(key "$1")" ]; }
starts() { [ ! -e .venv/unfinished ] && .venv/bin/python -c '' 2>/dev/null; }

"$python" -c 'import sys; sys.exit(sys.version_info < (3, 11))' || {
  echo "Secondfix needs Python 3.11 or newer; $python is $("$python" -V 2>&1). Name another: make PYTHON=..." >&2
  exit 1
}
if starts; then
  if stands "$name" || stands test; then exit 0; fi
else
  rm -rf .venv
  # Debian keeps venv's own pip in a package apart: the machine's pip then lays the lock from outside.
  "$python" -m venv .venv >/dev/null 2>&1 || "$python" -m venv --without-pip --clear .venv
fi
if .venv/bin/python -m pip --version >/dev/null 2>&1; then
  pip() { .venv/bin/python -m pip "$@"; }
else
  pip() { "$python" -m pip --python .venv/bin/python "$@"; }
fi
echo "Laying requirements/$name.txt into .venv"
touch .venv/unfinished
rm -f .venv/*.stamp
pip install --quiet --require-hashes --no-deps -r "requirements/$name.txt"
pip install --quiet --no-deps --no-build-isolation -e .
key "$name" >".venv/$name.stamp"
rm .venv/unfinished
