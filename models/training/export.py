"""Writes a trained network as ONNX, with softmax and the temperature inside.

Run: python export.py checkpoint.pt ../stone-flaws.onnx
"""

import sys

import torch
from torch import nn

from network import FlawNet


class Shares(nn.Module):
    """Class probabilities instead of scores."""

    def __init__(self, net):
        super().__init__()
        self.net = net

    def forward(self, planes):
        return self.net(planes).softmax(1)


def load(path):
    """The network of a checkpoint, ready to judge."""
    state = torch.load(path, map_location="cpu", weights_only=True)
    net = FlawNet()
    net.load_state_dict(state)
    return net.eval()


def export(net, path):
    """One file; the batch, height and width may vary, sides in multiples of 32."""
    torch.onnx.export(
        Shares(net).eval(), (torch.rand(1, 6, 512, 512),), path, input_names=["planes"], output_names=["shares"], opset_version=17,
        dynamic_axes={"planes": {0: "batch", 2: "rows", 3: "columns"}, "shares": {0: "batch", 2: "rows", 3: "columns"}}, dynamo=False)


if __name__ == "__main__":
    export(load(sys.argv[1]), sys.argv[2])
