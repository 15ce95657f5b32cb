#!/bin/sh
# Renews packaging/locks/ from pyproject.toml: newest versions that fit, every file by its hash, no host names.
# Needs uv on the path (or its path in $UV). Look at the difference before you keep it.
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
uv=${UV:-uv}
cd "$root"

compile() {
    "$uv" pip compile --quiet --universal --python-version 3.11 --generate-hashes --upgrade \
        --no-header --no-emit-index-url --no-emit-find-links --no-annotate "$@"
}

# The largest set first: the smaller ones then take the very same versions.
compile pyproject.toml --extra window --group check --group window-check --output-file packaging/locks/window-check.txt
for smaller in "window --extra window" "check --group check" "run"; do
    name=${smaller%% *}
    # The options after the name are plain words, so the splitting is meant.
    # shellcheck disable=SC2086
    compile pyproject.toml ${smaller#"$name"} --constraint packaging/locks/window-check.txt \
        --output-file "packaging/locks/$name.txt"
done

if grep -nE '://|^-' packaging/locks/*.txt; then
    echo "A lock names a place it was fetched from (the lines above). That must not be kept." >&2
    exit 1
fi
