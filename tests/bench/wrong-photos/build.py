"""Renders one set of scenes that show what is no stone, or stones that cannot be judged, all under one lamp and camera.

Run:  blender -b --python-exit-code 1 --python build.py -- --set development|test --out DIR [--only NAME …]
Writes NAME.jpg for each scene and NAME.json: places (row, column, radius in pixels) of ball and well-photographed stones.
Screens are photographed by screen.py, from what is rendered here.
"""

import argparse
import json
import os
import sys

import bpy
import numpy as np
from PIL import Image

sys.dont_write_bytecode = True
HERE = os.path.dirname(os.path.abspath(__file__))
SAMPLES = os.path.join(HERE, "..", "..", "..", "sample-images")
sys.path[:0] = [HERE, os.path.join(SAMPLES, "render"), os.path.join(HERE, "..", "gloss-scenes")]

from bodies import BODIES, Nodes
from focal_length import focal_length_exif
from layout import ball_cloud, fits, layout, outline_of
from lights import add_window
from scenes import RECIPES, draw_lamp, draw_stone
from setting import add_ball, add_camera, add_fill, add_lamp, add_tray, empty_scene, fresnel0
from stones import flawed_skin, material_of, stone_object
from things import THINGS, finger
from view import View
from water import add_puddles, wet_material

WIDTH, HEIGHT, VIEW_MM = 1020, 680, 140.0
SEEDS = {"development": 41, "test": 977}
PRINTED = {"development": "polished-tray.jpg", "test": "mid-tray.jpg"}
# what lies in the tray (things by name, and stones), and what else is wrong
SCENES = {
    "good": dict(stones=6),
    "empty": dict(stones=0, ball=False),
    "ball-alone": dict(stones=0),
    "coins": dict(things=["coin"] * 6),
    "keys": dict(things=["key"] * 3),
    "marbles": dict(things=["marble"] * 7),
    "beans": dict(things=["bean"] * 4 + ["nut"] * 4),
    "grapes": dict(things=["grape"] * 4 + ["crumb"] * 4),
    "hand": dict(stones=4, fingers=True),
    "print": dict(stones=0, paper=95),
    "print-whole": dict(stones=0, paper=230),
    "two-lamps": dict(stones=6, lamps=2),
    "window": dict(stones=6, lamps=0, window=True),
    "wet": dict(stones=6, wet=True),
    "cut-off": dict(stones=6, cut=3),
}


def arguments():
    """The options after `--`."""
    parser = argparse.ArgumentParser(prog="build.py")
    parser.add_argument("--set", choices=SEEDS, required=True)
    parser.add_argument("--out", required=True)
    parser.add_argument("--only", nargs="*", choices=SCENES)
    parser.add_argument("--places", action="store_true", help="writes the JSON files only")
    parser.add_argument("--samples", type=int, default=12)
    return parser.parse_args(sys.argv[sys.argv.index("--") + 1:])


def setting_of(seed):
    """Lamp, room, tray and camera: one and the same for a whole set."""
    rng = np.random.default_rng(seed)
    gray = rng.uniform(0.52, 0.7)
    return {"lamp": draw_lamp(rng) | {"shape": "round"}, "fill": float(rng.uniform(0.2, 0.27)),
            "tray": list(gray * rng.uniform(0.95, 1.05, 3)), "distanceMm": float(rng.uniform(650, 850))}


def add_stones(blend, rng, count, view, wet):
    """Polished and dull stones at the origin; returns objects and their points."""
    recipe = RECIPES["mid"] | {"length": (17, 27), "pits": (0, 1), "fractures": (0, 0), "chips": (0, 0)}
    made = []
    for k, body in enumerate(rng.permutation(list(BODIES))[:count]):
        alpha = float(np.exp(rng.uniform(np.log(0.012), np.log(0.2))))
        stone = draw_stone(rng, recipe, str(body), alpha, ["rounded", "oval", "facetted"][k % 3])
        skin, triangles, _, _ = flawed_skin(stone, max(0.75 * view.mm_per_px, 0.05))
        material, index = material_of(stone, f"stone {k}")
        thing = stone_object(blend, f"stone {k}", skin, triangles, material, k + 1)
        if wet:
            wet_material(material, index)
            layer = thing.data.attributes.new("wet", "FLOAT", "POINT")
            layer.data.foreach_set("value", np.ones(len(thing.data.vertices), dtype=np.float32))
        made.append((thing, skin.points))
    return made


def over_edge(cloud, view, rng, others):
    """A place at which a stone crosses the picture's edge and touches no other outline."""
    half_w, half_h = VIEW_MM / 2, VIEW_MM / 3
    for _ in range(400):
        along = rng.uniform(-0.75, 0.75)
        x, y = [(along * half_w, half_h), (along * half_w, -half_h), (half_w, along * half_h), (-half_w, along * half_h)][int(rng.integers(4))]
        outline = outline_of(cloud, view, x, y)
        if fits(outline, others, view, 30, -1e6):
            return x, y, outline
    raise RuntimeError("no room at the edge")


def add_paper(blend, side_mm, picture, at, turn):
    """A flat print of a picture, `side_mm` wide, lying on the tray."""
    bpy.ops.mesh.primitive_plane_add(size=1, location=(*at, 0.15), rotation=(0, 0, turn))
    paper = bpy.context.object
    image = bpy.data.images.load(picture)
    paper.scale = (side_mm, side_mm * image.size[1] / image.size[0], 1)
    material = bpy.data.materials.new("paper")
    material.use_nodes = True
    n = Nodes(material.node_tree)
    shader = n.tree.nodes["Principled BSDF"]
    texture = n.add("ShaderNodeTexImage")
    texture.image = image
    inked = n.mix(1.0, texture.outputs["Color"], (0.82, 0.82, 0.8, 1), "MULTIPLY")
    n.tree.links.new(n.mix(0.03, inked, (1, 1, 1, 1)), shader.inputs["Base Color"])
    shader.inputs["Roughness"].default_value = 0.8
    shader.inputs["Specular"].default_value = 0.3
    paper.data.materials.append(material)


def lights(blend, rng, plan, setting, ball_at):
    """The set's lamp, a second one, or a window in its place."""
    lamp = setting["lamp"]
    if plan.get("lamps", 1) > 0:
        add_lamp(blend, lamp, ball_at)
    x, y, z = lamp["direction"]
    if plan.get("lamps") == 2:
        add_lamp(blend, lamp | {"direction": [-y, x, z], "radiance": lamp["radiance"] * float(rng.uniform(0.6, 0.95))}, ball_at)
    if plan.get("window"):
        add_window(blend, {"direction": [-x, -y, z], "distanceMm": 900, "angularDiameterDeg": 48, "radiance": lamp["radiance"] * 0.09}, ball_at)


def lay_out(plan, view, rng, clouds):
    """Places of everything; the first `cut` things cross the picture's edge."""
    cut = plan.get("cut", 0)
    for _ in range(20):
        outlines, edge = [], []
        for cloud in clouds[:cut]:
            x, y, outline = over_edge(cloud[::29], view, rng, outlines)
            edge.append((x, y))
            outlines.append(outline)
        inner = layout([c[::29] if len(c) > 5000 else c for c in clouds[cut:]], view, rng, {}, gap=24, margin=22)
        inside = [outline_of(c[::29] if len(c) > 5000 else c, view, *p) for c, p in zip(clouds[cut:], inner)]
        if all(fits(o, outlines, view, 20, -1e6) for o in inside):
            return edge + inner
    raise RuntimeError("no room")


def build(name, options):
    """Renders one scene."""
    plan, seed = SCENES[name], SEEDS[options.set]
    setting = setting_of(seed)
    rng = np.random.default_rng([seed, *name.encode()])
    view = View(WIDTH, HEIGHT, setting["distanceMm"], VIEW_MM)
    blend = empty_scene(WIDTH, HEIGHT, options.samples, seed)
    if "marble" in plan.get("things", []):
        blend.cycles.max_bounces, blend.cycles.transmission_bounces, blend.cycles.glossy_bounces = 8, 8, 4
        blend.cycles.caustics_refractive, blend.cycles.sample_clamp_indirect = True, 12
    add_camera(blend, setting["distanceMm"], VIEW_MM)
    add_fill(blend, setting["fill"])
    add_tray(blend, setting["tray"])
    made = add_stones(blend, rng, plan.get("stones", 0), view, plan.get("wet", False))
    real = len(made)
    made += [THINGS[kind](blend, rng, f"{kind} {k}") for k, kind in enumerate(plan.get("things", []))]
    if "paper" in plan:
        width = plan["paper"]
        picture = os.path.join(SAMPLES, PRINTED[options.set])
        add_paper(blend, width, picture, (18, 6) if width < VIEW_MM else (0, 0), float(rng.uniform(-0.12, 0.12)))
        places = [(-56, -34)]
    elif plan.get("fingers"):
        for k in range(4):
            y = 36 - 20 * k
            finger(blend, rng, f"finger {k}", (125, y * 0.9), (14 + 7 * abs(k - 1), y * 0.75), 7.5)
        places = [(-52, 28), (-27, 14), (-52, -22), (-26, -30), (-8, 36)]
    else:
        places = lay_out(plan, view, rng, [points for _, points in made] + [ball_cloud()])
    for (thing, _), (x, y) in zip(made, places):
        thing.location = (x, y, thing.location.z)
    has_ball = plan.get("ball", True)
    ball_at = add_ball(blend, *places[-1]) if has_ball else (*places[-1], 8.0)
    if plan.get("wet"):
        add_puddles(blend, [(x + 13, y - 12) for x, y in places[:4]], rng)
    lights(blend, rng, plan, setting, ball_at)
    picture = os.path.join(options.out, name)
    blend.render.filepath = picture + ".png"
    if not options.places:
        bpy.ops.render.render(write_still=True)
        Image.open(picture + ".png").convert("RGB").save(
            picture + ".jpg", quality=87, optimize=True, exif=focal_length_exif(view.focal_px, WIDTH, HEIGHT))
        os.remove(picture + ".png")
    judged = real if name in ("good", "hand", "cut-off") else 0
    places_px = [[round(float(v), 1) for v in view.pixels([[x, y, 8]])[0]] for x, y in places]
    stones = [[*at, round(9 / view.mm_per_px)] for at in places_px[plan.get("cut", 0):judged]]
    ball = [*places_px[-1], round(8 / view.mm_per_px, 1)] if has_ball else None
    with open(picture + ".json", "w", encoding="utf-8") as file:
        json.dump({"ball": ball, "stones": stones}, file)


if __name__ == "__main__":
    chosen = arguments()
    os.makedirs(chosen.out, exist_ok=True)
    for scene_name in chosen.only or SCENES:
        build(scene_name, chosen)
