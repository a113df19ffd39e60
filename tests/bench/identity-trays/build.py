"""Renders one check of a batch: the same stones as in its other checks, shuffled, turned, some flipped, each a little smaller.

Run:  blender -b --python-exit-code 1 --python build.py -- --batch 4001 --check 0 --out DIR
Writes DIR/batch-4001-0.jpg and .json; `stones[].stone` in the truth is the stone's number in the batch.
"""

import argparse
import json
import os
import sys

import bpy
import numpy as np
from mathutils import Matrix
from PIL import Image

sys.dont_write_bytecode = True
HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [os.path.join(HERE, "..", "..", "..", "sample-images", "render")]

from focal_length import focal_length_exif
from labels import extent_px, label_picture, outline
from layout import ball_cloud, layout
from scenes import ALL, FORMS, RECIPES, draw_lamp, draw_stone
from setting import BALL_INDEX, BALL_MM, add_ball, add_camera, add_fill, add_lamp, add_tray, empty_scene
from stones import flawed_skin, material_of, stone_object
from view import View

STONES, WIDTH = 12, 1200


def arguments():
    """The options after `--`."""
    parser = argparse.ArgumentParser(prog="build.py")
    parser.add_argument("--batch", type=int, required=True)
    parser.add_argument("--check", type=int, required=True)
    parser.add_argument("--out", required=True)
    parser.add_argument("--samples", type=int, default=12)
    return parser.parse_args(sys.argv[sys.argv.index("--") + 1:])


def draw_batch(seed):
    """Twelve stones, two pairs of them near-twins: same body, form and nearly the same size."""
    rng = np.random.default_rng([seed, 77])
    bodies = [str(b) for b in rng.permutation(ALL)[:STONES - 2]]
    recipe = RECIPES["coarse"] | {"length": (18, 32)}
    stones = [draw_stone(rng, recipe, body, float(rng.uniform(0.25, 0.45)), FORMS[k % 4]) for k, body in enumerate(bodies)]
    for twin in (0, 1):
        other = draw_stone(rng, recipe, stones[twin]["body"], stones[twin]["alpha"], stones[twin]["form"])
        stones.append(other | {"lengthMm": stones[twin]["lengthMm"] * rng.uniform(0.97, 1.03)})
    shrink = rng.uniform(0.01, 0.03, STONES)
    return stones, shrink


def pose(rng):
    """Any turn on the tray, upside down on half of the throws, and tipped by up to 15 degrees."""
    tip = Matrix.Rotation(rng.uniform(-0.26, 0.26), 4, "X") @ Matrix.Rotation(rng.uniform(-0.26, 0.26), 4, "Y")
    flip = Matrix.Rotation(np.pi * (rng.random() < 0.5), 4, "X")
    return Matrix.Rotation(rng.uniform(0, 2 * np.pi), 4, "Z") @ tip @ flip


def build(options):
    """Draws the batch, throws it on the tray for one check, renders it and writes the truth."""
    stones, shrink = draw_batch(options.batch)
    rng = np.random.default_rng([options.batch, 78, options.check])
    light = np.random.default_rng([options.batch, 79])
    view = View(WIDTH, WIDTH * 2 // 3, light.uniform(700, 850), 205 * light.uniform(0.98, 1.04))
    blend = empty_scene(WIDTH, WIDTH * 2 // 3, options.samples, options.batch + options.check)
    add_camera(blend, view.distance_mm, view.mm_per_px * WIDTH)
    lamp, gray = draw_lamp(light), light.uniform(0.52, 0.74)
    add_fill(blend, light.uniform(0.2, 0.27))
    add_tray(blend, list(gray * light.uniform(0.94, 1.06, 3)))
    order, things, clouds = rng.permutation(STONES), [], []
    for label, number in enumerate(order, 1):
        stone = stones[number]
        skin, triangles, _, _ = flawed_skin(stone, edge_mm=max(0.9 * view.mm_per_px, 0.08))
        material, _ = material_of(stone, f"stone {number + 1}")
        thing = stone_object(blend, f"stone {label}", skin, triangles, material, label)
        turn = pose(rng) @ Matrix.Scale(float((1 - shrink[number]) ** options.check), 4)
        points = skin.points @ np.array(turn.to_3x3()).T
        middle = (points.min(0) + points.max(0)) / 2
        down = np.array([middle[0], middle[1], points[:, 2].min()])
        clouds.append((points - down)[::97])
        things.append((thing, turn, down))
    places = layout(clouds + [ball_cloud()], view, rng, {}, gap=22, margin=22)
    for (thing, turn, down), (x, y) in zip(things, places):
        thing.matrix_world = Matrix.Translation((x - down[0], y - down[1], -down[2])) @ turn
    ball_at = add_ball(blend, *places[-1])
    add_lamp(blend, lamp, ball_at)
    os.makedirs(options.out, exist_ok=True)
    name = f"batch-{options.batch}-{options.check}"
    base = os.path.join(options.out, name)
    blend.render.filepath = base + ".png"
    bpy.ops.render.render(write_still=True)
    Image.open(base + ".png").convert("RGB").save(
        base + ".jpg", quality=92, subsampling=0, optimize=True, exif=focal_length_exif(view.focal_px, WIDTH, WIDTH * 2 // 3))
    os.remove(base + ".png")
    labels = label_picture(blend, base + "-labels.png")
    row, column = view.pixels(ball_at)[0]
    truth = {
        "photo": f"{name}.jpg", "batch": options.batch, "check": options.check, "mmPerPx": round(view.mm_per_px, 6),
        "ball": {"row": round(float(row), 2), "column": round(float(column), 2), "radiusPx": round(BALL_MM / 2 / view.mm_per_px, 2),
                 "diameterMm": BALL_MM, "n": BALL_INDEX},
        "lamp": {"direction": [round(float(v), 5) for v in lamp["direction"]], "angularDiameterDeg": lamp["angularDiameterDeg"]},
        "stones": [{
            "id": label, "stone": int(number) + 1, "material": stones[number]["body"], "outline": outline(labels, label),
            "lengthMm": round(extent_px(labels, label)[0] * view.mm_per_px, 2), "flaws": [], "decoys": [],
        } for label, number in enumerate(order, 1)],
    }
    with open(base + ".json", "w", encoding="utf-8") as file:
        json.dump(truth, file, separators=(",", ":"))
        file.write("\n")


build(arguments())
