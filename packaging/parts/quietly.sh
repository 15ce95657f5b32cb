#!/bin/sh
# Installs Debian packages for the programs in them: no service of theirs starts, neither now nor with the machine.
#   sh quietly.sh PACKAGE...     as root
#
# Debian starts a service as soon as it is installed, unless /usr/sbin/policy-rc.d forbids it (invoke-rc.d(8)), and
# enables it for the next start of the machine. So a policy that forbids lies there for as long as apt-get runs, and
# what was enabled meanwhile is disabled again. Services that were here before stay as they are.
set -eu
export LC_ALL=C

policy=/usr/sbin/policy-rc.d
ours='Put here by hearthkey for the length of one installation. If none is running, it may be deleted.'

# One at a time, for the first to end takes the policy away: the lock is on the folder that it lies in.
exec 9<"${policy%/*}"
flock 9

# Prints what starts with the machine: units where systemd is installed, start scripts where it is not.
starting() {
    if [ -n "$by_systemd" ]; then
        systemctl --root=/ list-unit-files --state=enabled --no-legend --no-pager | cut -d ' ' -f 1
    else
        find /etc/rc[2-5].d -name 'S*' 2>/dev/null | sed 's,.*/S[0-9]*,,'
    fi | sort -u
}

# Disables what starts with the machine and did not before.
silence() {
    starting >"$room/after"
    for new in $(comm -13 "$room/before" "$room/after"); do
        if [ -n "$by_systemd" ]; then
            systemctl --root=/ --quiet disable "$new"
        else
            update-rc.d "$new" disable
        fi
    done
}

by_systemd=$(command -v systemctl || true)
room=$(mktemp -d)
mine=''
finish() {
    [ ! -e "$room/before" ] || silence
    [ -z "$mine" ] || rm -f -- "$policy"
    rm -rf -- "$room"
}
trap finish EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP

if [ ! -e "$policy" ] || grep -qsF "$ours" "$policy"; then
    printf '#!/bin/sh\n# %s\nexit 101\n' "$ours" >"$room/policy"
    chmod 755 "$room/policy"
    mine=yes
    mv -f -- "$room/policy" "$policy"
else
    # This machine has a policy of its own, and it is left alone.
    answer=0
    "$policy" hearthkey-asks start >/dev/null 2>&1 || answer=$?
    if [ "$answer" -ne 101 ]; then
        echo "This machine's own $policy lets new services start, so nothing was installed." >&2
        exit 1
    fi
fi

starting >"$room/before"
DEBIAN_FRONTEND=noninteractive apt-get install -qq -y --no-install-recommends "$@"
