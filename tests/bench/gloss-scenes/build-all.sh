#!/bin/sh
# Rebuilds one part of the gloss bench: renders each scene, then develops its photographs.
# Usage: [GPU=1] sh build-all.sh PART OUT [keep]    PART: development, test, turned, faults or waves
# With GPU=1 a CUDA graphics card renders.
# Scenes that OUT already holds are skipped, so it can be stopped and started again. With `keep` the linear
# pictures stay in OUT/linear; otherwise each is deleted once its photographs are written.
set -e
here=$(cd "$(dirname "$0")" && pwd)
part=$1
out=$2
mkdir -p "$out"
blender -b --python-exit-code 1 --python "$here/build.py" -- --part "$part" | sed -n 's/^scene //p' | while read -r index scene; do
  if [ ! -f "$out/$scene.clean.jpg" ]; then
    if [ ! -f "$out/linear/$scene.exr" ] || [ ! -f "$out/$scene.json" ]; then
      nice -n 5 blender -b --python-exit-code 1 --python "$here/build.py" -- --part "$part" --index "$index" --out "$out" ${GPU:+--gpu} </dev/null >"$out/$scene.log" 2>&1 \
        || { tail -n 20 "$out/$scene.log" >&2; exit 1; }
      rm "$out/$scene.log"
    fi
    nice -n 5 /usr/bin/python3 "$here/develop.py" "$out/$scene.json"
    [ "$3" = keep ] || rm -f "$out/linear/$scene.exr"
  fi
  echo "$scene"
done
