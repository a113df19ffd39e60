"""Reference values for tests/measure, made with SciPy and NumPy (Debian python3-scipy, python3-numpy).

Run from the repository root:  /usr/bin/python3 tests/golden/measure.py
"""
import json
import os

import numpy as np
import scipy
from scipy import linalg, ndimage, optimize, stats

# NIST Statistical Reference Datasets, nonlinear regression, Misra1a (lower difficulty): y = b1 (1 - exp(-b2 x)).
MISRA_X = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0]
MISRA_Y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78]
MISRA_STARTS = [[500, 1e-4], [250, 5e-4]]


def systems(rng):
    listed = []
    for n in (2, 5, 11):
        half = rng.normal(size=(n, n + 2))
        matrix = half @ half.T
        right = rng.normal(size=n)
        listed.append([matrix.ravel().tolist(), right.tolist(), linalg.solve(matrix, right, assume_a='pos').tolist()])
    hilbert = linalg.hilbert(4)
    listed.append([hilbert.ravel().tolist(), [1.0] * 4, linalg.solve(hilbert, np.ones(4), assume_a='pos').tolist()])
    return listed


def misra():
    x, y = np.array(MISRA_X), np.array(MISRA_Y)
    fit = optimize.least_squares(lambda b: b[0] * (1 - np.exp(-b[1] * x)) - y, MISRA_STARTS[1], method='lm',
                                 xtol=1e-15, ftol=1e-15, gtol=1e-15, x_scale=[100, 1e-4])
    return {'x': MISRA_X, 'y': MISRA_Y, 'starts': MISRA_STARTS, 'parameters': fit.x.tolist(), 'cost': 2 * fit.cost}


def blurs(rng):
    picture = rng.random((11, 14)).round(4)
    listed = {str(s): ndimage.gaussian_filter(picture, s, mode='nearest').round(9).ravel().tolist()
              for s in (0.6, 1.3, 2.5)}
    return {'width': 14, 'height': 11, 'picture': picture.ravel().tolist(), 'blurred': listed}


def disc_integral(distance, alpha, a):
    """GGX slope density summed over a disc of radius a around a point at each distance, midpoint rule."""
    r = a * np.sqrt((np.arange(40) + 0.5) / 40)
    phi = 2 * np.pi * (np.arange(60) + 0.5) / 60
    sx, sy = (r[:, None] * np.cos(phi)).ravel(), (r[:, None] * np.sin(phi)).ravel()
    total = np.zeros_like(distance)
    for x, y in zip(sx, sy):
        total += alpha**2 / (np.pi * (alpha**2 + (distance - x) ** 2 + y * y) ** 2)
    return total * np.pi * a * a / sx.size


def lobe_picture():
    """One unevenly curved highlight: matrix exponential, disc integral, Gaussian blur and pixel means."""
    size, fine, margin, a = 15, 9, 6, 0.05
    shape = {'row': 6.6, 'column': 7.3, 'mean': -4.2, 'stretch': 0.35, 'skew': -0.2, 'alpha': 0.03}
    curvature = linalg.expm(np.array([[shape['mean'] + shape['stretch'], shape['skew']],
                                      [shape['skew'], shape['mean'] - shape['stretch']]]))
    at = (np.arange((size + 2 * margin) * fine) + 0.5) / fine - 0.5 - margin
    dy, dx = np.meshgrid(at - shape['row'], at - shape['column'], indexing='ij')
    slope = np.hypot(curvature[0, 0] * dx + curvature[0, 1] * dy, curvature[1, 0] * dx + curvature[1, 1] * dy)
    table = np.linspace(0, slope.max(), 3000)
    picture = np.interp(slope, table, disc_integral(table, shape['alpha'], a))
    picture = ndimage.gaussian_filter(picture, 0.8 * fine)
    means = picture.reshape(size + 2 * margin, fine, size + 2 * margin, fine).mean(axis=(1, 3))
    inside = means[margin:-margin, margin:-margin]
    return {'size': size, 'shape': shape, 'sourceSlope': a, 'blurPx': 0.8, 'curvature': curvature.ravel().tolist(),
            'lobe': inside.round(7).ravel().tolist()}


def erosion():
    """A potato-shaped mask and what is left of it inside discs of whole radii."""
    y, x = np.mgrid[0:26, 0:30]
    angle = np.arctan2(y - 12.5, x - 14.5)
    mask = np.hypot(y - 12.5, x - 14.5) < 10 + 2 * np.cos(2 * angle) + 1.2 * np.sin(5 * angle)
    rows = lambda m: [''.join('#' if inside else '.' for inside in row) for row in m]
    left = {}
    for radius in (1, 2, 4):
        v, u = np.mgrid[-radius:radius + 1, -radius:radius + 1]
        left[str(radius)] = rows(ndimage.binary_erosion(mask, u * u + v * v <= radius * radius))
    return {'mask': rows(mask), 'left': left}


def ranks(rng):
    listed = []
    for ties in (False, True):
        a, b = rng.normal(size=15).round(3), rng.normal(size=15).round(3)
        if ties:
            a, b = (2 * a).round(), (2 * (a + b)).round()
        listed.append([a.tolist(), b.tolist(), stats.spearmanr(a, b).correlation])
    return listed


def main():
    rng = np.random.default_rng(20240)
    golden = {
        'source': 'SciPy linalg.solve, optimize.least_squares, ndimage.gaussian_filter and binary_erosion, '
                  'linalg.expm, stats.spearmanr; NIST StRD Misra1a for the data of the least-squares problem',
        'tool': 'tests/golden/measure.py',
        'version': f'SciPy {scipy.__version__}, NumPy {np.__version__}',
        'tolerance': {'solve': 1e-9, 'blur': 0.0015, 'lobe': 0.004, 'rank': 1e-12},
        'solve': {'columns': ['matrix', 'right', 'x'], 'rows': systems(rng)},
        'misra1a': misra(),
        'blur': blurs(rng),
        'lobePicture': lobe_picture(),
        'erosion': erosion(),
        'ranks': {'columns': ['a', 'b', 'spearman'], 'rows': ranks(rng)},
    }
    with open(os.path.join(os.path.dirname(__file__), 'measure.json'), 'w') as file:
        json.dump(golden, file)
        file.write('\n')
    print(golden['misra1a']['parameters'], golden['misra1a']['cost'])


if __name__ == '__main__':
    main()
