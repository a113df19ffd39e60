import type { DarkSpot } from './darkSpots';
import type { StoneSurface } from './stoneSurface';

/** What tells a hole from a mark of color, measured on a dark spot. Light is in ln units. */
export interface SpotSigns {
  /** How much darker the core is than the ring around it. */
  readonly depth: number;
  /** Light of the half away from the lamp less that of the half toward it: a hole's far wall faces the lamp. */
  readonly dipole: number;
  /** The same difference across the lamp's direction, unsigned: near 0 in a hole. */
  readonly crossDipole: number;
  /** Light of the ring away from the lamp less that toward it: shading or an edge of color beneath. */
  readonly slope: number;
  readonly crossSlope: number;
  /** Light just past the spot on the side away from the lamp, less the ring's. */
  readonly lip: number;
  /** Least light of the ring's sectors less the core's, share of the depth: 1 for an island, 0 where a line or band runs on. */
  readonly closed: number;
  /** Standard deviation of the ring's sectors. */
  readonly unrest: number;
  /** Standard deviation within the core. */
  readonly relief: number;
  /** Distance of the core's chromaticity from those that the ring's turns to by shade and white light. */
  readonly hueOff: number;
  /** Saturation of the core as a share of the ring's, 0 to 1. */
  readonly saturation: number;
  /** Share of the core's luminance in the ring's, linear light. */
  readonly ratio: number;
  /** Chromaticity of the core: red and blue shares of the sum. */
  readonly red: number;
  readonly blue: number;
}

const SECTORS = 12;
const RING = { from: 1.35, to: 1.95 };
const CORE = 0.7;

/** Sum and count of samples. */
class Sum {
  total = 0;
  squares = 0;
  count = 0;
  add(value: number): void {
    this.total += value;
    this.squares += value * value;
    this.count++;
  }
  mean(otherwise: number): number {
    return this.count > 0 ? this.total / this.count : otherwise;
  }
  deviation(): number {
    if (this.count < 2) return 0;
    const mean = this.total / this.count;
    return Math.sqrt(Math.max(0, this.squares / this.count - mean * mean));
  }
}

/**
 * Measures a dark spot in the lamp's frame.
 *
 * @param surface - The stone.
 * @param spot - The spot, inside the picture.
 */
export function spotSigns({ logLight, color, lampSide, inner }: StoneSurface, spot: DarkSpot): SpotSigns {
  const { width, height } = logLight;
  const [lampX, lampY] = lampSide;
  const radius = spot.radiusPx;
  const reach = Math.ceil(RING.to * radius);
  const core = new Sum();
  const sides = Array.from({ length: 8 }, () => new Sum());
  const [toward, away, left, right, ringToward, ringAway, ringLeft, ringRight] = sides as [
    Sum,
    Sum,
    Sum,
    Sum,
    Sum,
    Sum,
    Sum,
    Sum,
  ];
  const lip = new Sum();
  const sectors = Array.from({ length: SECTORS }, () => new Sum());
  const ring = new Sum();
  const coreColor = [0, 0, 0];
  const ringColor = [0, 0, 0];
  for (let y = Math.max(-reach, -spot.row); y <= reach && spot.row + y < height; y++) {
    for (let x = Math.max(-reach, -spot.column); x <= reach && spot.column + x < width; x++) {
      const i = (spot.row + y) * width + spot.column + x;
      const rho = Math.hypot(x, y) / radius;
      if (rho > RING.to) continue;
      if (!inner.data[i] && rho > 1) continue;
      const u = (x * lampX - y * lampY) / radius;
      const v = (x * lampY + y * lampX) / radius;
      const value = logLight.data[i]!;
      if (rho <= CORE || (x === 0 && y === 0)) {
        core.add(value);
        for (let c = 0; c < 3; c++) coreColor[c]! += color.data[3 * i + c]!;
      }
      if (rho <= 1.15) {
        if (Math.abs(u) > 0.25) (u > 0 ? toward : away).add(value);
        if (Math.abs(v) > 0.25) (v > 0 ? left : right).add(value);
      }
      if (rho > 0.75 && rho < 1.5 && u < -0.7 * rho) lip.add(value);
      if (rho >= RING.from) {
        ring.add(value);
        for (let c = 0; c < 3; c++) ringColor[c]! += color.data[3 * i + c]!;
        sectors[Math.floor(((Math.atan2(y, x) / (2 * Math.PI) + 1) % 1) * SECTORS)]!.add(value);
        if (Math.abs(u) > 0.5 * rho) (u > 0 ? ringToward : ringAway).add(value);
        if (Math.abs(v) > 0.5 * rho) (v > 0 ? ringLeft : ringRight).add(value);
      }
    }
  }
  const coreLight = core.mean(0);
  const around = sectors
    .filter((s) => s.count > 0)
    .map((s) => s.mean(0))
    .sort((a, b) => a - b);
  const ringLight = around[around.length >> 1] ?? coreLight;
  const depth = ringLight - coreLight;
  const difference = (a: Sum, b: Sum) => a.mean(ringLight) - b.mean(ringLight);
  const spread = new Sum();
  for (const value of around) spread.add(value);
  const chroma = chromaticities(coreColor, ringColor);
  return {
    depth,
    dipole: difference(away, toward),
    crossDipole: Math.abs(difference(left, right)),
    slope: difference(ringAway, ringToward),
    crossSlope: Math.abs(difference(ringLeft, ringRight)),
    lip: lip.mean(ringLight) - ringLight,
    closed: Math.min(1.5, Math.max(-1, ((around[1] ?? coreLight) - coreLight) / Math.max(0.02, depth))),
    unrest: spread.deviation(),
    relief: core.deviation(),
    ...chroma,
    ratio: Math.min(
      2,
      sum(coreColor) / Math.max(1, core.count) / Math.max(1e-6, sum(ringColor) / Math.max(1, ring.count)),
    ),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

function chromaticities(coreColor: readonly number[], ringColor: readonly number[]) {
  const share = (rgb: readonly number[], c: number) => rgb[c]! / Math.max(1e-9, sum(rgb)) - 1 / 3;
  const core = [share(coreColor, 0), share(coreColor, 2)] as const;
  const ring = [share(ringColor, 0), share(ringColor, 2)] as const;
  const length2 = ring[0] ** 2 + ring[1] ** 2;
  const along = (core[0] * ring[0] + core[1] * ring[1]) / Math.max(1e-9, length2);
  const kept = Math.min(1, Math.max(0, along));
  return {
    hueOff: Math.hypot(core[0] - kept * ring[0], core[1] - kept * ring[1]),
    saturation: Math.min(2, Math.max(-1, (core[0] * ring[0] + core[1] * ring[1] + 4e-4) / (length2 + 4e-4))),
    red: core[0],
    blue: core[1],
  };
}
