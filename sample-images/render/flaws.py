"""Pits, fractures and chips pressed into a mesh, and specks that only color it."""

import numpy as np
from scipy.spatial import cKDTree

from noise3 import layered_noise3
from stone_shape import vertex_areas


def smooth_step(low, high, x):
    """0 below low, 1 above high, smooth between."""
    t = np.clip((x - low) / (high - low), 0, 1)
    return t * t * (3 - 2 * t)


class Skin:
    """A stone's surface while flaws are pressed into it.

    points, normals: mm and unit vectors of the sound surface, n x 3.
    sink: mm each vertex goes inward along its normal; broken: 0 to 1, rough floor; dark: 0 to 1, shaded dirt;
    speck: 0 to 1, colored spot.
    """

    def __init__(self, points, triangles, normals, rng):
        self.points, self.normals, self.rng = points.copy(), normals, rng
        self.area = vertex_areas(points, triangles)
        self.tree = cKDTree(points)
        self.sink, self.broken, self.dark, self.speck = (np.zeros(len(points)) for _ in range(4))
        self.taken = []

    def spot(self, low_deg, high_deg, keep_mm):
        """A free vertex whose normal is low_deg to high_deg from the vertical, or None."""
        tilt = np.degrees(np.arccos(np.clip(self.normals[:, 2], -1, 1)))
        fit = np.flatnonzero((tilt >= low_deg) & (tilt <= high_deg))
        for _ in range(40):
            if len(fit) == 0:
                return None
            # Uniform over the outline, not over the crowded vertices: throw in the plane, keep the nearest.
            low, high = self.points[fit, :2].min(0), self.points[fit, :2].max(0)
            thrown = self.rng.uniform(low, high)
            near = fit[np.argmin(((self.points[fit, :2] - thrown) ** 2).sum(1))]
            if np.hypot(*(self.points[near, :2] - thrown)) > 1.5:
                continue
            if all(np.linalg.norm(self.points[near] - p) > r + keep_mm for p, r in self.taken):
                return near
        return None

    def equal_diameter(self, vertices):
        """Diameter in mm of the circle whose area these vertices cover, rounded to 1 um."""
        return round(float(2 * np.sqrt(self.area[vertices].sum() / np.pi)), 3)

    def press(self):
        """The surface with every flaw in it."""
        return self.points - self.normals * self.sink[:, None]


def tangent_frame(normal):
    """Two unit vectors across `normal`."""
    first = np.cross(normal, [0.0, 1.0, 0.0] if abs(normal[1]) < 0.8 else [1.0, 0.0, 0.0])
    first /= np.linalg.norm(first)
    return first, np.cross(normal, first)


def lobed_distance(skin, center, radius_mm, wobble):
    """Vertices near `center` and their distance from it, in radii of an uneven round outline."""
    near = np.array(skin.tree.query_ball_point(skin.points[center], radius_mm * 1.9))
    first, second = tangent_frame(skin.normals[center])
    offset = skin.points[near] - skin.points[center]
    x, y = offset @ first, offset @ second
    angle = np.arctan2(y, x)
    edge = np.ones(len(near))
    for k in (2, 3, 5):
        edge += wobble / k**0.5 * skin.rng.normal() * np.cos(k * angle + skin.rng.uniform(0, 6.3))
    return near, np.linalg.norm(offset, axis=1) / (radius_mm * np.clip(edge, 0.5, 1.6))


def add_pit(skin, diameter_mm, tilt_deg=(0, 68), center=None):
    """Presses a pit with a steep wall and a rough floor, at the vertex `center` or a free place.

    Returns its truth, or None if no place is left.
    """
    if center is None:
        center = skin.spot(*tilt_deg, diameter_mm / 2 + 0.6)
    if center is None:
        return None
    depth = diameter_mm * skin.rng.uniform(0.22, 0.42)
    near, u = lobed_distance(skin, center, diameter_mm / 2, 0.16)
    bowl = (1 - smooth_step(0.45, 1.04, u)) * (0.85 + 0.15 * (1 - np.clip(u, 0, 1)))
    hackle = 0.12 * layered_noise3(skin.points[near] * 3 / diameter_mm, int(skin.rng.integers(1 << 30)), 3)
    skin.sink[near] = np.maximum(skin.sink[near], depth * bowl * (1 + hackle))
    floor = 1 - smooth_step(0.85, 1.0, u)
    skin.broken[near] = np.maximum(skin.broken[near], floor)
    skin.dark[near] = np.maximum(skin.dark[near], floor * skin.rng.uniform(0.1, 0.35))
    skin.taken.append((skin.points[center].copy(), diameter_mm / 2))
    return {"kind": "pit", "at": center, "diameterMm": skin.equal_diameter(near[u < 0.92]), "depthMm": round(depth, 3)}


def walk(skin, start, length_mm, step_mm=0.35):
    """Vertices along a winding walk over the upper surface."""
    heading = skin.rng.uniform(0, 2 * np.pi)
    path, drift = [start], skin.rng.normal(0, 0.02)
    for _ in range(int(length_mm / step_mm)):
        here = path[-1]
        first, second = tangent_frame(skin.normals[here])
        if len(path) == 1:
            ahead = np.cos(heading) * first + np.sin(heading) * second
        kink = skin.rng.normal(0, 0.8) if skin.rng.random() < 0.18 else skin.rng.normal(0, 0.18)
        ahead = ahead - (ahead @ skin.normals[here]) * skin.normals[here]
        ahead /= np.linalg.norm(ahead)
        ahead = np.cos(drift + kink) * ahead + np.sin(drift + kink) * np.cross(skin.normals[here], ahead)
        there = skin.tree.query(skin.points[here] + ahead * step_mm)[1]
        if skin.normals[there, 2] < 0.3:
            break
        if there != here:
            path.append(there)
    return path


def longest_walk(skin, length_mm, tries=6):
    """The longest of a few walks from free places on the upper surface; empty when there is no place."""
    starts = [skin.spot(0, 50, 1.0) for _ in range(tries)]
    return max([walk(skin, start, length_mm) for start in starts if start is not None], key=len, default=[])


def add_fracture(skin, length_mm, width_mm):
    """Presses a thin winding groove, tapered at both ends; returns its truth or None."""
    path = longest_walk(skin, length_mm)
    if len(path) < 8:
        return None
    line = skin.points[path]
    along = np.concatenate([[0], np.cumsum(np.linalg.norm(np.diff(line, axis=0), axis=1))])
    fine = np.linspace(0, along[-1], int(along[-1] / 0.04) + 2)
    # Light smoothing takes out the snap to vertices.
    kernel = np.ones(15) / 15
    dense = np.column_stack([np.convolve(np.pad(np.interp(fine, along, line[:, k]), 7, "edge"), kernel, "valid") for k in range(3)])
    near = np.unique(np.concatenate([skin.tree.query_ball_point(p, width_mm * 2) for p in dense[::4]]).astype(int))
    distance, which = cKDTree(dense).query(skin.points[near])
    taper = np.minimum(1, 4 * np.minimum(fine, along[-1] - fine) / along[-1] + 0.25)[which]
    swell = 1 + 0.3 * layered_noise3(dense[which] * 0.7, int(skin.rng.integers(1 << 30)), 2)
    u = distance / (width_mm / 2 * taper * swell)
    depth = width_mm * skin.rng.uniform(1.0, 1.6)
    skin.sink[near] = np.maximum(skin.sink[near], depth * taper * (1 - smooth_step(0.05, 1.1, u)))
    inside = 1 - smooth_step(0.5, 1.0, u)
    skin.broken[near] = np.maximum(skin.broken[near], inside)
    skin.dark[near] = np.maximum(skin.dark[near], inside * 0.6)
    skin.taken += [(p, width_mm) for p in line]
    return {"kind": "fracture", "at": path[len(path) // 2], "path": path[::3] + ([path[-1]] if (len(path) - 1) % 3 else []),
            "lengthMm": round(float(along[-1]), 2), "widthMm": round(width_mm, 3), "depthMm": round(depth, 3)}


def add_chip(skin, diameter_mm):
    """Bites a concave, rippled piece out of the shoulder near the outline; returns its truth or None."""
    center = skin.spot(52, 76, diameter_mm / 2)
    if center is None:
        return None
    axis = skin.normals[center]
    depth = diameter_mm * skin.rng.uniform(0.26, 0.38)
    radius = (diameter_mm**2 / 4 + depth**2) / (2 * depth)
    near = np.array(skin.tree.query_ball_point(skin.points[center], diameter_mm * 0.95))
    offset = skin.points[near] - skin.points[center]
    height = offset @ axis
    across2 = np.maximum((offset**2).sum(1) - height**2, 0)
    hollow = radius - depth - np.sqrt(np.maximum(radius**2 - across2, 0))
    rough = layered_noise3(skin.points[near] * 1.1, int(skin.rng.integers(1 << 30)), 5)
    ripple = np.sin(np.sqrt(across2) * 5.5) * 0.02
    hollow = hollow + diameter_mm * 0.025 * rough + ripple
    cut = np.maximum(height - hollow, 0) * (across2 < radius**2)
    skin.points[near] -= axis * cut[:, None]
    edge = smooth_step(0.0, 0.05, cut)
    skin.broken[near] = np.maximum(skin.broken[near], edge)
    skin.taken.append((skin.points[center].copy(), diameter_mm * 0.7))
    bitten = near[cut > 0.02]
    middle = np.average(skin.points[bitten], axis=0, weights=skin.area[bitten])
    center = bitten[np.argmin(((skin.points[bitten] - middle) ** 2).sum(1))]
    return {"kind": "chip", "at": center, "diameterMm": skin.equal_diameter(bitten), "depthMm": round(float(cut.max()), 3)}


def add_speck(skin, diameter_mm):
    """Colors a spot without touching the shape; returns its truth or None."""
    center = skin.spot(0, 58, diameter_mm / 2 + 0.6)
    if center is None:
        return None
    near, u = lobed_distance(skin, center, diameter_mm / 2, 0.16)
    skin.speck[near] = np.maximum(skin.speck[near], 1 - smooth_step(0.85, 1.05, u))
    skin.taken.append((skin.points[center].copy(), diameter_mm / 2))
    return {"at": center, "diameterMm": skin.equal_diameter(near[u < 0.95])}
