"""Fractures, scratches, and dark or light lines that are only color."""

import torch

from fields import PX_PER_MM, noise, per_tile, smooth_step
from spots import places, taken_at

POINTS = 18


def walks(chance, start, length_mm, winding):
    """Paths: B x POINTS points (x, y in mm) from B start points (B x 2); winding: 0 for a straight one, 1 for a crooked one."""
    batch = start.shape[0]
    heading = chance.between(0, 6.2832, batch, 1)
    step = length_mm[:, None] / (POINTS - 1)
    gentle = chance.normal(batch, POINTS - 1) * 0.22
    kinks = chance.normal(batch, POINTS - 1) * 0.95 * chance.coin(0.2, batch, POINTS - 1)
    angle = heading + ((gentle + kinks + chance.normal(batch, 1) * 0.04) * winding[:, None]).cumsum(1)
    moves = torch.stack([angle.cos(), angle.sin()], -1) * step[..., None]
    return torch.cat([start[:, None], start[:, None] + moves.cumsum(1)], 1)


def path_distance(points, x, y):
    """Distance in mm of every pixel from a path, and how far along it the nearest point lies, 0 to 1."""
    near = torch.full(x.shape if x.shape[0] > 1 else (points.shape[0], *x.shape[1:]), 1e6, device=x.device)
    along = torch.zeros_like(near)
    count = points.shape[1] - 1
    for k in range(count):
        px, py = (per_tile(points[:, k, axis]) for axis in (0, 1))
        vx, vy = (per_tile(points[:, k + 1, axis] - points[:, k, axis]) for axis in (0, 1))
        dx, dy = x - px, y - py
        t = ((dx * vx + dy * vy) / (vx**2 + vy**2 + 1e-9)).clamp(0, 1)
        far = (dx - t * vx) ** 2 + (dy - t * vy) ** 2
        along = torch.where(far < near, (k + t) / count, along)
        near = torch.minimum(near, far)
    return near.sqrt(), along


def groove(chance, distance, along, width):
    """Distance from the middle in half widths; both ends taper and the width swells and shrinks."""
    taper = (4 * torch.minimum(along, 1 - along) + 0.25).clamp(max=1)
    phase = per_tile(chance.between(0, 6.2832, width.shape[0]))
    swell = 1 + 0.3 * (phase + along * per_tile(chance.between(5, 25, width.shape[0]))).sin()
    return distance / (per_tile(width) / 2 * taper * swell), taper


def press_fractures(chance, mask, surface, warped, shares):
    """Fractures and lines of mere color.

    shares: how often a slot is a fracture or a color line. Returns depth (mm), floor and dirt (0 to 1) and label of
    fractures, what the loss leaves out, and the color lines (0 to 1).
    """
    x, y = warped
    batch = mask.shape[0]
    facing = surface[2]
    zeros = torch.zeros(mask.shape, device=mask.device)
    out = {"depth": zeros, "floor": zeros, "dirt": zeros, "label": mask & False, "leftOut": mask & False, "line": zeros}
    start_weight = (mask & (facing > 0.5)).float()
    branch = None
    for slot in range(3):
        kind = chance.pick([1 - sum(shares), *shares], batch)
        index = places(chance, start_weight, 1)
        start = torch.cat([taken_at(x, index)[:, 0, 0], taken_at(y, index)[:, 0, 0]], 1)
        if branch is not None:
            forks = chance.coin(0.35, batch)
            start = torch.where(forks[:, None] > 0, branch, start)
            kind = torch.where(forks > 0, torch.minimum(kind_before, torch.ones_like(kind)), kind)
        length = chance.log_between(2, 22, batch)
        # Veins run straight now and then, as scratches do.
        path = walks(chance, start, length, 1 - 0.92 * (kind == 2) * chance.coin(0.4, batch))
        branch, kind_before = path[:, POINTS // 2], kind
        width = chance.log_between(0.08, 0.55, batch)
        distance, along = path_distance(path, x, y)
        u, taper = groove(chance, distance, along, width)
        depth = per_tile(width * chance.between(0.6, 1.7, batch)) * taper * (1 - smooth_step(0.05, 1.1, u))
        inside = 1 - smooth_step(0.5, 1.0, u)
        open_, mere = per_tile(kind == 1), per_tile(kind == 2)
        out["depth"] = torch.maximum(out["depth"], open_ * depth)
        out["floor"] = torch.maximum(out["floor"], open_ * inside)
        out["dirt"] = torch.maximum(out["dirt"], open_ * inside * per_tile(chance.between(0.0, 0.8, batch)))
        out["line"] = torch.maximum(out["line"], mere * inside)
        body = distance < (per_tile(width) / 2 * taper + 0.03).clamp(min=0.14)
        out["label"] = out["label"] | (open_ & body & (facing > 0.3))
        out["leftOut"] = out["leftOut"] | (open_ & (distance < per_tile(width) / 2 + 0.12) & ~body) | (open_ & body & (facing <= 0.3))
    out["label"], out["leftOut"] = out["label"] & mask, out["leftOut"] & mask
    return out


def press_scratches(chance, mask, x, y, on):
    """Fresh scratches, thinner than a pixel: straight, side by side or crossing.

    on: 1 where a tile may have some, B. Returns the share of each pixel that is groove (0 to 1), the slopes of its walls
    across it (x and y), and where the grooves are.
    """
    batch = mask.shape[0]
    parallel = chance.coin(0.4, batch)
    common = chance.between(0, 3.1416, batch)
    width = per_tile(chance.log_between(0.012, 0.13, batch))
    half, pixel = float(x.max()), 1 / PX_PER_MM
    cover, place = torch.zeros(mask.shape, device=mask.device), mask & False
    lean = [torch.zeros_like(cover), torch.zeros_like(cover)]
    wall = per_tile(torch.deg2rad(chance.between(10, 35, batch)).tan())
    for _ in range(7):
        angle = torch.where(parallel > 0, common + chance.normal(batch) * 0.1, chance.between(0, 3.1416, batch))
        c, s = per_tile(angle.cos()), per_tile(angle.sin())
        px, py = per_tile(chance.between(-half, half, batch)), per_tile(chance.between(-half, half, batch))
        reach = per_tile(chance.log_between(1, 8, batch) * on * chance.coin(0.6, batch))
        along, across = c * (x - px) + s * (y - py), -s * (x - px) + c * (y - py)
        across = across + per_tile(chance.normal(batch) * 0.005) * along**2
        end = (1 - (along / reach.clamp(min=1e-3)).abs()).clamp(0, 1)
        wide = width * (end * 5).clamp(max=1) * (1 + 0.3 * (along * 9 + px).sin())
        share = ((wide / 2 + pixel / 2 - across.abs()) / pixel).clamp(min=0)
        share = torch.minimum(share, (wide / pixel).clamp(max=1)) * (reach > 0)
        deeper = share > cover
        cover = torch.where(deeper, share, cover)
        lean = [torch.where(deeper, wall * part, old) for part, old in zip((-s, c), lean)]
        place = place | (across.abs() < (wide / 2).clamp(min=0.1)) & (end > 0.02) & (reach > 0)
    return torch.where(mask, cover, 0), lean, place & mask


def grinding_marks(chance, batch, x, y, share):
    """Side by side in one direction, as a wheel leaves them: height (mm) and logarithm of brightness, both about 0."""
    turn = chance.between(0, 6.2832, batch)
    c, s = per_tile(turn.cos()), per_tile(turn.sin())
    along, across = c * x + s * y, c * y - s * x
    along = along / per_tile(chance.log_between(8, 60, batch))
    fine = noise(chance, along, across, chance.log_between(0.2, 1.2, batch), 2)
    broad = noise(chance, along, across, chance.log_between(1.5, 6, batch), 2)
    on = per_tile(chance.coin(share, batch))
    marks = on * (0.7 * fine + 0.5 * broad)
    return marks * per_tile(chance.log_between(0.0005, 0.008, batch)), marks * per_tile(chance.log_between(0.02, 0.25, batch))


def bite_chips(chance, height, mask, surface, x, y, share):
    """Bites pieces out of the shoulder with spheres; returns the new heights, the bitten area, and what is left out."""
    batch = height.shape[0]
    zx, zy, cosine = surface
    bitten, faint = mask & False, mask & False
    shoulder = (mask & (cosine > 0.24) & (cosine < 0.66)).float() + 0.003 * (mask & (cosine > 0.68)).float()
    for _ in range(2):
        index = places(chance, shoulder, 1)
        px, py, pz, gx, gy, nz = (taken_at(f, index)[:, 0] for f in (x, y, height, zx, zy, cosine))
        size = per_tile(chance.log_between(2.4, 8.5, batch))
        deep = size * per_tile(chance.between(0.1, 0.4, batch))
        radius = (size**2 / 4 + deep**2) / (2 * deep)
        lift = radius - deep
        cx, cy, cz = px - gx * nz * lift, py - gy * nz * lift, pz + nz * lift
        far2 = (x - cx) ** 2 + (y - cy) ** 2
        reach = (radius**2 - far2).clamp(min=0).sqrt()
        rough = size * 0.02 * noise(chance, x, y, chance.between(1, 4, batch), 4)
        ripple = 0.02 * per_tile(chance.coin(0.7, batch)) * (torch.hypot(x - px, y - py) * per_tile(chance.between(3, 8, batch))).sin()
        floor = cz - reach + rough + ripple
        on = per_tile(chance.coin(share, batch)) > 0
        cut = on & mask & (far2 < radius**2) & (floor < height) & (height < cz + reach)
        faint = faint | (cut & (height - floor < 0.04))
        bitten = bitten | (cut & (height - floor >= 0.04))
        height = torch.where(cut, floor, height)
    return height, bitten, faint
