"""Trains the flaw network on tiles drawn on the fly, then sets the temperature on tiles it never saw.

Run: python train.py --out FOLDER --minutes 8        (a GPU)
     torchrun --standalone --nproc-per-node 4 train.py --out FOLDER --minutes 8     (several GPUs of one host)
     python train.py --out FOLDER --steps 4 --batch 4 --size 128     (a small try on a CPU)
Writes FOLDER/flaws.pt (weights) and FOLDER/log.txt.
"""

import argparse
import math
import os
import time
from pathlib import Path

import torch
import torch.distributed as together
import torch.nn.functional as F

from chance import Chance
from network import CLASSES, FlawNet
import light
import lines
import scene
import spots
from scene import draw_batch, draw_stones, photograph_stones

CLASS_WEIGHTS = (1.0, 6.0, 4.0, 3.0, 4.0, 1.0)
HELD_OUT_SEED = 9_000_001


def soft_targets(target, weight):
    """Shares of each class in every 2 x 2 block, and the block's weight."""
    shares = F.one_hot(target, CLASSES).permute(0, 3, 1, 2).float() * weight[:, None]
    shares, weight = F.avg_pool2d(shares, 2), F.avg_pool2d(weight[:, None], 2)[:, 0]
    return shares / weight[:, None].clamp(min=1e-4), weight


def loss_of(scores, target, weight):
    """Weighted cross-entropy, and soft Dice of pit, fracture, chip and scratch over the batch."""
    shares, weight = soft_targets(target, weight)
    logs = scores.float().log_softmax(1)
    lean = torch.tensor(CLASS_WEIGHTS, device=scores.device).view(1, -1, 1, 1)
    entropy = -(shares * lean * logs).sum(1) * weight
    entropy = entropy.sum() / weight.sum().clamp(min=1)
    guess = logs[:, 1:5].exp() * weight[:, None]
    truth = shares[:, 1:5] * weight[:, None]
    both = (guess * shares[:, 1:5]).sum((0, 2, 3))
    dice = 1 - (2 * both + 1) / (guess.sum((0, 2, 3)) + truth.sum((0, 2, 3)) + 1)
    return entropy * 4 + 0.1 * dice.sum()


def turned(planes, target, weight, k):
    """The whole batch mirrored or turned by quarter turns, the lamp with it."""
    if k >= 4:
        planes, target, weight = planes.flip(-1), target.flip(-1), weight.flip(-1)
        planes = torch.cat([planes[:, :4], -planes[:, 4:5], planes[:, 5:6]], 1)
    for _ in range(k % 4):
        planes, target, weight = (v.rot90(1, (-2, -1)) for v in (planes, target, weight))
        planes = torch.cat([planes[:, :4], -planes[:, 5:6], planes[:, 4:5]], 1)
    return planes, target, weight


@torch.no_grad()
def temperature_of(net, chance, size, batches, batch):
    """The divisor of the scores that makes held-out cross-entropy least; takes the loss's class weights out first."""
    net.head.bias -= torch.tensor(CLASS_WEIGHTS, device=net.head.bias.device).log()
    scores, shares, weights = [], [], []
    for _ in range(batches):
        planes, target, weight = draw_batch(chance, batch, size)
        share, weight = soft_targets(target, weight)
        keep = weight.flatten() > 0.5
        scores.append(net(planes).float().permute(0, 2, 3, 1).reshape(-1, CLASSES)[keep])
        shares.append(share.permute(0, 2, 3, 1).reshape(-1, CLASSES)[keep])
    scores, shares = torch.cat(scores), torch.cat(shares)
    ladder = [0.5 * 1.03**k for k in range(60)]
    return min(ladder, key=lambda t: float(-(shares * (scores / t).log_softmax(1)).sum(1).mean()))


@torch.no_grad()
def held_out(net, size, batch, device):
    """Overlap (intersection over union) of each class on held-out tiles."""
    chance, both, either = Chance(HELD_OUT_SEED, device), 0, 0
    for _ in range(6):
        planes, target, weight = draw_batch(chance, batch, size)
        share, weight = soft_targets(target, weight)
        guess = F.one_hot(net(planes).argmax(1), CLASSES).permute(0, 3, 1, 2).float()
        truth = F.one_hot(share.argmax(1), CLASSES).permute(0, 3, 1, 2).float()
        use = (weight > 0.5)[:, None]
        both = both + (guess * truth * use).sum((0, 2, 3))
        either = either + (((guess + truth) > 0) * use).sum((0, 2, 3))
    return (both / either.clamp(min=1)).tolist()


def keep(net, folder):
    """Writes the weights to FOLDER/flaws.pt."""
    torch.save({name: value.cpu().contiguous() for name, value in net.state_dict().items()}, Path(folder) / "flaws.pt")


def fuse():
    """Lets the compiler merge the renderer's longest runs of plain arithmetic; a GPU gains, the values stay."""
    lines.path_distance = torch.compile(lines.path_distance)
    spots.outline_of = torch.compile(spots.outline_of)
    spots.spot_fields = torch.compile(spots.spot_fields)
    light.sky_seen = scene.sky_seen = torch.compile(light.sky_seen)
    scene.shade = torch.compile(light.shade)


@torch.no_grad()
def unsettle(net):
    """Takes back what `temperature_of` and its divisor did to finished weights, so that training goes on where it stopped."""
    net.head.weight /= net.temperature
    net.head.bias.copy_(net.head.bias / net.temperature + torch.tensor(CLASS_WEIGHTS, device=net.head.bias.device).log())
    net.temperature.fill_(1)


def batches(options, chance):
    """Batches without end; the same stones are lit and photographed `lamps` times, turned differently."""
    step = 0
    while True:
        stones = draw_stones(chance, options.batch, options.size)
        for _ in range(options.lamps):
            yield turned(*photograph_stones(chance, stones), (step * 3 + step // 8) % 8)
            step += 1


def shared_step(net, done):
    """Averages the gradients over all processes; returns the first one's share of the training done."""
    weights = [p for p in net.parameters() if p.grad is not None]
    everything = torch.cat([p.grad.flatten() for p in weights])
    together.all_reduce(everything)
    everything /= together.get_world_size()
    for p, grad in zip(weights, everything.split([p.numel() for p in weights])):
        p.grad.copy_(grad.view_as(p))
    clock = torch.tensor(done, device=everything.device)
    together.broadcast(clock, 0)
    return float(clock)


def train(options, say):
    """The training loop; the learning rate follows the clock or the steps, whichever limit is given.

    Started by torchrun, every process draws its own tiles and the gradients are averaged; the first one's weights count.
    """
    device = "cuda" if torch.cuda.is_available() else "cpu"
    rank, crowd = int(os.environ.get("RANK", 0)), "RANK" in os.environ
    if crowd:
        if device == "cuda":
            torch.cuda.set_device(int(os.environ["LOCAL_RANK"]))
        together.init_process_group("nccl" if device == "cuda" else "gloo")
    torch.manual_seed(options.seed)
    torch.backends.cudnn.benchmark = True
    net = FlawNet().to(device, memory_format=torch.channels_last)
    if device == "cuda" and not options.plain:
        fuse()
    if options.weights:
        net.load_state_dict(torch.load(options.weights, map_location=device, weights_only=True))
        unsettle(net)
    mean = torch.optim.swa_utils.AveragedModel(net, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(0.999), use_buffers=True)
    optimizer = torch.optim.AdamW(net.parameters(), lr=1e-6, weight_decay=0.01)
    chance, start, step, done = Chance(options.seed + 1000 * rank, device), time.time(), 0, 0.0
    source = batches(options, chance)
    while done < 1:
        for group in optimizer.param_groups:
            group["lr"] = options.rate * min(1, (step + 1) / 300) * (0.5 + 0.5 * math.cos(math.pi * done))
        planes, target, weight = next(source)
        planes = planes.contiguous(memory_format=torch.channels_last)
        with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
            scores = net(planes)
        loss = loss_of(scores, target, weight)
        optimizer.zero_grad(set_to_none=True)
        loss.backward()
        done = (step + 1) / options.steps if options.steps else (time.time() - start) / (60 * options.minutes)
        if crowd:
            done = shared_step(net, done)
        torch.nn.utils.clip_grad_norm_(net.parameters(), 2.0)
        optimizer.step()
        if step > 500:
            mean.update_parameters(net)
        running = loss.detach() if step == 0 else 0.99 * running + 0.01 * loss.detach()
        if step % 250 == 0:
            say(f"{time.time() - start:.0f} s, step {step}, loss {float(running):.4f}")
        if step % 1000 == 999 and rank == 0:
            keep(mean.module, options.out)
        step += 1
    say(f"{time.time() - start:.0f} s, {step} steps of {options.batch} tiles")
    return mean.module.eval(), device


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--out", required=True)
    parser.add_argument("--minutes", type=float, default=8)
    parser.add_argument("--steps", type=int, default=0)
    parser.add_argument("--batch", type=int, default=64)
    parser.add_argument("--size", type=int, default=256)
    parser.add_argument("--rate", type=float, default=3e-3)
    parser.add_argument("--lamps", type=int, default=2)
    parser.add_argument("--seed", type=int, default=4)
    parser.add_argument("--plain", action="store_true", help="do not compile the renderer")
    parser.add_argument("--weights", help="weights to go on from")
    options = parser.parse_args()
    folder = Path(options.out) / os.environ.get("RANK", "") if int(os.environ.get("RANK", 0)) else Path(options.out)
    folder.mkdir(parents=True, exist_ok=True)
    log = open(folder / "log.txt", "w", encoding="utf-8")

    def say(text):
        print(text, flush=True)
        print(text, file=log, flush=True)

    net, device = train(options, say)
    if int(os.environ.get("RANK", 0)):
        return
    net.temperature.fill_(temperature_of(net, Chance(HELD_OUT_SEED + 1, device), options.size, 4, min(options.batch, 32)))
    say(f"temperature {float(net.temperature):.3f}")
    say("overlap on held-out tiles: " + ", ".join(f"{v:.3f}" for v in held_out(net, options.size, min(options.batch, 32), device)))
    keep(net, folder)


if __name__ == "__main__":
    main()
