"""Writes opencv.json: what OpenCV's own Python package says about a few small pictures.

Run with Debian's python3-opencv: /usr/bin/python3 tests/golden/opencv.py
"""

import json
from pathlib import Path

import cv2
import numpy as np

chance = np.random.default_rng(20)
gray = chance.random((18, 24), dtype=np.float32).round(4)
color = chance.random((12, 16, 3), dtype=np.float32).round(4)
mask = (cv2.GaussianBlur(chance.random((20, 26), dtype=np.float32), (0, 0), 1.4) > 0.5).astype(np.uint8)
points = chance.integers(0, 60, (12, 2)).astype(np.float32)


def numbers(array):
    return [round(float(value), 7) for value in np.asarray(array).ravel()]


def window(side, shape=cv2.MORPH_RECT):
    return cv2.getStructuringElement(shape, (side, side))


def disc(radius):
    return window(2 * radius + 1, cv2.MORPH_ELLIPSE)


def components():
    _, labels, stats, centroids = cv2.connectedComponentsWithStats(mask, connectivity=8)
    listed = [
        {"areaPx": int(s[4]), "row": float(c[1]), "column": float(c[0]), "box": [int(v) for v in s[:4]]}
        for s, c in zip(stats[1:], centroids[1:])
    ]
    return {"labels": labels.ravel().tolist(), "components": listed}


def outline():
    contours, _ = cv2.findContours(mask, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    largest = max(contours, key=cv2.contourArea)
    return [[int(y), int(x)] for x, y in largest[:, 0]]


def rectangle():
    _, size, _ = cv2.minAreaRect(points)
    return {"lengthPx": max(size), "widthPx": min(size)}


rim = cv2.copyMakeBorder(mask * 255, 1, 1, 1, 1, cv2.BORDER_CONSTANT)
distance = cv2.distanceTransform(rim, cv2.DIST_L2, cv2.DIST_MASK_PRECISE)[1:-1, 1:-1]

golden = {
    "source": "tests/golden/opencv.py",
    "tool": "OpenCV (Debian python3-opencv)",
    "version": cv2.__version__,
    "tolerance": 1e-5,
    "gray": {"width": 24, "height": 18, "channels": 1, "data": numbers(gray)},
    "color": {"width": 16, "height": 12, "channels": 3, "data": numbers(color)},
    "mask": {"width": 26, "height": 20, "data": mask.ravel().tolist()},
    "points": [[int(y), int(x)] for x, y in points],
    "areaResize": {
        "gray7x5": numbers(cv2.resize(gray, (7, 5), interpolation=cv2.INTER_AREA)),
        "color8x6": numbers(cv2.resize(color, (8, 6), interpolation=cv2.INTER_AREA)),
    },
    "gaussianBlur": {
        "gray1.3": numbers(cv2.GaussianBlur(gray, (0, 0), 1.3, borderType=cv2.BORDER_REFLECT_101)),
        "color0.8": numbers(cv2.GaussianBlur(color, (0, 0), 0.8, borderType=cv2.BORDER_REFLECT_101)),
    },
    "blackHat5": numbers(cv2.morphologyEx(gray, cv2.MORPH_BLACKHAT, window(5))),
    "topHat3": numbers(cv2.morphologyEx(gray, cv2.MORPH_TOPHAT, window(3))),
    "openMask1": cv2.morphologyEx(mask, cv2.MORPH_OPEN, disc(1)).ravel().tolist(),
    "components": components(),
    "distanceToEdge": numbers(distance),
    "outerOutline": outline(),
    "smallestRectangle": rectangle(),
}

Path(__file__).with_suffix(".json").write_text(json.dumps(golden, separators=(",", ":")) + "\n")
