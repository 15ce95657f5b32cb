#!/bin/sh
# Measures hearthkey against bare floors in one run and prints a table of ratios.
#   sh packaging/bench.sh [ARGUMENT...]   arguments go to tests/bench
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
packaging=$root/packaging
. "$packaging/parts/words.sh"
. "$packaging/parts/system.sh"
. "$packaging/parts/python.sh"

ready_environment window "$packaging/system-packages/run.txt" "$packaging/system-packages/window.txt"
ready_translations
cd "$root"
if command -v dbus-run-session >/dev/null 2>&1 && command -v gnome-keyring-daemon >/dev/null 2>&1; then
    exec sh "$packaging/parts/with-keyring.sh" "$environment/bin/python" -m tests.bench "$@"
fi
exec "$environment/bin/python" -m tests.bench "$@"
