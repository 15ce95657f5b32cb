# What the scripts beside this folder say to the person, always on standard error. Sourced, never run.

say() {
    printf '%s\n' "$*" >&2
}

# Ends the script: what it means, then what to do.
stop() {
    say "$@"
    exit 1
}
