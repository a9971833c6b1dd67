#!/bin/sh
# Debian's Chromium, which the tests of the pages drive: nothing is done where one stands already.
set -eu
for name in chromium chromium-browser; do
  if command -v "$name" >/dev/null; then exit 0; fi
done
if ! command -v apt-get >/dev/null; then
  echo "The tests of the pages need Chromium; install it, or run the others: pytest --ignore tests/browser" >&2
  exit 1
fi
as_root=
if [ "$(id -u)" != 0 ]; then
  as_root=sudo
  command -v sudo >/dev/null || { echo "The tests of the pages need Chromium: apt-get install chromium, as root" >&2; exit 1; }
fi
echo "Installing Debian's Chromium"
$as_root apt-get update -qq
$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium >/dev/null
