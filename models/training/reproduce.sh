#!/bin/sh
# Trains the flaw network and writes ../stone-flaws.onnx: about 19 minutes on one H100, then 17 minutes on four H200 and 25 on two.
# Usage: sh reproduce.sh OUT
set -e
cd "$(dirname "$0")"
out=${1:?folder for the weights}
python3 train.py --out "$out/first" --steps 5677 --rate 2.5e-3 --lamps 2 --seed 4
python3 train.py --out "$out/second" --steps 4018 --rate 2.5e-3 --lamps 3 --seed 5 --weights "$out/first/flaws.pt"
python3 train.py --out "$out/third" --steps 3712 --rate 2e-3 --lamps 3 --seed 6 --weights "$out/second/flaws.pt"
four="torchrun --standalone --nproc-per-node 4"
$four train.py --out "$out/fourth" --steps 4000 --rate 3e-3 --lamps 2 --seed 7 --weights "$out/third/flaws.pt"
$four train.py --out "$out/fifth" --steps 5227 --rate 2e-3 --lamps 2 --seed 8 --weights "$out/fourth/flaws.pt"
two="torchrun --standalone --nproc-per-node 2"
$two train.py --out "$out/sixth" --steps 4957 --rate 3e-3 --lamps 2 --seed 9 --weights "$out/fifth/flaws.pt"
$two train.py --out "$out/seventh" --steps 5768 --rate 2.5e-3 --lamps 2 --seed 10 --weights "$out/sixth/flaws.pt"
$two train.py --out "$out/eighth" --steps 5564 --rate 1.5e-3 --lamps 2 --seed 11 --weights "$out/seventh/flaws.pt"
python3 mean.py "$out/stone-flaws.pt" "$out/seventh/flaws.pt" "$out/eighth/flaws.pt"
python3 export.py "$out/stone-flaws.pt" ../stone-flaws.onnx
