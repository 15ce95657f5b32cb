#!/bin/sh
# Builds the wheel and tries it where no checkout is near: a fresh environment, another folder.
#   sh packaging/wheel.sh [FOLDER]   the wheel is left there (default: dist/)
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
packaging=$root/packaging
. "$packaging/parts/words.sh"
. "$packaging/parts/system.sh"
. "$packaging/parts/python.sh"

into=${1:-$root/dist}
mkdir -p -- "$into"
into=$(CDPATH='' cd -- "$into" && pwd)
ready_environment window "$packaging/system-packages/run.txt" "$packaging/system-packages/window.txt"
ready_translations
ready_environment check "$packaging/system-packages/run.txt"

trial=$(mktemp -d)
trap 'rm -rf -- "$trial"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM

rm -f -- "$into"/hearthkey-*.whl
(cd "$root" && "$environment/bin/python" -m hatchling build --target wheel --directory "$into" >&2) ||
    stop "The wheel could not be built; the lines above say why."

find_python
"$python" -m venv "$trial/environment"
"$trial/environment/bin/python" -m pip install -qq --disable-pip-version-check --no-input --only-binary :all: \
    --require-hashes -r "$packaging/locks/run.txt" >&2
"$trial/environment/bin/python" -m pip install -qq --disable-pip-version-check --no-input --no-deps \
    --no-index "$into"/hearthkey-*.whl >&2
cd "$trial"
"$trial/environment/bin/hearthkey" --help >help.txt || stop "The wheel installs, but its command does not start."
[ -s help.txt ] || stop "The wheel's command starts, but says nothing when asked for help."
"$trial/environment/bin/python" -m pip check >&2 || stop "What the wheel asks for and what the lock brings do not fit."
"$trial/environment/bin/python" -P - <<'LOOK' || stop "The wheel came without its resources."
from importlib.resources import files

resources = files("hearthkey").joinpath("resources")
assert any(resources.iterdir())
assert all(resources.joinpath("translations", f"hearthkey_{one}.qm").is_file() for one in ("de", "es"))
LOOK
say "The wheel starts by itself: $into"
