"""The workbench: tray, reference ball, lamp, camera and render settings. One Blender unit is one millimeter."""

import math

import bpy

from bodies import Nodes

BALL_MM, BALL_INDEX = 16.0, 1.52


def fresnel0(index):
    """Reflectance at normal incidence of a dielectric in air."""
    return ((index - 1) / (index + 1)) ** 2


def empty_scene(width_px, height_px, samples, seed):
    """A fresh scene with Cycles on the processor, no denoiser, and direct light never clamped."""
    bpy.ops.wm.read_factory_settings(use_empty=True)
    scene = bpy.context.scene
    scene.render.engine = "CYCLES"
    scene.render.resolution_x, scene.render.resolution_y = width_px, height_px
    scene.render.resolution_percentage = 100
    scene.render.image_settings.file_format = "PNG"
    scene.render.image_settings.color_mode = "RGB"
    scene.render.use_persistent_data = True
    scene.view_settings.view_transform = "Standard"
    scene.render.dither_intensity = 0
    cycles = scene.cycles
    cycles.device, cycles.samples, cycles.seed = "CPU", samples, seed
    cycles.use_adaptive_sampling = True
    cycles.adaptive_threshold, cycles.adaptive_min_samples = 0.02, max(samples // 3, 8)
    cycles.use_denoising = False
    cycles.max_bounces, cycles.diffuse_bounces, cycles.glossy_bounces = 2, 1, 2
    cycles.sample_clamp_direct, cycles.sample_clamp_indirect = 0, 2
    cycles.caustics_reflective = cycles.caustics_refractive = False
    return scene


def add_camera(scene, distance_mm, view_mm):
    """Looks straight down on the middle of the tray; `view_mm` is the picture's width in the ball's center plane."""
    data = bpy.data.cameras.new("camera")
    data.sensor_fit, data.sensor_width = "HORIZONTAL", 36
    data.lens = 36 * (distance_mm - BALL_MM / 2) / view_mm
    data.clip_start, data.clip_end = 10, 5000
    camera = bpy.data.objects.new("camera", data)
    camera.location = (0, 0, distance_mm)
    scene.collection.objects.link(camera)
    scene.camera = camera


def add_fill(scene, radiance):
    """Weak light from all around: bright enough that shadows are not black, a little uneven like a room."""
    world = bpy.data.worlds.new("room")
    scene.world = world
    world.use_nodes = True
    n = Nodes(world.node_tree)
    where = n.add("ShaderNodeTexCoord").outputs["Generated"]
    soft = n.noise(where, 0.9, 1.0)["Fac"]
    color = n.ramp(soft, [(0.3, (0.75, 0.78, 0.85)), (0.7, (1.2, 1.18, 1.1))])
    back = n.tree.nodes["Background"]
    n.tree.links.new(color, back.inputs["Color"])
    back.inputs["Strength"].default_value = radiance
    world.cycles.sampling_method = "NONE"


def add_lamp(scene, lamp, ball_at):
    """An emitting disc or square that faces the ball. lamp: direction, distanceMm, angularDiameterDeg, shape, radiance."""
    half = lamp["distanceMm"] * math.tan(math.radians(lamp["angularDiameterDeg"]) / 2)
    if lamp["shape"] == "square":
        half *= math.pi**0.5 / 2
        corners = [(-half, -half, 0), (half, -half, 0), (half, half, 0), (-half, half, 0)]
    else:
        corners = [(half * math.cos(k * math.pi / 48), half * math.sin(k * math.pi / 48), 0) for k in range(96)]
    mesh = bpy.data.meshes.new("lamp")
    mesh.from_pydata(corners, [], [tuple(range(len(corners)))])
    material = bpy.data.materials.new("lamp")
    material.use_nodes = True
    n = Nodes(material.node_tree)
    glow = n.add("ShaderNodeEmission", {"Color": (1, 1, 1, 1), "Strength": lamp["radiance"]})
    n.tree.links.new(glow.outputs[0], n.tree.nodes["Material Output"].inputs["Surface"])
    mesh.materials.append(material)
    thing = bpy.data.objects.new("lamp", mesh)
    x, y, z = lamp["direction"]
    thing.location = [b + lamp["distanceMm"] * d for b, d in zip(ball_at, (x, y, z))]
    thing.rotation_euler = (math.acos(z), 0, math.atan2(y, x) + math.pi / 2)
    scene.collection.objects.link(thing)


def add_ball(scene, x, y):
    """The dark polished glass ball, resting on the tray; returns its center."""
    bpy.ops.mesh.primitive_uv_sphere_add(segments=512, ring_count=256, radius=BALL_MM / 2, location=(x, y, BALL_MM / 2))
    ball = bpy.context.object
    bpy.ops.object.shade_smooth()
    material = bpy.data.materials.new("ball")
    material.use_nodes = True
    shader = material.node_tree.nodes["Principled BSDF"]
    shader.distribution = "GGX"
    shader.inputs["Base Color"].default_value = (0.004, 0.004, 0.005, 1)
    shader.inputs["Roughness"].default_value = 0
    shader.inputs["Specular"].default_value = fresnel0(BALL_INDEX) / 0.08
    ball.data.materials.append(material)
    ball.pass_index = 250
    return (x, y, BALL_MM / 2)


def add_tray(scene, color):
    """A matte, faintly pebbled tray floor at z = 0, larger than the picture."""
    bpy.ops.mesh.primitive_plane_add(size=1200)
    tray = bpy.context.object
    material = bpy.data.materials.new("tray")
    material.use_nodes = True
    n = Nodes(material.node_tree)
    where = n.add("ShaderNodeTexCoord").outputs["Object"]
    grain = n.noise(where, 1.6, 3)["Fac"]
    broad = n.noise(where, 0.02, 2)["Fac"]
    tone = n.mix(0.5, n.ramp(grain, [(0.3, (0.88, 0.88, 0.88)), (0.7, (1, 1, 1))]), n.ramp(broad, [(0.3, (0.9, 0.9, 0.9)), (0.7, (1, 1, 1))]), "MULTIPLY")
    full = n.mix(1.0, tone, (*color, 1), "MULTIPLY")
    bump = n.add("ShaderNodeBump", {"Strength": 0.25, "Distance": 0.15, "Height": grain})
    shader = n.tree.nodes["Principled BSDF"]
    n.tree.links.new(full, shader.inputs["Base Color"])
    n.tree.links.new(bump.outputs[0], shader.inputs["Normal"])
    shader.inputs["Roughness"].default_value = 0.95
    shader.inputs["Specular"].default_value = 0.15
    tray.data.materials.append(material)
