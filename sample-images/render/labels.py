"""A second render in flat label colors, and the outlines in it."""

import os

import bpy
import cv2
import numpy as np
from skimage.measure import find_contours

from bodies import Nodes


def label_picture(scene, path):
    """Renders each object's pass index as a gray level, one unfiltered sample a pixel; returns rows x columns of it."""
    material = bpy.data.materials.new("label")
    material.use_nodes = True
    n = Nodes(material.node_tree)
    index = n.add("ShaderNodeObjectInfo").outputs["Object Index"]
    level = n.add("ShaderNodeMath", {0: index, 1: 255.0}, operation="DIVIDE").outputs[0]
    glow = n.add("ShaderNodeEmission", {"Color": level, "Strength": 1.0})
    n.tree.links.new(glow.outputs[0], n.tree.nodes["Material Output"].inputs["Surface"])
    bpy.context.view_layer.material_override = material
    cycles = scene.cycles
    cycles.samples, cycles.use_adaptive_sampling, cycles.max_bounces = 1, False, 0
    cycles.pixel_filter_type, cycles.filter_width = "BOX", 0.01
    scene.view_settings.view_transform = "Raw"
    scene.render.filepath = path
    bpy.ops.render.render(write_still=True)
    labels = cv2.imread(path, cv2.IMREAD_COLOR)[:, :, 1]
    os.remove(path)
    return labels


def outline(labels, label, points=120):
    """Closed outline [[row, column], ...] around the largest piece of a label, evenly spaced, 0.1 px."""
    longest = max(find_contours((labels == label).astype(float), 0.5), key=len)
    step = np.linalg.norm(np.diff(longest, axis=0), axis=1)
    along = np.concatenate([[0], np.cumsum(step)])
    at = np.linspace(0, along[-1], points, endpoint=False)
    return [[round(float(np.interp(a, along, longest[:, k])), 1) for k in (0, 1)] for a in at]


def extent_px(labels, label):
    """Length and width in pixels of the smallest rectangle around a label."""
    spots = np.argwhere(labels == label)[:, ::-1].astype(np.float32)
    (_, _), size, _ = cv2.minAreaRect(spots)
    return max(size) + 1, min(size) + 1
