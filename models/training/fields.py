"""Random fields over a tile: smooth noise, layered noise, cells. A tile is B x S x S; x right, y up, in mm."""

import torch
import torch.nn.functional as F

PX_PER_MM = 12.0


def grid_mm(size, device):
    """x and y of every pixel center in mm, 1 x S x S; the middle of the tile is (0, 0) and y grows upward."""
    at = (torch.arange(size, device=device, dtype=torch.float32) - (size - 1) / 2) / PX_PER_MM
    return at.view(1, 1, size).expand(1, size, size), (-at).view(1, size, 1).expand(1, size, size)


def per_tile(values):
    """B values as B x 1 x 1."""
    return values.view(-1, 1, 1)


def smooth_step(low, high, x):
    """0 below low, 1 above high, smooth between."""
    t = ((x - low) / (high - low)).clamp(0, 1)
    return t * t * (3 - 2 * t)


def sample(texture, x, y):
    """Bilinear look-up in B x n x n textures at lattice coordinates x, y; the texture repeats by reflection."""
    n = texture.shape[-1]
    at = torch.stack([x * 2 / n, y * 2 / n], -1)
    return F.grid_sample(texture[:, None], at, mode="bilinear", padding_mode="reflection", align_corners=False)[:, 0]


def noise(chance, x, y, wavelength_mm, octaves=1, gain=0.5):
    """Layered noise of unit variance.

    x, y: B x S x S coordinates in mm (may be warped). wavelength_mm: B values, of the longest waves.
    """
    total, power = 0, 0.0
    batch = wavelength_mm.shape[0]
    for k in range(octaves):
        # A lattice of random values, smoothed by one cubic enlargement, looked up bilinearly: cheap and without creases.
        rough = chance.normal(batch, 1, 24, 24)
        texture = F.interpolate(rough, scale_factor=4, mode="bicubic", align_corners=False)[:, 0]
        turn = chance.between(0, 6.2832, batch)
        shift = chance.between(-30, 30, batch, 2)
        pitch = 8 * 2**k / wavelength_mm
        c, s = per_tile(turn.cos() * pitch), per_tile(turn.sin() * pitch)
        total = total + gain**k * sample(texture, c * x - s * y + per_tile(shift[:, 0]), s * x + c * y + per_tile(shift[:, 1]))
        power += gain ** (2 * k)
    return total / (0.62 * power**0.5)


def cells(chance, x, y, size_mm):
    """Voronoi cells around jittered points.

    Returns the distance to the nearest point and the margin to the second nearest (both in cells), and three
    random numbers (0 to 1) of the cell each pixel is in, B x S x S x 3.
    """
    batch, table = size_mm.shape[0], 64
    u, v = x / per_tile(size_mm) + 32, y / per_tile(size_mm) + 32
    column, row = u.floor(), v.floor()
    jitter = chance.between(0.05, 0.95, batch, table * table, 2)
    near = torch.full_like(u, 9.0)
    second = torch.full_like(u, 9.0)
    home = torch.zeros(u.shape, dtype=torch.long, device=u.device)
    for down in (-1, 0, 1):
        for right in (-1, 0, 1):
            index = ((row + down).long() % table) * table + (column + right).long() % table
            at = torch.gather(jitter, 1, index.flatten(1)[:, :, None].expand(-1, -1, 2)).view(*u.shape, 2)
            far = torch.hypot(column + right + at[..., 0] - u, row + down + at[..., 1] - v)
            second = torch.minimum(second, torch.maximum(near, far))
            home = torch.where(far < near, index, home)
            near = torch.minimum(near, far)
    traits = chance.unit(batch, table * table, 3)
    traits = torch.gather(traits, 1, home.flatten(1)[:, :, None].expand(-1, -1, 3)).view(*u.shape, 3)
    return near, second - near, traits


def blur(picture, sigma_px):
    """Gaussian blur of B x C x S x S with one sigma in pixels, edges repeated."""
    if sigma_px < 0.15:
        return picture
    reach = max(1, int(3 * sigma_px + 0.5))
    at = torch.arange(-reach, reach + 1, device=picture.device, dtype=picture.dtype)
    kernel = torch.exp(-(at**2) / (2 * sigma_px**2))
    kernel = kernel / kernel.sum()
    channels = picture.shape[1]
    across = kernel.view(1, 1, 1, -1).expand(channels, 1, 1, -1)
    down = kernel.view(1, 1, -1, 1).expand(channels, 1, -1, 1)
    padded = F.pad(picture, (reach, reach, reach, reach), mode="replicate")
    return F.conv2d(F.conv2d(padded, across, groups=channels), down, groups=channels)


def slopes(height):
    """dz/dx and dz/dy (y up) of B x S x S heights in mm."""
    padded = F.pad(height[:, None], (1, 1, 1, 1), mode="replicate")[:, 0]
    right = (padded[:, 1:-1, 2:] - padded[:, 1:-1, :-2]) * (PX_PER_MM / 2)
    up = (padded[:, :-2, 1:-1] - padded[:, 2:, 1:-1]) * (PX_PER_MM / 2)
    return right, up
