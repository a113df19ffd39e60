"""Where a point of the scene falls in the photograph."""

import numpy as np

from setting import BALL_MM


class View:
    """A camera straight above the tray's middle. Row 0, column 0 is the center of the upper left pixel."""

    def __init__(self, width_px, height_px, distance_mm, view_mm):
        self.width_px, self.height_px, self.distance_mm = width_px, height_px, distance_mm
        self.mm_per_px = view_mm / width_px
        self.focal_px = (distance_mm - BALL_MM / 2) / self.mm_per_px

    def pixels(self, points):
        """Rows and columns (n x 2) of points in mm (n x 3)."""
        points = np.atleast_2d(points)
        scale = self.focal_px / (self.distance_mm - points[:, 2])
        return np.column_stack([
            (self.height_px - 1) / 2 - points[:, 1] * scale,
            (self.width_px - 1) / 2 + points[:, 0] * scale,
        ])

    def cosine(self, points, normals):
        """Cosine between each normal and the direction to the camera."""
        to = np.array([0, 0, self.distance_mm]) - points
        return np.einsum("ij,ij->i", to, normals) / np.linalg.norm(to, axis=1)
