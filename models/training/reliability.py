"""How far the network's confidence is from the truth, on tiles it never saw.

Run: python reliability.py checkpoint.pt
For every class: of the places given a share between two bounds, the mean share and how many really are of that class.
"""

import sys

import torch

from chance import Chance
from export import load
from scene import CLASSES, draw_batch
from train import HELD_OUT_SEED, soft_targets

BOUNDS = (0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 1.01)


@torch.no_grad()
def gathered(net, batches=10):
    """Shares said and shares true of held-out places, n x 6 each."""
    chance, said, true = Chance(HELD_OUT_SEED + 2), [], []
    for _ in range(batches):
        planes, target, weight = draw_batch(chance, 8)
        share, weight = soft_targets(target, weight)
        keep = weight.flatten() > 0.99
        said.append(net(planes).softmax(1).permute(0, 2, 3, 1).reshape(-1, 6)[keep])
        true.append(share.permute(0, 2, 3, 1).reshape(-1, 6)[keep])
    return torch.cat(said), torch.cat(true)


def main():
    torch.set_num_threads(1)
    said, true = gathered(load(sys.argv[1]))
    for k, name in enumerate(CLASSES):
        row = []
        for low, high in zip(BOUNDS, BOUNDS[1:]):
            inside = (said[:, k] >= low) & (said[:, k] < high)
            if inside.sum() >= 100:
                row.append(f"{float(said[inside, k].mean()):.2f}→{float(true[inside, k].mean()):.2f}")
        print(name, " ".join(row))


if __name__ == "__main__":
    main()
