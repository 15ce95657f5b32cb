# Finds out which system packages are missing and installs them where that is allowed. Sourced after words.sh;
# expects $packaging.

# Where servers lie: not on the path of an ordinary login, and yet anybody may run them.
for_root=/usr/local/sbin:/usr/sbin:/sbin

# True if a shared library lies in one of the folders that Debian and others keep them in.
has_library() {
    for candidate in /usr/lib/*/"$1" /lib/*/"$1" /usr/lib/"$1" /usr/lib64/"$1" /lib64/"$1"; do
        [ -e "$candidate" ] && return 0
    done
    return 1
}

# True if the probe of a package list (command:, module:, file: or library:) finds its thing. $python may be empty.
there() {
    case $1 in
        command:*) (PATH=$PATH:$for_root && command -v "${1#command:}" >/dev/null 2>&1) ;;
        module:*) [ -n "${python:-}" ] && "$python" -c "import ${1#module:}" >/dev/null 2>&1 ;;
        file:*) [ -e "${1#file:}" ] ;;
        library:*) has_library "${1#library:}" ;;
        *) stop "$1 is no kind of probe: packaging/system-packages knows command:, module:, file: and library:." ;;
    esac
}

# Prints the packages of the given lists whose probes find nothing, on one line, each once.
missing_packages() {
    missing=''
    while read -r package probe; do
        case $package in '' | '#'*) continue ;; esac
        there "$probe" && continue
        case " $missing " in *" $package "*) ;; *) missing="$missing $package" ;; esac
    done <<LISTS
$(cat -- "$@")
LISTS
    printf '%s' "${missing# }"
}

# Prints how to act as root without being asked for a password: nothing for root, sudo; fails if there is no way.
as_root() {
    [ "$(id -u)" -ne 0 ] || return 0
    command -v sudo >/dev/null 2>&1 && sudo -n true >/dev/null 2>&1 && printf 'sudo -n'
}

# Installs what the given lists name and the machine lacks. Never ends the script: what is really needed is
# asked for again later, by what needs it.
install_packages() {
    wanted=$(missing_packages "$@")
    [ -n "$wanted" ] || return 0
    if ! command -v apt-get >/dev/null 2>&1; then
        say "This machine lacks what Debian calls: $wanted. Its own package tool has them under similar names."
        return 0
    fi
    # The lists hold plain words, so the splitting of $wanted and $root_by is meant.
    quietly=$packaging/parts/quietly.sh
    if ! root_by=$(as_root); then
        say "Some system packages are missing. This line brings them, run as root; none of their services is started:"
        say "    sh '$quietly' $wanted"
        return 0
    fi
    say "Installing system packages for the programs in them; no service of theirs is started, neither now nor with the machine: $wanted"
    # What apt-get says on the way matters only when it fails.
    # shellcheck disable=SC2086
    told=$($root_by apt-get update -qq 2>&1) || say "$told" "The package lists could not be renewed; trying with the old ones."
    # shellcheck disable=SC2086
    told=$($root_by sh "$quietly" $wanted 2>&1) || say "$told" "Not all of them could be installed."
}
