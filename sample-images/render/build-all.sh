#!/bin/sh
# Renders the four committed sample photographs and their truth files.
# Usage: sh build-all.sh [OUT]      (default: the folder above this one)
set -e
here=$(cd "$(dirname "$0")" && pwd)
out=${1:-$here/..}
render() {
  blender -b --python-exit-code 1 --python "$here/build.py" -- --kind "$1" --seed "$2" --name "$3" --out "$out" --samples "$4"
}
render coarse 21 coarse-tray 40
render mid 21 mid-tray 24
render polished 21 polished-tray 64
render close-up 22 close-up 24
# The coarse tray once more with the lamp carried around, nothing else moved.
out="$out/lamp-moved"
blender -b --python-exit-code 1 --python "$here/build.py" -- --kind coarse --seed 21 --name coarse-tray --out "$out" --samples 40 --lamp-turn 110
