# Finds a Python and keeps ready-made environments of it. Sourced after words.sh and system.sh; expects $root.
#
# An environment is made again whenever its recipe changes: the recipe is the lock itself, the place of this
# checkout and the Python program underneath. Comparing recipes is all that a second start does.

environments=${HEARTHKEY_VENV:-$root/.venv}

# Sets $python to a Python of 3.11 or later, preferring one that can make environments; empty if there is none.
find_python() {
    python=''
    for must in 'import ensurepip, venv' 'pass'; do
        for name in python3 python3.15 python3.14 python3.13 python3.12 python3.11 python; do
            found=$(command -v "$name") || continue
            "$found" -c "import sys; sys.exit(sys.version_info < (3, 11)); $must" >/dev/null 2>&1 || continue
            "$found" -c "$must" >/dev/null 2>&1 || continue
            python=$found
            return 0
        done
    done
}

# Prints the recipe of an environment: $1 its folder, $2 its lock.
recipe() {
    printf 'recipe 1\n%s\n%s\n' "$root" "$(readlink -f -- "$1/bin/python")"
    cat -- "$2"
}

# True if the environment in folder $1 was made from lock $2, here, and its Python is still the same.
is_ready() {
    [ -x "$1/bin/python" ] && [ -f "$1/recipe" ] && recipe "$1" "$2" | cmp -s - "$1/recipe"
}

# Makes the environment $1 from lock $2, with the package lists after them installed on the system first.
# The app itself is not installed: a .pth line shows Python where it lies, so that an edit is there at once,
# no build tool is needed to run it, and the entry in bin/ starts it as an installed one would.
make_environment() {
    folder=$1
    its_lock=$2
    shift 2
    find_python
    install_packages "$@"
    set -- "$folder" "$its_lock"
    find_python
    [ -n "$python" ] || stop "Hearthkey needs Python 3.11 or later, and this machine has none on its path. Once it is installed, run this again."
    "$python" -c 'import ensurepip, venv' >/dev/null 2>&1 ||
        stop "$python cannot make environments: its modules venv and ensurepip are missing (Debian keeps them in python3-venv). Once they are installed, run this again."
    say "Setting up in $1 with $python (once; later starts are quick)."
    rm -rf -- "$1"
    "$python" -m venv -- "$1" >&2 || stop "No environment could be made in $1; the lines above say why."
    "$1/bin/python" -m pip install -qq --disable-pip-version-check --no-input --only-binary :all: \
        --require-hashes -r "$2" >&2 ||
        stop "The packages of $2 could not be fetched or did not match their hashes. The lines above say which; nothing was started."
    site=$("$1/bin/python" -c 'import sysconfig; print(sysconfig.get_path("purelib"))')
    printf '%s\n' "$root/app" >"$site/hearthkey.pth" || stop "Nothing can be written into $1."
    cat >"$1/bin/hearthkey" <<'START'
#!/bin/sh
# -P: the folder you happen to stand in is not searched for modules.
exec "$(dirname -- "$(readlink -f -- "$0")")/python" -P -m hearthkey "$@"
START
    chmod 755 "$1/bin/hearthkey"
    recipe "$1" "$2" >"$1/recipe"
}

# Leaves the environment for lock $1 ready and its folder in $environment. After it: the package lists.
ready_environment() {
    environment=$environments/$1
    lock=$root/packaging/locks/$1.txt
    name=$1
    shift
    is_ready "$environment" "$lock" && return 0
    mkdir -p -- "$environments"
    # Two starts at once: the second waits for the first and then finds the work done.
    if command -v flock >/dev/null 2>&1; then
        exec 9>"$environments/$name.lock"
        flock 9
    fi
    is_ready "$environment" "$lock" || make_environment "$environment" "$lock" "$@"
    exec 9>&-
}

# Prints where the program $1 of Qt lies in the environment at hand.
qt_tool() {
    "$environment/bin/python" -c 'import pathlib, sys, PySide6; print(pathlib.Path(PySide6.__file__).with_name(sys.argv[1]))' "$1"
}

# Translates the files of translators into what Qt reads, where they are newer. Without it the app speaks English.
ready_translations() {
    for ts in "$root"/resources/translations/*.ts; do
        qm=${ts%.ts}.qm
        [ -f "$qm" ] && [ ! "$ts" -nt "$qm" ] && continue
        "$(qt_tool lrelease)" -silent "$ts" -qm "$qm.$$" && mv -f -- "$qm.$$" "$qm" ||
            say "No translation could be made of $ts; the window speaks English instead."
    done
}
