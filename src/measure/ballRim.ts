import type { Raster } from '../image/raster';
import { type Circle, type CircleFit, circleFit } from './circleFit';
import { samplePixel } from './samplePixel';

const RAYS = 240;
/** The rim is sought this far to both sides of the expected radius. */
const SEARCH = 0.14;
/** Rays whose steepest rise is below this share of the usual rise carry no edge (the ball's own shadow). */
const LEAST_RISE = 0.35;

/**
 * Finds the reference ball's rim to a fraction of a pixel.
 *
 * Along each ray the steepest rise from dark glass to bright tray is located between pixels, and a circle
 * is fitted to the rises; the side in the ball's own shadow has none and is left out.
 *
 * @param light - One-channel radiance around the ball, full size.
 * @param start - Circle within about a tenth of the right radius.
 * @returns The circle with the share of rays on it, or null when there is no such rim.
 */
export function ballRim(light: Raster, start: Circle): CircleFit | null {
  let circle: CircleFit | null = { ...start, onCircle: 0 };
  for (const search of [SEARCH, SEARCH / 2, SEARCH / 3]) {
    const rises: Rise[] = Array.from({ length: RAYS }, (_, i) =>
      steepestRise(light, circle!, (2 * Math.PI * i) / RAYS, search),
    );
    const usual = rises.map((rise) => rise.height).sort((a, b) => a - b)[Math.floor(0.75 * RAYS)]!;
    if (!(usual > 0)) return null;
    const points = rises.filter((rise) => rise.height > LEAST_RISE * usual).map((rise) => rise.point);
    circle = circleFit(points, circle);
    if (!circle) return null;
    circle = { ...circle, onCircle: (circle.onCircle * points.length) / RAYS };
  }
  return circle;
}

interface Rise {
  readonly point: readonly [number, number];
  /** Slope of radiance along the ray, per pixel. */
  readonly height: number;
}

/** Spacing of the samples along a ray, pixels; the rise is that of a pixel to both sides. */
const PITCH = 0.5;
const PIXEL = 1 / PITCH;

function steepestRise(light: Raster, circle: Circle, angle: number, search: number): Rise {
  const down = Math.sin(angle);
  const right = Math.cos(angle);
  const first = circle.radiusPx * (1 - search);
  const count = Math.max(5, Math.ceil((2 * search * circle.radiusPx) / PITCH));
  const samples = new Float64Array(count + 2 * PIXEL);
  for (let j = 0; j < samples.length; j++) {
    const r = first + (j - PIXEL) * PITCH;
    samples[j] = samplePixel(light, circle.row + r * down, circle.column + r * right);
  }
  const slope = (i: number) => samples[i + 2 * PIXEL]! - samples[i]!;
  let k = 1;
  for (let i = 2; i < count - 1; i++) if (slope(i) > slope(k)) k = i;
  const [before, here, after] = [slope(k - 1), slope(k), slope(k + 1)];
  const bend = before - 2 * here + after;
  const shift = bend < 0 ? Math.max(-0.5, Math.min(0.5, (0.5 * (before - after)) / bend)) : 0;
  const r = first + (k + shift) * PITCH;
  return {
    point: [circle.row + r * down, circle.column + r * right],
    height: here / 2,
  };
}
