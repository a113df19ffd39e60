"""What lies in each tray: recipes, and the draw of one scene from a recipe and a seed."""

import numpy as np

from bodies import BODIES
from scratches import draw_scratches
from setting import BALL_INDEX, fresnel0

ALL = list(BODIES)

# flaws: (fewest, most) of each kind on one stone. alpha: GGX roughness range, drawn evenly in its logarithm.
RECIPES = {
    "coarse": dict(step="coarse", stones=(9, 11), length=(19, 36), alpha=(0.25, 0.5), floor=0.5, laggards=0,
                   pits=(2, 7), fractures=(0, 2), chips=(0, 2), specks=(0, 5), clean=0.1, view=205, touching=0),
    "pitted": dict(step="coarse", stones=(9, 11), length=(19, 36), alpha=(0.25, 0.5), floor=0.5, laggards=0,
                   pits=(6, 12), fractures=(0, 1), chips=(0, 2), specks=(2, 9), clean=0.12, view=205, touching=0),
    "mid": dict(step="medium", stones=(9, 11), length=(18, 34), alpha=(0.05, 0.25), floor=0.45, laggards=0,
                pits=(0, 3), fractures=(0, 1), chips=(0, 1), specks=(0, 5), clean=0.35, view=200, touching=1),
    "polished": dict(step="polish", stones=(10, 12), length=(16, 32), alpha=(0.006, 0.06), floor=0.45, laggards=2,
                     pits=(0, 1), fractures=(0, 1), chips=(0, 0), specks=(0, 5), clean=0.6, view=195, touching=0),
    "scratched": dict(step="polish", stones=(10, 12), length=(16, 32), alpha=(0.006, 0.06), floor=0.45, laggards=0,
                      pits=(0, 1), fractures=(0, 1), chips=(0, 0), specks=(0, 5), clean=0.6, view=195, touching=0,
                      scratches=7, unscratched=0.5),
    "close-up": dict(step="prepolish", stones=(2, 2), length=(26, 34), alpha=(0.02, 0.09), floor=0.45, laggards=0,
                     pits=(2, 5), fractures=(1, 1), chips=(0, 1), specks=(2, 5), clean=0, view=88, touching=0),
}

FORMS = ["rounded", "oval", "facetted", "broken"]


def draw_stone(rng, recipe, body, alpha, form):
    """One stone's numbers: body, form, length, roughness, and the sizes of its flaws in mm."""
    clean = rng.random() < recipe["clean"]

    def count(kind):
        low, high = recipe[kind]
        return 0 if clean and kind != "specks" else int(rng.integers(low, high + 1))

    length = rng.uniform(*recipe["length"])
    return {
        "body": body, "form": form, "alpha": alpha, "floor": recipe["floor"], "lengthMm": length,
        "chips": [rng.uniform(0.14, 0.24) * length for _ in range(count("chips"))],
        "fractures": [(rng.uniform(0.18, 0.75) * min(length, 27), rng.uniform(0.28, 0.5)) for _ in range(count("fractures"))],
        "pits": [float(np.exp(rng.uniform(np.log(0.45), np.log(2.4)))) for _ in range(count("pits"))],
        "specks": [float(np.exp(rng.uniform(np.log(0.4), np.log(1.9)))) for _ in range(count("specks"))],
        "seed": int(rng.integers(1 << 30)),
        **({"scratches": draw_scratches(rng, recipe, length)} if "scratches" in recipe else {}),
    }


def draw_lamp(rng):
    """A lamp 25 to 45 degrees off the camera's axis whose mirror image in the ball is just below clipping."""
    off, around = np.radians(rng.uniform(26, 43)), rng.uniform(0, 2 * np.pi)
    return {
        "direction": [np.sin(off) * np.cos(around), np.sin(off) * np.sin(around), np.cos(off)],
        "angularDiameterDeg": round(float(rng.uniform(10.5, 13.8)), 2),
        "shape": "square" if rng.random() < 0.35 else "round",
        "distanceMm": round(float(rng.uniform(650, 900))),
        "radiance": float(rng.uniform(0.75, 0.86)) / fresnel0(BALL_INDEX),
    }


def turned(lamp, turn_deg):
    """The lamp carried around the camera's axis, seen counterclockwise."""
    x, y, z = lamp["direction"]
    c, s = np.cos(np.radians(turn_deg)), np.sin(np.radians(turn_deg))
    return lamp | {"direction": [c * x - s * y, s * x + c * y, z]}


def draw_scene(kind, seed):
    """Every number of one scene; the same kind and seed give the same scene."""
    recipe, rng = RECIPES[kind], np.random.default_rng([seed, *kind.encode()])
    number = int(rng.integers(recipe["stones"][0], recipe["stones"][1] + 1))
    bodies = list(rng.permutation(ALL)[:number])
    low, high = np.log(recipe["alpha"])
    # Evenly spread and shuffled, so that every tray covers its whole range.
    alphas = np.exp(low + (high - low) * (np.arange(number) + rng.uniform(0.1, 0.9, number)) / number)
    alphas = rng.permutation(alphas)
    for slow in range(recipe["laggards"]):
        alphas[slow] = rng.uniform(0.09, 0.22)
    forms = rng.permutation([FORMS[k % 4] for k in range(number)])
    stones = [draw_stone(rng, recipe, str(b), float(a), str(f)) for b, a, f in zip(bodies, alphas, forms)]
    stones.sort(key=lambda s: -s["lengthMm"])
    gray = rng.uniform(0.52, 0.74)
    return {
        "kind": kind, "seed": seed, "step": recipe["step"], "stones": stones, "lamp": draw_lamp(rng),
        "fill": float(rng.uniform(0.2, 0.27)), "tray": list(gray * rng.uniform(0.94, 1.06, 3)),
        "viewMm": recipe["view"] * float(rng.uniform(0.96, 1.06)), "distanceMm": float(rng.uniform(650, 880)),
        "touching": {1: 0} if recipe["touching"] else {}, "rng": rng,
    }
