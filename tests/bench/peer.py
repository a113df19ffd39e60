"""The same work as a careful person would script it with general libraries: the peer of `npm run bench`.

Run: python3 tests/bench/peer.py PHOTO.jpg     (needs OpenCV, scikit-image, numpy and scipy)

Prints one line of JSON: milliseconds for decoding the JPEG and for the work (in all, its CPU time, and by its three
parts), and the stones. Loading the libraries counts for neither.

What it does, as our program does:
- outlines of all stones on a small copy: a smooth model of the empty tray, what differs from it by color or lightness,
  soft shadows left out, touching stones parted by a watershed, each taken as convex;
- for each stone at full resolution: the body's shading fitted without its bright and dark places, the brightest place
  over it, and how wide its edge rises from 10 to 90 % along rays;
- for each stone at full resolution: dark blobs as candidates for pits (blob_log) and for chips (blob_doh).

What it does not do, and our program does: find the ball and read lamp, scale and exposure off it; fit the lamp's image
through a model of reflection and blur, so its edge width is in pixels and no gloss; intervals; fractures, scratches,
waves; tell pits from dark patterns; warnings and verdicts. It knows no scale, so blobs are sought in sizes relative to
the stone. It takes the ball for a stone. One process; OpenCV uses its threads as it likes.
"""

import json
import sys
import time

import cv2
import numpy as np
from scipy import ndimage
from skimage.feature import blob_doh, blob_log, peak_local_max
from skimage.segmentation import watershed

# Larger side of the copy on which stones are looked for, pixels.
SMALL_SIDE = 1200
# How far from the tray a pixel must be, in its own scatter (median absolute deviations).
FAR_FROM_TRAY = 8
# A shadow leaves more than this share of the tray's light, and its color nearly as it is (Lab units of 8-bit OpenCV).
SHADOW_SHARE, SHADOW_COLOR = 0.25, 5
# Edges steeper than this many times the tray's usual slope belong to stones: soft shadows have none.
STEEP = 10
# Smallest stone, share of the photo.
LEAST_AREA = 0.001
RAYS = 72
# Standard deviations of blobs, in square roots of the stone's area.
PIT_SIGMAS, CHIP_SIGMAS = (0.007, 0.025), (0.025, 0.07)

SRGB = np.arange(256) / 255
TO_LINEAR = np.where(SRGB <= 0.04045, SRGB / 12.92, ((SRGB + 0.055) / 1.055) ** 2.4).astype(np.float32)


def quadratic(rows, columns):
    """Terms of a polynomial of second degree, one row for each place; places in -1 … 1."""
    return np.stack([np.ones_like(rows), rows, columns, rows * columns, rows**2, columns**2], axis=-1)


def tray_model(lab):
    """The empty tray's Lab at every pixel and its scatter: a quadratic fitted again and again without what is off."""
    height, width = lab.shape[:2]
    rows, columns = np.mgrid[-1 : 1 : height * 1j, -1 : 1 : width * 1j].astype(np.float32)
    terms = quadratic(rows.ravel(), columns.ravel())
    values = lab.reshape(-1, 3)
    sparse = slice(None, None, 37)
    terms_fitted, values_fitted = terms[sparse], values[sparse]
    keep = np.abs(values_fitted - np.median(values_fitted, axis=0)).max(axis=1) < 25
    for _ in range(6):
        fitted = np.linalg.lstsq(terms_fitted[keep], values_fitted[keep], rcond=None)[0]
        off = np.abs(values_fitted - terms_fitted @ fitted)
        scatter = np.maximum(1.48 * np.median(off[keep], axis=0), 0.7)
        keep = (off < 3 * scatter).all(axis=1)
    return (terms @ fitted).reshape(lab.shape), scatter


def stone_mask(small):
    """What is no tray and no shadow on it, holes filled and specks taken out."""
    lab = cv2.cvtColor(cv2.GaussianBlur(small, (0, 0), 1.2), cv2.COLOR_BGR2LAB).astype(np.float32)
    tray, scatter = tray_model(lab)
    off = lab - tray
    is_far = (np.abs(off) > FAR_FROM_TRAY * scatter).any(axis=2)
    share = (lab[..., 0] / np.maximum(tray[..., 0], 1)) ** 2.2
    is_shadow = (share < 1) & (share > SHADOW_SHARE) & (np.hypot(off[..., 1], off[..., 2]) < SHADOW_COLOR)
    lightness = cv2.GaussianBlur(lab[..., 0], (0, 0), 1)
    slope = np.hypot(cv2.Sobel(lightness, cv2.CV_32F, 1, 0), cv2.Sobel(lightness, cv2.CV_32F, 0, 1))
    is_steep = slope > STEEP * np.median(slope)
    mask = ((is_far & ~is_shadow) | is_steep).astype(np.uint8)
    disk = lambda size: cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (size, size))
    mask = cv2.morphologyEx(mask, cv2.MORPH_CLOSE, disk(15))
    mask = ndimage.binary_fill_holes(mask).astype(np.uint8)
    return cv2.morphologyEx(mask, cv2.MORPH_OPEN, disk(25))


def part_touching(mask):
    """Labels of single stones: a watershed from the middles of what is far from the edge."""
    inward = cv2.GaussianBlur(cv2.distanceTransform(mask, cv2.DIST_L2, 5), (0, 0), 3)
    _, pieces = cv2.connectedComponents(mask)
    least = int(0.02 * max(mask.shape))
    middles = peak_local_max(inward, min_distance=least, threshold_abs=least / 2, labels=pieces, exclude_border=False)
    markers = np.zeros(mask.shape, np.int32)
    markers[tuple(middles.T)] = np.arange(1, len(middles) + 1)
    # Middles with no neck between them belong to one stone: what is farther from the edge than 0.75 of its peak is one.
    for label in range(1, len(middles) + 1):
        row, column = middles[label - 1]
        _, core = cv2.connectedComponents((inward > 0.75 * inward[row, column]).astype(np.uint8))
        markers[(core == core[row, column]) & (markers > 0)] = markers[row, column]
    return watershed(-inward, markers, mask=mask > 0)


def outlines_of(picture):
    """Outlines, (column, row) in pixels of the photo."""
    shrink = min(1, SMALL_SIDE / max(picture.shape))
    small = cv2.resize(picture, None, fx=shrink, fy=shrink, interpolation=cv2.INTER_AREA)
    labels = part_touching(stone_mask(small))
    found = []
    for label, place in enumerate(ndimage.find_objects(labels), 1):
        if place is None:
            continue
        own = np.pad((labels[place] == label).astype(np.uint8), 1)
        contours, _ = cv2.findContours(own, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
        outline = max(contours, key=cv2.contourArea)[:, 0, :] + (place[1].start - 1, place[0].start - 1)
        if cv2.contourArea(outline) >= LEAST_AREA * labels.size:
            # The hull takes in again what passed for tray: tumbled stones are convex, nearly.
            found.append((cv2.convexHull(outline)[:, 0, :] + 0.5) / shrink)
    return found


def crop_of(picture, outline):
    """Linear luminance and mask of one stone at full resolution."""
    low = np.maximum(np.floor(outline.min(axis=0)).astype(int) - 2, 0)
    high = np.ceil(outline.max(axis=0)).astype(int) + 3
    linear = cv2.LUT(picture[low[1] : high[1], low[0] : high[0]], TO_LINEAR)
    light = linear @ np.array([0.0722, 0.7152, 0.2126], np.float32)
    mask = np.zeros(light.shape, np.uint8)
    cv2.fillPoly(mask, [np.round(outline - low).astype(np.int32)], 1)
    return light, mask, low


def body_shading(light, inner):
    """Light of the stone's body: a quadratic, fitted again and again without what is far off, as highlights are."""
    height, width = light.shape
    rows, columns = np.mgrid[-1 : 1 : height * 1j, -1 : 1 : width * 1j].astype(np.float32)
    terms, values = quadratic(rows[inner], columns[inner]), light[inner]
    keep = values <= np.quantile(values, 0.9)
    for _ in range(5):
        normal = terms[keep].T @ terms[keep]
        fitted = np.linalg.solve(normal, terms[keep].T @ values[keep])
        off = values - terms @ fitted
        keep = np.abs(off) < 2.5 * (1.48 * np.median(np.abs(off[keep])) + 1e-4)
    return np.maximum(quadratic(rows, columns) @ fitted, 1e-3)


def rise_width(profile):
    """Pixels between 90 and 10 % of a profile that falls outward; NaN where it does not."""
    top, foot = profile[:3].max(), np.median(profile[-5:])
    share = (profile - foot) / max(top - foot, 1e-6)
    below = lambda level: np.flatnonzero(share < level)
    crossings = []
    for level in (0.9, 0.1):
        after = below(level)
        if top - foot < 0.01 or after.size == 0 or after[0] == 0:
            return np.nan
        k = after[0]
        crossings.append(k - 1 + (share[k - 1] - level) / (share[k - 1] - share[k]))
    return crossings[1] - crossings[0]


def highlight_edge(over, inner):
    """The brightest place over the body: center (row, column), area, and median 10-90 % width of its edge, pixels."""
    smooth = np.where(inner, cv2.GaussianBlur(over, (0, 0), 1.5), -1)
    peak = np.unravel_index(np.argmax(smooth), smooth.shape)
    pieces, _ = ndimage.label(smooth > smooth[peak] / 2)
    blob = pieces == pieces[peak]
    area = int(blob.sum())
    center = np.array(ndimage.center_of_mass(blob))
    length = 3 * np.sqrt(area / np.pi) + 8
    distances = np.arange(0, length, 0.5)
    angles = np.arange(RAYS) * 2 * np.pi / RAYS
    rows = center[0] + np.sin(angles)[:, None] * distances
    columns = center[1] + np.cos(angles)[:, None] * distances
    rays = ndimage.map_coordinates(over, [rows, columns], order=1, mode="nearest")
    widths = 0.5 * np.array([rise_width(ray) for ray in rays])
    sound = widths[np.isfinite(widths)]
    return center, area, float(np.median(sound)) if sound.size >= RAYS / 4 else None


def dark_blobs(light, body, mask):
    """Rows, columns, radii (pixels) of dark blobs within the stone: small ones, large ones."""
    size = np.sqrt(mask.sum())
    inner = cv2.distanceTransform(mask, cv2.DIST_L2, 5) > 0.03 * size
    dark = np.where(mask > 0, np.clip(1 - light / body, 0, 1), 0).astype(np.float32)
    low, high = PIT_SIGMAS
    pits = blob_log(dark, min_sigma=low * size, max_sigma=high * size, num_sigma=6, threshold=0.15)
    low, high = CHIP_SIGMAS
    chips = blob_doh(dark, min_sigma=low * size, max_sigma=high * size, num_sigma=5, threshold=0.01)
    within = lambda blobs: [b for b in blobs if inner[int(b[0]), int(b[1])]]
    place = lambda b: [float(b[0]), float(b[1]), float(b[2] * 2**0.5)]
    return [place(b) for b in within(pits)], [place(b) for b in within(chips)]


def main(path):
    start = time.perf_counter()
    picture = cv2.imread(path, cv2.IMREAD_COLOR)
    if picture is None:
        sys.exit(f"{path} cannot be opened.")
    decoded, cpu = time.perf_counter(), time.process_time()
    outlines = outlines_of(picture)
    found = time.perf_counter()
    stones, edges_s, blobs_s = [], 0.0, 0.0
    for outline in outlines:
        begin = time.perf_counter()
        light, mask, low = crop_of(picture, outline)
        inner = cv2.distanceTransform(mask, cv2.DIST_L2, 5) > 0.02 * np.sqrt(mask.sum())
        body = body_shading(light, inner)
        center, area, width = highlight_edge(light - body, inner)
        edged = time.perf_counter()
        pits, chips = dark_blobs(light, body, mask)
        blobs_s += time.perf_counter() - edged
        edges_s += edged - begin
        stones.append({
            "center": [round(float(v), 1) for v in np.argwhere(mask).mean(axis=0) + low[::-1]],
            "areaPx": int(mask.sum()),
            "highlight": [round(float(v), 1) for v in center + low[::-1]],
            "highlightPx": area,
            "edgePx": width and round(width, 2),
            "pits": len(pits),
            "chips": len(chips),
        })
    ms = lambda seconds: round(1000 * seconds, 1)
    print(json.dumps({
        "decode_ms": ms(decoded - start),
        "work_ms": ms(time.perf_counter() - decoded),
        "work_cpu_ms": ms(time.process_time() - cpu),
        "outlines_ms": ms(found - decoded),
        "edges_ms": ms(edges_s),
        "blobs_ms": ms(blobs_s),
        "stones": stones,
    }))


if len(sys.argv) != 2:
    sys.exit("Name one photo: python3 peer.py PHOTO.jpg")
main(sys.argv[1])
