"""Writes watershed.json: how scikit-image floods a small relief from three markers.

Run with Debian's python3-skimage: /usr/bin/python3 tests/golden/watershed.py
"""

import json
from pathlib import Path

import numpy as np
import skimage
from skimage.filters import gaussian
from skimage.segmentation import watershed

height, width = 22, 30
relief = gaussian(np.random.default_rng(7).random((height, width)), 2).round(6).astype(np.float32)
markers = np.zeros((height, width), np.int32)
for label, (row, column) in enumerate([(4, 5), (16, 9), (10, 24)], start=1):
    markers[row, column] = label
within = np.ones((height, width), np.uint8)
within[:, 14:16] = 0
within[7:9, 14:16] = 1

golden = {
    "source": "tests/golden/watershed.py",
    "tool": "scikit-image (Debian python3-skimage)",
    "version": skimage.__version__,
    "tolerance": 0,
    "width": width,
    "height": height,
    "relief": [round(float(value), 6) for value in relief.ravel()],
    "markers": markers.ravel().tolist(),
    "within": within.ravel().tolist(),
    "labels": watershed(relief, markers).ravel().tolist(),
    "labelsWithin": watershed(relief, markers, mask=within).ravel().tolist(),
}

Path(__file__).with_suffix(".json").write_text(json.dumps(golden, separators=(",", ":")) + "\n")
