import type { Mask, Raster } from '../../src/image/raster';
import { blurGaussian } from '../../src/measure/blurGaussian';
import type { Blur } from '../../src/measure/stoneSurface';

export const PX_PER_MM = 10;
export const SIDE_PX = 160;
export type Rgb = readonly [number, number, number];

/** What lies at a place of a drawn stone: x right and y up from its middle, mm; linear light. */
export type Paint = (xMm: number, yMm: number) => Rgb;

/** A round stone of 14 mm at 10 px/mm with a camera's grain of 1.5 %, the same for the same drawing. */
export function drawSkin(paint: Paint): { color: Raster; mask: Mask } {
  const data = new Float32Array(3 * SIDE_PX * SIDE_PX);
  const inside = new Uint8Array(SIDE_PX * SIDE_PX);
  let seed = 1;
  for (let i = 0; i < inside.length; i++) {
    const x = ((i % SIDE_PX) + 0.5 - SIDE_PX / 2) / PX_PER_MM;
    const y = (SIDE_PX / 2 - Math.floor(i / SIDE_PX) - 0.5) / PX_PER_MM;
    inside[i] = Math.hypot(x, y) < 7 ? 1 : 0;
    const color = inside[i] ? paint(x, y) : ([0.3, 0.3, 0.3] as const);
    // Numerical Recipes' quick and dirty generator: even and repeatable.
    seed = (1664525 * seed + 1013904223) % 4294967296;
    const grain = 1 + 0.05 * (seed / 4294967296 - 0.5);
    for (let c = 0; c < 3; c++) data[3 * i + c] = color[c]! * grain;
  }
  return {
    color: { width: SIDE_PX, height: SIDE_PX, channels: 3, data },
    mask: { width: SIDE_PX, height: SIDE_PX, data: inside },
  };
}

/** Light in a parabolic bowl as a share of that around it: falls evenly toward the lamp. */
export function bowlShade(
  [x, y]: readonly [number, number],
  [lampX, lampY]: readonly [number, number],
  radiusMm: number,
): number {
  const rho = Math.hypot(x, y) / radiusMm;
  if (rho > 1) return 1;
  return Math.exp(-0.3 - (0.4 * (x * lampX + y * lampY)) / radiusMm);
}

export const scaled = ([r, g, b]: Rgb, by: number): Rgb => [r * by, g * by, b * by];

/** The blur of the measurements themselves, without OpenCV. */
export const plainBlur: Blur = (raster, sigmaPx) => {
  const values = Float64Array.from(raster.data);
  blurGaussian(values, raster.width, raster.height, sigmaPx);
  return { ...raster, data: Float32Array.from(values) };
};
