#!/bin/sh
# Renders the trays of the flaws bench and their truth files: OUT/development, OUT/test, and the same trays with the
# lamp carried around in OUT/development/moved and OUT/test/moved. About a minute a photo on two cores.
# Usage: sh build-all.sh OUT
set -e
build=$(cd "$(dirname "$0")/../../../sample-images/render" && pwd)/build.py
out=${1:?folder for the trays}
render() { # part kind seed turn
  folder="$out/$1"
  [ "$4" = 0 ] || folder="$folder/moved"
  blender -b --python-exit-code 1 --python "$build" -- --kind "$2" --seed "$3" --name "$2-$3" --out "$folder" \
    --samples 16 --width 1600 --lamp-turn "$4"
}
for seed in 1001 1002 1005 1007 1009; do render development coarse $seed 0; done
for seed in 1003 1008; do render development mid $seed 0; done
render development polished 1004 0
for seed in 1101 1102 1103 1104 1105 1106; do render development pitted $seed 0; done
render development mid 1107 0
render development polished 1108 0
render development coarse 1001 110
render development mid 1003 -110
for seed in 2001 2002 2003 2004 2005 2006 2007 2008 2009 2050 2051 2052; do render test pitted $seed 0; done
for seed in 2011 2012 2013 2014; do render test coarse $seed 0; done
for seed in 2021 2022 2023; do render test mid $seed 0; done
for seed in 2031 2032 2033; do render test polished $seed 0; done
render test coarse 2011 110
render test coarse 2012 -110
render test mid 2021 -100
render test mid 2022 100
render test pitted 2003 110
