"""Presses the last flaws into a placed stone and hands it to Blender."""

import numpy as np
from mathutils import Matrix

from flaws import add_pit
from stones import material_of, stone_object
from water import add_beads, wet_material


def lobe_radius_mm(built, lamp_deg):
    """How far the highlight reaches on the skin: the lamp's mirror image, widened by the roughness (at most threefold)."""
    source = np.tan(np.radians(lamp_deg) / 4)
    return built["highlight"]["radiusMm"] * min(3.0, np.hypot(1, built["stone"]["alpha"] / source))


def pits_in_highlight(built, reach_mm, mm_per_px):
    """Presses the planned pits into the highlight, each at least three pixels across."""
    skin, rng = built["skin"], built["skin"].rng
    middle = skin.points[built["highlight"]["at"]]
    pressed = []
    for _ in range(built["stone"]["pitsInHighlight"]):
        near = np.array(skin.tree.query_ball_point(middle, 0.85 * reach_mm))
        free = [v for v in near if all(np.linalg.norm(skin.points[v] - p) > r + 0.25 for p, r in skin.taken)]
        if not free:
            break
        diameter = max(rng.uniform(0.25, 0.6) * reach_mm * 1.2, 3 * mm_per_px)
        pressed.append(add_pit(skin, min(float(diameter), 1.4), center=int(rng.choice(free))))
    built["flaws"] += pressed
    return len(pressed)


def mesh_stone(blend, built, label, lamp_deg, mm_per_px):
    """Adds one placed stone to the scene, with its pits in the highlight and its water."""
    skin, stone = built["skin"], built["stone"]
    placed = skin.points, skin.normals
    skin.points, skin.normals = built["upright"]
    built["pitsInHighlight"] = pits_in_highlight(built, lobe_radius_mm(built, lamp_deg), mm_per_px)
    material, built["index"] = material_of(stone, f"stone {label}")
    wet = add_beads(skin, built["highlight"]["at"]) if stone.get("wet") == "beads" else None
    thing = stone_object(blend, f"stone {label}", skin, built["triangles"], material, label)
    if stone.get("wet"):
        wet_material(material, built["index"])
        layer = thing.data.attributes.new("wet", "FLOAT", "POINT")
        layer.data.foreach_set("value", (np.ones(len(skin.points)) if wet is None else wet).astype(np.float32))
    skin.points, skin.normals = placed
    thing.matrix_world = Matrix.Translation(built["rest"] + built["shift"]) @ Matrix(built["turn"]).to_4x4()
