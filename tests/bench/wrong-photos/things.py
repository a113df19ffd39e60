"""Things that are no stones: coins, keys, marbles, food, fingers. Each is a Blender object around the origin, lowest at z = 0."""

import bpy
import numpy as np

from bodies import Nodes
from geodesic import geodesic
from noise3 import layered_noise3, noise3

# Linear-light colors of metals at normal incidence, from memory of published tables.
METALS = {"copper": (0.93, 0.58, 0.45), "brass": (0.87, 0.72, 0.38), "nickel": (0.65, 0.6, 0.52), "steel": (0.56, 0.56, 0.55)}


def plain_material(name, color, alpha, index=1.5, **inputs):
    """A Principled material; alpha is GGX roughness, inputs are further inputs by name."""
    material = bpy.data.materials.new(name)
    material.use_nodes = True
    shader = material.node_tree.nodes["Principled BSDF"]
    shader.distribution = "GGX"
    shader.inputs["Base Color"].default_value = (*color, 1)
    shader.inputs["Roughness"].default_value = alpha**0.5
    shader.inputs["Specular"].default_value = ((index - 1) / (index + 1)) ** 2 / 0.08
    for key, value in inputs.items():
        shader.inputs[key].default_value = value
    return material


def patterned(material, colors, size, kind="noise", bump=0.0):
    """Gives a material a pattern of two colors, features `size` mm, and a bump of that many mm."""
    n = Nodes(material.node_tree)
    shader = n.tree.nodes["Principled BSDF"]
    where = n.add("ShaderNodeTexCoord").outputs["Object"]
    if kind == "stripes":
        wave = n.add("ShaderNodeTexWave", {"Vector": where, "Scale": 0.31 / size, "Distortion": 4.0, "Detail": 2.0})
        factor = wave.outputs["Fac"]
    else:
        factor = n.noise(where, 1 / size, 5, 0.6)["Fac"]
    n.tree.links.new(n.ramp(factor, [(0.4, colors[0]), (0.6, colors[1])]), shader.inputs["Base Color"])
    if bump:
        height = n.noise(where, 2.5 / size, 5)["Fac"]
        node = n.add("ShaderNodeBump", {"Strength": 1.0, "Distance": bump, "Height": height})
        n.tree.links.new(node.outputs[0], shader.inputs["Normal"])
    return material


def mesh_thing(scene, name, points, faces, material):
    """A smooth-shaded object; its points are moved over the origin, lowest at 0. Returns the object and its points."""
    points = np.asarray(points, dtype=float)
    points = points - [*(points[:, :2].max(0) + points[:, :2].min(0)) / 2, points[:, 2].min()]
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata([tuple(p) for p in points], [], [tuple(int(k) for k in f) for f in faces])
    mesh.polygons.foreach_set("use_smooth", np.ones(len(mesh.polygons), dtype=bool))
    mesh.materials.append(material)
    thing = bpy.data.objects.new(name, mesh)
    scene.collection.objects.link(thing)
    return thing, points


def turned(points, angle):
    """Points turned in the tray by an angle, radians."""
    c, s = np.cos(angle), np.sin(angle)
    return points @ np.array([[c, s, 0], [-s, c, 0], [0, 0, 1]])


def coin(scene, rng, name):
    """A struck disc of metal: raised rim, a relief in its middle, marks around it."""
    radius, thick, seed = rng.uniform(8.2, 12.8), rng.uniform(1.5, 2.3), int(rng.integers(1 << 30))
    share = np.concatenate([np.linspace(0.004, 0.985, 110), [0.995, 1.0]])
    angle = np.arange(300) * 2 * np.pi / 300
    r, a = np.meshgrid(share * radius, angle, indexing="ij")
    flat = np.column_stack([(r * np.cos(a)).ravel(), (r * np.sin(a)).ravel()])
    part = r.ravel() / radius
    relief = np.tanh(5 * noise3(np.column_stack([flat / 3.2, np.zeros(len(flat))]), seed)) * np.clip((0.62 - part) * 12, 0, 1)
    marks = np.tanh(6 * noise3(np.column_stack([flat / 0.9, np.zeros(len(flat))]), seed + 1)) * (np.abs(part - 0.75) < 0.08)
    rim = np.clip((part - 0.88) * 25, 0, 1) * np.clip((1.0 - part) * 60, 0, 1)
    z = thick + 0.16 * relief + 0.08 * marks + 0.2 * rim
    top = np.column_stack([flat, z])
    foot = np.column_stack([radius * np.cos(angle), radius * np.sin(angle), np.zeros(300)])
    points = np.vstack([top, foot])
    at = lambda i, j: i * 300 + j % 300
    faces = [(at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)) for i in range(len(share)) for j in range(300)]
    metal = str(rng.choice(list(METALS)))
    material = plain_material(name, METALS[metal], float(rng.uniform(0.03, 0.2)), Metallic=1.0)
    return mesh_thing(scene, name, points, [tuple(range(300))[::-1], *faces], material)


def key(scene, rng, name):
    """A flat door key: round head with a hole, shaft with teeth."""
    head, hole, shaft, half = rng.uniform(8, 10.5), rng.uniform(2.5, 3.4), rng.uniform(26, 34), rng.uniform(3, 3.8)
    start = np.arcsin(half / head)
    bow = [(head * np.cos(a), head * np.sin(a)) for a in np.linspace(start, 2 * np.pi - start, 60)]
    teeth, x = [], head + 4
    while x < head + shaft - 4:
        depth = rng.uniform(0.4, 3.2)
        teeth += [(x, -half), (x + 1.2, -half + depth), (x + 2.4, -half + depth), (x + 3.6, -half)]
        x += 4.2
    outer = [*bow, *teeth, (head + shaft, -half * 0.3), (head + shaft, half * 0.3), (head + shaft - 3, half)]
    curve = bpy.data.curves.new(name, "CURVE")
    curve.dimensions, curve.fill_mode, curve.extrude, curve.bevel_depth = "2D", "BOTH", 0.9, 0.22
    ring = [(hole * np.cos(a) - head * 0.4, hole * np.sin(a)) for a in np.linspace(0, 2 * np.pi, 40, endpoint=False)]
    turn = rng.uniform(0, 2 * np.pi)
    both = [turned(np.column_stack([np.array(line), np.zeros(len(line))]), turn) for line in (outer, ring)]
    middle = (both[0].max(0) + both[0].min(0)) / 2
    for line in both:
        line -= middle
        spline = curve.splines.new("POLY")
        spline.points.add(len(line) - 1)
        spline.points.foreach_set("co", np.column_stack([line, np.ones(len(line))]).ravel())
        spline.use_cyclic_u = True
    metal = str(rng.choice(["brass", "nickel", "steel"]))
    curve.materials.append(plain_material(name, METALS[metal], float(rng.uniform(0.03, 0.15)), Metallic=1.0))
    thing = bpy.data.objects.new(name, curve)
    thing.location.z = 1.15
    scene.collection.objects.link(thing)
    return thing, both[0] + [0, 0, 1.2]


def ball_points(semi, frequency=60):
    directions, triangles = geodesic(frequency)
    return directions, directions * semi, triangles


def marble(scene, rng, name):
    """A glass marble: clear with a colored core, or opaque with swirls."""
    radius = rng.uniform(7, 9.5)
    _, points, triangles = ball_points([radius] * 3, 90)
    color = np.clip(rng.uniform(0.02, 0.8, 3), 0, 1)
    if rng.random() < 0.5:
        tint = 1 - 0.12 * rng.uniform(0, 1, 3)
        glass = plain_material(name, tint, 0.0, Transmission=1.0, IOR=1.52)
        thing, placed = mesh_thing(scene, name, points, triangles, glass)
        directions, core, faces = ball_points([radius * 0.62, radius * 0.1, radius * 0.34], 30)
        twist = core[:, 0] / radius * 2.2
        core = np.column_stack([core[:, 0], core[:, 1] * np.cos(twist) - core[:, 2] * np.sin(twist), core[:, 1] * np.sin(twist) + core[:, 2] * np.cos(twist)])
        inner, _ = mesh_thing(scene, name + " core", core, faces, plain_material(name + " core", color, 0.3))
        inner.parent, inner.location = thing, (0, 0, radius - (core[:, 2].max() - core[:, 2].min()) / 2)
        return thing, placed
    material = patterned(plain_material(name, color, 0.004, 1.52), [tuple(color), tuple(np.clip(rng.uniform(0.02, 0.85, 3), 0, 1))], 7, "stripes")
    return mesh_thing(scene, name, points, triangles, material)


def bean(scene, rng, name):
    """A dried bean, bent like a kidney."""
    a = rng.uniform(7, 9.5)
    _, p, triangles = ball_points([a, a * rng.uniform(0.52, 0.6), a * 0.5])
    p[:, 1] += 0.022 * rng.uniform(0.8, 1.2) * p[:, 0] ** 2
    colors = [((0.75, 0.7, 0.6), (0.7, 0.64, 0.52)), ((0.2, 0.02, 0.02), (0.13, 0.015, 0.015)), ((0.3, 0.16, 0.09), (0.08, 0.02, 0.02)), ((0.015,) * 3, (0.02,) * 3)]
    pair = colors[int(rng.integers(4))]
    material = patterned(plain_material(name, pair[0], float(rng.uniform(0.06, 0.18)), 1.47), pair, 3)
    return mesh_thing(scene, name, turned(p, rng.uniform(0, 6.28)), triangles, material)


def nut(scene, rng, name):
    """A hazelnut with its tip and stripes, or an almond with its ridges."""
    if rng.random() < 0.5:
        d, p, triangles = ball_points([rng.uniform(7.5, 9)] * 3)
        p *= 1 + 0.22 * np.exp((d[:, :1] - 1) / 0.05) - 0.08 * np.clip(-d[:, :1] - 0.8, 0, 1) * 5
        pair, alpha, bump = ((0.34, 0.15, 0.05), (0.2, 0.08, 0.03)), 0.14, 0.0
    else:
        a = rng.uniform(10, 13)
        d, p, triangles = ball_points([a, a * 0.56, a * 0.34])
        p[:, 1:] *= (1 - 0.45 * d[:, :1] * (d[:, :1] > 0)) * (1 + 0.05 * noise3(d * [0.6, 6, 6], int(rng.integers(1 << 30)))[:, None])
        pair, alpha, bump = ((0.33, 0.15, 0.06), (0.24, 0.1, 0.035)), 0.4, 0.25
    material = patterned(plain_material(name, pair[0], alpha, 1.47), pair, 2.5, "stripes", bump)
    return mesh_thing(scene, name, turned(p, rng.uniform(0, 6.28)), triangles, material)


def grape(scene, rng, name):
    """A grape: an even ellipsoid with a thin skin and a bloom."""
    a = rng.uniform(8.5, 11)
    _, p, triangles = ball_points([a, a * rng.uniform(0.8, 0.95), a * 0.82])
    pair = [((0.32, 0.42, 0.1), (0.24, 0.34, 0.07)), ((0.06, 0.012, 0.03), (0.1, 0.03, 0.06))][int(rng.integers(2))]
    material = patterned(plain_material(name, pair[0], float(rng.uniform(0.03, 0.1)), 1.44), pair, 8)
    return mesh_thing(scene, name, turned(p, rng.uniform(0, 6.28)), triangles, material)


def crumb(scene, rng, name):
    """A crumb of bread: ragged, porous, matte."""
    d, p, triangles = ball_points(np.array([1, rng.uniform(0.6, 0.9), 0.6]) * rng.uniform(5, 9), 80)
    p *= 1 + 0.35 * layered_noise3(d * 2.2, int(rng.integers(1 << 30)), 4)[:, None]
    material = patterned(plain_material(name, (0.6, 0.45, 0.25), 0.9), ((0.66, 0.5, 0.29), (0.45, 0.27, 0.11)), 2, bump=0.6)
    return mesh_thing(scene, name, turned(p, rng.uniform(0, 6.28)), triangles, material)


def finger(scene, rng, name, start, end, radius):
    """A finger on the tray from `start`, outside the picture, to its tip (mm), with creases at its joints."""
    start, end = np.array(start, float), np.array(end, float)
    along = (end - start) / np.linalg.norm(end - start)
    side = np.array([-along[1], along[0]])
    length = np.linalg.norm(end - start)
    s = np.concatenate([np.linspace(0, length - radius, 200), length - radius + radius * np.sin(np.linspace(0.02, 1.56, 40))])
    round_end = np.sqrt(np.clip(1 - (np.clip(s - (length - radius), 0, radius) / radius) ** 2, 1e-4, 1))
    joint = sum(np.exp(-(((s - (length - back)) / 0.8) ** 2)) for back in (22, 25, 43, 46))
    r = radius * (1 - 0.12 * (s / length)) * round_end * (1 - 0.05 * joint)
    lift = 10 * (1 - s / length) + 0.3 * np.sin(s / 14)
    turn = np.arange(48) * 2 * np.pi / 48
    points = []
    for k in range(len(s)):
        for t in turn:
            flat = start + along * s[k] + side * r[k] * np.cos(t)
            points.append((*flat, radius + lift[k] + r[k] * np.sin(t)))
    faces = [(i * 48 + j, i * 48 + (j + 1) % 48, (i + 1) * 48 + (j + 1) % 48, (i + 1) * 48 + j) for i in range(len(s) - 1) for j in range(48)]
    tone = [((0.58, 0.33, 0.23), (0.52, 0.27, 0.18)), ((0.2, 0.1, 0.06), (0.25, 0.13, 0.08))][int(rng.integers(2))]
    material = patterned(plain_material(name, tone[0], 0.25, 1.44), tone, 5, bump=0.12)
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata(points, [], faces)
    mesh.polygons.foreach_set("use_smooth", np.ones(len(mesh.polygons), dtype=bool))
    mesh.materials.append(material)
    thing = bpy.data.objects.new(name, mesh)
    scene.collection.objects.link(thing)
    return thing


THINGS = {"coin": coin, "key": key, "marble": marble, "bean": bean, "nut": nut, "grape": grape, "crumb": crumb}
