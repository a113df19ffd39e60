"""Colors of the stones: what a mineral looks like inside, as Blender shader nodes."""

import bpy

# name: (pattern, colors, refractive index, feature size in mm). Colors are linear-light RGB.
# Indices are common handbook values, from memory; the truth files carry the value used.
BODIES = {
    "red jasper": ("plain", [(0.30, 0.045, 0.025), (0.20, 0.03, 0.02)], 1.54, 9),
    "yellow jasper": ("plain", [(0.52, 0.30, 0.06), (0.40, 0.20, 0.04)], 1.54, 8),
    "white quartz": ("plain", [(0.80, 0.78, 0.74), (0.66, 0.64, 0.60)], 1.54, 10),
    "obsidian": ("plain", [(0.012, 0.012, 0.013), (0.02, 0.018, 0.017)], 1.50, 12),
    "basalt": ("speckle", [(0.035, 0.036, 0.038), (0.02, 0.02, 0.021), (0.09, 0.09, 0.085)], 1.60, 0.7),
    "green jade": ("plain", [(0.05, 0.17, 0.07), (0.10, 0.26, 0.12)], 1.62, 7),
    "rhodonite": ("breccia", [(0.45, 0.11, 0.16), (0.36, 0.08, 0.12), (0.52, 0.2, 0.22), (0.02, 0.018, 0.018)], 1.70, 7),
    "carnelian agate": ("bands", [(0.42, 0.10, 0.03), (0.55, 0.22, 0.09), (0.30, 0.05, 0.02), (0.66, 0.46, 0.32)], 1.54, 6),
    "gray agate": ("bands", [(0.36, 0.37, 0.40), (0.20, 0.21, 0.24), (0.55, 0.55, 0.56), (0.12, 0.13, 0.16)], 1.54, 5),
    "brown agate": ("bands", [(0.22, 0.11, 0.055), (0.42, 0.27, 0.15), (0.10, 0.05, 0.03), (0.6, 0.5, 0.38)], 1.54, 8),
    "breccia jasper": ("breccia", [(0.33, 0.07, 0.03), (0.46, 0.22, 0.07), (0.22, 0.06, 0.04), (0.5, 0.46, 0.42)], 1.54, 6),
    "orb jasper": ("orbs", [(0.08, 0.16, 0.08), (0.50, 0.40, 0.22), (0.22, 0.10, 0.05), (0.06, 0.11, 0.06)], 1.54, 6),
    "moss agate": ("moss", [(0.50, 0.52, 0.50), (0.40, 0.43, 0.42), (0.04, 0.12, 0.04)], 1.54, 4),
    "speckled granite": ("speckle", [(0.52, 0.44, 0.38), (0.62, 0.58, 0.54), (0.05, 0.05, 0.05)], 1.53, 1.3),
    "leopard rhyolite": ("orbs", [(0.42, 0.28, 0.18), (0.12, 0.09, 0.08), (0.48, 0.33, 0.22), (0.40, 0.25, 0.17)], 1.53, 4),
    "epidote granite": ("speckle", [(0.20, 0.22, 0.10), (0.42, 0.24, 0.17), (0.26, 0.25, 0.22)], 1.58, 1.7),
}


class Nodes:
    """A short way to write shader nodes: `n.add('ShaderNodeMath', operation='ADD', into={0: a, 1: 2.0})`."""

    def __init__(self, tree):
        self.tree = tree

    def add(self, kind, into=None, **settings):
        node = self.tree.nodes.new(kind)
        for name, value in settings.items():
            setattr(node, name, value)
        for key, value in (into or {}).items():
            if isinstance(value, bpy.types.NodeSocket):
                self.tree.links.new(value, node.inputs[key])
            else:
                node.inputs[key].default_value = value
        return node

    def attribute(self, name):
        return self.add("ShaderNodeAttribute", attribute_name=name).outputs["Fac"]

    def ramp(self, factor, stops, interpolation="LINEAR"):
        """Colors along `factor`: stops are (position, (r, g, b))."""
        node = self.add("ShaderNodeValToRGB", {"Fac": factor})
        node.color_ramp.interpolation = interpolation
        elements = node.color_ramp.elements
        while len(elements) < len(stops):
            elements.new(0.5)
        for element, (position, color) in zip(elements, stops):
            element.position, element.color = position, (*color, 1)
        return node.outputs["Color"]

    def mix(self, factor, first, second, blend="MIX"):
        return self.add("ShaderNodeMixRGB", {"Fac": factor, "Color1": first, "Color2": second}, blend_type=blend).outputs["Color"]

    def noise(self, where, scale, detail=4.0, distortion=0.0):
        return self.add("ShaderNodeTexNoise", {"Vector": where, "Scale": scale, "Detail": detail, "Distortion": distortion}).outputs

    def bent(self, where, scale, amount):
        """Coordinates pushed about by noise, `amount` in mm."""
        shift = self.add("ShaderNodeVectorMath", {0: self.noise(where, scale)["Color"], 1: (0.5, 0.5, 0.5)}, operation="SUBTRACT")
        push = self.add("ShaderNodeVectorMath", {0: shift.outputs[0], "Scale": amount * 2}, operation="SCALE")
        return self.add("ShaderNodeVectorMath", {0: where, 1: push.outputs[0]}, operation="ADD").outputs[0]


def plain(n, where, colors, size):
    return n.ramp(n.noise(where, 1 / size, 6, 0.4)["Fac"], [(0.35, colors[0]), (0.65, colors[1])])


def bands(n, where, colors, size):
    bent = n.bent(where, 0.06, size * 0.9)
    wave = n.add("ShaderNodeTexWave", {"Vector": bent, "Scale": 0.31 / size, "Distortion": 1.5, "Detail": 3.0, "Detail Scale": 0.4}, wave_profile="SAW")
    a, b, c, d = colors
    stops = [(0.0, a), (0.16, a), (0.2, b), (0.34, c), (0.38, d), (0.42, c), (0.6, a), (0.66, d), (0.72, b), (0.86, c), (1.0, a)]
    return n.ramp(wave.outputs["Fac"], stops)


def breccia(n, where, colors, size):
    bent = n.bent(where, 0.25, 1.2)
    cells = n.add("ShaderNodeTexVoronoi", {"Vector": bent, "Scale": 1 / size})
    edge = n.add("ShaderNodeTexVoronoi", {"Vector": bent, "Scale": 1 / size}, feature="DISTANCE_TO_EDGE")
    pick = n.add("ShaderNodeSeparateRGB", {0: cells.outputs["Color"]}).outputs[0]
    pieces = n.ramp(pick, [(0.0, colors[0]), (0.33, colors[1]), (0.66, colors[2])], "CONSTANT")
    uneven = n.add("ShaderNodeMath", {0: n.noise(where, 0.5)["Fac"], 1: 0.22}, operation="MULTIPLY").outputs[0]
    width = n.add("ShaderNodeMath", {0: edge.outputs["Distance"], 1: uneven}, operation="SUBTRACT").outputs[0]
    vein = n.ramp(width, [(0.0, (1, 1, 1)), (0.03, (0, 0, 0))])
    return n.mix(vein, pieces, (*colors[3], 1))


def orbs(n, where, colors, size):
    cells = n.add("ShaderNodeTexVoronoi", {"Vector": n.bent(where, 0.3, 0.5), "Scale": 1 / size, "Randomness": 0.85})
    a, b, c, d = colors
    rings = [(0.0, c), (0.1, c), (0.13, b), (0.24, b), (0.27, c), (0.3, b), (0.4, d), (0.5, a)]
    grown = n.ramp(n.noise(where, 0.7 / size, 1)["Fac"], [(0.35, (0.45,) * 3), (0.65, (1.5,) * 3)])
    far = n.add("ShaderNodeMath", {0: cells.outputs["Distance"], 1: grown}, operation="MULTIPLY").outputs[0]
    return n.ramp(far, rings)


def speckle(n, where, colors, size):
    grain = n.add("ShaderNodeTexVoronoi", {"Vector": n.bent(where, 1.2 / size, size * 0.45), "Scale": 1 / size})
    pick = n.add("ShaderNodeSeparateRGB", {0: grain.outputs["Color"]}).outputs[1]
    return n.ramp(pick, [(0.0, colors[0]), (0.45, colors[1]), (0.84, colors[2])], "CONSTANT")


def moss(n, where, colors, size):
    ground = n.ramp(n.noise(where, 0.1)["Fac"], [(0.35, colors[0]), (0.65, colors[1])])
    plume = n.noise(where, 1 / size, 9.0, 1.6)["Fac"]
    patch = n.noise(where, 0.09, 2.0)["Fac"]
    both = n.add("ShaderNodeMath", {0: plume, 1: patch}, operation="ADD").outputs[0]
    half = n.add("ShaderNodeMath", {0: both, 1: 0.5}, operation="MULTIPLY").outputs[0]
    return n.mix(n.ramp(half, [(0.51, (0, 0, 0)), (0.56, (1, 1, 1))]), ground, (*colors[2], 1))


PATTERNS = {"plain": plain, "bands": bands, "breccia": breccia, "orbs": orbs, "speckle": speckle, "moss": moss}


def stone_material(name, body, alpha, floor_alpha, shift, turn, index=None):
    """A Principled material of the body with GGX roughness `alpha`, rougher (`floor_alpha`) where the skin is broken.

    Cycles squares its roughness input to get the GGX alpha; its Specular input is F0 / 0.08.
    shift, turn: offset (mm) and Euler angles (radians) of the pattern, so that no two stones are alike.
    index: refractive index of the skin; the body's own when left out.
    """
    pattern, colors, own_index, size = BODIES[body]
    index = index or own_index
    material = bpy.data.materials.new(name)
    material.use_nodes = True
    n = Nodes(material.node_tree)
    place = n.add("ShaderNodeTexCoord").outputs["Object"]
    where = n.add("ShaderNodeMapping", {"Vector": place, "Location": shift, "Rotation": turn}).outputs[0]
    color = PATTERNS[pattern](n, where, colors, size)
    color = n.mix(0.35, color, n.ramp(n.noise(where, 2.2, 5)["Fac"], [(0.3, (0.6, 0.6, 0.6)), (0.7, (1, 1, 1))]), "MULTIPLY")
    color = n.mix(n.ramp(n.noise(where, 3.1, 2)["Fac"], [(0.45, (0, 0, 0)), (0.75, (alpha * 0.7,) * 3)]), color, (0.55, 0.54, 0.52, 1))
    broken, dark, speck = (n.attribute(k) for k in ("broken", "dark", "speck"))
    speck_color = (0.2, 0.19, 0.17) if max(colors[0]) < 0.1 else (0.05, 0.022, 0.012) if len(name) % 2 else (0.018, 0.014, 0.012)
    paler = n.mix(0.22, color, (0.5, 0.47, 0.44, 1))
    color = n.mix(broken, color, paler)
    color = n.mix(speck, color, (*speck_color, 1))
    color = n.mix(dark, color, (0.012, 0.01, 0.008, 1))
    rough = n.add("ShaderNodeMapRange", {"Value": broken, "To Min": alpha**0.5, "To Max": max(floor_alpha, alpha) ** 0.5})
    shader = n.tree.nodes["Principled BSDF"]
    shader.distribution = "GGX"
    n.tree.links.new(color, shader.inputs["Base Color"])
    n.tree.links.new(rough.outputs[0], shader.inputs["Roughness"])
    shader.inputs["Specular"].default_value = ((index - 1) / (index + 1)) ** 2 / 0.08
    return material, index
