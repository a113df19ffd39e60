"""Mineral color without relief: grounds, bands, breccia, orbs, grains, moss, veins. Linear-light albedo."""

import torch

from fields import cells, noise, per_tile, smooth_step

PATTERNS = {"plain": 4.5, "bands": 2.2, "breccia": 1.8, "orbs": 2.2, "grains": 2.2, "moss": 1.4, "veins": 1.0, "patches": 0.9}


def palette(chance, batch, count=4):
    """B x count x 3 albedos, 0.01 to 0.85: near each other on some stones, far apart on others; a fifth of the stones black."""
    black = chance.coin(0.2, batch, 1, 1)
    level = torch.where(black > 0, chance.log_between(0.01, 0.04, batch, 1, 1), chance.log_between(0.04, 0.8, batch, 1, 1))
    level = level * chance.log_between(0.25, 4, batch, count, 1) ** chance.between(0.05, 1.0, batch, 1, 1)
    tint = chance.normal(batch, 1, 3) * chance.between(0, 0.6, batch, 1, 1) + chance.normal(batch, count, 3) * chance.between(0, 0.3, batch, 1, 1)
    tint = tint - tint.mean(-1, keepdim=True)
    return (level * tint.exp()).clamp(0.008, 0.85)


def with_dark_minerals(chance, colors):
    """Makes one of the last two colors of some stones nearly black, like mica, hornblende or manganese seams."""
    batch, count, _ = colors.shape
    slot = count - 1 - chance.pick([1, 1], batch)
    on = chance.coin(0.35, batch)[:, None] * (torch.arange(count, device=colors.device)[None] == slot[:, None])
    dark = chance.log_between(0.01, 0.07, batch, 1, 1).expand_as(colors)
    return torch.where(on[..., None] > 0, torch.minimum(colors, dark), colors)


def sliced(chance, x, y, height):
    """Two coordinates of the body turned at random in space, so that flat bands are cut as the surface cuts them."""
    batch = height.shape[0]
    first, second = chance.normal(batch, 3), chance.normal(batch, 3)
    first = first / first.norm(dim=1, keepdim=True)
    second = second - (second * first).sum(1, keepdim=True) * first
    second = second / second.norm(dim=1, keepdim=True).clamp(min=1e-3)
    return tuple(per_tile(axis[:, 0]) * x + per_tile(axis[:, 1]) * y + per_tile(axis[:, 2]) * height for axis in (first, second))


def unrolled(chance, x, y, height):
    """Coordinates pushed outward from the stone's top by how far the surface fell: grains draw together at the outline."""
    top = height.flatten(1).max(1)
    px, py = (v.expand_as(height).flatten(1).gather(1, top.indices[:, None])[:, :, None] for v in (x, y))
    fall = (per_tile(top.values) - height).clamp(0, 20)
    push = per_tile(chance.between(0, 1, height.shape[0])) * fall / (torch.hypot(x - px, y - py) + 0.5)
    return x + push * (x - px), y + push * (y - py)


def along_palette(colors, position):
    """Looks up positions 0 to count - 1 (B x S x S) in the palette, blending neighbors; returns B x 3 x S x S."""
    count = colors.shape[1]
    position = position.clamp(0, count - 1)
    total = 0
    for k in range(count):
        weight = (1 - (position - k).abs()).clamp(min=0)
        total = total + weight[:, None] * colors[:, k, :, None, None]
    return total


def steps(position, sharpness):
    """Pulls positions toward whole numbers, so that colors meet in edges."""
    base = position.floor()
    half = 0.5 / sharpness
    return base + smooth_step(0.5 - half, 0.5 + half, position - base)


def banded(chance, x, y, size):
    """Bands: saw-like runs through uneven stops."""
    batch = size.shape[0]
    turn = chance.between(0, 6.2832, batch)
    bent = noise(chance, x, y, size * chance.between(2, 6, batch), 3) * per_tile(size * chance.between(0.2, 1.2, batch))
    ring = per_tile(chance.coin(0.35, batch))
    px, py = (per_tile(chance.between(-9, 9, batch)) for _ in range(2))
    straight = per_tile(turn.cos()) * x + per_tile(turn.sin()) * y
    phase = (ring * torch.hypot(x - px, y - py) + (1 - ring) * straight + bent) / per_tile(size)
    wave = phase - phase.floor()
    k = per_tile(chance.between(1, 3, batch))
    return steps(1.5 + 1.5 * (wave * 6.2832 * k).sin() * (wave * 3.1416).cos(), per_tile(chance.between(1.2, 8, batch)))


def positions(chance, x, y, kind):
    """Where on its palette each pixel lies, for the drawn kind of pattern."""
    batch = kind.shape[0]
    size = chance.log_between(0.9, 9, batch)
    grain = torch.where(kind == 4, chance.log_between(0.45, 2.4, batch), size)
    warp = per_tile(grain * chance.between(0.05, 0.5, batch))
    bent_x, bent_y = (v + warp * noise(chance, x, y, grain * 1.3, 2) for v in (x, y))
    near, margin, traits = cells(chance, bent_x, bent_y, grain)
    soft = noise(chance, x, y, size * 3, 4)
    plume = noise(chance, x, y, chance.log_between(2, 12, batch), 6, 0.62)
    plain = 1 + 0.7 * soft
    vein = 1 - smooth_step(0.02, 0.05, margin - 0.10 * per_tile(chance.unit(batch)) * (1 + 0.7 * soft))
    breccia = steps(traits[..., 0] * 2.98, 40) * (1 - vein) + 3 * vein
    grown = near * (0.5 + traits[..., 1] * 2.2)
    orbs = steps(3 * (1 - grown).clamp(0, 1) * (0.5 + (grown * per_tile(chance.between(4, 14, batch))).cos().abs()), per_tile(chance.between(1.5, 10, batch)))
    grains = torch.bucketize(traits[..., 2].contiguous(), torch.tensor([0.45, 0.84, 0.95], device=x.device)).float()
    moss = (0.6 * soft).clamp(0, 1) + 2.5 * smooth_step(0.0, 0.5, plume - per_tile(chance.between(0.0, 1.4, batch)))
    lines = 3 * (1 - smooth_step(0.4, 1.0, plume.abs() / per_tile(chance.log_between(0.03, 0.2, batch))))
    lines = torch.maximum((0.8 + 0.5 * soft).clamp(0, 2), lines)
    patches = steps(1.5 + 1.1 * plume, per_tile(chance.between(1, 12, batch)))
    return torch.stack([plain, banded(chance, x, y, size), breccia, orbs, grains, moss, lines, patches])


def stone_colors(chance, batch, x, y, height):
    """Albedo of the sound stones, B x 3 x S x S; the pattern fills the body and the surface cuts it."""
    kind = chance.pick(list(PATTERNS.values()), batch)
    flat_bands = per_tile((kind == 1) & (chance.unit(batch) < 0.7))
    x, y = (torch.where(flat_bands, cut, over) for cut, over in zip(sliced(chance, x, y, height), unrolled(chance, x, y, height)))
    every = positions(chance, x, y, kind)
    position = torch.gather(every, 0, kind.view(1, -1, 1, 1).expand(1, *every.shape[1:]))[0]
    color = along_palette(with_dark_minerals(chance, palette(chance, batch)), position)
    mottle = noise(chance, x, y, chance.log_between(0.25, 1.6, batch), 3)
    color = color * (1 + per_tile(0.25 * chance.unit(batch) ** 2) * mottle)[:, None].clamp(0.35, 1.6)
    haze = smooth_step(0.2, 1.6, noise(chance, x, y, chance.log_between(0.25, 1.6, batch), 2)) * per_tile(0.4 * chance.unit(batch) ** 2 * chance.coin(0.7, batch))
    return color + haze[:, None] * (0.5 - color)


def mixed(color, share, other):
    """Blends B x 3 x S x S with B x 3 or B x 3 x S x S by a B x S x S share."""
    if other.dim() == 2:
        other = other[:, :, None, None]
    return color + share[:, None] * (other - color)
