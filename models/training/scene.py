"""One batch of training tiles: shape, flaws, color, light, camera; pictures, masks and lamp with exact labels."""

import torch
import torch.nn.functional as F

from camera import photograph
from colors import mixed, palette, stone_colors
from fields import grid_mm, noise, per_tile, smooth_step
from light import draw_lamp, lamp_seen, shade, sky_seen
from lines import bite_chips, grinding_marks, press_fractures, press_scratches
from shape import stone_shape, surface_of
from spots import press_spots

CLASSES = ("sound", "pit", "fracture", "chip", "scratch", "frosting")
SOUND, A_PIT, A_FRACTURE, A_CHIP, A_SCRATCH, FROSTED = range(6)
WEIGHTS = torch.tensor([0.2126, 0.7152, 0.0722])


def warped_grid(chance, batch, x, y):
    """Coordinates pushed about a little, so that outlines are ragged."""
    amount = per_tile(chance.log_between(0.005, 0.08, batch))
    wave = chance.log_between(0.5, 2.0, batch)
    return tuple(v + amount * noise(chance, x.expand(batch, -1, -1), y.expand(batch, -1, -1), wave, 2) for v in (x, y))


def frosting(chance, mask, x, y):
    """Unground or frosted patches: where, and how bumpy (mm)."""
    batch = mask.shape[0]
    field = noise(chance, x, y, chance.log_between(5, 25, batch), 3)
    on = chance.coin(0.2, batch)
    edge = per_tile(chance.between(0.3, 1.6, batch))
    where = smooth_step(0, 0.25, field - edge) * per_tile(on) * mask
    return where, per_tile(chance.log_between(0.004, 0.05, batch))


def painted(chance, batch, grid, height, spots, lines, frost, broken, alpha):
    """Albedo and roughness of everything, with dirt, residue, specks and wet film."""
    x, y = grid
    color = stone_colors(chance, batch, x, y, height)
    broken = broken.float()
    floor = torch.maximum(spots["floor"], torch.maximum(lines["floor"], broken))
    paler = torch.full((batch, 3), 0.46, device=color.device)
    color = mixed(color, floor * per_tile(chance.between(0, 0.3, batch)), paler)
    color = mixed(color, broken * per_tile(chance.between(-0.2, 0.4, batch)).clamp(min=0), paler)
    color = mixed(color, torch.maximum(frost, spots["bruise"]) * per_tile(chance.between(-0.05, 0.5, batch)).clamp(min=0), paler)
    specks = palette(chance, batch, 8)
    dark = chance.coin(0.65, batch, 8, 1)
    specks = specks * (1 - dark) + dark * chance.log_between(0.008, 0.06, batch, 8, 1)
    chosen = torch.gather(specks, 1, spots["which"].flatten(1)[:, :, None].expand(-1, -1, 3)).view(*x.expand(batch, -1, -1).shape, 3)
    color = mixed(color, spots["speck"], chosen.permute(0, 3, 1, 2))
    vein = palette(chance, batch, 1)[:, 0] * (1 - chance.coin(0.5, batch, 1) * 0.9)
    color = mixed(color, lines["line"] * per_tile(chance.between(0.4, 1, batch)), vein)
    residue = chance.coin(0.12, batch, 1)
    dirt = residue * 0.55 + (1 - residue) * 0.011
    color = mixed(color, torch.maximum(spots["dirt"], lines["dirt"]), dirt.expand(-1, 3))
    rough = torch.maximum(floor, torch.maximum(spots["bruise"], frost))
    alpha = per_tile(alpha)
    spread = alpha * (1 - rough) + torch.maximum(alpha, per_tile(chance.between(0.3, 0.6, batch))) * rough
    wet = per_tile(chance.coin(0.04, batch)) * smooth_step(-0.3, 0.3, noise(chance, x, y, chance.between(8, 30, batch)))
    return color * (1 - 0.4 * wet)[:, None], spread * (1 - wet) + 0.006 * wet


def labels_of(mask, spots, lines, scratched, frost, bitten, alpha, contrast):
    """Class of every pixel, and the weight the loss gives it."""
    target = torch.zeros(mask.shape, dtype=torch.long, device=mask.device)
    weight = torch.where(mask, 1.0, 0.25)
    smooth = per_tile(alpha < 0.22)
    frosted = ((frost > 0.5) & smooth) | spots["bruiseLabel"] & smooth
    unsure = ((frost > 0.05) & ~(frost > 0.5)) | ((frost > 0.05) & ~smooth) | (spots["bruise"] > 0.05) & ~smooth
    target[frosted] = FROSTED
    shown = scratched & (contrast > 0.08)
    unsure = unsure | (scratched & ~shown)
    target[shown] = A_SCRATCH
    target[bitten] = A_CHIP
    target[lines["label"]] = A_FRACTURE
    target[spots["pitLabel"]] = A_PIT
    unsure = (unsure & (target == SOUND)) | (spots["leftOut"] & (target != A_PIT) & (target != A_FRACTURE)) | (lines["leftOut"] & (target == SOUND))
    weight = torch.where(unsure, 0.0, weight)
    target[~mask] = SOUND
    return target, weight


def stone_mask(chance, mask):
    """The stone as the program finds it: now and then a pixel or two too large or too small."""
    grow = int(chance.pick([1, 2, 4, 2, 1], 1)[0]) - 2
    field = mask.float()[:, None]
    if grow > 0:
        field = F.max_pool2d(field, 2 * grow + 1, 1, grow)
    elif grow < 0:
        field = 1 - F.max_pool2d(1 - field, 1 - 2 * grow, 1, -grow)
    return field[:, 0]


def planes(light, mask, lamp_xy):
    """The six input planes: linear red, green, blue over the stone's median luminance; mask; lamp x; lamp y."""
    batch, _, rows, columns = light.shape
    luminance = torch.einsum("c,bcrs->brs", WEIGHTS.to(light.device), light)
    inside = torch.where(mask > 0.5, luminance, torch.nan).flatten(1)
    middle = inside.nanmedian(1).values.nan_to_num(1.0).clamp(min=1e-4)
    sides = [lamp_xy[:, k].view(-1, 1, 1, 1).expand(batch, 1, rows, columns) for k in (0, 1)]
    return torch.cat([light / middle.view(-1, 1, 1, 1), mask[:, None], *sides], 1)


def uneven_light(chance, batch, x, y):
    """Brightness that drifts over the tile, 0.4 to 2.5; 1 on five tiles of six."""
    amount = chance.coin(0.17, batch) * chance.between(0.1, 0.45, batch)
    return (per_tile(amount) * noise(chance, x, y, chance.between(10, 40, batch), 2)).exp().clamp(0.4, 2.5)


def neighbor_shadow(chance, batch, x, y):
    """Lamp share left by the soft shadow of something beside the stone; 1 on nine tiles of ten."""
    turn = chance.between(0, 6.2832, batch)
    along = per_tile(turn.cos()) * x + per_tile(turn.sin()) * y + 0.4 * noise(chance, x.expand(batch, -1, -1), y.expand(batch, -1, -1), chance.between(6, 20, batch))
    edge = smooth_step(-1, 1, (along - per_tile(chance.between(-8, 8, batch))) / per_tile(chance.log_between(0.15, 3, batch)))
    return 1 - per_tile(chance.coin(0.1, batch)) * edge


@torch.no_grad()
def draw_stones(chance, batch, size=256):
    """Stones without light: heights, scratches, colors, roughness, masks and everything the labels need."""
    x, y = (v.expand(batch, -1, -1) for v in grid_mm(size, chance.device))
    height, mask = stone_shape(chance, batch, x, y)
    sound = surface_of(height)
    alpha = chance.log_between(0.005, 0.5, batch)
    alpha = torch.where(chance.coin(0.42, batch) > 0, chance.between(0.2, 0.5, batch), alpha)
    bitten_height, bitten, faint = bite_chips(chance, height, mask, sound, x, y, 0.32)
    warped = warped_grid(chance, batch, x, y)
    spots = press_spots(chance, height, mask, sound, x, y, warped, [0.08, 0.47, 0.41, 0.04])
    lines = press_fractures(chance, mask, sound, warped, (0.24, 0.07))
    frost, bumps = frosting(chance, mask, x, y)
    scratch = press_scratches(chance, mask, x, y, chance.coin(0.32, batch) * (alpha < 0.25))
    upright = 1 / surface_of(bitten_height)[2].clamp(min=0.3)
    rough = torch.maximum(frost, torch.maximum(spots["bruise"], 0.4 * spots["floor"]))
    ground = bumps * noise(chance, x, y, chance.log_between(0.25, 0.9, batch), 2) * rough
    depth = torch.maximum(spots["depth"], lines["depth"])
    pressed = bitten_height - torch.where(mask, (depth - ground) * upright, 0)
    marks, streaks = grinding_marks(chance, batch, x, y, 0.12)
    pressed = pressed + torch.where(mask, marks, 0)
    albedo, spread = painted(chance, batch, (x, y), height, spots, lines, frost, bitten, alpha)
    albedo = albedo * streaks.exp()[:, None]
    tray = chance.between(0.2, 0.8, batch, 1) * torch.exp(chance.normal(batch, 3) * 0.04)
    grain = 1 + 0.05 * noise(chance, x, y, chance.between(0.5, 1.5, batch), 2)
    albedo = torch.where(mask[:, None], albedo, tray[:, :, None, None] * grain[:, None])
    spots["leftOut"] = spots["leftOut"] | faint
    sky = sky_seen(pressed)
    # Light thrown from wall to wall fills a pit in a pale stone.
    sky = sky + (1 - sky) * 0.7 * albedo.mean(1)
    return {"grid": (x, y), "pressed": pressed, "scratch": scratch[:2], "albedo": albedo, "tray": tray,
            "spread": torch.where(mask, spread, 0.9), "sky": sky, "mask": mask, "alpha": alpha,
            "parts": (spots, lines, scratch[2], frost, bitten)}


def scratched_light(chance, light, scratch, surface, rest):
    """The light with grooves in it: their walls lean to both sides and are rough, whatever the polish around them."""
    cover, lean = scratch
    albedo, spread, *others = rest
    batch = cover.shape[0]
    albedo = mixed(albedo, per_tile(chance.between(0, 0.3, batch)).expand_as(cover), torch.full((batch, 3), 0.46, device=cover.device))
    spread = torch.maximum(spread, per_tile(chance.between(0.2, 0.4, batch)))
    groove = 0
    for side in (-1, 1):
        zx, zy = surface[0] + side * lean[0], surface[1] + side * lean[1]
        groove = groove + shade((zx, zy, (1 + zx**2 + zy**2).rsqrt()), albedo, spread, *others) / 2
    return light + cover[:, None] * (groove - light)


@torch.no_grad()
def photograph_stones(chance, stones):
    """Lights the stones with a new lamp and takes a picture; on some tiles the lamp's direction is not told (0, 0).

    Returns planes (B x 6 x S x S), classes (B x S x S) and weights of the loss (B x S x S).
    """
    mask, pressed = stones["mask"], stones["pressed"]
    batch = mask.shape[0]
    lamp = draw_lamp(chance, batch)
    seen = lamp_seen(pressed, lamp) * neighbor_shadow(chance, batch, *stones["grid"])
    rest = (stones["albedo"], stones["spread"], lamp, seen, stones["sky"], stones["tray"])
    before = shade(surface_of(pressed), *rest)
    light = scratched_light(chance, before, stones["scratch"], surface_of(pressed), rest)
    contrast = (light - before).mean(1).abs() / (before.mean(1) + 0.02)
    contrast = F.max_pool2d(contrast[:, None], 3, 1, 1)[:, 0]
    target, weight = labels_of(mask, *stones["parts"], stones["alpha"], contrast)
    picture = photograph(chance, light * uneven_light(chance, batch, *stones["grid"])[:, None])
    told = 1 - chance.coin(0.15, batch, 1)
    return planes(picture, stone_mask(chance, mask), lamp["direction"][:, :2] * told), target, weight


def draw_batch(chance, batch, size=256):
    """A batch of tiles: new stones under a new lamp."""
    return photograph_stones(chance, draw_stones(chance, batch, size))
