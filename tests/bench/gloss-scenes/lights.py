"""What spoils the light: a window, and cards that hide part of the lamp."""

import math

import bpy
import numpy as np

from bodies import Nodes
from highlight import unit


def add_mesh(scene, name, corners, faces, material):
    """A plain mesh object in world coordinates."""
    mesh = bpy.data.meshes.new(name)
    mesh.from_pydata([tuple(map(float, c)) for c in corners], [], faces)
    mesh.materials.append(material)
    thing = bpy.data.objects.new(name, mesh)
    scene.collection.objects.link(thing)
    return thing


def facing(direction):
    """Two unit vectors across a direction, the first level."""
    level = unit(np.cross([0, 0, 1.0], direction))
    return level, np.cross(direction, level)


def add_window(scene, window, ball_at):
    """A window of four bright panes that faces the ball. window: direction, distanceMm, angularDiameterDeg, radiance."""
    direction = np.array(window["direction"])
    middle = np.array(ball_at) + window["distanceMm"] * direction
    half = window["distanceMm"] * math.tan(math.radians(window["angularDiameterDeg"]) / 2)
    level, upward = facing(direction)
    material = bpy.data.materials.new("window")
    material.use_nodes = True
    n = Nodes(material.node_tree)
    glow = n.add("ShaderNodeEmission", {"Color": (0.9, 0.97, 1.1, 1), "Strength": window["radiance"]})
    n.tree.links.new(glow.outputs[0], n.tree.nodes["Material Output"].inputs["Surface"])
    for left, low in ((-1, -1), (0.06, -1), (-1, 0.06), (0.06, 0.06)):
        spots = [(left, low), (left + 0.94, low), (left + 0.94, low + 0.94), (left, low + 0.94)]
        corners = [middle + half * (0.7 * s * level + t * upward) for s, t in spots]
        add_mesh(scene, "pane", corners, [(0, 1, 2, 3)], material)


def add_card(scene, start, lamp_at, lamp_half_mm, share, depth, outward):
    """A dark card between `start` and the lamp, with a straight edge that hides a share of the lamp's width.

    share: 0 to 1 of the lamp's width as seen from start. depth: where along the way to the lamp, 0 to 1.
    outward: unit vector the card reaches toward, away from the picture.
    """
    direction = unit(lamp_at - start)
    middle = start + depth * (lamp_at - start)
    half = depth * lamp_half_mm
    across = unit(outward - (outward @ direction) * direction)
    along = np.cross(direction, across)
    edge, far, wide = half * (1 - 2 * share), half + 90, half + 90
    corners = [middle + e * across + w * along for e, w in ((edge, -wide), (far, -wide), (far, wide), (edge, wide))]
    material = bpy.data.materials.new("card")
    material.use_nodes = True
    shader = material.node_tree.nodes["Principled BSDF"]
    shader.inputs["Base Color"].default_value = (0.06, 0.06, 0.065, 1)
    shader.inputs["Roughness"].default_value = 0.9
    return add_mesh(scene, "card", corners, [(0, 1, 2, 3)], material)
