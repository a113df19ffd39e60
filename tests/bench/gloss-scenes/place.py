"""Puts sound stones and ball into the tray so that every highlight is seen."""

import math

import numpy as np

from highlight import is_blocked, mirror_highlight
from layout import ball_cloud, fits, layout, outline_of, place_of
from setting import BALL_MM
from stones import flawed_skin
from view import View


def sound_stone(stone, mm_per_px):
    """A drawn stone as a skin, turned as the plan says and resting on the tray; keeps the unturned points for the mesh."""
    skin, triangles, flaws, decoys = flawed_skin(stone, edge_mm=max(1.6 * mm_per_px, 0.03))
    turn = np.asarray(stone.get("turn", np.eye(3)))
    upright = skin.points, skin.normals
    skin.points, skin.normals = skin.points @ turn.T, skin.normals @ turn.T
    low, high = skin.points.min(0), skin.points.max(0)
    rest = np.array([*(-(low + high) / 2)[:2], -low[2]])
    skin.points = skin.points + rest
    return {"stone": stone, "skin": skin, "triangles": triangles, "flaws": flaws, "decoys": decoys,
            "turn": turn, "rest": rest, "upright": upright}


def lamp_place(lamp, ball_at):
    """The lamp's center (mm) and the radius of the disc of equal area."""
    at = np.array(ball_at) + lamp["distanceMm"] * np.array(lamp["direction"])
    return at, lamp["distanceMm"] * math.tan(math.radians(lamp["angularDiameterDeg"]) / 2)


def hangs_in_view(view, at, half_mm):
    """Whether something of that half-width at that place would hide part of the tray."""
    wide = math.hypot(view.width_px, view.height_px) / 2 * view.mm_per_px
    clear = wide * max(0.0, 1 - (at[2] - 2 * half_mm) / view.distance_mm)
    return at[2] - half_mm < view.distance_mm and math.hypot(at[0], at[1]) - 1.4 * half_mm < clear


def clear_lamp(view, lamp, ball_at):
    """Moves the lamp away, its angle kept, until it hides nothing; returns its center and radius."""
    at, half = lamp_place(lamp, ball_at)
    while hangs_in_view(view, at, half):
        lamp["distanceMm"] = round(lamp["distanceMm"] * 1.06)
        at, half = lamp_place(lamp, ball_at)
    return at, half


def cut_places(clouds, cut, view, rng, outlines):
    """Places for stones that the picture's edge cuts through."""
    places = []
    for cloud in [clouds[k] for k in cut]:
        for _ in range(4000):
            spot = rng.uniform((0, 0), (view.width_px, view.height_px))
            side = rng.integers(4)
            spot[side % 2] = 0 if side < 2 else (view.width_px, view.height_px)[side % 2]
            x, y = place_of(spot + rng.uniform(-40, 40, 2), view)
            outline = outline_of(cloud, view, x, y)
            if fits(outline, outlines, view, 30, -1e4):
                break
        else:
            raise RuntimeError("no room at the edge for a stone that is cut off")
        places.append((x, y))
        outlines.append(outline)
    return places


def tray_places(scene, clouds, view, rng):
    """Positions of every stone and, last, of the ball."""
    cut = [k for k, stone in enumerate(scene["stones"]) if stone.get("cut")]
    whole = [k for k in range(len(clouds)) if k not in cut]
    inside = layout([clouds[k] for k in whole], view, rng, {}, gap=24, margin=20)
    places = dict(zip(whole, inside))
    outlines = [outline_of(clouds[k], view, *places[k]) for k in whole]
    places |= dict(zip(cut, cut_places(clouds, cut, view, rng, outlines)))
    return [places[k] for k in range(len(clouds))]


def row_view(scene, clouds, rng):
    """A view just large enough for stones and ball side by side, and their places."""
    scale = scene["pxPerMm"]
    order = list(rng.permutation(len(clouds)))
    # Tops are nearer to the camera than the ball's center, so they look a little larger.
    swell = 1 + np.array([c[:, 2].max() for c in clouds]) / scene["distanceMm"]
    wide = np.array([np.ptp(c[:, 0]) for c in clouds]) * swell
    tall = max(np.ptp(c[:, 1]) * s for c, s in zip(clouds, swell))
    gap = 1.6
    view_mm, high_mm = wide.sum() + gap * (len(clouds) + 1), tall + 2 * gap
    places, left = {}, -view_mm / 2
    for k in order:
        slack = (tall - np.ptp(clouds[k][:, 1]) * swell[k]) / 2
        places[k] = (left + gap + wide[k] / 2, float(rng.uniform(-slack, slack)))
        left += gap + wide[k]
    width, height = round(view_mm * scale), round(high_mm * scale)
    return View(width, height, scene["distanceMm"], width / scale), [places[k] for k in range(len(clouds))]


def move_to(built, x, y):
    """Sets a stone's place in the tray."""
    built["shift"] = np.array([x, y, 0.0])


def place_stones(scene, tries=25):
    """Builds and lays out the stones; returns view, built stones, the ball's center, lamp center and radius.

    A layout in which a neighbor hides a highlight from lamp or camera is thrown away, up to `tries` times.
    """
    rng = np.random.default_rng(scene["seed"])
    built = [sound_stone(stone, 1 / scene["pxPerMm"]) for stone in scene["stones"]]
    clouds = [b["skin"].points[::97] for b in built] + [ball_cloud()]
    for _ in range(tries):
        if scene["widthPx"]:
            width = scene["widthPx"]
            view = View(width, width * 2 // 3, scene["distanceMm"], width / scene["pxPerMm"])
            places = tray_places(scene, clouds, view, rng)
        else:
            view, places = row_view(scene, clouds, rng)
        ball_at = (*places[-1], BALL_MM / 2)
        lamp_at, half = clear_lamp(view, scene["lamp"], ball_at)
        for b, (x, y) in zip(built, places):
            move_to(b, x, y)
        hidden = find_highlights(built, ball_at, lamp_at, half, view)
        if hidden == 0:
            break
    return view, built, ball_at, lamp_at, half


def find_highlights(built, ball_at, lamp_at, half_mm, view):
    """Finds each stone's highlight; returns how many of them a neighbor hides."""
    camera = np.array([0, 0, view.distance_mm])
    ball = ball_cloud() + np.array([ball_at[0], ball_at[1], 0.0])
    hidden = 0
    for b in built:
        shift = b["shift"]
        found = mirror_highlight(b["skin"], b["triangles"], lamp_at - shift, half_mm, camera - shift)
        start = b["skin"].points[found["at"]] + shift
        others = [o["skin"].points[::13] + o["shift"] for o in built if o is not b] + [ball]
        found["lit"] = not is_blocked(start, lamp_at, others)
        found["seen"] = not is_blocked(start, camera, others)
        hidden += not (found["lit"] and found["seen"])
        b["highlight"] = found
    return hidden
