"""Writes outlines.json: reference values for the steps that find stones, from SciPy and scikit-image.

Run with Debian's python3-scipy and python3-skimage: /usr/bin/python3 tests/golden/outlines.py
"""

import json
from pathlib import Path

import numpy as np
import scipy
import skimage
from scipy.ndimage import binary_fill_holes, distance_transform_edt, gaussian_filter, map_coordinates
from scipy.sparse import lil_matrix
from scipy.sparse.csgraph import dijkstra
from scipy.spatial import ConvexHull
from skimage.measure import CircleModel, approximate_polygon
from skimage.measure import block_reduce

rng = np.random.default_rng(11)
height, width = 18, 23


def flat(values, digits=6):
    return [round(float(value), digits) for value in np.asarray(values).ravel()]


# Dijkstra on the grid graph: a step costs the pixel stepped on, times √2 across a corner.
cost = (0.1 + rng.random((height, width)) ** 3).round(4)
markers = np.zeros((height, width), int)
markers[2, 3], markers[14, 6], markers[9, 19] = 1, 2, 3
graph = lil_matrix((height * width, height * width))
for row in range(height):
    for column in range(width):
        for down in (-1, 0, 1):
            for right in (-1, 0, 1):
                r, c = row + down, column + right
                if (down or right) and 0 <= r < height and 0 <= c < width:
                    graph[row * width + column, r * width + c] = cost[r, c] * np.hypot(down, right)
starts = np.flatnonzero(markers)
totals = dijkstra(graph.tocsr(), indices=starts)
labels = markers.ravel()[starts][np.argmin(totals, axis=0)]

blob = gaussian_filter(rng.standard_normal((40, 50)), 3) > 0.02
blob[:9] = blob[-9:] = False
blob[:, :9] = blob[:, -9:] = False
radius = 2.5
core = distance_transform_edt(blob) > radius
opened = blob & (distance_transform_edt(~core) <= radius)
reached = distance_transform_edt(~blob) <= radius
closed = blob | (distance_transform_edt(reached) > radius)

rows, columns = np.nonzero(blob)
corners = np.concatenate([np.stack([rows + a, columns + b], 1) for a in (0, 1) for b in (0, 1)])

angles = np.linspace(0, 2 * np.pi, 40, endpoint=False)
points = np.stack([30 + 12 * np.sin(angles), 25 + 12 * np.cos(angles)], 1) + rng.normal(0, 0.05, (40, 2))
circle = CircleModel()
circle.estimate(points)

line = np.stack([np.arange(30), np.cumsum(rng.normal(0, 0.6, 30))], 1).round(3)
wide = rng.random((40, 56)).round(4)
places = (rng.random((12, 2)) * [height + 2, width + 2] - 1).round(3)
eightfold = np.ones((3, 3), int)
block = rng.random((12, 18, 3)).round(4)

golden = {
    "source": "tests/golden/outlines.py",
    "tool": "SciPy, scikit-image (Debian python3-scipy, python3-skimage)",
    "version": f"{scipy.__version__}, {skimage.__version__}",
    "tolerance": "0 for masks and labels, 1e-4 else",
    "flood": {"width": width, "height": height, "cost": flat(cost), "markers": markers.ravel().tolist(), "labels": labels.tolist()},
    "blob": {"width": 50, "height": 40, "data": blob.astype(int).ravel().tolist()},
    "radius": radius,
    "opened": opened.astype(int).ravel().tolist(),
    "closed": closed.astype(int).ravel().tolist(),
    "filled": binary_fill_holes(blob, eightfold).astype(int).ravel().tolist(),
    "solidity": round(float(blob.sum() / ConvexHull(corners).volume), 6),
    "circle": {"points": points.round(4).tolist(), "row": round(circle.params[0], 3), "column": round(circle.params[1], 3), "radius": round(circle.params[2], 3)},
    "line": line.tolist(),
    "simplified": approximate_polygon(line, 1.2).tolist(),
    "wide": {"width": 56, "height": 40, "data": flat(wide), "sigma": 6, "blurred": flat(gaussian_filter(wide, 6, mode="nearest", truncate=3.2))},
    "samples": {"places": places.tolist(), "values": flat(map_coordinates(cost, places.T, order=1, mode="nearest"))},
    "block": {"width": 18, "height": 12, "data": flat(block), "means": flat(block_reduce(block, (3, 3, 1), np.mean))},
}
Path(__file__).with_suffix(".json").write_text(json.dumps(golden, separators=(",", ":")) + "\n")
