"""The truth about a scene of the gloss bench; README.md tells what each field means."""

import math

import numpy as np

from bodies import BODIES
from highlight import ball_mirror
from setting import BALL_MM
from truth import photo_truth


def row_column(view, point):
    """Place in the picture, rounded to 0.1 px."""
    return [round(float(v), 1) for v in view.pixels(point)[0]]


def highlight_truth(view, labels, label, built):
    """Where the sound skin mirrors the lamp, and whether camera and lamp both see the place."""
    found = built["highlight"]
    row, column = row_column(view, built["skin"].points[found["at"]] + built["shift"])
    r, c = round(row), round(column)
    shown = 0 <= r < labels.shape[0] and 0 <= c < labels.shape[1] and labels[r, c] == label
    return {"row": row, "column": column, "visible": bool(shown and found["lit"] and found["seen"]),
            "radiusPx": round(found["radiusMm"] / view.mm_per_px, 1), "pieces": found["pieces"]}


def bench_fields(view, labels, label, built):
    """What a stone's entry has beyond the one of a sample photo."""
    stone = built["stone"]
    more = {"shape": stone["form"], "pattern": BODIES[stone["body"]][0], "pitsInHighlight": built["pitsInHighlight"],
            "highlight": highlight_truth(view, labels, label, built)}
    if "waviness" in stone:
        more["waviness"] = {"wavelengthMm": round(stone["waviness"][0], 2), "slope": round(stone["waviness"][1], 4)}
    more |= {key: stone[key] for key in ("stone", "wet") if key in stone}
    return more


def fault_places(scene, view, ball_at, second_at, lamp_at, stones):
    """Where each fault shows in the picture."""
    camera = np.array([0, 0, view.distance_mm])
    places = []
    for fault in scene["faults"]:
        if fault == "wet":
            places += [(fault, s["highlight"]["row"], s["highlight"]["column"]) for s in stones if s.get("wet")]
        elif fault == "cut-off":
            places += [(fault, *s["center"]) for s, plan in zip(stones, scene["stones"]) if plan.get("cut")]
        else:
            light = second_at if fault == "second-light" else lamp_at
            places.append((fault, *row_column(view, ball_mirror(np.array(ball_at), BALL_MM / 2, light, camera))))
    return [{"fault": f, "row": r, "column": c} for f, r, c in places]


def scene_truth(part, scene, view, labels, ball_at, second_at, lamp_at, built):
    """The whole truth of one scene as plain data."""
    truth = photo_truth(scene["name"], scene, view, labels, ball_at, built)
    for stone, b in zip(truth["stones"], built):
        stone["outline"] = stone["outline"][::2]
        stone["alpha"] = round(b["stone"]["alpha"], 5)
        stone |= bench_fields(view, labels, stone["id"], b)
    ball_row, ball_column = row_column(view, ball_mirror(np.array(ball_at), BALL_MM / 2, lamp_at, np.array([0, 0, view.distance_mm])))
    truth["ball"]["highlight"] = {"row": ball_row, "column": ball_column}
    truth["lamp"]["offAxisDeg"] = round(math.degrees(math.acos(scene["lamp"]["direction"][2])), 2)
    truth |= {"part": part, "scene": scene["name"], "photo": scene["name"] + ".clean.jpg", "samples": scene["samples"],
              "focalPx": round(view.focal_px, 2), "faults": scene["faults"],
              "faultPlaces": fault_places(scene, view, ball_at, second_at, lamp_at, truth["stones"])}
    return truth
