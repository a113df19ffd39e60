"""Lays stones and ball in the tray, apart or touching."""

import numpy as np
from scipy.spatial import ConvexHull

from setting import BALL_MM


def outline_of(points, view, x, y):
    """Convex outline in pixels (column, row) of points moved to (x, y)."""
    seen = view.pixels(points + [x, y, 0])[:, ::-1]
    return seen[ConvexHull(seen).vertices]


def gap_px(first, second):
    """Distance between two convex outlines, px; negative when they overlap."""
    best = -np.inf
    for a, b in ((first, second), (second, first)):
        edge = np.roll(a, -1, axis=0) - a
        out = np.column_stack([edge[:, 1], -edge[:, 0]])
        out /= np.maximum(np.linalg.norm(out, axis=1, keepdims=True), 1e-9)
        if ((a.mean(0) - a) * out).sum() > 0:
            out = -out
        best = max(best, ((b @ out.T).min(0) - (a * out).sum(1)).max())
    return best


def fits(outline, others, view, gap, margin):
    """Whether an outline keeps its distance from the others and from the picture's edge."""
    low, high = outline.min(0), outline.max(0)
    if low.min() < margin or high[0] > view.width_px - margin or high[1] > view.height_px - margin:
        return False
    return all(gap_px(outline, other) > gap for other in others)


def touching(points, view, rng, others, partner, margin):
    """A place where a stone just touches the outline `partner` and nothing else, or None."""
    middle = partner.mean(0)
    for _ in range(200):
        angle = rng.uniform(0, 2 * np.pi)
        step = np.array([np.cos(angle), np.sin(angle)])
        near, far = 0.0, 900.0
        for _ in range(30):
            reach = (near + far) / 2
            x, y = place_of(middle + step * reach, view)
            if gap_px(partner, outline_of(points, view, x, y)) > -0.5:
                far = reach
            else:
                near = reach
        x, y = place_of(middle + step * far, view)
        outline = outline_of(points, view, x, y)
        if fits(outline, [o for o in others if o is not partner], view, 20, margin):
            return x, y, outline
    return None


def place_of(pixel, view):
    """Tray position (mm, at the ball's center plane) under a pixel (column, row)."""
    return ((pixel[0] - view.width_px / 2) * view.mm_per_px, (view.height_px / 2 - pixel[1]) * view.mm_per_px)


def layout(clouds, view, rng, touching_pairs, gap=34, margin=30):
    """Positions (x, y) in mm for each point cloud; later clouds named in `touching_pairs` touch their partner.

    clouds: list of n x 3 points around the origin; touching_pairs: {index: partner index, smaller}.
    Raises RuntimeError when the tray is too full for the tries allowed.
    """
    for _ in range(60):
        places, outlines = [], []
        for index, points in enumerate(clouds):
            found = None
            if index in touching_pairs:
                found = touching(points, view, rng, outlines, outlines[touching_pairs[index]], margin)
            else:
                for _ in range(400):
                    x, y = place_of(rng.uniform((0, 0), (view.width_px, view.height_px)), view)
                    outline = outline_of(points, view, x, y)
                    if fits(outline, outlines, view, gap, margin):
                        found = x, y, outline
                        break
            if found is None:
                break
            places.append(found[:2])
            outlines.append(found[2])
        if len(places) == len(clouds):
            return places
    raise RuntimeError("the tray is too full: fewer or smaller stones, or a wider view")


def ball_cloud():
    """Points on the ball, resting on the tray."""
    k = np.arange(400)
    z = 1 - (2 * k + 1) / 400
    turn = k * 2.399963
    flat = np.sqrt(1 - z * z)
    return BALL_MM / 2 * np.column_stack([flat * np.cos(turn), flat * np.sin(turn), z + 1])
