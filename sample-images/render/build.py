"""Renders one sample photograph and its truth file.

Run:  blender -b --python-exit-code 1 --python build.py -- --kind coarse --seed 11 --name coarse-tray --out DIR
Needs Debian's blender, python3-numpy, python3-scipy, python3-opencv, python3-skimage and python3-pil.
"""

import argparse
import json
import os
import sys

import bpy
from PIL import Image

sys.dont_write_bytecode = True
sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))

from focal_length import focal_length_exif
from labels import label_picture
from layout import ball_cloud, layout
from scenes import RECIPES, draw_scene, turned
from scratches import add_scratches, scratch_material
from setting import add_ball, add_camera, add_fill, add_lamp, add_tray, empty_scene
from stones import flawed_skin, material_of, stone_object
from truth import photo_truth
from view import View


def arguments():
    """The options after `--`."""
    parser = argparse.ArgumentParser(prog="build.py")
    parser.add_argument("--kind", choices=RECIPES, required=True)
    parser.add_argument("--seed", type=int, required=True)
    parser.add_argument("--name", required=True, help="file name without extension")
    parser.add_argument("--out", required=True, help="folder for the JPEG and the truth JSON")
    parser.add_argument("--samples", type=int, default=128, help="paths a pixel")
    parser.add_argument("--width", type=int, default=1800, help="pixels; the height is two thirds of it")
    parser.add_argument("--lamp-turn", type=float, default=0, help="degrees the lamp is carried around the tray; nothing else moves")
    parser.add_argument("--unscratched", action="store_true", help="leaves the scratches out of the picture, not out of the truth file")
    return parser.parse_args(sys.argv[sys.argv.index("--") + 1:])


def fill_tray(blend, scene, view, unscratched=False):
    """Builds every stone, lays all out and puts them and the ball in the tray; returns the built stones and the ball's center."""
    built = []
    for stone in scene["stones"]:
        skin, triangles, flaws, decoys = flawed_skin(stone, edge_mm=max(0.75 * view.mm_per_px, 0.05))
        built.append({"stone": stone, "skin": skin, "triangles": triangles, "flaws": flaws, "decoys": decoys})
    clouds = [b["skin"].points[::97] for b in built] + [ball_cloud()]
    places = layout(clouds, view, scene["rng"], scene["touching"])
    for label, (b, (x, y)) in enumerate(zip(built, places), 1):
        material, b["index"] = material_of(b["stone"], f"stone {label}")
        if b["stone"].get("scratches"):
            scratches, more = add_scratches(b["skin"], b["stone"]["scratches"])
            if not unscratched:
                scratch_material(material, *scratches)
            b["flaws"] += more
        thing = stone_object(blend, f"stone {label}", b["skin"], b.pop("triangles"), material, label)
        thing.location = b["shift"] = (x, y, 0)
    return built, add_ball(blend, *places[-1])


def build(options):
    """Draws the scene, renders it, renders its labels, and writes NAME.jpg and NAME.json."""
    scene = draw_scene(options.kind, options.seed)
    scene["lamp"] = turned(scene["lamp"], options.lamp_turn)
    width, height = options.width, options.width * 2 // 3
    view = View(width, height, scene["distanceMm"], scene["viewMm"])
    blend = empty_scene(width, height, options.samples, options.seed)
    add_camera(blend, view.distance_mm, scene["viewMm"])
    add_fill(blend, scene["fill"])
    add_tray(blend, scene["tray"])
    built, ball_at = fill_tray(blend, scene, view, options.unscratched)
    add_lamp(blend, scene["lamp"], ball_at)
    os.makedirs(options.out, exist_ok=True)
    base = os.path.join(options.out, options.name)
    blend.render.filepath = base + ".png"
    bpy.ops.render.render(write_still=True)
    Image.open(base + ".png").convert("RGB").save(
        base + ".jpg", quality=92, subsampling=0, optimize=True, exif=focal_length_exif(view.focal_px, width, height))
    os.remove(base + ".png")
    labels = label_picture(blend, base + "-labels.png")
    truth = photo_truth(options.name, scene, view, labels, ball_at, built)
    with open(base + ".json", "w", encoding="utf-8") as file:
        json.dump(truth, file, separators=(",", ":"))
        file.write("\n")


build(arguments())
