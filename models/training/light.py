"""Light on a height field: lamp, its shadow, light from all around, and the GGX highlight of a disc lamp."""

import torch
import torch.nn.functional as F

from fields import PX_PER_MM, per_tile, smooth_step

REACHES_MM = (0.1, 0.2, 0.32, 0.48, 0.7, 1.0, 1.4, 2.0, 2.8, 4.0, 6.0)
SKY_PX = (1, 2, 4, 7, 12, 20)


def draw_lamp(chance, batch):
    """Direction (B x 3; x right, y up, z to the camera), slope radius of the lamp, and the light around it.

    Radiances are shares of what a white wall that faces the lamp sends back.
    """
    off, around = torch.deg2rad(chance.between(14, 52, batch)), chance.between(0, 6.2832, batch)
    direction = torch.stack([off.sin() * around.cos(), off.sin() * around.sin(), off.cos()], 1)
    width = torch.deg2rad(chance.between(8, 16, batch))
    return {"direction": direction, "slopeRadius": (width / 4).tan(), "radiance": 1 / (width / 2).sin() ** 2,
            "halfWidth": width / 2, "around": chance.log_between(0.28, 1.8, batch), "index": chance.between(1.44, 1.75, batch)}


def lamp_seen(height, lamp):
    """0 to 1: how much of the lamp each point sees over its surroundings."""
    batch, size, _ = height.shape
    lx, ly, lz = (per_tile(lamp["direction"][:, k]) for k in range(3))
    level = torch.hypot(lx, ly).clamp(min=1e-3)
    at = (torch.arange(size, device=height.device, dtype=height.dtype) + 0.5) * 2 / size - 1
    base = torch.stack([at.view(1, 1, size).expand(batch, size, size), at.view(1, size, 1).expand(batch, size, size)], -1)
    step = torch.stack([lx / level, -ly / level], -1) * (2 * PX_PER_MM / size)
    horizon = torch.full_like(height, -9.0)
    for reach in REACHES_MM:
        there = F.grid_sample(height[:, None], base + step * reach, mode="bilinear", padding_mode="border", align_corners=False)[:, 0]
        horizon = torch.maximum(horizon, (there - height) / reach)
    rise = lz / level
    soft = per_tile(lamp["halfWidth"]) * (1 + rise**2)
    return 1 - smooth_step(-1, 1, (horizon - rise) / soft)


def sky_seen(height):
    """0 to 1: share of the light from above that is not hidden by higher ground, cosine-weighted."""
    reach = max(SKY_PX)
    padded = F.pad(height[:, None], (reach,) * 4, mode="replicate")[:, 0]
    size = height.shape[1]
    total = 0
    for down, right in ((0, 1), (1, 1), (1, 0), (1, -1), (0, -1), (-1, -1), (-1, 0), (-1, 1)):
        horizon = torch.zeros_like(height)
        span = (down * down + right * right) ** 0.5 / PX_PER_MM
        for far in SKY_PX:
            r, c = reach + down * far, reach + right * far
            horizon = torch.maximum(horizon, (padded[:, r:r + size, c:c + size] - height) / (span * far))
        total = total + 1 / (1 + horizon**2)
    return total / 8


def lobe_share(slope, alpha, radius):
    """Share of a disc lamp's radiance that a GGX surface mirrors where its normal leans `slope` from the half vector.

    GGX slopes cover a sphere evenly in stereographic projection, which maps the lamp's disc to a cap.
    """
    t = alpha**2 + slope**2 - radius**2
    return 0.5 * (1 - t / (t**2 + 4 * alpha**2 * radius**2).sqrt())


def shade(surface, albedo, alpha, lamp, seen, sky, tray):
    """Linear radiance, B x 3 x S x S; 1 is a white wall that faces the lamp.

    surface: slopes and cosine to the camera. alpha: GGX roughness. seen, sky: 0 to 1. tray: its color, B x 3.
    """
    zx, zy, nz = surface
    lx, ly, lz = (per_tile(lamp["direction"][:, k]) for k in range(3))
    incidence = (nz * (lz - zx * lx - zy * ly)).clamp(min=0)
    around = per_tile(lamp["around"])
    above = 0.5 + 0.5 * nz
    bounce = tray[:, :, None, None] * (0.35 * (1 - above) * (lz + around))[:, None]
    diffuse = albedo * ((incidence * seen + around * above * sky)[:, None] + bounce)
    half = torch.stack([lx, ly, lz + 1])
    half = half / half.norm(dim=0, keepdim=True)
    cosine = (nz * (half[2] - zx * half[0] - zy * half[1])).clamp(0.02, 1)
    slope = (1 / cosine**2 - 1).clamp(min=0).sqrt()
    f0 = per_tile(((lamp["index"] - 1) / (lamp["index"] + 1)) ** 2)
    fresnel = f0 + (1 - f0) * (1 - half[2]) ** 5
    share = lobe_share(slope, alpha, per_tile(lamp["slopeRadius"])) * (incidence > 0)
    glint = per_tile(lamp["radiance"]) * fresnel * share * seen * smooth_step(0, 0.12, incidence)
    rim = f0 + ((1 - alpha).clamp(min=0.3) - f0).clamp(min=0) * (1 - nz) ** 5
    mirrored = smooth_step(-0.2, 0.2, 2 * nz**2 - 1)
    reflected = rim * sky * around * (mirrored + 0.3 * (1 - mirrored))
    return diffuse + (glint + reflected)[:, None]
