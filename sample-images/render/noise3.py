"""Gradient noise on arrays of points, the same for the same seed."""

import numpy as np


def noise3(points, seed):
    """Perlin's gradient noise, about -1 to 1, lattice spacing 1, at points (n x 3)."""
    rng = np.random.default_rng(seed)
    gradients = rng.normal(size=(4096, 3))
    gradients /= np.linalg.norm(gradients, axis=1, keepdims=True)
    cell = np.floor(points).astype(np.int64)
    frac = points - cell
    fade = frac**3 * (frac * (frac * 6 - 15) + 10)
    total = np.zeros(len(points))
    for corner in np.ndindex(2, 2, 2):
        at = cell + corner
        hashed = (at[:, 0] * 73856093 ^ at[:, 1] * 19349663 ^ at[:, 2] * 83492791) % 4096
        slope = np.einsum("ij,ij->i", gradients[hashed], frac - corner)
        total += slope * np.prod(np.where(corner, fade, 1 - fade), axis=1)
    return total * 1.6


def layered_noise3(points, seed, layers=4):
    """Sum of noise3 at doubled frequencies and halved heights, about -1 to 1."""
    return sum(noise3(points * 2**k, seed + k) / 2**k for k in range(layers)) / 1.5
