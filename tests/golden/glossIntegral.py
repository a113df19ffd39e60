"""Writes glossIntegral.json: readings of gloss, haze, distinctness and clarity meters on GGX surfaces.

Written from the definitions, without the changes of variables that src/optics uses: Gauss-Legendre sums (SciPy) over
the directions of source and receptor, in panels that narrow toward the mirrored ray. Every sum is made twice, with
more points the second time, and the script stops when the two differ.

Run from the repository root:  /usr/bin/python3 tests/golden/glossIntegral.py
"""
import json
import re
from pathlib import Path

import numpy as np
import scipy
from scipy.integrate import dblquad
from scipy.special import k1, roots_legendre

ALPHAS = (0.003, 0.006, 0.01, 0.02, 0.04, 0.07, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5)
INDEXES = (1.40, 1.434, 1.46, 1.50, 1.54, 1.567, 1.62, 1.70, 1.77)
STANDARD = 1.567
# Full angles in degrees, (in the plane, across it): ISO 2813 / ASTM D523.
SOURCE = (0.75, 2.5)
RECEPTOR = {20: (1.8, 3.6), 60: (4.4, 11.7), 85: (4.0, 6.0)}
# ASTM E430: haze windows 1.9 degrees beside 20 degrees; 0.4 degrees wide 2 degrees beside 30 degrees (width from memory);
# slits of 0.14 degrees (from memory) 0.3 degrees beside 30 degrees.
WIDE_SLIT = (0.4, 3.0)
SLIT = (0.14, 3.0)
FOCAL_LENGTH_MM = 130  # image clarity; from memory
COMBS_MM = (0.125, 0.25, 0.5, 1, 2)


def fresnel(n, cos):
    """Born & Wolf, section 1.5.2."""
    root = np.sqrt(n * n - 1 + cos * cos)
    return (((cos - root) / (cos + root)) ** 2 + ((n * n * cos - root) / (n * n * cos + root)) ** 2) / 2


def brdf_cos(inward, out, alpha):
    """f · cos(out) without Fresnel's factor, and cos(half, in): Walter et al. 2007, eqs. 20, 33, 34."""
    half = out + inward
    half = half / np.linalg.norm(half, axis=-1)[..., None]
    tan2 = lambda cos: 1 / cos**2 - 1
    density = alpha**2 / (np.pi * half[..., 2] ** 4 * (alpha**2 + tan2(half[..., 2])) ** 2)
    shadow = lambda cos: 2 / (1 + np.sqrt(1 + alpha**2 * tan2(cos)))
    value = density * shadow(inward[2]) * shadow(out[..., 2]) / (4 * inward[2])
    return np.where(out[..., 2] > 1e-9, value, 0), half @ inward


def direction(in_plane, across):
    """Unit vector at angles in and across the plane of measurement, radians."""
    return np.stack(
        [np.sin(in_plane) * np.cos(across), np.sin(across) * np.ones_like(in_plane), np.cos(in_plane) * np.cos(across)], -1
    )


def panels(low, high, middle, width, points):
    """Gauss-Legendre nodes and weights on [low, high] in panels that double away from `middle`."""
    steps = width * 2.0 ** np.arange(-2, 16)
    edges = np.concatenate([middle - steps, [middle], middle + steps, [low, high]])
    edges = np.unique(np.clip(edges, low, high))
    x, w = roots_legendre(points)
    half = np.diff(edges) / 2
    center = (edges[1:] + edges[:-1]) / 2
    return (center[:, None] + half[:, None] * x).ravel(), (half[:, None] * w).ravel()


def reading(alpha, indexes, angle_deg, source, window, offset_deg, points, source_points):
    """Flux into a window, centered `offset_deg` beside the mirrored ray, per flux from the source; one per index."""
    theta = np.radians(angle_deg)
    x, w = roots_legendre(source_points)
    middle = theta + np.radians(offset_deg)
    half_u, half_v = np.radians(window[0]) / 2, np.radians(window[1]) / 2
    total = np.zeros(len(indexes))
    for a, wa in zip(np.radians(source[0]) / 2 * x, w / 2):
        for b, wb in zip(np.radians(source[1]) / 2 * x, w / 2):
            # The source lies on the other side of the normal; a mirror sends its point (a, b) to (θ + a, −b).
            inward = direction(np.array(-(theta + a)), np.array(b))
            u, wu = panels(middle - half_u, middle + half_u, theta + a, 2 * alpha, points)
            v, wv = panels(-half_v, half_v, -b, 2 * alpha * np.cos(theta), points)
            out = direction(u[:, None], v[None, :])
            value, cos_half = brdf_cos(inward, out, alpha)
            weight = wa * wb * value * wu[:, None] * (wv * np.cos(v))[None, :]
            total += [np.sum(weight * fresnel(n, cos_half)) for n in indexes]
    return total


def checked(alpha, indexes, angle_deg, source, window, offset_deg=0.0, source_points=6):
    """The reading, more finely the second time; both must agree to a thousandth of a mirror's."""
    coarse = reading(alpha, indexes, angle_deg, source, window, offset_deg, 6, source_points)
    fine = reading(alpha, indexes, angle_deg, source, window, offset_deg, 9, source_points + 6)
    mirror = fresnel(np.array(indexes), np.cos(np.radians(angle_deg)))
    assert np.all(np.abs(coarse - fine) < 1e-3 * mirror), (alpha, angle_deg, window, offset_deg, coarse / fine - 1)
    return fine


def standard(angle_deg, source):
    """Flux of the perfect standard: all its mirrored rays enter; the mean of Fresnel's reflectance over the source."""
    x, w = roots_legendre(8)
    angles = np.radians(angle_deg) + np.radians(source[0]) / 2 * x
    across = np.radians(source[1]) / 2 * x
    cos = np.cos(angles)[:, None] * np.cos(across)[None, :]
    return np.sum(w[:, None] * w[None, :] / 4 * fresnel(STANDARD, cos))


def gloss_rows():
    for angle in (20, 60, 85):
        perfect = standard(angle, SOURCE)
        for alpha in ALPHAS:
            for n, flux in zip(INDEXES, checked(alpha, INDEXES, angle, SOURCE, RECEPTOR[angle])):
                yield [alpha, n, angle, round(100 * flux / perfect, 4)]


def haze_rows():
    for alpha in ALPHAS:
        both = sum(checked(alpha, INDEXES, 20, SOURCE, RECEPTOR[20], side) for side in (-1.9, 1.9))
        for n, flux in zip(INDEXES, both):
            yield [alpha, n, 20, round(100 * flux / standard(20, SOURCE), 4)]
        mean = sum(checked(alpha, INDEXES, 30, WIDE_SLIT, WIDE_SLIT, side) for side in (-2, 2)) / 2
        for n, flux in zip(INDEXES, mean):
            yield [alpha, n, 30, round(100 * flux / standard(30, WIDE_SLIT), 4)]


def distinctness_rows():
    for alpha in (0.001, 0.002) + ALPHAS:
        specular = checked(alpha, INDEXES, 30, SLIT, SLIT, 0, 18)
        beside = sum(checked(alpha, INDEXES, 30, SLIT, SLIT, side, 18) for side in (-0.3, 0.3)) / 2
        for n, share in zip(INDEXES, beside / specular):
            yield [alpha, n, round(100 * (1 - share), 4)]


def clarity_rows():
    """The comb's Fourier series; the lobe's transfer function is z K1(z), z = 2 π (2 f α) / (2 w) for the fundamental."""
    for comb in COMBS_MM:
        for alpha in (0.0001, 0.0002, 0.0005, 0.001, 0.002, 0.003, 0.005, 0.01, 0.02, 0.05):
            odd = np.arange(1, 40001, 2)
            z = odd * 2 * np.pi * FOCAL_LENGTH_MM * alpha / comb
            terms = (-1.0) ** ((odd - 1) // 2) / odd * z * k1(z)
            yield [alpha, comb, round(400 / np.pi * float(np.sum(terms)), 6)]


def spot_check():
    """One reading by SciPy's adaptive dblquad, with a point source, to hold the panels against."""
    alpha, angle, window = 0.05, 60, RECEPTOR[60]
    theta, half_u, half_v = np.radians(angle), np.radians(window[0]) / 2, np.radians(window[1]) / 2
    inward = direction(np.array(-theta), np.array(0.0))

    def integrand(v, u):
        value, cos_half = brdf_cos(inward, direction(np.array(u), np.array(v)), alpha)
        return float(value * fresnel(1.54, cos_half) * np.cos(v))

    adaptive = dblquad(integrand, theta - half_u, theta + half_u, -half_v, half_v, epsabs=1e-9, epsrel=1e-7)[0]
    summed = reading(alpha, (1.54,), angle, (0, 0), window, 0, 9, 1)[0]
    assert abs(adaptive / summed - 1) < 1e-5, (adaptive, summed)


def main():
    spot_check()
    golden = {
        'source': 'Gauss-Legendre sums over source and receptor directions; image clarity by Fourier series with Bessel K1',
        'tool': 'tests/golden/glossIntegral.py, python3-scipy',
        'version': f'SciPy {scipy.__version__}, NumPy {np.__version__}',
        'tolerance': {'glossUnits': 0.5, 'hazeUnits': 0.5, 'distinctnessOfImage': 0.5, 'imageClarity': 0.001},
        'glossUnits': {'columns': ['alpha', 'n', 'angleDeg', 'glossUnits'], 'rows': list(gloss_rows())},
        'hazeUnits': {'columns': ['alpha', 'n', 'angleDeg', 'hazeUnits'], 'rows': list(haze_rows())},
        'distinctnessOfImage': {'columns': ['alpha', 'n', 'percent'], 'rows': list(distinctness_rows())},
        'imageClarity': {'columns': ['alpha', 'combMm', 'percent'], 'rows': list(clarity_rows())},
    }
    text = json.dumps(golden, indent=1)
    # One row a line.
    text = re.sub(r'\[\s+([-\d.e]+),\s+([-\d.e]+),\s+([-\d.e]+)(?:,\s+([-\d.e]+))?\s+\]',
                  lambda m: '[' + ', '.join(g for g in m.groups() if g) + ']', text)
    Path(__file__).with_suffix('.json').write_text(text + '\n')


if __name__ == '__main__':
    main()
