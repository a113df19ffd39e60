"""Scores a network on path-traced trays: pits, fractures, chips, and what it invents.

Run: python score.py checkpoint.pt FOLDER [--pit 0.5 --fracture 0.5 --chip 0.5] [--sheet out.png]

Pits count from 0.6 mm across and facing the camera; a found pit matches a true one whose center lies within half its
diameter or 0.5 mm. Fractures count from 2 mm: found when a third of the path lies within 0.6 mm of what is marked;
marks of 2 mm and longer are false when less than a third of them lies within 0.8 mm of a true path. Chips match within
half their diameter or 1 mm. True flaws that are too small or turned away neither count as missed nor make a mark false.
"""

import argparse

import numpy as np
import torch
from scipy import ndimage

from export import load
from trays import crops_of

PITCH_MM = 1 / 6
LEAST_MM = {1: 0.6, 2: 2.0, 3: 1.2}


def marks(share, kind, threshold, mask):
    """Connected marks of one class: center (mm), diameter of equal area, length, confidence, pixels (mm)."""
    low = min(0.35, threshold * 0.7)
    labels, count = ndimage.label((share > low) & mask, np.ones((3, 3)))
    found = []
    for number, window in enumerate(ndimage.find_objects(labels), 1):
        inside = labels[window] == number
        values = share[window][inside]
        peak = np.sort(values)[-max(1, min(6, len(values) // 2 + 1)):].mean()
        if peak < threshold:
            continue
        at = (np.argwhere(inside) + [window[0].start, window[1].start] + np.array(0.5)) * PITCH_MM
        soft = np.clip(values / 0.5, 0, 1) if kind == 1 else np.ones(len(values))
        length = float(np.linalg.norm(np.ptp(at, axis=0)))
        found.append({"center": at.mean(0), "diameter": 2 * (soft.sum() * PITCH_MM**2 / np.pi) ** 0.5, "length": length,
                      "confidence": float(peak), "at": at})
    return found


def far(a, b):
    return float(np.linalg.norm(np.asarray(a) - np.asarray(b)))


def pit_score(crop, found, true):
    """Hits, misses, false marks; greedy, nearest pairs first."""
    pairs = sorted((far(f["center"], t["center"]), i, j) for i, f in enumerate(found) for j, t in enumerate(true))
    used, got = set(), set()
    for distance, i, j in pairs:
        if i not in used and j not in got and distance <= max(true[j]["diameterMm"] / 2, 0.5):
            used.add(i)
            got.add(j)
    wanted = [j for j, t in enumerate(true) if t["visible"] and t["diameterMm"] >= LEAST_MM[1]]
    near_any = lambda f: any(far(f["center"], t["center"]) <= max(t["diameterMm"] / 2, 0.5) for t in true)
    false = [f for i, f in enumerate(found) if i not in used and f["diameter"] >= LEAST_MM[1] and not near_any(f)]
    hits = sum(1 for i in used if found[i]["diameter"] >= LEAST_MM[1])
    return [true[j] for j in wanted if j in got], [true[j] for j in wanted if j not in got], false, hits


def fracture_score(found, true):
    pixels = np.concatenate([f["at"] for f in found]) if found else np.full((1, 2), 1e9)
    hit, missed = [], []
    for t in true:
        if t["visible"] and t["lengthMm"] >= LEAST_MM[2]:
            near = [np.linalg.norm(pixels - p, axis=1).min() <= 0.6 for p in t["line"]]
            (hit if np.mean(near) >= 1 / 3 else missed).append(t)
    line = np.concatenate([t["line"] for t in true]) if true else np.full((1, 2), 1e9)
    false = [f for f in found if f["length"] >= LEAST_MM[2]
             and np.mean(np.linalg.norm(f["at"][:, None] - line[None], axis=2).min(1) <= 0.8) < 1 / 3]
    return hit, missed, false


def chip_score(found, true):
    close = lambda f, t: far(f["center"], t["center"]) <= max(t["diameterMm"] / 2, 1.0)
    wanted = [t for t in true if t["visible"]]
    hit = [t for t in wanted if any(close(f, t) for f in found)]
    false = [f for f in found if f["diameter"] >= LEAST_MM[3] and not any(close(f, t) for t in true)]
    return hit, [t for t in wanted if t not in hit], false


def dense(points):
    """A path with points at most 0.2 mm apart."""
    out = [points[0]]
    for a, b in zip(points, points[1:]):
        n = max(1, int(far(a, b) / 0.2))
        out += [a + (b - a) * (k + 1) / n for k in range(n)]
    return np.array(out)


def truth_of(crop):
    """True flaws by kind with their places in crop millimeters."""
    kinds = {"pit": [], "fracture": [], "chip": []}
    for flaw in crop.stone["flaws"]:
        entry = flaw | {"center": crop.mm(flaw["row"], flaw["column"])}
        if "path" in flaw:
            entry["line"] = dense([crop.mm(*p) for p in flaw["path"]])
        kinds[flaw["kind"]].append(entry)
    return kinds


def judge(crop, shares, thresholds):
    """Everything the score needs of one stone."""
    mask = crop.mask[::2, ::2] > 0
    true = truth_of(crop)
    found = {k: marks(shares[k], k, thresholds[k], mask) for k in (1, 2, 3)}
    pits = pit_score(crop, found[1], true["pit"])
    return {"pit": pits, "fracture": fracture_score(found[2], true["fracture"]), "chip": chip_score(found[3], true["chip"]),
            "sound": not crop.stone["flaws"]}


def summary(results):
    """The figures as text lines."""
    total = lambda kind, part: sum(len(r[kind][part]) for r in results)
    lines, stones = [], len(results)
    for kind in ("pit", "fracture", "chip"):
        hit, missed, false = (total(kind, part) for part in (0, 1, 2))
        right = sum(r["pit"][3] for r in results) if kind == "pit" else hit
        lines.append(f"{kind}: recall {hit}/{hit + missed} = {hit / max(1, hit + missed):.3f}, precision {right / max(1, right + false):.3f}, "
                     f"false {false} = {false / stones:.3f} per stone")
    sound = [r for r in results if r["sound"]]
    invented = sum(len(r[kind][2]) for r in sound for kind in ("pit", "fracture", "chip"))
    lines.append(f"sound stones: {len(sound)} of {stones}, false flaws {invented} = {invented / max(1, len(sound)):.3f} each")
    return lines


@torch.no_grad()
def shares_of(net, crops):
    """Class shares of each crop, 6 x H/2 x W/2."""
    return [net(crop.planes).softmax(1)[0].numpy() for crop in crops]


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("checkpoint")
    parser.add_argument("folder", nargs="+")
    for kind in ("pit", "fracture", "chip"):
        parser.add_argument(f"--{kind}", type=float, default=0.5)
    parser.add_argument("--sheet")
    options = parser.parse_args()
    torch.set_num_threads(1)
    crops = [crop for folder in options.folder for crop in crops_of(folder)]
    shares = shares_of(load(options.checkpoint), crops)
    thresholds = {1: options.pit, 2: options.fracture, 3: options.chip}
    results = [judge(crop, share, thresholds) for crop, share in zip(crops, shares)]
    print("\n".join(summary(results)))
    if options.sheet:
        from sheet import write_sheet
        write_sheet(options.sheet, crops, shares, results)


if __name__ == "__main__":
    main()
