import type { Mask, Raster } from '../image/raster';
import type { BowlFit } from './bowlFit';

/** How the color inside a bowl compares with that of the ring around it. */
export interface BowlColor {
  /** Distance of the dark side's chromaticity from those that the ring's turns to by shade and white light. */
  readonly hueOff: number;
  /** Saturation of the dark side as a share of the ring's; 1 when both are gray. */
  readonly saturation: number;
  /** Light of the darkest third inside as a share of the ring's median, linear. */
  readonly darkest: number;
  /** Chromaticity of the dark side: shares of red and blue, less a third. */
  readonly red: number;
  readonly blue: number;
  /** Chromaticities of the ring's pixels about their mean: how patterned the surroundings are. */
  readonly ringSpread: number;
}

/** Ring around the bowl, in radii. */
const RING = { from: 1.2, to: 1.75 };
/** Pixels read along a radius, about; in larger bowls some are left out. */
const FINENESS = 5;
/** Variance of chromaticity below which gray is gray. */
const GRAY = 4e-4;

/**
 * Compares colors inside and around a bowl. Shade scales all three channels alike and a broken skin adds white,
 * so the chromaticity of a hole lies between its surroundings' and white; a mineral's need not.
 *
 * @param color - RGB in linear light, the lamp's color divided out.
 * @param inner - Pixels that count.
 * @param bowl - Place and size.
 */
export function bowlColor(color: Raster, inner: Mask, bowl: BowlFit): BowlColor {
  const inside: [number, number, number, number][] = [];
  const around: [number, number, number, number][] = [];
  const step = Math.max(1, Math.floor(bowl.radiusPx / FINENESS));
  const reach = step * Math.floor((RING.to * bowl.radiusPx) / step);
  for (let y = -reach; y <= reach; y += step) {
    for (let x = -reach; x <= reach; x += step) {
      const row = bowl.row + y;
      const column = bowl.column + x;
      if (row < 0 || column < 0 || row >= color.height || column >= color.width) continue;
      const i = row * color.width + column;
      const rho = Math.hypot(y, x) / bowl.radiusPx;
      if (rho > RING.to || (rho > 1 && (rho < RING.from || !inner.data[i]))) continue;
      const [r, g, b] = [color.data[3 * i]!, color.data[3 * i + 1]!, color.data[3 * i + 2]!];
      (rho <= 1 ? inside : around).push([r + g + b, r, g, b]);
    }
  }
  inside.sort((a, b) => a[0] - b[0]);
  around.sort((a, b) => a[0] - b[0]);
  const third = inside.slice(0, Math.max(1, Math.ceil(inside.length / 3)));
  const core = chromaticity(third);
  const ring = around.length > 0 ? chromaticity(around) : core;
  const length2 = ring[0] ** 2 + ring[1] ** 2;
  const along = core[0] * ring[0] + core[1] * ring[1];
  const kept = Math.min(1, Math.max(0, along / Math.max(1e-9, length2)));
  const apart = around.map((one) => {
    const [red, blue] = chromaticity([one]);
    return (red - ring[0]) ** 2 + (blue - ring[1]) ** 2;
  });
  const middle = around[around.length >> 1]?.[0] ?? third[0]![0];
  return {
    hueOff: Math.hypot(core[0] - kept * ring[0], core[1] - kept * ring[1]),
    saturation: Math.min(2, Math.max(-1, (along + GRAY) / (length2 + GRAY))),
    darkest: total(third, 0) / third.length / Math.max(1e-6, middle),
    red: core[0],
    blue: core[1],
    ringSpread: Math.sqrt(apart.reduce((sum, value) => sum + value, 0) / Math.max(1, apart.length)),
  };
}

const total = (pixels: readonly (readonly number[])[], k: number) =>
  pixels.reduce((sum, pixel) => sum + pixel[k]!, 0);

function chromaticity(pixels: readonly (readonly number[])[]): [number, number] {
  const all = Math.max(1e-9, total(pixels, 0));
  return [total(pixels, 1) / all - 1 / 3, total(pixels, 3) / all - 1 / 3];
}
