"""Writes squareLobe.json: the GGX lobe under a square lamp by numeric integration.

Run with Debian's python3-scipy: python3 tests/golden/squareLobe.py
"""
import json
import math
from pathlib import Path

import scipy
from scipy.integrate import dblquad

HALF_SIDE = math.sqrt(math.pi) / 2


def share(x, y, q):
    density = lambda v, u: q * q / (math.pi * (q * q + (u - x) ** 2 + (v - y) ** 2) ** 2)
    value, _ = dblquad(density, -HALF_SIDE, HALF_SIDE, -HALF_SIDE, HALF_SIDE, epsabs=1e-10, epsrel=1e-10)
    return value


cases = [
    {"x": x, "y": y, "alphaOverA": q, "share": share(x, y, q)}
    for q in (0.2, 1.0, 5.0)
    for x, y in ((0, 0), (0.5, 0.2), (0.886, 0), (1.5, -0.7), (0, 4))
]
Path(__file__).with_suffix(".json").write_text(
    json.dumps({"source": "scipy.integrate.dblquad over the square", "tool": f"SciPy {scipy.__version__}", "tolerance": 1e-7, "cases": cases}, indent=1) + "\n"
)
