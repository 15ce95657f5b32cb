#!/bin/sh
# Opens a keyring on the session bus it is started in, under a random word nobody keeps, then becomes its command.
set -eu

# It prints lines to export (wanted) and that it got no memory lock (not wanted: nothing of worth lies here).
lines=$(od -An -N16 -tx1 /dev/urandom | tr -d ' \n' | gnome-keyring-daemon --unlock --components=secrets 2>/dev/null) || lines=''
eval "$lines"

# True once the service has its name on the bus. To ask for the name does not start a second service, as to ask the
# service itself would: the two then meet, and now and then one falls. (dbus-send comes along with dbus-run-session.)
on_the_bus() {
    dbus-send --session --print-reply --dest=org.freedesktop.DBus /org/freedesktop/DBus \
        org.freedesktop.DBus.NameHasOwner string:org.freedesktop.secrets 2>/dev/null | grep -q 'boolean true'
}

tries=0
until on_the_bus; do
    tries=$((tries + 1))
    if [ "$tries" -gt 100 ]; then
        echo "The keyring service gnome-keyring-daemon did not start, so there is no keyring to try things with." >&2
        exit 1
    fi
    sleep 0.05
done
exec "$@"
