"""Builds one stone: sound shape, flaws pressed in, mesh with its attributes, and the truth about it."""

import bpy
import numpy as np

from bodies import stone_material
from flaws import Skin, add_chip, add_fracture, add_pit, add_speck
from stone_shape import stone_shape, vertex_normals


def flawed_skin(stone, edge_mm):
    """The surface of a drawn stone with its flaws; returns skin, triangles, flaws and decoys."""
    rng = np.random.default_rng(stone["seed"])
    points, triangles = stone_shape(rng, stone["form"], stone["lengthMm"], edge_mm, stone.get("waviness"))
    skin = Skin(points, triangles, vertex_normals(points, triangles), rng)
    flaws = [add_chip(skin, size) for size in stone["chips"]]
    flaws += [add_fracture(skin, *size) for size in stone["fractures"]]
    flaws += [add_pit(skin, size) for size in stone["pits"]]
    decoys = [add_speck(skin, size) for size in stone["specks"]]
    return skin, triangles, [f for f in flaws if f], [d for d in decoys if d]


def stone_object(scene, name, skin, triangles, material, label):
    """A smooth-shaded Blender mesh of the pressed surface, around the origin."""
    points = skin.press()
    mesh = bpy.data.meshes.new(name)
    mesh.vertices.add(len(points))
    mesh.vertices.foreach_set("co", points.astype(np.float32).ravel())
    mesh.loops.add(triangles.size)
    mesh.loops.foreach_set("vertex_index", triangles.astype(np.int32).ravel())
    mesh.polygons.add(len(triangles))
    mesh.polygons.foreach_set("loop_start", np.arange(0, triangles.size, 3, dtype=np.int32))
    mesh.polygons.foreach_set("loop_total", np.full(len(triangles), 3, dtype=np.int32))
    mesh.polygons.foreach_set("use_smooth", np.ones(len(triangles), dtype=bool))
    for kind in ("broken", "dark", "speck"):
        layer = mesh.attributes.new(kind, "FLOAT", "POINT")
        layer.data.foreach_set("value", getattr(skin, kind).astype(np.float32))
    mesh.materials.append(material)
    mesh.update(calc_edges=True)
    thing = bpy.data.objects.new(name, mesh)
    thing.pass_index = label
    scene.collection.objects.link(thing)
    return thing


def material_of(stone, name):
    """The stone's material, its pattern shifted and turned at random; returns material and refractive index."""
    rng = np.random.default_rng(stone["seed"] + 1)
    return stone_material(name, stone["body"], stone["alpha"], stone["floor"],
                          tuple(rng.uniform(-400, 400, 3)), tuple(rng.uniform(0, 6.28, 3)), stone.get("n"))
