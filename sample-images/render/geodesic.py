"""A sphere of nearly equal triangles, denser toward the camera."""

import numpy as np


def icosahedron():
    """The 12 corners (unit vectors) and 20 faces (corner indices, outward) of an icosahedron."""
    g = (1 + 5**0.5) / 2
    corners = []
    for s in (-1, 1):
        for t in (-g, g):
            corners += [(0, s, t), (s, t, 0), (t, 0, s)]
    corners = np.array(corners) / np.hypot(1, g)
    faces = []
    for i in range(12):
        for j in range(i + 1, 12):
            for k in range(j + 1, 12):
                a, b, c = corners[[i, j, k]]
                if min(a @ b, b @ c, c @ a) > 0.4:
                    outward = np.cross(b - a, c - a) @ a > 0
                    faces.append((i, j, k) if outward else (i, k, j))
    return corners, faces


def crowd_upward(points, factor):
    """Conformal map of the unit sphere that makes triangles `factor` times smaller at +z."""
    t2 = (1 - points[:, 2]) / np.maximum(1 + points[:, 2], 1e-12) / factor**2
    z = (1 - t2) / (1 + t2)
    plane = np.hypot(points[:, 0], points[:, 1])
    shrink = np.sqrt(np.maximum(1 - z * z, 0)) / np.maximum(plane, 1e-12)
    return np.column_stack([points[:, 0] * shrink, points[:, 1] * shrink, z])


def geodesic(frequency, factor=1.8):
    """Unit vectors and triangles of a geodesic sphere: 20 * frequency^2 faces.

    frequency: subdivisions of an icosahedron's edge, 1 or more.
    factor: how much finer the mesh is at +z than an even one.
    """
    corners, faces = icosahedron()
    f = frequency
    i, j = np.meshgrid(np.arange(f + 1), np.arange(f + 1), indexing="ij")
    inside = i + j <= f
    index = -np.ones((f + 1, f + 1), int)
    index[inside] = np.arange(inside.sum())
    i, j = i[inside], j[inside]
    up = i + j < f
    down = i + j < f - 1
    triangles = np.vstack([
        np.column_stack([index[i[up], j[up]], index[i[up] + 1, j[up]], index[i[up], j[up] + 1]]),
        np.column_stack([index[i[down] + 1, j[down]], index[i[down] + 1, j[down] + 1], index[i[down], j[down] + 1]]),
    ])
    weights = np.column_stack([f - i - j, i, j]) / f
    points = np.vstack([weights @ corners[list(face)] for face in faces])
    points /= np.linalg.norm(points, axis=1, keepdims=True)
    every = np.vstack([triangles + k * len(i) for k in range(20)])
    keys = np.round((points + 2) * 1e5).astype(np.int64) @ np.array([1, 10**6, 10**12])
    _, first, inverse = np.unique(keys, return_index=True, return_inverse=True)
    return crowd_upward(points[first], factor), inverse[every]
