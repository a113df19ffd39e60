"""Renders one scene of the gloss bench as a linear picture, and writes its truth.

Run:  blender -b --python-exit-code 1 --python build.py -- --part development --index 0 --out DIR
Writes DIR/linear/SCENE.exr (half floats, 1 = clipping of a photo at exposure 1) and DIR/SCENE.json.
"""

import argparse
import json
import os
import sys

import addon_utils
import bpy
import numpy as np

sys.dont_write_bytecode = True
HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "..", "..", "..", "sample-images", "render")]

from labels import label_picture
from layout import place_of
from lights import add_card, add_window
from place import lamp_place, place_stones
from plan import STREAMS, part_scenes
from scene_truth import scene_truth
from setting import add_ball, add_camera, add_fill, add_lamp, add_tray, empty_scene
from stone_mesh import mesh_stone
from water import add_puddles


def arguments():
    """The options after `--`."""
    parser = argparse.ArgumentParser(prog="build.py")
    parser.add_argument("--part", choices=STREAMS, required=True)
    parser.add_argument("--index", type=int, help="scene of the part, from 0; without it the scenes are only listed")
    parser.add_argument("--out", help="folder for the linear picture and the truth")
    parser.add_argument("--gpu", action="store_true", help="render on a CUDA graphics card")
    return parser.parse_args(sys.argv[sys.argv.index("--") + 1:])


def card_between(blend, scene, view, ball_at, lamp_at, half):
    """Hides part of the lamp: near the lamp from the whole tray, or just out of the picture from the ball."""
    ball = np.array(ball_at)
    outward = np.array([*(lamp_at - ball)[:2], 0.0])
    angle = np.radians(scene["card"]["sideDeg"])
    outward = np.array([[np.cos(angle), -np.sin(angle), 0], [np.sin(angle), np.cos(angle), 0], [0, 0, 1]]) @ outward
    depth = 0.85
    if "ball-shaded" in scene["faults"]:
        # The lowest place where the way from ball to lamp has left the camera's view.
        for depth in np.linspace(0.08, 0.85, 78):
            at = ball + depth * (lamp_at - ball)
            wide = np.hypot(view.width_px, view.height_px) / 2 * view.mm_per_px
            if np.hypot(*at[:2]) > wide * max(0, 1 - at[2] / view.distance_mm) + half * depth + 6:
                break
    add_card(blend, ball, lamp_at, half, scene["card"]["share"], float(depth), outward / np.linalg.norm(outward))


def puddle_places(scene, view, rng):
    """Where beads of water lie on the tray."""
    spots = rng.uniform((0, 0), (view.width_px, view.height_px), (scene["puddles"], 2))
    return [place_of(spot, view) for spot in spots]


def add_faults(blend, scene, view, ball_at, lamp_at, half):
    """Second light, water on the tray, and cards, when the plan has them."""
    rng = np.random.default_rng([scene["seed"], 2])
    second = scene.get("second")
    if second:
        add_window(blend, second, ball_at) if second["kind"] == "window" else add_lamp(blend, second, ball_at)
    if scene.get("puddles"):
        add_puddles(blend, puddle_places(scene, view, rng), rng)
    if scene.get("card"):
        card_between(blend, scene, view, ball_at, lamp_at, half)


def use_graphics_card(blend):
    """Renders on every CUDA card instead of the processor; raises RuntimeError when there is none."""
    addon_utils.enable("cycles")
    preferences = bpy.context.preferences.addons["cycles"].preferences
    preferences.compute_device_type = "CUDA"
    preferences.get_devices()
    for device in preferences.devices:
        device.use = device.type == "CUDA"
    if not any(device.use for device in preferences.devices):
        raise RuntimeError("no CUDA graphics card: leave --gpu out")
    blend.cycles.device = "GPU"


def render_linear(blend, path):
    """Renders into half floats, nothing clipped, no view transform."""
    settings = blend.render.image_settings
    settings.file_format, settings.color_depth, settings.exr_codec = "OPEN_EXR", "16", "ZIP"
    blend.render.filepath = path
    bpy.ops.render.render(write_still=True)
    settings.file_format, settings.color_depth = "PNG", "8"


def build(options):
    """Builds, renders and labels one scene."""
    scene = part_scenes(options.part)[options.index]
    view, built, ball_at, lamp_at, half = place_stones(scene)
    blend = empty_scene(view.width_px, view.height_px, scene["samples"], scene["seed"] % 100000)
    if options.gpu:
        use_graphics_card(blend)
    # Even ground stops early; the edges of highlights take the most paths.
    blend.cycles.adaptive_threshold, blend.cycles.adaptive_min_samples = 0.03, 8
    add_camera(blend, view.distance_mm, view.width_px * view.mm_per_px)
    add_fill(blend, scene["fill"])
    add_tray(blend, scene["tray"])
    for label, b in enumerate(built, 1):
        mesh_stone(blend, b, label, scene["lamp"]["angularDiameterDeg"], view.mm_per_px)
    add_ball(blend, *ball_at[:2])
    add_lamp(blend, scene["lamp"], ball_at)
    add_faults(blend, scene, view, ball_at, lamp_at, half)
    os.makedirs(os.path.join(options.out, "linear"), exist_ok=True)
    picture = os.path.join(options.out, "linear", scene["name"] + ".exr")
    render_linear(blend, picture + ".part.exr")
    labels = label_picture(blend, os.path.join(options.out, "linear", scene["name"] + "-labels.png"))
    second_at = lamp_place(scene["second"], ball_at)[0] if scene.get("second") else None
    truth = scene_truth(options.part, scene, view, labels, ball_at, second_at, lamp_at, built)
    os.replace(picture + ".part.exr", picture)
    with open(os.path.join(options.out, scene["name"] + ".json"), "w", encoding="utf-8") as file:
        json.dump(truth, file, separators=(",", ":"))
        file.write("\n")


if __name__ == "__main__":
    wanted = arguments()
    if wanted.index is None:
        for number, listed in enumerate(part_scenes(wanted.part)):
            print("scene", number, listed["name"])
    else:
        build(wanted)
