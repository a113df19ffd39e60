"""What a camera does to linear light before it is a photograph. Pictures are float arrays, rows x columns x RGB, 1 = clipping."""

import cv2
import numpy as np

# Linear sRGB to linear Display P3, both with the D65 white point: from the primaries of IEC 61966-2-1 and SMPTE EG 432-1.
TO_DISPLAY_P3 = np.array([[0.8224620, 0.1775380, 0.0], [0.0331942, 0.9668058, 0.0], [0.0170826, 0.0723974, 0.9105199]])


def defocus(linear, sigma_px):
    """Blurs as a lens out of focus does: a disc of radius 1.5 sigma, softened until the whole has the given standard deviation."""
    radius = 1.5 * sigma_px
    reach = int(np.ceil(radius)) + 1
    fine = (np.arange(-reach * 8 - 4, reach * 8 + 4) + 0.5) / 8
    inside = (fine[:, None] ** 2 + fine[None] ** 2 < radius**2).astype(float)
    side = 2 * reach + 1
    disc = inside.reshape(side, 8, side, 8).sum((1, 3))
    disc /= disc.sum()
    rest = np.sqrt(sigma_px**2 - radius**2 / 4)
    sharp = cv2.filter2D(linear, -1, disc.astype(np.float32), borderType=cv2.BORDER_REPLICATE)
    return cv2.GaussianBlur(sharp, (0, 0), rest, borderType=cv2.BORDER_REPLICATE)


def sensor_noise(linear, rng, electrons=2500, read=6):
    """Shot and read noise of a small sensor that holds `electrons` at clipping; read noise in electrons."""
    counted = rng.poisson(np.maximum(linear, 0) * electrons) + rng.normal(0, read, linear.shape)
    return (counted / electrons).astype(np.float32)


def srgb_encoded(linear):
    """The transfer curve of IEC 61966-2-1, clipped to 0 to 1."""
    x = np.clip(linear, 0, 1)
    return np.where(x <= 0.0031308, 12.92 * x, 1.055 * np.maximum(x, 1e-9) ** (1 / 2.4) - 0.055)


def contrast_curve(encoded, strength=0.35):
    """A camera's S-curve: part of the way to the smooth step 3x^2 - 2x^3."""
    return encoded + strength * (encoded * encoded * (3 - 2 * encoded) - encoded)


def sharpened(encoded, amount=0.7, sigma_px=1.1):
    """Unsharp mask on luma (ITU-R BT.601 weights), as cameras apply it."""
    luma = encoded @ np.array([0.299, 0.587, 0.114])
    return np.clip(encoded + amount * (luma - cv2.GaussianBlur(luma, (0, 0), sigma_px))[:, :, None], 0, 1)


def shrunk(linear, scale):
    """Averages areas down to `scale` of the size."""
    return cv2.resize(linear, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA)
