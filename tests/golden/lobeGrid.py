"""Writes lobeGrid.json: the GGX lobe under a round and a square lamp, by numeric integration over a whole grid.

The slope density q^2 / (pi (q^2 + x^2 + y^2)^2) is integrated over the lamp with SciPy's adaptive quad, line by line,
with the peak of each line given as a break point. No closed form is used.

Run from the repository root:  /usr/bin/python3 tests/golden/lobeGrid.py
"""
import json
import math
from pathlib import Path

import scipy
from scipy.integrate import quad

ROUGHNESS = (0.02, 0.05, 0.1, 0.2, 0.35, 0.6, 1.0, 1.7, 3.0, 6.0, 12.0, 30.0)
DISTANCES = (0.0, 0.2, 0.4, 0.6, 0.8, 0.9, 0.97, 1.03, 1.1, 1.3, 1.7, 2.5, 4.0, 8.0)
PLACES = (0.0, 0.3, 0.6, 0.85, 0.92, 1.2, 2.0, 5.0)
HALF_SIDE = math.sqrt(math.pi) / 2  # a square as large as the disc of radius 1
EXACT = {'epsabs': 1e-11, 'epsrel': 1e-10, 'limit': 400}


def around(low, high, middle, width):
    """Break points about the peak that lie inside the interval."""
    wanted = (middle - 5 * width, middle - width, middle, middle + width, middle + 5 * width)
    return [point for point in wanted if low < point < high] or None


def share(x, y, q, half_width, half_height):
    """Integral over |u| < half_width, |v| < half_height(u) of the density about (x, y)."""
    def line(u):
        high = half_height(u)
        density = lambda v: q * q / (math.pi * (q * q + (u - x) ** 2 + (v - y) ** 2) ** 2)
        width = math.hypot(q, u - x)
        return quad(density, -high, high, points=around(-high, high, y, width), **EXACT)[0]
    return quad(line, -half_width, half_width, points=around(-half_width, half_width, x, q), **EXACT)[0]


def main():
    disc = [[v, q, share(v, 0, q, 1, lambda u: math.sqrt(max(0, 1 - u * u)))] for q in ROUGHNESS for v in DISTANCES]
    square = [
        [x, y, q, share(x, y, q, HALF_SIDE, lambda u: HALF_SIDE)]
        for q in ROUGHNESS for x in PLACES for y in PLACES if y <= x
    ]
    rows = lambda table: '[\n  ' + ',\n  '.join(json.dumps(row) for row in table) + '\n ]'
    Path(__file__).with_suffix('.json').write_text(
        '{\n "source": "scipy.integrate.quad of the slope density over the lamp, line by line",\n'
        f' "tool": "tests/golden/lobeGrid.py",\n "version": "SciPy {scipy.__version__}",\n "tolerance": 1e-7,\n'
        f' "disc": {rows(disc)},\n "square": {rows(square)}\n}}\n'
    )


if __name__ == '__main__':
    main()
