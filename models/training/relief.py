"""A check of a marked pit after the network: does its brightness lean toward the lamp as a hollow's does?

In a hollow the wall next to the lamp is dark and the far one bright. A colored spot leans anywhere, and a mineral
grain is often far darker than a hollow that light from the room reaches. The bounds below are choices, made on the
development trays.
"""

import numpy as np
from scipy import ndimage

LUMINANCE = np.array([0.2126, 0.7152, 0.0722])
MOST_DARK, MOST_PALE = -0.7, 0.8
LEAST_ALONG, MOST_ACROSS = -0.05, 0.12


def logs_of(planes):
    """Logarithm of luminance over the stone's median, at the network's places (rows/2 x columns/2). planes: 6 x rows x columns."""
    logs = np.log(np.tensordot(LUMINANCE, planes[:3], 1) + 0.05)
    return logs.reshape(logs.shape[0] // 2, 2, -1, 2).mean((1, 3))


def relief_of(logs, places, lamp_xy, mask):
    """Contrast to the ring around, rise of the logarithm away from the lamp, and rise across it, each over one spread.

    logs, mask: rows x columns at the network's places. places: n x 2 rows and columns of the mark.
    """
    inside = np.zeros_like(mask)
    inside[places[:, 0], places[:, 1]] = True
    ring = ndimage.binary_dilation(inside, iterations=5) & ~ndimage.binary_dilation(inside, iterations=2) & mask
    values = logs[places[:, 0], places[:, 1]]
    rows, columns = (places - places.mean(0)).T
    ux, uy = np.asarray(lamp_xy) / (np.linalg.norm(lamp_xy) + 1e-9)
    leaning = []
    for distance in (-(columns * ux - rows * uy), columns * uy + rows * ux):
        leaning.append(float((values * distance).mean() / ((distance**2).mean() ** 0.5 + 1e-6)))
    contrast = float(values.mean() - np.median(logs[ring])) if ring.any() else 0.0
    return contrast, leaning[0], leaning[1]


def is_hollow(logs, places, lamp_xy, mask):
    """Whether a mark may be a pit."""
    contrast, along, across = relief_of(logs, places, lamp_xy, mask)
    return MOST_DARK < contrast < MOST_PALE and along > LEAST_ALONG and abs(across) < MOST_ACROSS
