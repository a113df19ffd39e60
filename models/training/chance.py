"""Seeded draws on one device."""

import torch


class Chance:
    """Random tensors of a batch; the same seed on the same kind of device gives the same draws."""

    def __init__(self, seed, device="cpu"):
        self.device = torch.device(device)
        self.generator = torch.Generator(device=self.device).manual_seed(seed)

    def unit(self, *shape):
        return torch.rand(*shape, generator=self.generator, device=self.device)

    def between(self, low, high, *shape):
        return low + (high - low) * self.unit(*shape)

    def log_between(self, low, high, *shape):
        """Even in the logarithm: as many small as large ones."""
        return low * (high / low) ** self.unit(*shape)

    def normal(self, *shape):
        return torch.randn(*shape, generator=self.generator, device=self.device)

    def coin(self, share, *shape):
        """1 with probability `share`, else 0."""
        return (self.unit(*shape) < share).float()

    def pick(self, weights, *shape):
        """Indices drawn with these relative weights."""
        edges = torch.tensor(weights, device=self.device, dtype=torch.float32).cumsum(0)
        return torch.bucketize(self.unit(*shape) * edges[-1], edges[:-1].contiguous(), right=True)
