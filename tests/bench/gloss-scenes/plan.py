"""What is in every scene of the gloss bench: drawn once for a whole part, so that each part covers its ranges evenly."""

import numpy as np

from bodies import BODIES
from fault_plan import fault_scenes
from setting import BALL_INDEX, fresnel0
from wave_plan import wave_scenes

# Each part draws from its own stream, so that development never sees what the test part holds.
STREAMS = {"development": 7301, "test": 9127, "turned": 4813, "faults": 6607, "waves": 5519}

# kind: (scenes, fewest and most stones, pixels per mm, picture width in px, stone length as a share of the view).
KINDS = {
    "tray": (8, (9, 11), (8, 14), 1240, (0.115, 0.185)),
    "group": (5, (3, 5), (18, 30), 1400, (0.21, 0.3)),
    "close-up": (5, (1, 2), (35, 60), None, None),
}
ORDER = ["tray", "group", "close-up", "tray", "tray", "group", "close-up", "tray", "group", "tray", "close-up", "tray",
         "group", "close-up", "tray", "tray", "group", "close-up"]
SAMPLES = {"tray": 64, "group": 64, "close-up": 64}
FORMS = ["rounded", "wavy", "oval", "facetted", "rounded", "wavy", "oval", "broken", "facetted", "rounded", "wavy"]
ALPHA = (0.005, 0.5)
# Stones with pits inside the highlight: one in this many.
PITTED = 5
SETS, TURNS, SET_STONES = 3, 6, 8


def spread(rng, low, high, count):
    """`count` numbers that fill low to high evenly, shuffled."""
    return rng.permutation(low + (high - low) * (np.arange(count) + rng.random(count)) / count)


def cycled(rng, names, count):
    """`count` names, each about equally often, shuffled within every round."""
    rounds = [rng.permutation(names) for _ in range(-(-count // len(names)))]
    return [str(name) for name in np.concatenate(rounds)[:count]]


def draw_stones(rng, count, alpha=ALPHA, flaws=True):
    """`count` stones that together cover roughness, bodies, shapes and refractive indices."""
    alphas = np.exp(spread(rng, *np.log(alpha), count))
    indices = spread(rng, 1.43, 1.77, count)
    bodies, forms = cycled(rng, list(BODIES), count), cycled(rng, FORMS, count)
    pitted = rng.permutation(np.arange(count) % PITTED == 0)
    stones = []
    for k in range(count):
        stone = {
            "body": bodies[k], "form": forms[k], "alpha": float(alphas[k]), "floor": 0.5,
            "n": round(float(indices[k]), 3) if rng.random() < 0.5 else BODIES[bodies[k]][2],
            "chips": [], "fractures": [], "pits": [], "specks": [], "pitsInHighlight": 0, "seed": int(rng.integers(1 << 30)),
        }
        if stone["form"] == "wavy":
            stone["waviness"] = (float(rng.uniform(1.5, 4)), float(np.exp(rng.uniform(np.log(0.008), np.log(0.035)))))
        if flaws:
            stone["pitsInHighlight"] = int(rng.integers(1, 4)) if pitted[k] else 0
            stone["pits"] = [float(rng.uniform(0.4, 1.6)) for _ in range(rng.integers(0, 3) if rng.random() < 0.25 else 0)]
            stone["specks"] = [float(rng.uniform(0.4, 1.5)) for _ in range(rng.integers(1, 5) if rng.random() < 0.4 else 0)]
        stones.append(stone)
    return stones


def lamp_of(rng, off_deg, around_deg, size_deg, square, distance_mm):
    """A lamp whose mirror image in the ball is just below clipping."""
    off, around = np.radians(off_deg), np.radians(around_deg)
    return {
        "direction": [float(np.sin(off) * np.cos(around)), float(np.sin(off) * np.sin(around)), float(np.cos(off))],
        "angularDiameterDeg": round(float(size_deg), 2), "shape": "square" if square else "round",
        "distanceMm": round(float(distance_mm)), "radiance": float(rng.uniform(0.7, 0.84)) / fresnel0(BALL_INDEX),
    }


def room(rng):
    """The light from all around and the tray's color."""
    return {"fill": float(rng.uniform(0.1, 0.28)), "tray": list(rng.uniform(0.42, 0.74) * rng.uniform(0.93, 1.07, 3))}


def lit_scenes(rng, part):
    """The scenes of the development or test part."""
    count = len(ORDER)
    drawn = {
        "off": spread(rng, 15, 50, count), "around": spread(rng, 0, 360, count), "size": spread(rng, 8, 20, count),
        "square": rng.permutation(np.arange(count) % 5 < 2), "camera": spread(rng, 300, 900, count),
        "lamp": spread(rng, 420, 900, count),
    }
    left = {}
    for kind, (scenes, stones, scale, _, _) in KINDS.items():
        counts = np.round(spread(rng, stones[0] - 0.49, stones[1] + 0.49, scenes)).astype(int)
        left[kind] = {"counts": list(counts), "scales": list(spread(rng, *scale, scenes)), "stones": draw_stones(rng, counts.sum())}
    scenes = []
    for k, kind in enumerate(ORDER):
        share, scale = left[kind], left[kind]["scales"].pop()
        stones = [share["stones"].pop() for _ in range(share["counts"].pop())]
        lamp = lamp_of(rng, drawn["off"][k], drawn["around"][k], drawn["size"][k], drawn["square"][k], drawn["lamp"][k])
        size_stones(rng, kind, stones, scale)
        scenes.append({"name": f"{part}-{k + 1:02d}", "kind": kind, "step": "mixed", "stones": stones, "lamp": lamp,
                       "pxPerMm": float(scale), "widthPx": KINDS[kind][3], "distanceMm": float(drawn["camera"][k]),
                       "samples": SAMPLES[kind], "seed": int(rng.integers(1 << 30)), "faults": [], **room(rng)})
    return scenes


def size_stones(rng, kind, stones, px_per_mm):
    """Gives the stones lengths that fit the view, longest first."""
    _, _, _, width, share = KINDS[kind]
    for stone in stones:
        if share:
            stone["lengthMm"] = float(np.clip(rng.uniform(*share) * width / px_per_mm, 11, 30))
        else:
            stone["lengthMm"] = float(rng.uniform(12, 18))
    stones.sort(key=lambda stone: -stone["lengthMm"])


def turn_by(rng, angle_deg):
    """Rotation matrix by an angle about a random axis (Rodrigues)."""
    x, y, z = (lambda v: v / np.linalg.norm(v))(rng.normal(size=3))
    cross = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]])
    angle = np.radians(angle_deg)
    return np.eye(3) + np.sin(angle) * cross + (1 - np.cos(angle)) * cross @ cross


def turned_scenes(rng, part):
    """Sets of the same stones, turned by 5 to 20 degrees each time, the lamp on another side."""
    scenes = []
    for number in range(1, SETS + 1):
        stones = draw_stones(rng, SET_STONES, alpha=(0.01, 0.3), flaws=False)
        scale, size, distance = rng.uniform(9, 13), rng.uniform(9, 16), rng.uniform(450, 850)
        size_stones(rng, "tray", stones, scale)
        first, square, setting = rng.uniform(0, 360), bool(number == 2), room(rng)
        for k in range(TURNS):
            turned = [{**s, "stone": f"set-{number}-stone-{i + 1}", "turn": turn_by(rng, rng.uniform(5, 20))} for i, s in enumerate(stones)]
            lamp = lamp_of(rng, rng.uniform(18, 45), first + 60 * k + rng.uniform(-15, 15), size, square, rng.uniform(500, 850))
            scenes.append({"name": f"{part}-{number}-{k + 1}", "kind": "tray", "step": "mixed", "stones": turned, "lamp": lamp,
                           "pxPerMm": float(scale), "widthPx": 1140, "distanceMm": float(distance), "samples": 64,
                           "seed": int(rng.integers(1 << 30)), "faults": [], **setting})
    return scenes


def part_scenes(part):
    """Every scene of a part, the same each time."""
    rng = np.random.default_rng(STREAMS[part])
    if part == "turned":
        return turned_scenes(rng, part)
    if part == "faults":
        return fault_scenes(rng, part, draw_stones, lamp_of, room, spread)
    if part == "waves":
        return wave_scenes(rng, part, draw_stones, lamp_of, room, spread)
    return lit_scenes(rng, part)
