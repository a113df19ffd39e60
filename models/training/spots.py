"""Pits, bruises and mere colored specks: the same uneven round outlines, told apart only by relief and roughness."""

import torch

from fields import noise, per_tile, smooth_step

NONE, PIT, SPECK, BRUISE = range(4)
SLOTS = 8


def places(chance, weight, count):
    """Row-major indices of `count` pixels of each tile, drawn with the weights B x S x S."""
    flat = weight.flatten(1) + 1e-9
    return torch.multinomial(flat, count, replacement=True, generator=chance.generator)


def taken_at(field, index):
    """Values of a B x S x S (or 1 x S x S) field at B x K pixels, as B x K x 1 x 1."""
    flat = field.flatten(1).expand(index.shape[0], -1)
    return torch.gather(flat, 1, index)[:, :, None, None]


def lobes(dx, dy, weights):
    """Distance in radii of an uneven outline; weights: B x K x 3 x 2 cosine and sine parts of two, three and five lobes."""
    far = torch.hypot(dx, dy).clamp(min=1e-4)
    c1, s1 = dx / far, dy / far
    edge, c, s = 1.0, c1, s1
    for k in range(2, 6):
        c, s = c * c1 - s * s1, s * c1 + c * s1
        if k != 4:
            part = weights[:, :, min(k - 2, 2)]
            edge = edge + part[..., 0, None, None] * c + part[..., 1, None, None] * s
    return far / edge.clamp(0.5, 1.6)


def lobe_weights(chance, batch):
    """Parts of each slot's two, three and five lobes."""
    fall = torch.tensor([2.0, 3.0, 5.0], device=chance.device).rsqrt().view(1, 1, 3, 1)
    return chance.normal(batch, SLOTS, 3, 2) * chance.between(0.02, 0.15, batch, SLOTS, 1, 1) * fall


def draw_spots(chance, batch, share):
    """Kind, diameter in mm, depth as a share of it, and profile of every slot, B x K x 1 x 1."""
    shape = (batch, SLOTS, 1, 1)
    kind = chance.pick(share, *shape)
    busy = chance.between(0.1, 1, batch, 1, 1, 1)
    kind = torch.where(chance.unit(*shape) < busy, kind, torch.zeros_like(kind))
    diameter = chance.log_between(0.36, 2.9, *shape)
    diameter = torch.where(kind == BRUISE, diameter * 1.3 + 0.4, diameter)
    depth = torch.where(chance.unit(*shape) < 0.15, chance.between(0.09, 0.22, *shape), chance.between(0.2, 0.48, *shape))
    return {"kind": kind, "diameter": diameter, "depth": depth, "inner": chance.between(0.1, 0.75, *shape),
            "outer": chance.between(1.0, 1.12, *shape), "lobes": lobe_weights(chance, batch), "soft": 0.9 - 0.7 * chance.unit(*shape) ** 2,
            "ring": chance.coin(0.3, *shape) * chance.between(0.4, 1, *shape), "wave": chance.between(5, 18, *shape), "start": chance.between(0, 6.2832, *shape)}


def outline_of(dx, dy, gx, gy, radius, sink, weights):
    """Distance from each spot's center in radii of its outline, foreshortened as the skin is and seen in parallax.

    dx, dy: mm from the center, B x K x S x S. gx, gy: slopes of the skin there. sink: depth in mm, lessened by the tilt.
    """
    first = (dx**2 + dy**2 + (gx * dx + gy * dy) ** 2).sqrt() / radius
    # The outward normal leans along minus the slope; what lies deeper is seen shifted along plus it.
    shift = sink * (1 - smooth_step(0.5, 1.05, first))
    dx, dy = dx - shift * gx, dy - shift * gy
    steep = torch.hypot(gx, gy).clamp(min=1e-4)
    ux, uy = gx / steep, gy / steep
    along, across = (ux * dx + uy * dy) * (1 + steep**2).sqrt(), ux * dy - uy * dx
    return lobes(along, across, weights) / radius


def placed_outline(spots, warped, x, y, surface, index):
    """`outline_of` for spots at the pixels `index`, and the cosine to the camera there."""
    gx, gy, facing = (taken_at(field, index) for field in surface)
    sink = (spots["kind"] == PIT) * spots["depth"] * spots["diameter"] * facing
    dx, dy = warped[0][:, None] - taken_at(x, index), warped[1][:, None] - taken_at(y, index)
    return outline_of(dx, dy, gx.clamp(-2.5, 2.5), gy.clamp(-2.5, 2.5), spots["diameter"] / 2, sink, spots["lobes"]), facing


def spot_fields(u, hackle, pit, speck, bruise, spots, dirt, strength):
    """Depth (mm), floor, dirt, bruise and speck of all slots together; the number of the speck on top."""
    bowl = (1 - smooth_step(spots["inner"], spots["outer"], u)) * (0.85 + 0.15 * (1 - u.clamp(0, 1)))
    floor = 1 - smooth_step(0.85, 1.0, u)
    rings = 1 - spots["ring"] * (0.5 + 0.5 * (spots["wave"] * u + spots["start"]).cos())
    color, which = (speck * strength * rings * (1 - smooth_step(spots["soft"], 1.06, u))).max(1)
    return {"depth": (pit * spots["depth"] * spots["diameter"] * bowl * (1 + hackle)).amax(1), "floor": (pit * floor).amax(1),
            "dirt": (pit * floor * dirt).amax(1), "bruise": (bruise * (1 - smooth_step(0.6, 1.0, u))).amax(1), "speck": color, "which": which}


def press_spots(chance, height, mask, surface, x, y, warped, share):
    """Presses the spots in.

    Returns depth along the normal (mm), floor and bruise (0 to 1), speck (0 to 1), the speck's number for its color,
    the pit and bruise labels, and what the loss should leave out (too small, shallow or turned away to be asked for).
    """
    batch = height.shape[0]
    spots = draw_spots(chance, batch, share)
    cosine = surface[2]
    index = places(chance, (mask & (cosine > 0.36)).float(), SLOTS)
    cluster = chance.coin(0.2, batch, 1) * chance.coin(0.5, batch, SLOTS)
    near = index[:, :1] + (chance.normal(batch, SLOTS) * 14).long() + (chance.normal(batch, SLOTS) * 14).long() * height.shape[2]
    near = near.clamp(0, height[0].numel() - 1)
    index = torch.where((cluster > 0) & (torch.gather(mask.flatten(1), 1, near)), near, index)
    u, facing = placed_outline(spots, warped, x, y, surface, index)
    kind = spots["kind"]
    pit, speck, bruise = kind == PIT, kind == SPECK, kind == BRUISE
    hackle = noise(chance, x, y, chance.log_between(0.4, 1.6, batch), 3)[:, None] * chance.between(0.02, 0.16, batch, 1, 1, 1)
    dirt = chance.between(0, 0.35, batch, SLOTS, 1, 1) * (1 + chance.coin(0.2, batch, 1, 1, 1))
    strength = 0.4 + 0.6 * chance.coin(0.8, batch, SLOTS, 1, 1)
    out = spot_fields(u, hackle, pit, speck, bruise, spots, dirt, strength)
    small = (spots["diameter"] < 0.45) | (spots["depth"] < 0.14) | (facing < 0.45)
    ring = bruise & (u < 1.15)
    return out | {
        "pitLabel": (pit & ~small & (u < 0.95)).any(1), "bruiseLabel": (bruise & (u < 0.88)).any(1),
        "leftOut": (pit & small & (u < 1.1)).any(1) | ring.any(1) & ~(bruise & (u < 0.75)).any(1),
    }
