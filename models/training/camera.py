"""What a camera makes of the light: blur, pixels, noise, exposure, sRGB, sharpening, JPEG, and back to linear light."""

import torch
import torch.nn.functional as F

from fields import PX_PER_MM, blur

# Quantization tables of ITU-T T.81, Annex K.1 and K.2 (rows).
LUMINANCE = [16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87, 80, 62,
             18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99]
CHROMINANCE = [17, 18, 24, 47] + [99] * 4 + [18, 21, 26, 66] + [99] * 4 + [24, 26, 56] + [99] * 5 + [47, 66] + [99] * 38
TO_YCC = [[0.299, 0.587, 0.114], [-0.168736, -0.331264, 0.5], [0.5, -0.418688, -0.081312]]


def encode(linear):
    """sRGB transfer, IEC 61966-2-1."""
    linear = linear.clamp(0, 1)
    return torch.where(linear <= 0.0031308, 12.92 * linear, 1.055 * linear.clamp(min=1e-6) ** (1 / 2.4) - 0.055)


def decode(value):
    """Inverse of `encode`."""
    return torch.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def jpeg(picture, quality):
    """Rounds the 8 x 8 cosine transform as JPEG does; sides must be multiples of 8; no chroma subsampling."""
    device, batch = picture.device, picture.shape[0]
    at = torch.arange(8, device=device, dtype=torch.float32)
    basis = torch.cos((2 * at[None] + 1) * at[:, None] * torch.pi / 16) * 0.5
    basis[0] *= 0.5**0.5
    scale = (5000 / quality if quality < 50 else 200 - 2 * quality) / 100
    tables = torch.tensor([LUMINANCE, CHROMINANCE, CHROMINANCE], device=device, dtype=torch.float32).view(3, 1, 1, 8, 8)
    tables = (tables * scale).round().clamp(1, 255)
    ycc = torch.tensor(TO_YCC, device=device)
    values = torch.einsum("ij,bjrc->birc", ycc, picture * 255 - 128 * 1.0)
    rows, columns = values.shape[2] // 8, values.shape[3] // 8
    blocks = values.view(batch, 3, rows, 8, columns, 8).permute(0, 1, 2, 4, 3, 5)
    waves = basis @ blocks @ basis.T
    blocks = basis.T @ ((waves / tables).round() * tables) @ basis
    values = blocks.permute(0, 1, 2, 4, 3, 5).reshape(batch, 3, rows * 8, columns * 8)
    back = torch.einsum("ij,bjrc->birc", torch.linalg.inv(ycc), values) + 128
    return (back.round() / 255).clamp(0, 1)


def photograph(chance, radiance):
    """Linear light as read back from an 8-bit picture taken at 7 to 18 px/mm, again at 12 px/mm.

    One scale, blur and JPEG quality for the whole batch; exposure, noise and white balance differ from tile to tile.
    """
    batch, _, size, _ = radiance.shape
    draw = chance.unit(4).tolist()
    scale = 7.0 * (18 / 7.0) ** draw[0]
    pixels = min(size, int(size * scale / PX_PER_MM / 8 + 0.5) * 8)
    light = blur(radiance, (0.25 + 0.75 * draw[1] ** 2) * max(PX_PER_MM / scale, 0.6))
    if pixels < size:
        light = F.interpolate(light, size=(pixels, pixels), mode="area" if pixels * 2 < size else "bilinear", align_corners=None if pixels * 2 < size else False, antialias=pixels * 2 >= size)
    gain = chance.log_between(0.12, 0.6, batch, 1, 1, 1) * torch.exp(chance.normal(batch, 3, 1, 1) * 0.06)
    light = light * gain
    shot, read = chance.log_between(0.001, 0.02, batch, 1, 1, 1), chance.log_between(0.0002, 0.0015, batch, 1, 1, 1)
    uneven = chance.log_between(0.002, 0.08, batch, 1, 1, 1)
    finer = min(1.0, PX_PER_MM / scale)
    light = light + finer * chance.normal(*light.shape) * (shot**2 * light.clamp(0, 1) + read**2 + (uneven * light.clamp(0, 1)) ** 2).sqrt()
    picture = encode(light)
    crisp = chance.between(0, 0.8, batch, 1, 1, 1) * chance.coin(0.15, batch, 1, 1, 1)
    picture = (picture + crisp * (picture - blur(picture, 1.2))).clamp(0, 1)
    picture = jpeg(picture, 70 + 28 * draw[2]) if draw[3] < 0.85 else (picture * 255).round() / 255
    light = decode(picture)
    if pixels < size:
        light = F.interpolate(light, size=(size, size), mode="bilinear", align_corners=False)
    return light
