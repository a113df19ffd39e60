"""Reference values for tests/optics, made with SciPy and NumPy (Debian python3-scipy, python3-numpy).

Run from the repository root:  /usr/bin/python3 tests/golden/optics.py
"""
import json
import os

import numpy as np
import scipy
from scipy.integrate import dblquad


def lobe(v, q):
    """GGX slope density of width q, integrated over the unit disc seen from distance v."""
    def density(phi, r):
        return r * q * q / np.pi / (q * q + v * v + r * r - 2 * v * r * np.cos(phi)) ** 2
    return 2 * dblquad(density, 0, 1, 0, np.pi, epsabs=1e-11, epsrel=1e-10)[0]


def fresnel(n, cos):
    root = np.sqrt(n * n - 1 + cos * cos)
    return (((cos - root) / (cos + root)) ** 2 + ((n * n * cos - root) / (n * n * cos + root)) ** 2) / 2


def smith(cos, alpha):
    return 2 * cos / (cos + np.sqrt(alpha**2 + (1 - alpha**2) * cos * cos))


APERTURES = {20: (1.8, 3.6), 60: (4.4, 11.7), 85: (4.0, 6.0)}  # ISO 2813 / ASTM D523, full angles in degrees


def midpoints(width_deg, count):
    return np.radians(width_deg) * ((np.arange(count) + 0.5) / count - 0.5)


def gloss(alpha, n, angle_deg, source=(12, 24), receptor=(300, 600)):
    """Gloss units by midpoint sums over source and receptor directions, with no change of variables."""
    theta = np.radians(angle_deg)
    in_plane, across = APERTURES[angle_deg]
    u, v = np.meshgrid(midpoints(in_plane, receptor[0]), midpoints(across, receptor[1]))
    out = np.stack([np.sin(theta + u) * np.cos(v), np.sin(v), np.cos(theta + u) * np.cos(v)], -1)
    solid_angle = np.radians(in_plane) / receptor[0] * np.radians(across) / receptor[1] * np.cos(v)
    total = mirror = 0.0
    for a in midpoints(0.75, source[0]):
        for b in midpoints(2.5, source[1])[: source[1] // 2]:  # the other half is its mirror image
            inward = np.array([-np.sin(theta + a) * np.cos(b), np.sin(b), np.cos(theta + a) * np.cos(b)])
            half = out + inward
            half /= np.linalg.norm(half, axis=-1)[..., None]
            density = alpha**2 / (np.pi * (half[..., 2] ** 2 * (alpha**2 - 1) + 1) ** 2)
            shadow = smith(inward[2], alpha) * smith(out[..., 2], alpha)
            reflection = fresnel(n, half @ inward) * density * shadow / (4 * inward[2])
            total += np.sum(reflection * solid_angle)
            mirror += fresnel(1.567, inward[2])
    return 100 * total / mirror


def main():
    lobes = [[v, q, lobe(v, q)] for q in (0.02, 0.1, 0.3, 1, 3, 10) for v in (0, 0.5, 0.95, 1.05, 1.5, 4)]
    gloss_units = [
        [alpha, n, angle, gloss(alpha, n, angle)]
        for alpha in (0.01, 0.05, 0.2, 0.5)
        for n in (1.434, 1.54, 1.76)
        for angle in (20, 60, 85)
    ]
    gloss_units += [[0.005, 1.54, angle, gloss(0.005, 1.54, angle, receptor=(600, 900))] for angle in (20, 60, 85)]
    golden = {
        'source': 'Walter et al. 2007, eqs. 20, 33, 34, integrated numerically; apertures of ISO 2813 / ASTM D523',
        'tool': 'tests/golden/optics.py, SciPy dblquad and NumPy midpoint sums',
        'version': f'SciPy {scipy.__version__}, NumPy {np.__version__}',
        'tolerance': {'lobeShare': 1e-7, 'glossUnits': 0.3},
        'lobeShare': {'columns': ['uOverA', 'alphaOverA', 'share'], 'rows': lobes},
        'glossUnits': {'columns': ['alpha', 'n', 'angleDeg', 'glossUnits'], 'rows': gloss_units},
    }
    path = os.path.join(os.path.dirname(__file__), 'optics.json')
    with open(path, 'w') as file:
        json.dump(golden, file, indent=1)
        file.write('\n')


if __name__ == '__main__':
    main()
