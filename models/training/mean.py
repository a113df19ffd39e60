"""Writes the mean of several stages' weights: python mean.py OUT.pt FIRST.pt SECOND.pt … (Izmailov et al. 2018)."""

import sys

import torch

out, *paths = sys.argv[1:]
stages = [torch.load(path, map_location="cpu", weights_only=True) for path in paths]
mean = {name: torch.stack([stage[name].float() for stage in stages]).mean(0).to(value.dtype) for name, value in stages[0].items()}
torch.save(mean, out)
