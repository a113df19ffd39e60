"""The sound shape of stones: domes with worn facets, an old break now and then, low waves."""

import torch

from fields import noise, per_tile, slopes


def low_of(first, second, width):
    """Smooth minimum; `width` in mm is how far the edge between both is worn."""
    gap = (1 - (first - second).abs() / width).clamp(min=0)
    return torch.minimum(first, second) - width / 4 * gap**2


def draw_frame(chance, batch, half_mm):
    """Semi-axes, turn and place of each stone; a quarter of them fill the tile, an eighth are slabs, nearly flat."""
    a = chance.between(8, 19, batch) * (1 + chance.coin(0.25, batch) * chance.between(0.3, 1.5, batch))
    a = torch.where(chance.coin(0.12, batch) > 0, chance.between(60, 160, batch), a)
    b = a * chance.between(0.6, 1, batch)
    c = a * chance.between(0.32, 0.75, batch)
    turn = chance.between(0, 6.2832, batch)
    away = (b * 0.9).clamp(max=half_mm * 0.9)
    center = chance.between(-1, 1, batch, 2) * away[:, None] * 0.75
    return a, b, c, turn, center


def facet(chance, frame, x, y, hackly):
    """A plane that cuts the dome, as heights; far above it where a stone has no such facet."""
    a, b, c, turn, center = frame
    batch = a.shape[0]
    tilt, around = chance.between(0.05, 1.05, batch), chance.between(0, 6.2832, batch)
    nx, ny, nz = tilt.sin() * around.cos(), tilt.sin() * around.sin(), tilt.cos()
    along, across = nx * turn.cos() + ny * turn.sin(), -nx * turn.sin() + ny * turn.cos()
    support = ((a * along) ** 2 + (b * across) ** 2 + (c * nz) ** 2).sqrt()
    share = chance.between(0.8, 0.98, batch) + 9 * (1 - chance.coin(0.45, batch))
    top = (share * support)[:, None, None]
    dx, dy = x - per_tile(center[:, 0]), y - per_tile(center[:, 1])
    plane = (top - per_tile(nx) * dx - per_tile(ny) * dy) / per_tile(nz)
    # Worn faces bulge a little.
    plane = plane - (dx**2 + dy**2) / per_tile(2 * a * chance.between(2, 9, batch))
    if hackly:
        plane = plane + per_tile(a.clamp(max=19) * chance.between(0.003, 0.02, batch)) * noise(chance, x, y, chance.between(2, 6, batch), 3)
    return plane, per_tile(chance.log_between(0.15, 2.5, batch))


def stone_shape(chance, batch, x, y):
    """Heights in mm (B x S x S) of the sound stones and the tray, and the mask of the stones.

    The widest outline lies at z = 0; the tray lies below it.
    """
    half = float(x.max())
    frame = draw_frame(chance, batch, half)
    a, b, c, turn, center = frame
    dx, dy = x - per_tile(center[:, 0]), y - per_tile(center[:, 1])
    co, si = per_tile(turn.cos()), per_tile(turn.sin())
    q = ((co * dx + si * dy) / per_tile(a)) ** 2 + ((-si * dx + co * dy) / per_tile(b)) ** 2
    q = q * (1 + 0.07 * noise(chance, x, y, chance.between(9, 25, batch), 2))
    dome = per_tile(c) * (1 - q.clamp(0, 1) ** per_tile(chance.between(0.85, 1.6, batch))).clamp(min=1e-5).sqrt()
    for number in range(5):
        plane, width = facet(chance, frame, x, y, hackly=number == 0)
        dome = low_of(dome, plane, width)
    dome = dome + per_tile(0.006 * a.clamp(max=19) * chance.unit(batch)) * noise(chance, x, y, chance.between(4, 12, batch), 1)
    peel = chance.log_between(0.001, 0.012, batch) * chance.coin(0.6, batch)
    dome = dome + per_tile(peel) * noise(chance, x, y, chance.between(1.2, 4, batch), 1)
    mask = (q < 1) & (dome > -0.35 * per_tile(c))
    tray = -per_tile(c * chance.between(0.4, 0.9, batch))
    return torch.where(mask, dome, tray.expand_as(dome)), mask


def surface_of(height):
    """Slopes and the cosine between the normal and the camera."""
    zx, zy = slopes(height)
    return zx, zy, (1 + zx**2 + zy**2).rsqrt()
