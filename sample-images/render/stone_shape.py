"""The sound shape of a tumbled stone, before any flaw."""

import numpy as np

from geodesic import geodesic
from noise3 import layered_noise3, noise3

SPHERES = {}


def sphere_of(frequency):
    """One shared geodesic sphere for each frequency."""
    if frequency not in SPHERES:
        SPHERES[frequency] = geodesic(frequency)
    return SPHERES[frequency]


def cap_distance(directions, normal, height, radius):
    """Distance from the origin to a sphere of `radius` whose nearest cap lies at `height` along `normal`."""
    back = radius - height
    cosine = directions @ normal
    return -back * cosine + np.sqrt(np.maximum(back**2 * cosine**2 + radius**2 - back**2, 1e-9))


def worn_hull(directions, rng, facets, softness):
    """Radius along each direction of a hull of large caps worn round.

    facets: number of caps besides the ball that keeps the hull closed.
    softness: exponent of the blend; 6 is a river pebble, 24 a lightly worn facetted piece.
    """
    total = cap_distance(directions, np.array([0, 0, 1.0]), 1.0, 1.0) ** -softness
    for _ in range(facets):
        normal = rng.normal(size=3)
        normal /= np.linalg.norm(normal)
        height = rng.uniform(0.72, 0.95)
        total += cap_distance(directions, normal, height, height * rng.uniform(2.0, 5.0)) ** -softness
    return total ** (-1 / softness)


def broken_face(directions, radius, rng):
    """Cuts one face off as an old break: nearly flat, slightly hackly, its edge only a little worn."""
    angle = rng.uniform(0, 2 * np.pi)
    tilt = rng.uniform(0.5, 1.0)
    normal = np.array([np.cos(angle) * np.sin(tilt), np.sin(angle) * np.sin(tilt), np.cos(tilt)])
    height = 0.8 * radius[np.argmax(directions @ normal)]
    cosine = np.maximum(directions @ normal, 1e-3)
    ripple = 0.02 * layered_noise3(directions * 5, int(rng.integers(1 << 30)), 3)
    cut = height / cosine * (1 + ripple)
    softness = 60
    return (radius**-softness + np.minimum(cut, 50.0) ** -softness) ** (-1 / softness)


def stone_shape(rng, form, length_mm, edge_mm, waviness=None):
    """Vertices (mm, lowest at z = 0, centered over the origin) and triangles of one stone.

    form: 'rounded', 'oval', 'facetted', 'broken' or 'wavy' (rounded, with orange peel).
    edge_mm: wanted mesh edge on the side that faces the camera.
    waviness: wavelength in mm and root-mean-square slope of the orange peel, or None for a sound skin.
    """
    frequency = int(np.clip(length_mm * 0.62 / edge_mm, 70, 330))
    directions, triangles = sphere_of(frequency)
    facets, softness, flat = {
        "rounded": (10, 9, (0.78, 0.62)),
        "oval": (5, 7, (0.66, 0.5)),
        "facetted": (13, 26, (0.8, 0.66)),
        "broken": (10, 10, (0.8, 0.68)),
        "wavy": (10, 9, (0.78, 0.62)),
    }[form]
    radius = worn_hull(directions, rng, facets, softness)
    if form == "broken":
        radius = broken_face(directions, radius, rng)
    wave = noise3(directions * 1.3 + 7, int(rng.integers(1 << 30)))
    fine = noise3(directions * 3.1, int(rng.integers(1 << 30)))
    radius = radius * (1 + 0.07 * wave + 0.006 * fine)
    semi = np.array([1, flat[0] * rng.uniform(0.9, 1.12), flat[1] * rng.uniform(0.9, 1.12)])
    points = directions * radius[:, None] * semi
    points = points @ turn(rng).T
    points *= length_mm / longest_extent(points)
    if waviness:
        points = orange_peel(points, triangles, rng, *waviness)
    points -= [*(points[:, :2].max(0) + points[:, :2].min(0)) / 2, points[:, 2].min()]
    return points, triangles


def orange_peel(points, triangles, rng, wavelength_mm, slope):
    """Swells the skin into smooth low waves; `slope` is their root-mean-square slope along one direction."""
    normals = vertex_normals(points, triangles)
    seed = int(rng.integers(1 << 30))
    wave = noise3(points * 2 / wavelength_mm, seed)[:, None] * normals
    height = wavelength_mm * slope / 4
    for _ in range(2):
        leaning = vertex_normals(points + height * wave, triangles)
        height *= slope / np.sqrt(((leaning - normals) ** 2).sum(1).mean() / 2)
    return points + height * wave


def turn(rng):
    """A small tilt out of the tray and a free turn in it."""
    a, b, c = rng.normal(0, 0.1), rng.normal(0, 0.1), rng.uniform(0, 2 * np.pi)
    x = np.array([[1, 0, 0], [0, np.cos(a), -np.sin(a)], [0, np.sin(a), np.cos(a)]])
    y = np.array([[np.cos(b), 0, np.sin(b)], [0, 1, 0], [-np.sin(b), 0, np.cos(b)]])
    z = np.array([[np.cos(c), -np.sin(c), 0], [np.sin(c), np.cos(c), 0], [0, 0, 1]])
    return z @ y @ x


def longest_extent(points):
    """Largest width of the points seen from above."""
    angles = np.linspace(0, np.pi, 60, endpoint=False)
    along = points[::7, :2] @ np.array([np.cos(angles), np.sin(angles)])
    return (along.max(0) - along.min(0)).max()


def vertex_areas(points, triangles):
    """Area in mm2 that belongs to each vertex: a third of every triangle around it."""
    a, b, c = (points[triangles[:, k]] for k in range(3))
    third = np.linalg.norm(np.cross(b - a, c - a), axis=1) / 6
    return sum(np.bincount(triangles[:, k], third, len(points)) for k in range(3))


def vertex_normals(points, triangles):
    """Area-weighted unit normals of a triangle mesh."""
    a, b, c = (points[triangles[:, k]] for k in range(3))
    face = np.cross(b - a, c - a)
    normals = np.column_stack([
        sum(np.bincount(triangles[:, k], face[:, axis], len(points)) for k in range(3)) for axis in range(3)
    ])
    return normals / np.maximum(np.linalg.norm(normals, axis=1, keepdims=True), 1e-12)
