"""The network: a compact U-Net of depthwise-separable convolutions at half resolution, with the lamp's cue built in."""

import torch
import torch.nn.functional as F
from torch import nn

CLASSES = 6
WIDTHS = (24, 48, 96, 160, 224)
DEPTHS = (2, 3, 4, 3)


class Separable(nn.Module):
    """Depthwise 3 x 3, then pointwise; batch normalization; a shortcut where the widths agree."""

    def __init__(self, before, after, stride=1):
        super().__init__()
        self.across = nn.Conv2d(before, before, 3, stride, 1, groups=before, bias=False)
        self.settle = nn.BatchNorm2d(before)
        self.mix = nn.Conv2d(before, after, 1, bias=False)
        self.norm = nn.BatchNorm2d(after)
        self.short = before == after and stride == 1

    def forward(self, x):
        y = F.relu(self.norm(self.mix(self.settle(self.across(x)))))
        return x + y if self.short else y


class LampCue(nn.Module):
    """Slopes of brightness along and across the lamp, at half resolution, and the lamp itself.

    A pit is dark on the near wall and bright on the far one, seen along the lamp; pattern knows no lamp. The slopes
    are taken at two scales with fixed kernels, so the weights need not learn to turn.
    """

    def __init__(self):
        super().__init__()
        kernels = []
        for sigma in (0.6, 1.4):
            at = torch.arange(-3, 4, dtype=torch.float32)
            bell = torch.exp(-(at**2) / (2 * sigma**2))
            slope = at * bell
            bell, slope = bell / bell.sum(), slope / (slope * at).sum() * 3 * sigma
            kernels += [bell[:, None] * slope[None], -slope[:, None] * bell[None]]
        self.register_buffer("kernels", torch.stack(kernels)[:, None])

    def forward(self, logs, lamp):
        gray = F.avg_pool2d(logs.mean(1, keepdim=True), 2)
        slope = F.conv2d(F.pad(gray, (3, 3, 3, 3), mode="replicate"), self.kernels)
        fine_x, fine_y, wide_x, wide_y = slope.split(1, 1)
        lamp = F.avg_pool2d(lamp, 2)
        lx, ly = lamp.split(1, 1)
        level = (lx * lx + ly * ly + 1e-6).sqrt()
        ux, uy = lx / level, ly / level
        cues = [fine_x * ux + fine_y * uy, fine_y * ux - fine_x * uy, wide_x * ux + wide_y * uy, wide_y * ux - wide_x * uy]
        return torch.cat([*cues, lamp], 1)


class FlawNet(nn.Module):
    """Planes (B x 6 x H x W; sides multiples of 32) to class scores before softmax (B x 6 x H/2 x W/2)."""

    def __init__(self, widths=WIDTHS, depths=DEPTHS):
        super().__init__()
        self.cue = LampCue()
        self.stem = nn.Sequential(nn.Conv2d(4, widths[0], 4, 2, 1, bias=False), nn.BatchNorm2d(widths[0]), nn.ReLU())
        self.first = nn.Sequential(nn.Conv2d(widths[0] + 6, widths[0], 1, bias=False), nn.BatchNorm2d(widths[0]), nn.ReLU(), Separable(widths[0], widths[0]))
        self.down, self.up, self.join = nn.ModuleList(), nn.ModuleList(), nn.ModuleList()
        for low, high, depth in zip(widths, widths[1:], depths):
            self.down.append(nn.Sequential(Separable(low, high, 2), *[Separable(high, high) for _ in range(depth - 1)]))
            self.join.append(nn.Conv2d(high, low, 1, bias=False))
            self.up.append(nn.Sequential(*[Separable(low, low) for _ in range(1 if low == widths[0] else 2)]))
        self.head = nn.Conv2d(widths[0], CLASSES, 1)
        self.register_buffer("temperature", torch.ones(()))

    def forward(self, planes):
        logs = torch.log(planes[:, :3].clamp(min=0) + 0.05)
        x = self.stem(torch.cat([logs, planes[:, 3:4]], 1))
        x = self.first(torch.cat([x, self.cue(logs, planes[:, 4:6])], 1))
        kept = []
        for step in self.down:
            kept.append(x)
            x = step(x)
        for step, join in zip(reversed(self.up), reversed(self.join)):
            x = F.interpolate(join(x), scale_factor=2.0, mode="nearest") + kept.pop()
            x = step(x)
        return self.head(x) / self.temperature
