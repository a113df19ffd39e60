"""Where a stone mirrors the lamp, and whether lamp and camera see that place."""

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components


def unit(vectors):
    """Vectors of length 1 along the last axis."""
    return vectors / np.linalg.norm(vectors, axis=-1, keepdims=True)


def slope_from_mirror(points, normals, lamp_at, camera_at):
    """Angle in radians between each normal and the one that would mirror the lamp's center into the camera."""
    half = unit(unit(lamp_at - points) + unit(camera_at - points))
    return np.arccos(np.clip(np.einsum("ij,ij->i", half, normals), -1, 1))


def regions(triangles, inside):
    """Groups of neighboring vertices among those marked; a list of arrays of vertex numbers."""
    kept = triangles[inside[triangles].all(1)]
    count = len(inside)
    links = coo_matrix((np.ones(2 * len(kept)), (kept[:, [0, 1]].ravel(), kept[:, [1, 2]].ravel())), (count, count))
    _, group = connected_components(links, directed=False)
    marked = np.flatnonzero(inside)
    order = marked[np.argsort(group[marked], kind="stable")]
    return np.split(order, np.flatnonzero(np.diff(group[order])) + 1)


def mirror_highlight(skin, triangles, lamp_at, lamp_half_mm, camera_at):
    """The largest place of the sound skin that mirrors the lamp.

    Returns vertex nearest its middle, radius in mm of the circle of equal area, and how many separate
    places at least a tenth as large mirror it (facets and waves break it up).
    """
    slope = slope_from_mirror(skin.points, skin.normals, lamp_at, camera_at)
    slope[skin.normals[:, 2] < 0.3] = np.pi
    best = int(np.argmin(slope))
    # The half-vector turns by half of what the direction to the lamp does.
    reach = np.arctan(lamp_half_mm / np.linalg.norm(lamp_at - skin.points[best])) / 2
    found = regions(triangles, slope < reach)
    areas = np.array([skin.area[r].sum() for r in found])
    if len(found) == 0 or areas.max() == 0:
        return {"at": best, "radiusMm": 0.0, "pieces": 0}
    largest = found[int(np.argmax(areas))]
    at = int(largest[np.argmin(slope[largest])])
    return {"at": at, "radiusMm": float(np.sqrt(areas.max() / np.pi)), "pieces": int((areas >= areas.max() / 10).sum())}


def is_blocked(start, end, clouds, reach_mm=0.5):
    """Whether one of the point clouds (n x 3, mm) comes nearer than reach_mm to the line from start to end."""
    length = np.linalg.norm(end - start)
    along = (end - start) / length
    for cloud in clouds:
        offset = cloud - start
        ahead = offset @ along
        near = (offset**2).sum(1) - ahead**2 < reach_mm**2
        if np.any(near & (ahead > 0) & (ahead < length)):
            return True
    return False


def ball_mirror(ball_at, radius_mm, light_at, camera_at):
    """The point of the ball that mirrors a light into the camera."""
    normal = unit(unit(light_at - ball_at) + unit(camera_at - ball_at))
    for _ in range(30):
        point = ball_at + radius_mm * normal
        normal = unit(unit(light_at - point) + unit(camera_at - point))
    return ball_at + radius_mm * normal
