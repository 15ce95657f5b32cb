#!/bin/sh
# Judges the order of imports (import-linter), with the Python of an environment that has it.
#   sh rings.sh PYTHON     from the root of the checkout
set -eu

# import-linter sees packages with an __init__ file only, and pki/ has none: it is shown a copy that has one.
shown=$(mktemp -d)
trap 'rm -rf -- "$shown"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM
cp -R app pyproject.toml "$shown/"
find "$shown" -type d -name __pycache__ -prune -exec rm -r {} +
for ring in "$shown"/app/hearthkey/*/; do
    [ -e "${ring}__init__.py" ] || : >"${ring}__init__.py"
done
cd "$shown"
PYTHONPATH=$shown/app "$(dirname -- "$1")/lint-imports" --no-cache
