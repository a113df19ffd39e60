"""Scenes for the waviness: polished stones with waves about as long as the lamp's image on them, and some without."""

import numpy as np

SCENES, STONES = 6, 5
# Wavelength in mm and root-mean-square slope along one direction: steeper ones break the image into pieces.
WAVELENGTH_MM, SLOPE = (0.5, 2), (0.004, 0.02)


def wave_scenes(rng, part, draw_stones, lamp_of, room, spread):
    """Every scene of the part; two stones in three are wavy."""
    count = SCENES * STONES
    stones = draw_stones(rng, count, alpha=(0.005, 0.03), flaws=False)
    lengths, slopes = np.exp(spread(rng, *np.log(WAVELENGTH_MM), count)), np.exp(spread(rng, *np.log(SLOPE), count))
    for k, stone in enumerate(stones):
        stone["form"] = ["wavy", "wavy", "rounded", "wavy", "wavy", "oval"][k % 6]
        stone.pop("waviness", None)
        if stone["form"] == "wavy":
            stone["waviness"] = (float(lengths[k]), float(slopes[k]))
    sizes, scales, off = spread(rng, 10, 19, SCENES), spread(rng, 18, 28, SCENES), spread(rng, 15, 40, SCENES)
    scenes = []
    for k in range(SCENES):
        own = stones[k * STONES:(k + 1) * STONES]
        for stone in own:
            stone["lengthMm"] = float(np.clip(rng.uniform(0.19, 0.26) * 1400 / scales[k], 11, 20))
        own.sort(key=lambda stone: -stone["lengthMm"])
        lamp = lamp_of(rng, off[k], rng.uniform(0, 360), sizes[k], k % 3 == 2, rng.uniform(450, 850))
        scenes.append({"name": f"{part}-{k + 1:02d}", "kind": "group", "step": "mixed", "stones": own, "lamp": lamp,
                       "pxPerMm": float(scales[k]), "widthPx": 1400, "distanceMm": float(rng.uniform(350, 800)), "samples": 64,
                       "seed": int(rng.integers(1 << 30)), "faults": [], **room(rng)})
    return scenes
