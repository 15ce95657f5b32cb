#!/bin/sh
# Checks hearthkey. Without arguments: style, types, rings, every test outside tests/ui where there is no Qt, and
# tests/ui where there is; each step timed, and two of them at once.
#   sh packaging/test.sh [ARGUMENT...]   arguments go to pytest, in the same environment
# With CI=true a judge (a foreign program the tests ask) that is not there is a failure; elsewhere a named skip.
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
packaging=$root/packaging
. "$packaging/parts/words.sh"
. "$packaging/parts/system.sh"
. "$packaging/parts/python.sh"
cd "$root"

lists=$packaging/system-packages
summary=''
failed=0

# Runs one step, named $1, whatever the others did; notes its name, its seconds and how it ended.
step() {
    name=$1
    shift
    printf '\n== %s\n' "$name"
    began=$(date +%s)
    if ("$@"); then how=ok; else how=FAILED failed=1; fi
    summary="$summary$(printf '%-6s %4d s  %s' "$how" "$(($(date +%s) - began))" "$name")
"
}

judges() {
    find_python
    install_packages "$lists/run.txt" "$lists/check.txt" "$lists/window.txt"
    absent=$(missing_packages "$lists/run.txt" "$lists/check.txt" "$lists/window.txt")
    [ -n "$absent" ] || return 0
    say "Not here: $absent"
    [ "${CI:-}" != true ] || return 1
    say "The tests that ask them are skipped by name."
}

# All tests but the window's pass where there is no Qt: here there is none.
without_qt() {
    ! "$environment/bin/python" -c 'import PySide6' 2>/dev/null && echo "PySide6 is not in this environment."
}

# The window's environment has everything that the other one has, and Qt.
with_qt() {
    ready_environment window-check "$lists/run.txt" "$lists/window.txt" && ready_translations
}

tests() {
    if command -v dbus-run-session >/dev/null 2>&1 && command -v gnome-keyring-daemon >/dev/null 2>&1; then
        sh "$packaging/parts/with-keyring.sh" "$environment/bin/python" -m pytest "$@"
    else
        "$environment/bin/python" -m pytest "$@"
    fi
}

# Prints what every step took and ends as they ended.
finish() {
    printf '\n%s' "$summary"
    exit "$failed"
}

if [ $# -gt 0 ]; then
    case " $* " in
        *tests/ui*) with_qt && exec "$environment/bin/python" -m pytest "$@" ;;
    esac
    ready_environment check "$lists/run.txt"
    tests --ignore=tests/ui "$@"
    exit
fi

step "system packages and judges" judges
step "environment from the lock, by hash" ready_environment check "$lists/run.txt"
environment=$environments/check
is_ready "$environment" "$packaging/locks/check.txt" || finish
step "environment with Qt, by hash" with_qt
step "no Qt outside the window" without_qt
# From here on in Python, which can end what it started, and only that.
exec "$environments/check/bin/python" -m tests.house.checks "$environments/check" "$environments/window-check" "$summary"
