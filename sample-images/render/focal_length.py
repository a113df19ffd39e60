"""The focal length, as cameras state it in the Exif data."""

import math

from PIL import Image

# Diagonal of the 36 x 24 mm frame that equivalent focal lengths refer to.
FRAME_DIAGONAL_MM = 43.27


def focal_length_exif(focal_px, width_px, height_px):
    """Exif data with the focal length for a 36 x 24 mm frame (FocalLengthIn35mmFilm, tag 0xA405)."""
    exif = Image.Exif()
    exif[0x8769] = {0xA405: round(FRAME_DIAGONAL_MM * focal_px / math.hypot(width_px, height_px))}
    return exif
