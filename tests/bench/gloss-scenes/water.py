"""Water on stones and tray: a smooth film or beads over the body, n = 1.33."""

import bpy
import numpy as np

from bodies import Nodes
from flaws import smooth_step

WATER_INDEX, WATER_ALPHA = 1.33, 0.003


def fresnel_water(n):
    """Share of light a smooth water surface reflects."""
    return n.add("ShaderNodeFresnel", {"IOR": WATER_INDEX}).outputs[0]


def gloss(n):
    """The smooth upper side of the water."""
    return n.add("ShaderNodeBsdfGlossy", {"Color": (1, 1, 1, 1), "Roughness": WATER_ALPHA**0.5}, distribution="GGX").outputs[0]


def wet_material(material, index):
    """Puts water over a stone's material where the attribute `wet` is 1.

    Under water the interface reflects less (its relative index is index / 1.33) and the body looks darker.
    """
    n = Nodes(material.node_tree)
    base = material.node_tree.nodes["Principled BSDF"]
    wet = n.attribute("wet")
    ratio = index / WATER_INDEX
    dry, under = ((index - 1) / (index + 1)) ** 2 / 0.08, ((ratio - 1) / (ratio + 1)) ** 2 / 0.08
    specular = n.add("ShaderNodeMapRange", {"Value": wet, "To Min": dry, "To Max": under})
    n.tree.links.new(specular.outputs[0], base.inputs["Specular"])
    color = base.inputs["Base Color"].links[0].from_socket
    darker = n.add("ShaderNodeGamma", {"Color": color, "Gamma": 1.4}).outputs[0]
    n.tree.links.new(n.mix(wet, color, darker), base.inputs["Base Color"])
    share = n.add("ShaderNodeMath", {0: wet, 1: fresnel_water(n)}, operation="MULTIPLY").outputs[0]
    film = n.add("ShaderNodeMixShader", {0: share, 1: base.outputs[0], 2: gloss(n)})
    n.tree.links.new(film.outputs[0], n.tree.nodes["Material Output"].inputs["Surface"])


def add_beads(skin, highlight, count=14):
    """Raises beads of water on the upper side, one of them at the highlight; returns how wet each vertex is."""
    wet = np.zeros(len(skin.points))
    upper = np.flatnonzero(skin.normals[:, 2] > 0.5)
    for k in range(count):
        center = highlight if k == 0 else int(skin.rng.choice(upper))
        radius = skin.rng.uniform(0.5, 1.6)
        near = np.array(skin.tree.query_ball_point(skin.points[center], radius * 1.1))
        u = np.linalg.norm(skin.points[near] - skin.points[center], axis=1) / radius
        height = 0.35 * radius * np.maximum(1 - u * u, 0)
        skin.sink[near] = np.minimum(skin.sink[near], -height)
        wet[near] = np.maximum(wet[near], 1 - smooth_step(0.97, 1.03, u))
    return wet


def add_puddles(scene, places, rng):
    """Flat beads of water on the tray at places (x, y in mm)."""
    material = bpy.data.materials.new("puddle")
    material.use_nodes = True
    n = Nodes(material.node_tree)
    clear = n.add("ShaderNodeBsdfTransparent", {"Color": (0.86, 0.86, 0.86, 1)}).outputs[0]
    both = n.add("ShaderNodeMixShader", {0: fresnel_water(n), 1: clear, 2: gloss(n)})
    n.tree.links.new(both.outputs[0], n.tree.nodes["Material Output"].inputs["Surface"])
    for x, y in places:
        radius = rng.uniform(1.2, 4)
        bpy.ops.mesh.primitive_uv_sphere_add(segments=96, ring_count=64, radius=1, location=(x, y, 0))
        bead = bpy.context.object
        bead.scale = (radius, radius * rng.uniform(0.7, 1), 0.3 * radius)
        bpy.ops.object.shade_smooth()
        bead.data.materials.append(material)
