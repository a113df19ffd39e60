"""Fresh scratches on a polished stone: grooves far thinner than the mesh, as a map that the material bends the light with."""

import bpy
import numpy as np
from scipy.ndimage import gaussian_filter1d
from scipy.spatial import cKDTree

from bodies import Nodes

TEXELS_PER_MM = 110
# Width of the grooves a loose grain leaves, as a share of its size, and the size of the grains in mm (FEPA 42, F60 to
# F90 and F220, from memory). That a groove is a fraction of the grain wide is our assumption: grains roll and chip.
GROOVE_SHARE = (0.25, 0.5)
GRAIN_MM = {"coarse": (0.15, 0.26), "medium": (0.053, 0.068)}
WALL_DEG, WALL_ALPHA = (12, 32), 0.3


def draw_scratches(rng, recipe, length_mm):
    """Scratches of one stone: none on half of the stones, else up to recipe['scratches'] of one grit, mm and radians."""
    if rng.random() < recipe["unscratched"]:
        return []
    grit = str(rng.choice(list(GRAIN_MM)))
    grain = rng.uniform(*GRAIN_MM[grit])
    common, alike = rng.uniform(0, np.pi), rng.random() < 0.4
    return [{
        "grit": grit, "widthMm": float(grain * rng.uniform(*GROOVE_SHARE)),
        "lengthMm": float(np.exp(rng.uniform(np.log(2.5), np.log(0.6 * length_mm)))),
        "angle": float(common + rng.normal(0, 0.12) if alike else rng.uniform(0, np.pi)),
        "bend": float(rng.normal(0, 0.006)), "wall": float(rng.uniform(*WALL_DEG)), "seed": int(rng.integers(1 << 30)),
    } for _ in range(int(rng.integers(1, recipe["scratches"] + 1)))]


def line_of(skin, scratch):
    """Points of one scratch seen from above, n x 2 mm, 0.02 mm apart, through a free place; None if there is none."""
    middle = skin.spot(0, 45, 0.4)
    if middle is None:
        return None
    s = np.arange(-scratch["lengthMm"] / 2, scratch["lengthMm"] / 2, 0.02)
    heading = scratch["angle"] + scratch["bend"] * s
    steps = np.column_stack([np.cos(heading), np.sin(heading)]) * 0.02
    line = np.cumsum(steps, 0)
    return line - line[len(line) // 2] + skin.points[middle, :2]


def add_scratches(skin, scratches):
    """Lays the scratches over the stone; returns the map (rows x columns x 3: cover, slopes x and y) with its half width in mm, and the truth.

    Cover is 0 to 1; slopes are tangents, -1 to 1, in the picture's plane; row 0 is the lowest y.
    """
    half = float(np.abs(skin.points[:, :2]).max()) + 0.5
    size = int(2 * half * TEXELS_PER_MM)
    picture = np.zeros((size, size, 3), np.float32)
    top = np.flatnonzero(skin.normals[:, 2] > 0.35)
    tree, truth = cKDTree(skin.points[top, :2]), []
    for scratch in scratches:
        line = line_of(skin, scratch)
        if line is None:
            continue
        press_groove(picture, line, scratch, half)
        far, near = tree.query(line[::15])
        path = [int(v) for v in top[near[far < 0.2]]]
        if len(path) < 7:
            continue
        long = np.linalg.norm(np.diff(skin.points[path], axis=0), axis=1).sum()
        truth.append({"kind": "scratch", "at": path[len(path) // 2], "path": path[::4] + [path[-1]], "grit": scratch["grit"],
                      "lengthMm": round(float(long), 2), "widthMm": round(scratch["widthMm"], 4)})
    return (picture, half), truth


def press_groove(picture, line, scratch, half):
    """Draws one V-shaped groove with chattered walls and tapered ends into the map."""
    rng = np.random.default_rng(scratch["seed"])
    low = np.maximum(((line.min(0) - 0.3 + half) * TEXELS_PER_MM).astype(int), 0)
    high = np.minimum(((line.max(0) + 0.3 + half) * TEXELS_PER_MM).astype(int) + 1, len(picture))
    if (high <= low).any():
        return
    x, y = np.meshgrid(*((np.arange(l, h) + 0.5) / TEXELS_PER_MM - half for l, h in zip(low, high)))
    far, at = cKDTree(line).query(np.column_stack([x.ravel(), y.ravel()]), distance_upper_bound=0.2)
    hit = np.isfinite(far)
    at, spot = at[hit], np.column_stack([x.ravel(), y.ravel()])[hit]
    heading = np.gradient(line, axis=0) / 0.02
    across = np.column_stack([-heading[:, 1], heading[:, 0]])[at]
    side = ((spot - line[at]) * across).sum(1)
    along = np.minimum(np.arange(len(line)), np.arange(len(line))[::-1]) / len(line)
    chatter = gaussian_filter1d(rng.normal(0, 1, len(line)), 6)
    chatter = 1 + 0.35 * chatter / chatter.std()
    wide = scratch["widthMm"] / 2 * np.clip(along * 8 + 0.3, 0, 1) * np.clip(chatter, 0.3, 1.5)
    cover = np.clip((wide[at] - np.abs(side)) * TEXELS_PER_MM + 0.5, 0, 1)
    tangent = np.tan(np.radians(scratch["wall"])) * np.sign(side)
    block = picture[low[1]:high[1], low[0]:high[0]].reshape(-1, 3)
    value = np.column_stack([cover, across * tangent[:, None]])
    deeper = np.flatnonzero(hit)[cover > block[hit, 0]]
    block[deeper] = value[cover > block[hit, 0]]
    picture[low[1]:high[1], low[0]:high[0]] = block.reshape(high[1] - low[1], high[0] - low[0], 3)


def scratch_material(material, picture, half):
    """Mixes a rough, bent skin into a stone's material where the map says so."""
    size = len(picture)
    image = bpy.data.images.new(material.name + " scratches", size, size, float_buffer=False, is_data=True)
    pixels = np.ones((size, size, 4), np.float32)
    pixels[..., 0], pixels[..., 1:3] = picture[..., 0], 0.5 + 0.5 * picture[..., 1:]
    image.pixels.foreach_set(pixels.ravel())
    image.update()
    n = Nodes(material.node_tree)
    shader = n.tree.nodes["Principled BSDF"]
    where = n.add("ShaderNodeTexCoord").outputs["Object"]
    placed = n.add("ShaderNodeMapping", {"Vector": where, "Location": (0.5, 0.5, 0), "Scale": (1 / (2 * half),) * 2 + (1,)}).outputs[0]
    map_ = n.add("ShaderNodeTexImage", {"Vector": placed}, image=image, extension="CLIP").outputs["Color"]
    cover, right, up = (n.add("ShaderNodeSeparateRGB", {0: map_}).outputs[k] for k in range(3))
    lean = n.add("ShaderNodeCombineXYZ", {0: right, 1: up, 2: 0.5}).outputs[0]
    lean = n.add("ShaderNodeVectorMath", {0: lean, 1: (0.5, 0.5, 0.5)}, operation="SUBTRACT").outputs[0]
    lean = n.add("ShaderNodeVectorMath", {0: lean, "Scale": 2.0}, operation="SCALE").outputs[0]
    normal = n.add("ShaderNodeNewGeometry").outputs["Normal"]
    normal = n.add("ShaderNodeVectorMath", {0: normal, 1: lean}, operation="ADD").outputs[0]
    normal = n.add("ShaderNodeVectorMath", {0: normal}, operation="NORMALIZE").outputs[0]
    groove = n.add("ShaderNodeBsdfPrincipled", {"Roughness": WALL_ALPHA**0.5, "Normal": normal})
    groove.distribution = "GGX"
    groove.inputs["Specular"].default_value = shader.inputs["Specular"].default_value
    color = shader.inputs["Base Color"].links[0].from_socket
    n.tree.links.new(n.mix(0.15, color, (0.5, 0.47, 0.44, 1)), groove.inputs["Base Color"])
    both = n.add("ShaderNodeMixShader", {0: cover, 1: shader.outputs[0], 2: groove.outputs[0]}).outputs[0]
    n.tree.links.new(both, n.tree.nodes["Material Output"].inputs["Surface"])
