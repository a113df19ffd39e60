"""Makes photographs of a linear picture: JPEGs as a camera would write them, perturbed in known ways.

Run:  /usr/bin/python3 develop.py SCENE.json...
Reads linear/SCENE.exr beside the truth, writes SCENE.VARIANT.jpg, and lists them in the truth under `variants`.
"""

import json
import os
import sys
import zlib

os.environ["OPENCV_IO_ENABLE_OPENEXR"] = "1"
sys.dont_write_bytecode = True
HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(HERE, "..", "..", "..", "sample-images", "render")]

import cv2
import numpy as np
from PIL import Image

from display_p3 import display_p3_profile
from focal_length import focal_length_exif
from tone import TO_DISPLAY_P3, contrast_curve, defocus, sensor_noise, sharpened, shrunk, srgb_encoded
from variants import variants_of


def photograph(linear, settings, rng):
    """The 8-bit picture that a camera makes of linear light under the given settings."""
    light = linear * np.float32(settings.get("exposure", 1))
    if settings.get("blurPx"):
        light = defocus(light, settings["blurPx"])
    if settings.get("scale"):
        light = shrunk(light, settings["scale"])
    if settings.get("noise"):
        light = sensor_noise(light, rng)
    light = np.clip(light, 0, 1) * np.array(settings.get("gains", (1, 1, 1)), np.float32)
    if settings.get("displayP3"):
        light = np.clip(light, 0, 1) @ TO_DISPLAY_P3.T
    encoded = srgb_encoded(light)
    if settings.get("contrast"):
        encoded = contrast_curve(encoded)
    if settings.get("sharpened"):
        encoded = sharpened(encoded)
    return np.round(encoded * 255).astype(np.uint8)


def write_photo(path, picture, settings, focal_px):
    """Saves a JPEG with its focal length, and its color profile where it is not sRGB."""
    height, width = picture.shape[:2]
    scale = settings.get("scale", 1)
    profile = {"icc_profile": display_p3_profile()} if settings.get("displayP3") else {}
    Image.fromarray(picture).save(path, quality=settings.get("quality", 92), subsampling=0, optimize=True,
                                  exif=focal_length_exif(focal_px * scale, width, height), **profile)


def develop(path):
    """Writes every photograph of one scene."""
    with open(path, encoding="utf-8") as file:
        truth = json.load(file)
    folder, scene = os.path.dirname(os.path.abspath(path)), truth["scene"]
    linear = cv2.imread(os.path.join(folder, "linear", scene + ".exr"), cv2.IMREAD_UNCHANGED)[:, :, ::-1].astype(np.float32)
    wanted, added = variants_of(truth)
    truth["variants"] = []
    # The clean photo comes last: where it exists, the scene is done.
    for name, settings in reversed(wanted.items()):
        settings = dict(settings)
        if "pxPerMm" in settings:
            settings["scale"] = round(settings.pop("pxPerMm") * truth["mmPerPx"], 4)
        rng = np.random.default_rng(zlib.crc32(f"{scene}.{name}".encode()))
        photo = f"{scene}.{name}.jpg"
        write_photo(os.path.join(folder, photo), photograph(linear, settings, rng), settings, truth["focalPx"])
        truth["variants"].insert(0, {"variant": name, "photo": photo, **settings, "faults": truth["faults"] + added.get(name, [])})
    with open(path, "w", encoding="utf-8") as file:
        json.dump(truth, file, separators=(",", ":"))
        file.write("\n")


for wanted_path in sys.argv[1:]:
    develop(wanted_path)
