"""Renders one check of the example year: seven stones on their way from coarse to polish, one of which will not clear.

Run:  blender -b --python-exit-code 1 --python year.py -- --check 0 --out DIR
Writes DIR/check-00.jpg with the day in its Exif data. The stones, their wear and the days are invented; they follow the
grinding law that src/grading/forecast.ts states.
"""

import argparse
import os
import sys

import bpy
import numpy as np
from mathutils import Matrix
from PIL import Image

sys.dont_write_bytecode = True
sys.path[:0] = [os.path.dirname(os.path.abspath(__file__))]

from focal_length import focal_length_exif
from layout import ball_cloud, layout
from scenes import draw_lamp
from setting import add_ball, add_camera, add_fill, add_lamp, add_tray, empty_scene
from stones import flawed_skin, material_of, stone_object
from view import View

WIDTH, SEED, TIP_RAD = 1300, 6001, 0.1
# Day of each check, and the step that the stones come out of.
CHECKS = [
    ("2025-10-12", "coarse"), ("2025-11-02", "coarse"), ("2025-11-30", "coarse"), ("2026-01-04", "coarse"),
    ("2026-02-15", "coarse"), ("2026-04-05", "coarse"), ("2026-08-16", "medium"), ("2026-08-23", "fine"),
    ("2026-08-30", "prepolish"), ("2026-09-06", "polish"), ("2026-09-20", "polish"),
]
# Body, form, length in mm at first, widths of pits and (length, depth) of fractures in mm, share of the fracture that
# stays, and roughness that its polish ends at.
STONES = [
    ("carnelian agate", "oval", 27, [1.9, 1.5, 1.3, 1.1, 0.9], [], 0, 0.010),
    ("rhodonite", "rounded", 25, [1.6, 1.2, 1.0], [(7, 0.35)], 0, 0.012),
    ("red jasper", "facetted", 26, [1.8, 1.6, 1.2, 0.9], [], 0, 0.072),
    ("yellow jasper", "oval", 24, [1.7, 1.0, 0.9], [(5, 0.3)], 0, 0.068),
    ("green jade", "rounded", 23, [1.4, 1.3, 1.1, 1.0], [], 0, 0.011),
    ("brown agate", "broken", 28, [1.5, 1.1], [(19, 0.5)], 0.55, 0.012),
    ("obsidian", "oval", 22, [1.5, 1.2, 0.9], [(4, 0.3)], 0, 0.008),
]
HOPELESS = 5
ROUGHNESS = {"coarse": 0.36, "medium": 0.2, "fine": 0.1, "prepolish": 0.045}
CHECKS_TO_GRIND = 1.8


def worn(number, check):
    """A stone's numbers at a check."""
    body, form, length, pits, fractures, stays, end = STONES[number]
    in_coarse = sum(step == "coarse" for _, step in CHECKS[: check + 1]) - 1
    left = np.exp(-in_coarse / CHECKS_TO_GRIND)
    step = CHECKS[check][1]
    alpha = ROUGHNESS.get(step, max(end, 0.02 if check == len(CHECKS) - 2 else 0))
    return {
        "body": body, "form": form, "alpha": max(alpha, end), "floor": 0.5, "seed": SEED + 10 * number,
        "lengthMm": length * 0.985 ** in_coarse * (0.998 ** max(0, check - 5)), "chips": [], "specks": [],
        "pits": [p * left for p in pits if p * left > 0.4],
        "fractures": [(f * (stays + (1 - stays) * left), d) for f, d in fractures if f * (stays + (1 - stays) * left) > 0.8],
    }


def pose(rng):
    """Any turn on the tray, tipped a little."""
    tip = Matrix.Rotation(rng.uniform(-TIP_RAD, TIP_RAD), 4, "X") @ Matrix.Rotation(rng.uniform(-TIP_RAD, TIP_RAD), 4, "Y")
    return Matrix.Rotation(rng.uniform(0, 2 * np.pi), 4, "Z") @ tip


def exif_of(day, view, height):
    """Focal length and the day the picture stands for, as a camera writes them."""
    exif = focal_length_exif(view.focal_px, WIDTH, height)
    exif[0x8769] |= {0x9003: day.replace("-", ":") + " 12:00:00"}
    return exif


def build(check, out, samples):
    """Throws the stones on the tray for one check and renders it."""
    day, step = CHECKS[check]
    numbers = [n for n in range(len(STONES)) if step == "coarse" or n != HOPELESS]
    rng, light = np.random.default_rng([SEED, 1, check]), np.random.default_rng([SEED, 2])
    height = WIDTH * 2 // 3
    view = View(WIDTH, height, 760, 178)
    blend = empty_scene(WIDTH, height, samples, SEED + check)
    add_camera(blend, view.distance_mm, view.mm_per_px * WIDTH)
    lamp, gray = draw_lamp(light), light.uniform(0.55, 0.68)
    add_fill(blend, 0.22)
    add_tray(blend, list(gray * light.uniform(0.96, 1.04, 3)))
    things, clouds = [], []
    for label, number in enumerate(rng.permutation(numbers), 1):
        stone = worn(number, check)
        skin, triangles, _, _ = flawed_skin(stone, edge_mm=max(0.8 * view.mm_per_px, 0.06))
        material, _ = material_of(stone, f"stone {number + 1}")
        thing, turn = stone_object(blend, f"stone {label}", skin, triangles, material, label), pose(rng)
        points = skin.points @ np.array(turn.to_3x3()).T
        middle = (points.min(0) + points.max(0)) / 2
        down = np.array([middle[0], middle[1], points[:, 2].min()])
        clouds.append((points - down)[::97])
        things.append((thing, turn, down))
    places = layout(clouds + [ball_cloud()], view, rng, {}, gap=62, margin=20)
    for (thing, turn, down), (x, y) in zip(things, places):
        thing.matrix_world = Matrix.Translation((x - down[0], y - down[1], -down[2])) @ turn
    add_lamp(blend, lamp, add_ball(blend, *places[-1]))
    os.makedirs(out, exist_ok=True)
    base = os.path.join(out, f"check-{check:02d}")
    blend.render.filepath = base + ".png"
    bpy.ops.render.render(write_still=True)
    Image.open(base + ".png").convert("RGB").save(
        base + ".jpg", quality=92, subsampling=0, optimize=True, exif=exif_of(day, view, height))
    os.remove(base + ".png")


def arguments():
    """The options after `--`."""
    parser = argparse.ArgumentParser(prog="year.py")
    parser.add_argument("--check", type=int, required=True)
    parser.add_argument("--out", required=True)
    parser.add_argument("--samples", type=int, default=24)
    return parser.parse_args(sys.argv[sys.argv.index("--") + 1:])


if __name__ == "__main__":
    options = arguments()
    build(options.check, options.out, options.samples)
