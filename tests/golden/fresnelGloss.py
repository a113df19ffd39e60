"""Writes fresnelGloss.json: the gloss of perfect mirrors by refractive index, as the standard's table gives it.

ISO 2813 and ASTM D523 compute the table by Fresnel's equation against n = 1.567 = 100. Here it is done in the form with
angles, sin(i - t) / sin(i + t) and tan(i - t) / tan(i + t), which src/optics does not use. Some rows of the printed table
are held against it: if one differs in its last digit, the script stops.

Run from the repository root:  /usr/bin/python3 tests/golden/fresnelGloss.py
"""
import json
from pathlib import Path

import numpy as np

ANGLES = (20, 60, 85)
STANDARD = 1.567
# Rows of the standard's table, to the digits printed there.
PRINTED = {1.40: (57.0, 71.9, 96.6), 1.50: (82.0, 89.1, 99.0), 1.54: (92.7, 95.7, 99.6), 1.60: (109.1, 105.2, 100.4)}


def reflectance(n, angle_deg):
    i = np.radians(angle_deg)
    t = np.arcsin(np.sin(i) / n)
    return ((np.sin(i - t) / np.sin(i + t)) ** 2 + (np.tan(i - t) / np.tan(i + t)) ** 2) / 2


def gloss(n):
    return [round(float(100 * reflectance(n, angle) / reflectance(STANDARD, angle)), 1) for angle in ANGLES]


def main():
    for n, printed in PRINTED.items():
        assert gloss(n) == list(printed), (n, gloss(n), printed)
    indexes = sorted([round(1.40 + 0.01 * step, 3) for step in range(41)] + [STANDARD])
    rows = ',\n  '.join(json.dumps([n, *gloss(n)]) for n in indexes)
    Path(__file__).with_suffix('.json').write_text(
        '{\n "source": "ISO 2813 / ASTM D523, gloss by refractive index (Fresnel), to the digit printed there",\n'
        f' "tool": "tests/golden/fresnelGloss.py",\n "version": "NumPy {np.__version__}",\n "tolerance": 0.05,\n'
        f' "columns": ["n", "at20", "at60", "at85"],\n "rows": [\n  {rows}\n ]\n}}\n'
    )


if __name__ == '__main__':
    main()
