#!/bin/sh
# Renders the batches of the identity bench, five checks each: OUT/development (two batches) and OUT/test (four). About
# half a minute a photo on two cores.
# Usage: sh build-all.sh OUT
set -e
here=$(cd "$(dirname "$0")" && pwd)
out=${1:?folder for the trays}
for batch in 4001 4002; do
  for check in 0 1 2 3 4; do
    blender -b --python-exit-code 1 --python "$here/build.py" -- --batch $batch --check $check --out "$out/development"
  done
done
for batch in 4101 4102 4103 4104; do
  for check in 0 1 2 3 4; do
    blender -b --python-exit-code 1 --python "$here/build.py" -- --batch $batch --check $check --out "$out/test"
  done
done
