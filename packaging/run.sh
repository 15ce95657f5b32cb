#!/bin/sh
# Starts hearthkey from this checkout, setting up what it needs the first time.
#   sh packaging/run.sh [ARGUMENT...]   arguments go to hearthkey; without any, the window opens. With no display,
#                                       the tour is walked instead, into ./hearthkey-tour
# HEARTHKEY_VENV: the folder to set up in, instead of .venv/ in this checkout.
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
packaging=$root/packaging
. "$packaging/parts/words.sh"
. "$packaging/parts/system.sh"
. "$packaging/parts/python.sh"

ready_environment window "$packaging/system-packages/run.txt" "$packaging/system-packages/window.txt"
ready_translations

# What begins with a dash belongs to the window: `--practice`, for instance.
case ${1:-} in
    '' | --practice | --data | --data=*)
        if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
            set -- window "$@"
        else
            [ $# -eq 0 ] || say "There is no display for a window."
            set -- tour
            say "Walking the tour of the practice household. Its results lie in: $(pwd)/hearthkey-tour"
        fi
        ;;
esac
# The tour is practice: it gets a keyring of its own wherever one can be had, so that nobody's real one is touched.
if [ "$1" = tour ]; then
    if command -v dbus-run-session >/dev/null 2>&1 && command -v gnome-keyring-daemon >/dev/null 2>&1; then
        set -- sh "$packaging/parts/with-keyring.sh" "$environment/bin/hearthkey" "$@"
        exec "$@"
    fi
    say "No throwaway keyring here (it takes dbus-run-session and gnome-keyring-daemon): the tour meets this machine's own."
fi
exec "$environment/bin/hearthkey" "$@"
