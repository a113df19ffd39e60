"""The truth about a photograph, as written beside it."""

import math

import numpy as np

from labels import extent_px, outline
from setting import BALL_INDEX, BALL_MM

# A flaw counts as visible when its face is turned less than this from the camera. Chips sit on the shoulder
# by nature and are broad, so they count further round.
VISIBLE_DEG = {"pit": 60, "fracture": 60, "scratch": 60, "chip": 75}


def place(view, skin, vertex, shift):
    """Row and column of a vertex of the sound surface, rounded to 0.1 px."""
    return [round(float(v), 1) for v in view.pixels(skin.points[vertex] + shift)[0]]


def is_visible(view, skin, flaw, shift, labels, label):
    """Whether a flaw faces the camera and no other stone lies over it."""
    row, column = view.pixels(skin.points[flaw["at"]] + shift)[0]
    r, c = int(round(row)), int(round(column))
    inside = 0 <= r < labels.shape[0] and 0 <= c < labels.shape[1] and labels[r, c] == label
    turned = view.cosine(skin.points[[flaw["at"]]] + shift, skin.normals[[flaw["at"]]])[0]
    return bool(inside and turned > math.cos(math.radians(VISIBLE_DEG[flaw["kind"]])))


def stone_truth(view, labels, label, built):
    """One stone's entry. built: stone, index, skin, flaws, decoys, shift."""
    skin, shift = built["skin"], built["shift"]
    flaws = []
    for flaw in built["flaws"]:
        row, column = place(view, skin, flaw["at"], shift)
        entry = {"kind": flaw["kind"], "row": row, "column": column}
        entry |= {k: flaw[k] for k in ("diameterMm", "lengthMm", "widthMm", "depthMm", "grit") if k in flaw}
        if "path" in flaw:
            entry["path"] = [place(view, skin, vertex, shift) for vertex in flaw["path"]]
        entry["visible"] = is_visible(view, skin, flaw, shift, labels, label)
        flaws.append(entry)
    decoys = []
    for decoy in built["decoys"]:
        row, column = place(view, skin, decoy["at"], shift)
        decoys.append({"row": row, "column": column, "diameterMm": decoy["diameterMm"]})
    shape = outline(labels, label)
    long_px, short_px = extent_px(labels, label)
    center = np.argwhere(labels == label).mean(0)
    return {
        "id": label, "material": built["stone"]["body"], "form": built["stone"]["form"],
        "alpha": round(built["stone"]["alpha"], 4), "n": built["index"], "outline": shape,
        "center": [round(float(v), 1) for v in center],
        "lengthMm": round(long_px * view.mm_per_px, 2), "widthMm": round(short_px * view.mm_per_px, 2),
        "flaws": flaws, "decoys": decoys,
    }


def photo_truth(name, scene, view, labels, ball_at, built):
    """The whole truth file as plain data; see README.md for the meaning of each field."""
    row, column = view.pixels(ball_at)[0]
    lamp = scene["lamp"]
    return {
        "photo": f"{name}.jpg", "step": scene["step"], "recipe": scene["kind"], "seed": scene["seed"],
        "widthPx": view.width_px, "heightPx": view.height_px, "mmPerPx": round(view.mm_per_px, 6),
        "cameraDistanceMm": round(view.distance_mm, 1),
        "ball": {"row": round(float(row), 2), "column": round(float(column), 2),
                 "radiusPx": round(BALL_MM / 2 / view.mm_per_px, 2), "diameterMm": BALL_MM, "n": BALL_INDEX},
        "lamp": {"direction": [round(float(v), 5) for v in lamp["direction"]],
                 "angularDiameterDeg": lamp["angularDiameterDeg"], "shape": lamp["shape"],
                 "distanceMm": lamp["distanceMm"], "radiance": round(lamp["radiance"], 4)},
        "stones": [stone_truth(view, labels, label, b) for label, b in enumerate(built, 1)],
    }
