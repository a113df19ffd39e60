"""Path-traced trays (sample-images/render) cut into one crop for each stone, at the network's scale."""

import json
from pathlib import Path

import cv2
import numpy as np
import torch

from fields import PX_PER_MM
from scene import planes

MARGIN_MM = 1.5


def linear_picture(path):
    """Rows x columns x 3 linear light, red green blue, from an sRGB file."""
    picture = cv2.cvtColor(cv2.imread(str(path)), cv2.COLOR_BGR2RGB).astype(np.float32) / 255
    return np.where(picture <= 0.04045, picture / 12.92, ((picture + 0.055) / 1.055) ** 2.4).astype(np.float32)


def resampled(picture, scale):
    """Area averages when it gets smaller, bilinear when larger."""
    size = (max(1, round(picture.shape[1] * scale)), max(1, round(picture.shape[0] * scale)))
    return cv2.resize(picture, size, interpolation=cv2.INTER_AREA if scale < 1 else cv2.INTER_LINEAR)


class Crop:
    """One stone: planes (1 x 6 x H x W), its truth, and the way from photo pixels to crop millimeters."""

    def __init__(self, photo, picture, truth, stone):
        self.photo, self.stone = photo, stone
        self.scale = PX_PER_MM * truth["mmPerPx"]
        outline = np.array(stone["outline"])
        margin = MARGIN_MM / truth["mmPerPx"]
        low = np.maximum(np.floor(outline.min(0) - margin).astype(int), 0)
        high = np.minimum(np.ceil(outline.max(0) + margin).astype(int) + 1, picture.shape[:2])
        self.low = low
        light = resampled(picture[low[0]:high[0], low[1]:high[1]], self.scale)
        mask = np.zeros(light.shape[:2], np.uint8)
        points = (outline - low + 0.5) * self.scale - 0.5
        cv2.fillPoly(mask, [np.round(points[:, ::-1]).astype(np.int32)], 1)
        rows, columns = (-(-n // 32) * 32 for n in mask.shape)
        light = np.pad(light, ((0, rows - mask.shape[0]), (0, columns - mask.shape[1]), (0, 0)), mode="edge")
        self.mask = np.pad(mask, ((0, rows - mask.shape[0]), (0, columns - mask.shape[1])))
        lamp = torch.tensor([truth["lamp"]["direction"][:2]], dtype=torch.float32)
        self.planes = planes(torch.from_numpy(light.transpose(2, 0, 1).copy())[None], torch.from_numpy(self.mask.astype(np.float32))[None], lamp)

    def mm(self, row, column):
        """Place of a photo pixel in mm from the crop's upper left corner, (row, column)."""
        return (np.array([row, column]) - self.low + 0.5) * self.scale / PX_PER_MM


def crops_of(folder):
    """Every stone of every tray of a folder of JPEG and truth files."""
    for path in sorted(Path(folder).glob("*.json")):
        truth = json.loads(path.read_text())
        picture = linear_picture(path.with_suffix(".jpg"))
        for stone in truth["stones"]:
            yield Crop(path.stem, picture, truth, stone)
