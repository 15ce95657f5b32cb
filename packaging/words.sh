#!/bin/sh
# Brings resources/translations/*.ts up to date with what the app says, for whoever translates.
#   sh packaging/words.sh [--check]   with --check nothing is written: it ends with 1 where something would be
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
packaging=$root/packaging
. "$packaging/parts/words.sh"
. "$packaging/parts/system.sh"
. "$packaging/parts/python.sh"

ready_environment window-check "$packaging/system-packages/run.txt" "$packaging/system-packages/window.txt"
cd "$root"
QT_QPA_PLATFORM=offscreen exec "$environment/bin/python" -m tests.words "$(qt_tool lupdate)" "$@"
