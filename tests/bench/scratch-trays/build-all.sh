#!/bin/sh
# Renders the trays of the scratches bench and their truth files, each with and without its scratches: OUT/development
# and OUT/test. About two minutes a photo on two cores.
# Usage: sh build-all.sh OUT
set -e
build=$(cd "$(dirname "$0")/../../../sample-images/render" && pwd)/build.py
out=${1:?folder for the trays}
render() { # part seed
  for folder in "$1" "$1/unscratched"; do
    bare=""
    [ "$folder" = "$1" ] || bare="--unscratched"
    blender -b --python-exit-code 1 --python "$build" -- --kind scratched --seed "$2" --name "scratched-$2" \
      --out "$out/$folder" --samples 24 --width 1600 $bare
  done
}
for seed in 3001 3002 3003; do render development $seed; done
for seed in 3101 3102 3103 3104 3105; do render test $seed; done
