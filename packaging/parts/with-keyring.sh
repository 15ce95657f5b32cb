#!/bin/sh
# Runs a command in a household of its own for the length of that command: a throwaway home, a private session
# bus and an unlocked keyring on it. Nothing of it touches the keyring, settings or data of whoever starts it.
#   sh with-keyring.sh COMMAND [ARGUMENT...]
set -eu

parts=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd -P)
# Short on purpose: the path of a socket may have 107 bytes at most.
room=$(mktemp -d "/tmp/hearthkey.XXXXXX")
trap 'rm -rf -- "$room"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM
for part in home run data config cache state; do
    mkdir -m 700 -- "$room/$part"
done

unset DISPLAY WAYLAND_DISPLAY DBUS_SESSION_BUS_ADDRESS PYTHON_KEYRING_BACKEND GNOME_KEYRING_CONTROL SSH_AUTH_SOCK
code=0
HOME=$room/home XDG_RUNTIME_DIR=$room/run XDG_DATA_HOME=$room/data XDG_CONFIG_HOME=$room/config \
    XDG_CACHE_HOME=$room/cache XDG_STATE_HOME=$room/state \
    dbus-run-session -- sh "$parts/unlocked.sh" "$@" || code=$?
exit "$code"
