"""Photographs a screen: shows a set's good photo on a grid of red, green and blue stripes that the camera's pixels sample askew.

Run:  python3 screen.py --pitch 1.06 --turn 1.7 DIR    (needs numpy and Pillow; DIR holds good.jpg, good.json and empty.jpg)
Writes screen.jpg, and screen-bare.jpg, in which the ball is replaced by bare tray. pitch: camera pixels a screen pixel.
"""

import argparse
import json
import os

import numpy as np
from PIL import Image, ImageFilter

STRIPES = [(0.04, 0.29), (0.375, 0.625), (0.71, 0.96)]
FINE = 5


def linear(levels):
    """Linear light of sRGB levels, 0 to 255."""
    part = np.asarray(levels, float) / 255
    return np.where(part <= 0.04045, part / 12.92, ((part + 0.055) / 1.055) ** 2.4)


def levels(light):
    """sRGB levels of linear light."""
    light = np.clip(light, 0, 1)
    return np.round(255 * np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)).astype(np.uint8)


def photographed(shown, pitch, turn_deg):
    """Linear light that camera pixels gather from a screen that shows `shown`, in linear light."""
    height, width, _ = shown.shape
    c, s = np.cos(np.radians(turn_deg)), np.sin(np.radians(turn_deg))
    rows, columns = np.mgrid[0:height, 0:width].astype(float)
    total = np.zeros_like(shown)
    for down in (np.arange(FINE) + 0.5) / FINE:
        for right in (np.arange(FINE) + 0.5) / FINE:
            x, y = columns + right, rows + down
            u, v = (c * x - s * y) / pitch, (s * x + c * y) / pitch
            # The middle of the screen's pixel, back in the picture.
            mx, my = (np.floor(u) + 0.5) * pitch, (np.floor(v) + 0.5) * pitch
            i = np.clip(c * my - s * mx, 0, height - 1).astype(int)
            j = np.clip(c * mx + s * my, 0, width - 1).astype(int)
            line = np.abs(v - np.floor(v) - 0.5) < 0.43
            for k, (low, high) in enumerate(STRIPES):
                at = u - np.floor(u)
                total[..., k] += shown[i, j, k] * ((at > low) & (at < high) & line)
    # As bright as the picture shown, and a little light of the room on the glass.
    return total / FINE**2 / (0.25 * 0.86) + 0.006


def save(light, path):
    picture = Image.fromarray(levels(light)).filter(ImageFilter.GaussianBlur(0.45))
    exif = Image.open(os.path.join(os.path.dirname(path), "good.jpg")).info["exif"]
    picture.save(path, quality=87, optimize=True, exif=exif)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("folder")
    parser.add_argument("--pitch", type=float, required=True)
    parser.add_argument("--turn", type=float, required=True)
    options = parser.parse_args()
    open_light = lambda name: linear(Image.open(os.path.join(options.folder, name)).convert("RGB"))
    good, empty = open_light("good.jpg"), open_light("empty.jpg")
    with open(os.path.join(options.folder, "good.json"), encoding="utf-8") as file:
        row, column, radius = json.load(file)["ball"]
    save(photographed(good, options.pitch, options.turn), os.path.join(options.folder, "screen.jpg"))
    rows, columns = np.mgrid[0:good.shape[0], 0:good.shape[1]]
    near = np.hypot(rows - row, columns - column) < 2.2 * radius
    bare = np.where(near[..., None], empty, good)
    save(photographed(bare, options.pitch, options.turn), os.path.join(options.folder, "screen-bare.jpg"))


main()
