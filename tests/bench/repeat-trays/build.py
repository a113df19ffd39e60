"""Renders one check of a tray whose stones stay as they are: same face up, turned, tipped and shuffled anew, same lamp.

Run:  blender -b --python-exit-code 1 --python build.py -- --seed 5001 --check 0 --out DIR
Writes DIR/repeat-5001-0.jpg and .json; `stones[].stone` in the truth is the stone's number in the tray. All flaws lie
on the face that is up, as in every rendered tray.
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
from labels import label_picture
from layout import ball_cloud, layout
from scenes import draw_scene
from setting import add_ball, add_camera, add_fill, add_lamp, add_tray, empty_scene
from stones import flawed_skin, material_of, stone_object
from truth import photo_truth
from view import View

WIDTH = 1600
TIP_RAD = 0.26


def arguments():
    """The options after `--`."""
    parser = argparse.ArgumentParser(prog="build.py")
    parser.add_argument("--seed", type=int, required=True)
    parser.add_argument("--check", type=int, required=True)
    parser.add_argument("--out", required=True)
    parser.add_argument("--samples", type=int, default=16)
    return parser.parse_args(sys.argv[sys.argv.index("--") + 1:])


def draw_tray(seed):
    """A coarse tray whose fractures are drawn evenly in the logarithm of their length, from the limit to eight times it."""
    scene, rng = draw_scene("coarse", seed), np.random.default_rng([seed, 81])
    for stone in scene["stones"]:
        number = int(rng.integers(1, 4)) if rng.random() < 0.9 else 0
        stone["fractures"] = [(float(np.exp(rng.uniform(np.log(2), np.log(16)))), rng.uniform(0.28, 0.5)) for _ in range(number)]
    return scene


def pose(rng):
    """Any turn on the tray, and tipped by up to 15 degrees about two axes."""
    tip = Matrix.Rotation(rng.uniform(-TIP_RAD, TIP_RAD), 4, "X") @ Matrix.Rotation(rng.uniform(-TIP_RAD, TIP_RAD), 4, "Y")
    return Matrix.Rotation(rng.uniform(0, 2 * np.pi), 4, "Z") @ tip


def fill_tray(blend, scene, view, rng):
    """Builds the stones in a new order and pose; returns them as the truth needs them, their numbers, and the ball's center."""
    order, built, things = rng.permutation(len(scene["stones"])), [], []
    for label, number in enumerate(order, 1):
        stone = scene["stones"][number]
        skin, triangles, flaws, decoys = flawed_skin(stone, edge_mm=max(0.75 * view.mm_per_px, 0.05))
        material, index = material_of(stone, f"stone {number + 1}")
        thing, turn = stone_object(blend, f"stone {label}", skin, triangles, material, label), pose(rng)
        rotate = np.array(turn.to_3x3()).T
        skin.points, skin.normals = skin.points @ rotate, skin.normals @ rotate
        built.append({"stone": stone, "skin": skin, "flaws": flaws, "decoys": decoys, "index": index})
        things.append((thing, turn))
    lowest = [b["skin"].points[:, 2].min() for b in built]
    clouds = [(b["skin"].points - [0, 0, low])[::97] for b, low in zip(built, lowest)]
    places = layout(clouds + [ball_cloud()], view, rng, {}, gap=22, margin=22)
    for b, (thing, turn), low, (x, y) in zip(built, things, lowest, places):
        b["shift"] = (x, y, -low)
        thing.matrix_world = Matrix.Translation(b["shift"]) @ turn
    return built, order, add_ball(blend, *places[-1])


def build(options):
    """Draws the tray, throws it for one check, renders it and writes the truth."""
    scene = draw_tray(options.seed)
    height = WIDTH * 2 // 3
    view = View(WIDTH, height, scene["distanceMm"], scene["viewMm"])
    blend = empty_scene(WIDTH, height, options.samples, options.seed + options.check)
    add_camera(blend, view.distance_mm, scene["viewMm"])
    add_fill(blend, scene["fill"])
    add_tray(blend, scene["tray"])
    built, order, ball_at = fill_tray(blend, scene, view, np.random.default_rng([options.seed, 82, options.check]))
    add_lamp(blend, scene["lamp"], ball_at)
    os.makedirs(options.out, exist_ok=True)
    name = f"repeat-{options.seed}-{options.check}"
    base = os.path.join(options.out, name)
    blend.render.filepath = base + ".png"
    bpy.ops.render.render(write_still=True)
    Image.open(base + ".png").convert("RGB").save(
        base + ".jpg", quality=92, subsampling=0, optimize=True, exif=focal_length_exif(view.focal_px, WIDTH, height))
    os.remove(base + ".png")
    truth = photo_truth(name, scene, view, label_picture(blend, base + "-labels.png"), ball_at, built)
    truth |= {"batch": options.seed, "check": options.check}
    for entry, number in zip(truth["stones"], order):
        entry["stone"] = int(number) + 1
    with open(base + ".json", "w", encoding="utf-8") as file:
        json.dump(truth, file, separators=(",", ":"))
        file.write("\n")


build(arguments())
