import { boxOfPlaces } from '../image/boxOfPlaces';
import { cropLinear } from '../image/cropLinear';
import { luminance } from '../image/luminance';
import type { Photo } from '../image/photo';
import type { Box, Raster } from '../image/raster';
import { gaussianBlur } from '../kernels/gaussianBlur';
import type { LightSlopes } from '../measure/lightSlopes';
import { pictureShift } from '../measure/pictureShift';
import { samplePixel } from '../measure/samplePixel';
import { withoutGlints } from '../measure/withoutGlints';
import type { FlawPlanes } from './flawPlanes';
import type { PixelPoint } from './report';
import type { SecondLamp } from './secondLamp';

/** How far a stone may lie beside where the tray's move puts it, mm: outlines err with the shadows. */
const STONE_OFF_MM = 1;
/** A stone whose pattern agrees less than this with the second photo stays where the tray's move puts it. */
const LEAST_LIKENESS = 0.2;
/** Light at which a channel is taken for clipped, share of full scale. */
const CLIPPED = 0.97;
/** Samples along each side of a place. */
const SAMPLES = 2;
/** Added to light before the logarithm, share of the stone's median. */
const FLOOR_SHARE = 0.05;

/** One stone's light under two lamps, at the network's places. */
export interface UnderBoth {
  /** Logarithm of the first photo less that of the second; NaN where either shows nothing. */
  readonly difference: Raster;
  /** First lamp's direction less the second's: x right, y up. */
  readonly way: readonly [number, number];
}

/**
 * Compares one stone's shading under two lamps.
 *
 * @param photo - The first photo.
 * @param planes - The stone in it.
 * @param lampXy - Toward its lamp.
 * @param second - The second photo, laid onto the first.
 */
export function stoneUnderBoth(
  photo: Photo,
  planes: FlawPlanes,
  lampXy: readonly [number, number],
  second: SecondLamp,
): UnderBoth {
  const own = logsIn(photo, planes, (at) => at);
  const rough = logsIn(second.photo, planes, second.toSecond);
  const reach = Math.round(STONE_OFF_MM / planes.mmPerPlace);
  const shift = pictureShift(slopesOf(own, planes), slopesOf(rough, planes), { down: 0, right: 0 }, reach);
  const isSure = shift.likeness >= LEAST_LIKENESS;
  const [down, right] = isSure ? [shift.down, shift.right] : [0, 0];
  const data = own.data.map((value, i) => {
    const row = Math.floor(i / own.width) + down;
    const column = (i % own.width) + right;
    return value - samplePixel(rough, row, column);
  });
  const way = [lampXy[0] - second.lampXy[0], lampXy[1] - second.lampXy[1]] as const;

  return { difference: withoutGlints({ ...own, data }, planes.mask, planes.mmPerPlace, gaussianBlur), way };
}

/** Logarithms of a photo's light over the stone's median at the network's places; NaN where it is clipped or beyond the photo. */
function logsIn(photo: Photo, { mask, toPhoto }: FlawPlanes, place: (at: PixelPoint) => PixelPoint): Raster {
  const { width, height } = mask;
  const corners = [
    place(toPhoto(0, 0)),
    place(toPhoto(0, width)),
    place(toPhoto(height, 0)),
    place(toPhoto(height, width)),
  ];
  const box = boxOfPlaces(corners, 1, photo);
  const color = cropLinear(photo, box);
  const light = luminance(color);
  for (let i = 0; i < light.data.length; i++) {
    if (Math.max(color.data[3 * i]!, color.data[3 * i + 1]!, color.data[3 * i + 2]!) > CLIPPED)
      light.data[i] = Number.NaN;
  }
  const data = new Float32Array(width * height);
  for (let i = 0; i < data.length; i++) {
    data[i] = mask.data[i]
      ? meanAt(light, box, Math.floor(i / width), i % width, (r, c) => place(toPhoto(r, c)))
      : Number.NaN;
  }
  const sorted = data.filter((value) => !Number.isNaN(value)).sort();
  const floor = FLOOR_SHARE * Math.max(1e-4, sorted[sorted.length >> 1] ?? 1);
  return { width, height, channels: 1, data: data.map((value) => Math.log(value + floor)) };
}

/** Mean of a few samples across one place. */
function meanAt(
  light: Raster,
  box: Box,
  row: number,
  column: number,
  place: (row: number, column: number) => PixelPoint,
): number {
  let sum = 0;
  for (let a = 0; a < SAMPLES; a++) {
    for (let b = 0; b < SAMPLES; b++) {
      const part = (k: number) => (k + 0.5) / SAMPLES - 0.5;
      const [r, c] = place(row + part(a), column + part(b));
      sum += samplePixel(light, r - box.row, c - box.column);
    }
  }
  return sum / SAMPLES ** 2;
}

/** Slopes of the logarithms on the stone, bounded so that a glint does not outweigh its pattern. */
function slopesOf({ data, width, height }: Raster, { mask }: FlawPlanes): LightSlopes {
  const down = new Float32Array(data.length).fill(Number.NaN);
  const right = new Float32Array(data.length).fill(Number.NaN);
  const bounded = (slope: number) => Math.max(-0.4, Math.min(0.4, slope));
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const i = row * width + column;
      if (!mask.data[i]) continue;
      down[i] = bounded((data[i + width]! - data[i - width]!) / 2);
      right[i] = bounded((data[i + 1]! - data[i - 1]!) / 2);
    }
  }
  return { width, height, down, right };
}
