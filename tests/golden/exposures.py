"""Writes exposures.json: what OpenCV's Debevec calibration and merging make of shots of a known scene.

The scene is scikit-image's "coffee", its 8-bit values taken for sRGB light and reduced; a camera with a
contrast curve shoots it at three exposures.
Run with Debian's python3-opencv and python3-skimage: /usr/bin/python3 tests/golden/exposures.py
"""

import base64
import json
from pathlib import Path

import cv2
import numpy as np
import skimage
from skimage import data
from skimage.transform import downscale_local_mean

TIMES = np.array([1.0, 0.25, 0.0625], dtype=np.float32)
CONTRAST = 0.45
SMOOTHING = 100.0
rng = np.random.default_rng(3)


def light_of(v):
    return np.where(v <= 0.04045, v / 12.92, ((v + 0.055) / 1.055) ** 2.4)


def srgb_of(light):
    return np.where(light <= 0.0031308, light * 12.92, 1.055 * np.maximum(light, 1e-9) ** (1 / 2.4) - 0.055)


def shoot(light, time):
    v = srgb_of(np.clip(light * time, 0, 1))
    # A tilted sine, not the polynomial the program fits.
    recorded = v - CONTRAST * np.sin(2 * np.pi * v) / (2 * np.pi)
    return np.clip(np.rint(255 * recorded + rng.normal(0, 0.8, v.shape)), 0, 255).astype(np.uint8)


scene = 3.2 * downscale_local_mean(light_of(data.coffee() / 255.0), (2, 2, 1))[:200, :288]
shots = [shoot(scene, float(time)) for time in TIMES]
response = cv2.createCalibrateDebevec(samples=400, lambda_=SMOOTHING, random=False).process(shots, TIMES.copy())
radiance = cv2.createMergeDebevec().process(shots, TIMES.copy(), response)
# Its unit is free: the response is 1 at code 128. Ours is the first shot's limit.
unit = float(np.median(radiance[(shots[0] > 60) & (shots[0] < 200)] / scene[(shots[0] > 60) & (shots[0] < 200)]))
places = [(int(r), int(c)) for r, c in zip(rng.integers(4, 196, 60), rng.integers(4, 284, 60))]

golden = {
    "source": "tests/golden/exposures.py",
    "tool": "OpenCV createCalibrateDebevec, createMergeDebevec; scikit-image coffee",
    "version": {"opencv": cv2.__version__, "scikit-image": skimage.__version__},
    "widthPx": scene.shape[1],
    "heightPx": scene.shape[0],
    "times": TIMES.tolist(),
    "shots": [base64.b64encode(cv2.imencode(".png", shot[:, :, ::-1])[1].tobytes()).decode() for shot in shots],
    "response": [round(float(v), 5) for v in response[:, 0, 1]],
    "places": [
        {
            "row": r,
            "column": c,
            "light": [round(float(v), 5) for v in scene[r, c]],
            "merged": [round(float(v) / unit, 5) for v in radiance[r, c]],
        }
        for r, c in places
    ],
}
Path(__file__).with_name("exposures.json").write_text(json.dumps(golden))
