"""Pits found by general blob detectors on rendered trays with truth files, by the rules of flawMatch.ts.

Run: python3 tests/bench/flawBaselines.py FOLDER…     (needs numpy, scikit-image and OpenCV)

scikit-image's blob_log (Laplacian of Gaussian) and OpenCV's SimpleBlobDetector look for dark blobs on each stone's
luminance, its slow shading divided out. Both are given the true outlines and scale, and the threshold with the best
F1 on these very photos: more than they would have in use.
"""

import json
import sys
from pathlib import Path

import cv2
import numpy as np
from skimage.feature import blob_log

LEAST_MM, NEAR_MM, RIM_MM = 0.6, 0.5, 0.45
LUMINANCE = np.array([0.2126, 0.7152, 0.0722])


def stones_of(folder):
    """Each stone's evened luminance, inner mask, true pits in crop pixels, and pixels per mm."""
    for path in sorted(Path(folder).glob("*.json")):
        truth = json.loads(path.read_text())
        picture = cv2.cvtColor(cv2.imread(str(path.with_suffix(".jpg"))), cv2.COLOR_BGR2RGB) / 255.0
        linear = np.where(picture <= 0.04045, picture / 12.92, ((picture + 0.055) / 1.055) ** 2.4) @ LUMINANCE
        scale = 1 / truth["mmPerPx"]
        for stone in truth["stones"]:
            outline = np.array(stone["outline"])
            low, high = np.floor(outline.min(0)).astype(int), np.ceil(outline.max(0)).astype(int) + 1
            low = np.maximum(low, 0)
            light = linear[low[0]:high[0], low[1]:high[1]]
            mask = np.zeros(light.shape, np.uint8)
            cv2.fillPoly(mask, [np.round(outline[:, ::-1] - low[::-1]).astype(np.int32)], 1)
            weight = cv2.GaussianBlur(mask.astype(np.float64), (0, 0), 1.5 * scale) + 1e-6
            evened = light / (cv2.GaussianBlur(light * mask, (0, 0), 1.5 * scale) / weight + 1e-4)
            evened = np.where(mask > 0, evened, 1.0)
            inner = cv2.distanceTransform(mask, cv2.DIST_L2, 5) >= RIM_MM * scale
            pits = [(f["row"] - low[0], f["column"] - low[1], f["diameterMm"] * scale, f["visible"] and f["diameterMm"] >= LEAST_MM)
                    for f in stone["flaws"] if f["kind"] == "pit"]
            yield evened.clip(0, 2), inner, pits, scale


def by_log(evened, scale, threshold):
    """Rows, columns, diameters (px) of dark blobs."""
    found = blob_log(1 - evened, min_sigma=0.2 * scale, max_sigma=1.0 * scale, num_sigma=6, threshold=threshold)
    return [(r, c, 2 * s * 2**0.5) for r, c, s in found]


def by_opencv(evened, scale, threshold):
    """Likewise; OpenCV's detector wants an 8-bit picture and thresholds it many times."""
    options = cv2.SimpleBlobDetector_Params()
    options.filterByColor, options.blobColor = True, 0
    options.filterByArea, options.minArea, options.maxArea = True, (0.4 * scale) ** 2 * 0.785, (3 * scale) ** 2 * 0.785
    options.filterByCircularity, options.filterByConvexity, options.filterByInertia = True, False, False
    options.minCircularity, options.minDistBetweenBlobs = 0.5, 0.5 * scale
    options.minThreshold, options.maxThreshold, options.thresholdStep = 20, 110 * (1 - threshold), 8
    points = cv2.SimpleBlobDetector_create(options).detect(np.uint8(np.clip(evened * 110, 0, 255)))
    return [(p.pt[1], p.pt[0], p.size) for p in points]


def score(stones, detect, threshold):
    """Recall and precision, greedy, nearest pairs first."""
    hits = wanted = right = false = 0
    for evened, inner, pits, scale in stones:
        found = [f for f in detect(evened, scale, threshold) if inner[int(f[0]), int(f[1])]]
        far = lambda f, p: np.hypot(f[0] - p[0], f[1] - p[1])
        near = lambda f, p: far(f, p) <= max(p[2] / 2, NEAR_MM * scale)
        pairs = sorted((far(f, p), i, j) for i, f in enumerate(found) for j, p in enumerate(pits) if near(f, p))
        used, got = set(), set()
        for _, i, j in pairs:
            if i not in used and j not in got:
                used.add(i)
                got.add(j)
        large = lambda i: found[i][2] >= LEAST_MM * scale
        wanted += sum(p[3] for p in pits)
        hits += sum(pits[j][3] for j in got)
        right += sum(large(i) for i in used)
        false += sum(1 for i in range(len(found)) if large(i) and not any(near(found[i], p) for p in pits))
    return hits / max(1, wanted), right / max(1, right + false)


def main():
    stones = [stone for folder in sys.argv[1:] for stone in stones_of(folder)]
    for name, detect, thresholds in (("scikit-image blob_log", by_log, (0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5)),
                                     ("OpenCV SimpleBlobDetector", by_opencv, (0.0, 0.2, 0.4, 0.5, 0.6))):
        scores = [score(stones, detect, threshold) for threshold in thresholds]
        recall, precision = max(scores, key=lambda s: 2 * s[0] * s[1] / max(1e-9, s[0] + s[1]))
        print(f"{name}, best threshold: pits recall {recall:.2f}, precision {precision:.2f}")


main()
