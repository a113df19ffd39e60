"""What the drawn tiles promise. Run: python -m unittest test_data (in this folder; seconds on one core)."""

import math
import unittest

import numpy as np
import torch

from camera import decode, encode, jpeg
from chance import Chance
from colors import unrolled
from fields import grid_mm
from light import draw_lamp, lamp_seen, lobe_share, shade, sky_seen
from lines import grinding_marks, press_scratches
from scene import CLASSES, draw_batch
from shape import stone_shape, surface_of
from spots import press_spots
from train import soft_targets, turned

torch.set_num_threads(1)


def dent(lamp_at):
    """Light on a gray plane with one round dent under a lamp at (x, y, z)."""
    x, y = grid_mm(64, "cpu")
    height = -0.4 * torch.exp(-(x**2 + y**2) / 0.5)
    lamp = {k: v[:1] for k, v in draw_lamp(Chance(1), 1).items()} | {"direction": torch.tensor([lamp_at])}
    gray, rough = torch.full((1, 3, 64, 64), 0.3), torch.full((1, 64, 64), 0.5)
    return shade(surface_of(height), gray, rough, lamp, lamp_seen(height, lamp), sky_seen(height), torch.full((1, 3), 0.5))[0, 1]


class Data(unittest.TestCase):
    def test_the_wall_that_faces_the_lamp_is_the_brighter_one(self):
        right = dent((0.6, 0.0, 0.8))
        self.assertGreater(float(right[32, 26] / right[32, 37]), 1.15)
        up = dent((0.0, 0.6, 0.8))
        self.assertGreater(float(up[37, 32] / up[26, 32]), 1.15)

    def test_grinding_marks_run_one_way_and_cover_the_asked_share_of_tiles(self):
        x, y = (v.expand(40, -1, -1) for v in grid_mm(96, "cpu"))
        height, streaks = grinding_marks(Chance(2), 40, x, y, 0.5)
        marked = [k for k in range(40) if float(streaks[k].std()) > 0]
        self.assertTrue(10 <= len(marked) <= 30)
        for k in marked:
            slopes = np.stack([g.ravel() for g in np.gradient(height[k].numpy())])
            small, large = np.linalg.eigvalsh(slopes @ slopes.T)
            self.assertLess(small, 0.25 * large)

    def test_scratches_lie_on_their_tiles_only_and_their_walls_lean_as_stated(self):
        chance = Chance(12, "cpu")
        x, y = (v.expand(6, -1, -1) for v in grid_mm(128, "cpu"))
        mask = torch.ones_like(x, dtype=torch.bool)
        on = torch.tensor([1.0, 1, 1, 1, 0, 0])
        cover, lean, place = press_scratches(chance, mask, x, y, on)
        self.assertEqual(float(cover[4:].max()), 0)
        self.assertGreater(float(cover[:4].max()), 0.05)
        self.assertLessEqual(float(cover.max()), 1)
        self.assertTrue(bool((cover[place == 0] < 0.6).all()))
        # Walls lean 10 to 35 degrees.
        steep = torch.hypot(*lean)[cover > 0]
        self.assertGreaterEqual(float(steep.min()), math.tan(math.radians(10)) - 1e-4)
        self.assertLessEqual(float(steep.max()), math.tan(math.radians(35)) + 1e-4)

    def test_the_lamp_is_not_told_on_about_a_seventh_of_the_tiles(self):
        told = torch.cat([draw_batch(Chance(20 + k), 16, 64)[0][:, 4:6, 0, 0].abs().sum(1) for k in range(8)])
        self.assertTrue(8 <= int((told == 0).sum()) <= 32)

    def test_a_pattern_draws_together_at_the_outline_and_stays_at_the_top(self):
        x, y = (v.expand(2, -1, -1) for v in grid_mm(96, "cpu"))
        dome = 6 - (x**2 + y**2) / 8
        over, _ = unrolled(Chance(8), x, y, dome)
        step = (over[:, 48, 1:] - over[:, 48, :-1]) / (x[:, 48, 1:] - x[:, 48, :-1])
        self.assertTrue(bool((step[:, 47] < 1.05).all()) and bool((step[:, 90] > step[:, 60]).all()))

    def test_the_same_seed_draws_the_same_batch(self):
        first, again = draw_batch(Chance(3), 2, 96), draw_batch(Chance(3), 2, 96)
        self.assertTrue(all(torch.equal(a, b) for a, b in zip(first, again)))
        self.assertFalse(torch.equal(first[0], draw_batch(Chance(4), 2, 96)[0]))

    def test_every_class_is_drawn_and_planes_are_finite_with_a_median_of_one(self):
        chance, seen = Chance(5), set()
        for _ in range(8):
            planes, target, weight = draw_batch(chance, 8, 128)
            seen |= set(target[weight > 0].unique().tolist())
            self.assertTrue(bool(torch.isfinite(planes).all()))
        self.assertEqual(seen, set(range(len(CLASSES))))
        gray = (planes[0, :3] * torch.tensor([0.2126, 0.7152, 0.0722]).view(3, 1, 1)).sum(0)
        self.assertAlmostEqual(float(gray[planes[0, 3] > 0.5].median()), 1, places=3)

    def test_specks_leave_the_shape_alone_and_pits_do_not(self):
        x, y = (v.expand(4, -1, -1) for v in grid_mm(96, "cpu"))
        height, mask = stone_shape(Chance(6), 4, x, y)
        specks = press_spots(Chance(7), height, mask, surface_of(height), x, y, (x, y), [0.0, 0.0, 1.0, 0.0])
        self.assertEqual(float(specks["depth"].abs().max()), 0)
        self.assertFalse(bool(specks["pitLabel"].any()))
        self.assertGreater(float(specks["speck"].max()), 0.5)
        pits = press_spots(Chance(7), height, mask, surface_of(height), x, y, (x, y), [0.0, 1.0, 0.0, 0.0])
        self.assertGreater(float(pits["depth"][pits["pitLabel"]].mean()), 0.05)

    # Walter et al. 2007, eq. 33, integrated over the disc: a^2 / (a^2 + alpha^2) in the middle.
    def test_the_middle_of_a_highlight_has_its_closed_form(self):
        alpha, radius = torch.tensor([0.02, 0.1, 0.4]), torch.tensor(0.05)
        expected = radius**2 / (radius**2 + alpha**2)
        self.assertTrue(torch.allclose(lobe_share(torch.tensor(0.0), alpha, radius), expected, atol=1e-5))

    def test_turning_a_tile_turns_its_lamp(self):
        planes = torch.zeros(1, 6, 4, 4)
        planes[:, 4], planes[:, 0, 1, 3] = 1, 5
        out, _, _ = turned(planes, torch.zeros(1, 4, 4), torch.zeros(1, 4, 4), 1)
        row, column = (out[0, 0] == 5).nonzero()[0].tolist()
        self.assertEqual((row, column), (0, 1))
        self.assertEqual((float(out[0, 4, 0, 0]), float(out[0, 5, 0, 0])), (0, 1))

    def test_soft_targets_ignore_what_has_no_weight(self):
        target, weight = torch.tensor([[[1, 1], [0, 2]]]), torch.tensor([[[1.0, 1.0], [1.0, 0.0]]])
        shares, kept = soft_targets(target, weight)
        self.assertTrue(torch.allclose(shares[0, :3, 0, 0], torch.tensor([1 / 3, 2 / 3, 0])))
        self.assertAlmostEqual(float(kept[0, 0, 0]), 0.75)

    def test_a_gentle_jpeg_and_the_transfer_curve_hardly_change_a_picture(self):
        x, y = grid_mm(32, "cpu")
        picture = (0.5 + 0.2 * (x + 0.5 * y).sin()).expand(1, 3, -1, -1)
        self.assertLess(float((jpeg(picture, 98) - picture).abs().max()), 0.02)
        self.assertGreater(float((jpeg(picture, 20) - picture).abs().max()), 0.02)
        self.assertLess(float((decode(encode(picture)) - picture).abs().max()), 1e-5)


if __name__ == "__main__":
    unittest.main()
