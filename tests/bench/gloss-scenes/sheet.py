"""Draws the photographs of a folder on one sheet, stones labeled with their roughness, highlights ringed, faults crossed.

Run:  /usr/bin/python3 sheet.py OUT.png TRUTH.json...
"""

import json
import os
import sys

import cv2
import numpy as np

CELL = (640, 430)


def marked(path):
    """One photo with its marks, fitted into a cell."""
    with open(path, encoding="utf-8") as file:
        truth = json.load(file)
    picture = cv2.imread(os.path.join(os.path.dirname(os.path.abspath(path)), truth["photo"]))
    scale = min(CELL[0] / picture.shape[1], CELL[1] / picture.shape[0])
    picture = cv2.resize(picture, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA)
    for stone in truth["stones"]:
        row, column = (round(v * scale) for v in stone["center"])
        cv2.putText(picture, f'{stone["alpha"]:.3f}', (column - 20, row + 24), 0, 0.4, (255, 255, 255), 1, cv2.LINE_AA)
        place = stone["highlight"]
        color = (0, 255, 255) if place["visible"] else (0, 0, 255)
        cv2.circle(picture, (round(place["column"] * scale), round(place["row"] * scale)), 9, color, 1, cv2.LINE_AA)
    for place in truth["faultPlaces"]:
        cv2.drawMarker(picture, (round(place["column"] * scale), round(place["row"] * scale)), (255, 0, 255), cv2.MARKER_TILTED_CROSS, 16)
    cell = np.zeros((CELL[1], CELL[0], 3), np.uint8)
    cell[:picture.shape[0], :picture.shape[1]] = picture
    title = f'{truth["scene"]} {truth["lamp"]["angularDiameterDeg"]:.0f} deg {1 / truth["mmPerPx"]:.0f} px/mm {" ".join(truth["faults"])}'
    cv2.putText(cell, title, (6, CELL[1] - 6), 0, 0.5, (0, 255, 0), 1, cv2.LINE_AA)
    return cell


cells = [marked(path) for path in sys.argv[2:]]
columns = min(4, len(cells))
cells += [np.zeros_like(cells[0])] * (-len(cells) % columns)
cv2.imwrite(sys.argv[1], np.vstack([np.hstack(cells[k:k + columns]) for k in range(0, len(cells), columns)]))
