"""Draws a truth file over its photograph, to check by eye that outlines hug the stones and marks sit on flaws.

Run:  /usr/bin/python3 overlay.py TRUTH.json OUT.png
"""

import json
import os
import sys

import cv2
import numpy as np

COLORS = {"pit": (0, 0, 255), "fracture": (255, 0, 255), "chip": (0, 160, 255)}


def points(path):
    """Row, column pairs as OpenCV's fixed-point polyline (4 fractional bits)."""
    return np.round(np.array(path)[:, ::-1] * 16).astype(np.int32)[None]


def overlay(truth, picture):
    """Outlines cyan, pits red, fractures magenta, chips orange, specks green; dotted small when not visible."""
    scale = 1 / truth["mmPerPx"]

    def ring(row, column, radius, color, width=1):
        cv2.circle(picture, (round(column * 16), round(row * 16)), round(radius * 16), color, width, cv2.LINE_AA, 4)

    ball = truth["ball"]
    ring(ball["row"], ball["column"], ball["radiusPx"], (255, 255, 0))
    for stone in truth["stones"]:
        cv2.polylines(picture, points(stone["outline"]), True, (255, 255, 0), 1, cv2.LINE_AA, 4)
        for flaw in stone["flaws"]:
            color = COLORS[flaw["kind"]] if flaw["visible"] else (128, 128, 128)
            if "path" in flaw:
                cv2.polylines(picture, points(flaw["path"]), False, color, 1, cv2.LINE_AA, 4)
            else:
                ring(flaw["row"], flaw["column"], flaw["diameterMm"] / 2 * scale + 2, color)
        for decoy in stone["decoys"]:
            ring(decoy["row"], decoy["column"], decoy["diameterMm"] / 2 * scale + 2, (0, 255, 0))
        label = f'{stone["id"]} {stone["alpha"]:.3f}'
        cv2.putText(picture, label, (int(stone["center"][1]) - 40, int(stone["center"][0])), 0, 0.5, (255, 255, 255), 1, cv2.LINE_AA)
    return picture


with open(sys.argv[1], encoding="utf-8") as file:
    loaded = json.load(file)
photo = cv2.imread(os.path.join(os.path.dirname(os.path.abspath(sys.argv[1])), loaded["photo"]))
cv2.imwrite(sys.argv[2], overlay(loaded, photo))
