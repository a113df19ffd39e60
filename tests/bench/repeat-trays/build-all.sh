#!/bin/sh
# Renders the trays of the repeat bench, three checks each: OUT/development (three trays) and OUT/test (one). Up to two
# minutes a photo on two cores.
# Usage: sh build-all.sh OUT
set -e
here=$(cd "$(dirname "$0")" && pwd)
out=${1:?folder for the trays}
render() { # part seed
  for check in 0 1 2; do
    blender -b --python-exit-code 1 --python "$here/build.py" -- --seed "$2" --check $check --out "$out/$1"
  done
}
for seed in 5001 5002 5003; do render development $seed; done
render test 5101
