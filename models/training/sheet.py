"""Pictures of the stones a network judged worst, plain and with what was found, missed and invented."""

import cv2
import numpy as np

from camera import encode

TINTS = {1: (255, 0, 0), 2: (0, 120, 255), 3: (255, 220, 0), 4: (0, 255, 0), 5: (255, 0, 255)}


def panel(crop, shares, result, side=360):
    """Plain crop beside the same with tints of class, green rings (found), red (missed), white (invented)."""
    plain = (encode(crop.planes[0, :3] * 0.22).permute(1, 2, 0).numpy() * 255).astype(np.uint8)
    marked = plain.copy()
    best = np.kron(shares.argmax(0), np.ones((2, 2), int))
    for kind, tint in TINTS.items():
        marked[best == kind] = (0.5 * marked[best == kind] + 0.5 * np.array(tint)).astype(np.uint8)
    for kind in ("pit", "fracture", "chip"):
        for part, tint in ((0, (0, 255, 0)), (1, (255, 0, 0)), (2, (255, 255, 255))):
            for flaw in result[kind][part]:
                row, column = (np.asarray(flaw["center"]) * 12).astype(int)
                cv2.circle(marked, (int(column), int(row)), 12 if kind == "pit" else 20, tint, 1)
    both = np.concatenate([plain, marked], 1)
    scale = min(side / plain.shape[0], side / plain.shape[1])
    both = cv2.resize(both, None, fx=scale, fy=scale)
    out = np.zeros((side, 2 * side, 3), np.uint8)
    out[:both.shape[0], :both.shape[1]] = both
    name = f"{crop.photo} {crop.stone['id']} {crop.stone['material']}"
    return cv2.putText(out, name, (4, side - 6), cv2.FONT_HERSHEY_SIMPLEX, 0.45, (255, 255, 255), 1, cv2.LINE_AA)


def write_sheet(path, crops, shares, results, most=12):
    """The worst stones first, three to a row."""
    badness = [sum(len(r[k][1]) + len(r[k][2]) for k in ("pit", "fracture", "chip")) for r in results]
    order = sorted(range(len(crops)), key=lambda k: -badness[k])[:most]
    panels = [panel(crops[k], shares[k], results[k]) for k in order]
    while len(panels) % 2:
        panels.append(np.zeros_like(panels[0]))
    rows = [np.concatenate(panels[k:k + 2], 1) for k in range(0, len(panels), 2)]
    cv2.imwrite(path, cv2.cvtColor(np.concatenate(rows), cv2.COLOR_RGB2BGR))
