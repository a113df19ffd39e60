"""Writes flawModel.json: what PyTorch makes of a small formula picture with the weights of models/stone-flaws.onnx.

Run with PyTorch, the weights the ONNX file was exported from: python tests/golden/flawModel.py WEIGHTS.pt

The planes are 1 x 6 x 64 x 64. With r, c the row and column, k the channel (0 red, 1 green, 2 blue),
d² = (r − 30)² + (c − 26)², body = 1 + 0.1 sin(r / 5) cos(c / 7) + 0.05 k:
color = body · (1 + (0.35 ((r − 30) · 0.6 − (c − 26) · 0.8) / 5 − 0.15) · exp(−(d² / 40)⁴)); mask = 1 where
(r − 32)² + (c − 32)² < 900, else 0; lamp x = 0.4, lamp y = 0.3.
"""

import hashlib
import json
import sys
from pathlib import Path

import numpy as np
import torch

HERE = Path(__file__)
ROOT = HERE.parents[2]
sys.path.insert(0, str(ROOT / "models" / "training"))

from export import load

PLACES = [(r, c) for r in (3, 10, 13, 15, 17, 20, 28) for c in (3, 9, 11, 13, 15, 17, 26)]


def formula_planes():
    r, c = np.mgrid[0:64, 0:64].astype(np.float64)
    d2 = (r - 30) ** 2 + (c - 26) ** 2
    dent = 1 + (0.35 * ((r - 30) * 0.6 - (c - 26) * 0.8) / 5 - 0.15) * np.exp(-((d2 / 40) ** 4))
    color = [(1 + 0.1 * np.sin(r / 5) * np.cos(c / 7) + 0.05 * k) * dent for k in range(3)]
    mask = ((r - 32) ** 2 + (c - 32) ** 2 < 900).astype(np.float64)
    return np.stack([*color, mask, np.full_like(r, 0.4), np.full_like(r, 0.3)]).astype(np.float32)[None]


torch.set_num_threads(1)
with torch.no_grad():
    shares = load(sys.argv[1])(torch.from_numpy(formula_planes())).softmax(1)[0].numpy()
golden = {
    "source": "tests/golden/flawModel.py",
    "tool": "PyTorch",
    "version": torch.__version__,
    "modelSha256": hashlib.sha256((ROOT / "models" / "stone-flaws.onnx").read_bytes()).hexdigest(),
    "tolerance": 1e-4,
    "outputShape": [1, *shares.shape],
    "places": [list(p) for p in PLACES],
    "shares": [[round(float(v), 6) for v in shares[:, r, c]] for r, c in PLACES],
}
HERE.with_suffix(".json").write_text(json.dumps(golden, separators=(",", ":")) + "\n")
