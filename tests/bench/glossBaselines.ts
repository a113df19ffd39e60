import { boxAround } from '../../src/image/boxAround';
import { cropLinear } from '../../src/image/cropLinear';
import { fillPolygon } from '../../src/image/fillPolygon';
import { luminance } from '../../src/image/luminance';
import type { Photo } from '../../src/image/photo';
import type { Mask, Raster } from '../../src/image/raster';
import { shrinkMask } from '../../src/measure/shrinkMask';

/** The stone's rim, where its outline would count as an edge, is left out: share of its radius. */
const RIM_SHARE = 0.05;
/** A pixel counts as highlight from this share of what a perfect polish would mirror on. */
const BRIGHT_SHARE = 0.5;

/** Two scores of gloss as they are often taken, larger for glossier. */
export interface PlainScores {
  /** Steepest rise of light on the stone, in mirrored lamps per pixel. */
  readonly gradientScore: number;
  /** Share of the stone's pixels that are at least half as bright as a perfect polish. */
  readonly areaScore: number;
}

/**
 * Scores a stone by its brightest gradient and by the area of its highlight, for comparison with the fit.
 *
 * @param photo - The photo.
 * @param outline - The stone in it, row and column.
 * @param mirrorRadiance - What a perfect polish mirrors of the lamp, 1 = the clipping level: takes out the exposure.
 */
export function glossBaselines(
  photo: Photo,
  outline: readonly (readonly [number, number])[],
  mirrorRadiance: number,
): PlainScores {
  const rows = outline.map(([row]) => row);
  const columns = outline.map(([, column]) => column);
  const [top, bottom, left, right] = [
    Math.min(...rows),
    Math.max(...rows),
    Math.min(...columns),
    Math.max(...columns),
  ];
  const center = { row: (top + bottom) / 2, column: (left + right) / 2 };
  const size = { width: photo.widthPx, height: photo.heightPx };
  const box = boxAround(center, Math.max(bottom - top, right - left) / 2 + 1, size);
  const light = luminance(cropLinear(photo, box));
  const inBox = outline.map(([row, column]) => [row - box.row, column - box.column] as const);
  const whole = fillPolygon(inBox, box.width, box.height);
  const areaPx = whole.data.reduce((sum, inside) => sum + inside, 0);
  const sound = shrinkMask(whole, Math.max(1, Math.round(RIM_SHARE * Math.sqrt(areaPx / Math.PI))));
  return {
    gradientScore: steepestRise(light, sound) / mirrorRadiance,
    areaScore: brightShare(light, sound, BRIGHT_SHARE * mirrorRadiance),
  };
}

/** Largest length of the gradient by central differences, per pixel. */
export function steepestRise({ width, data }: Raster, mask: Mask): number {
  let most = 0;
  for (let i = width + 1; i < data.length - width - 1; i++) {
    if (!mask.data[i]) continue;
    const across = (data[i + 1]! - data[i - 1]!) / 2;
    const down = (data[i + width]! - data[i - width]!) / 2;
    most = Math.max(most, Math.hypot(across, down));
  }
  return most;
}

/** Share of the masked pixels above a level; 0 without any. */
export function brightShare({ data }: Raster, mask: Mask, level: number): number {
  let inside = 0;
  let bright = 0;
  for (let i = 0; i < data.length; i++) {
    if (!mask.data[i]) continue;
    inside++;
    if (data[i]! > level) bright++;
  }
  return inside === 0 ? 0 : bright / inside;
}
