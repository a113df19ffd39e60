"""Scenes for the photo checks: each fault a few times, and as many good ones of the same kind."""

import numpy as np

# How often each fault is drawn. The last are good scenes.
FAULTS = [("second-light", 6), ("wet", 6), ("cut-off", 4), ("lamp-cut", 3), ("ball-shaded", 3), ("lamp-too-large", 4), (None, 15)]
WIDTH_PX = 1000


def spoil(rng, scene, fault, number, lamp_of):
    """Puts a fault into a good scene."""
    lamp, stones = scene["lamp"], scene["stones"]
    x, y, z = lamp["direction"]
    around, off = np.degrees(np.arctan2(y, x)), np.degrees(np.arccos(z))
    if fault == "second-light":
        window = number % 2 == 1
        turn = rng.choice([-1, 1]) * (rng.uniform(50, 110) if window else rng.uniform(45, 180))
        size = rng.uniform(18, 30) if window else rng.uniform(7, 14)
        second = lamp_of(rng, np.clip(off + rng.uniform(-8, 8), 22, 48), around + turn, size, False, rng.uniform(600, 1000))
        second["radiance"] *= rng.uniform(0.12, 0.35) if window else rng.uniform(0.3, 1)
        scene["second"] = {**second, "kind": "window" if window else "lamp"}
    elif fault == "wet":
        for stone in stones:
            stone["alpha"] = float(np.exp(rng.uniform(np.log(0.15), np.log(0.5))))
            stone["wet"] = "beads" if number % 3 == 2 else "film"
        for stone in stones[:rng.integers(0, 2)]:
            del stone["wet"]
        scene["puddles"] = int(rng.integers(3, 9))
    elif fault == "cut-off":
        stones[-1]["cut"] = True
    elif fault in ("lamp-cut", "ball-shaded"):
        scene["card"] = {"share": float(rng.uniform(0.3, 0.65)), "sideDeg": float(rng.uniform(-50, 50))}
    elif fault == "lamp-too-large":
        lamp["angularDiameterDeg"] = round(float(rng.uniform(28, 44)), 2)
        lamp["radiance"] *= 11.5 / 18 * (32 / max(lamp["angularDiameterDeg"], 32)) ** 2
    scene["faults"] = [fault]


def fault_scenes(rng, part, draw_stones, lamp_of, room, spread):
    """Every scene of the part, faults first in turn, good ones between."""
    order = [(fault, k) for fault, count in FAULTS for k in range(count)]
    order = [order[k] for k in rng.permutation(len(order))]
    sizes, scales = spread(rng, 8, 20, len(order)), spread(rng, 8.5, 12, len(order))
    scenes = []
    for number, (fault, k) in enumerate(order, 1):
        stones = draw_stones(rng, int(rng.integers(3, 6)))
        for stone in stones:
            stone["lengthMm"] = float(rng.uniform(14, 23))
            stone["pitsInHighlight"] = 0
        lamp = lamp_of(rng, rng.uniform(20, 46), rng.uniform(0, 360), sizes[number - 1], rng.random() < 0.4, rng.uniform(450, 900))
        scene = {"name": f"{part}-{number:02d}", "kind": "tray", "step": "mixed", "stones": stones, "lamp": lamp,
                 "pxPerMm": float(scales[number - 1]), "widthPx": WIDTH_PX, "distanceMm": float(rng.uniform(350, 850)),
                 "samples": 48, "seed": int(rng.integers(1 << 30)), "faults": [], **room(rng)}
        if fault:
            spoil(rng, scene, fault, k, lamp_of)
        scenes.append(scene)
    return scenes
