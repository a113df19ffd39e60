import { boxOfPlaces } from '../image/boxOfPlaces';
import { cropLinear } from '../image/cropLinear';
import { fillPolygon } from '../image/fillPolygon';
import { nthSmallest } from '../image/nthSmallest';
import type { Photo } from '../image/photo';
import type { Mask, Raster } from '../image/raster';
import { lnInPlace } from '../kernels/lnInPlace';
import { clippedPixels } from '../measure/clippedPixels';
import { areaResize } from '../vision/areaResize';
import { linearResize } from '../vision/linearResize';
import type { OpenCv } from '../vision/openCv';
import { FLAW_PLANES, FLAW_PX_PER_MM, FLAW_STEP_PX } from '../vision/openFlawNet';
import type { PixelPoint } from './report';

/** One stone as the flaw network sees it: the recipe of models/README.md. */
export interface FlawPlanes {
  /** 6 × rows × columns: red, green, blue over the stone's median luminance, mask, lamp x, lamp y. */
  readonly data: Float32Array;
  /** Multiples of 32. */
  readonly rows: number;
  readonly columns: number;
  /** The stone at the network's output: rows/2 × columns/2 places. */
  readonly mask: Mask;
  /** The stone less what the camera was at its limit for: nothing is seen there. */
  readonly seen: Mask;
  /** Natural logarithm of luminance over the stone's median, at the network's output. */
  readonly logs: Raster;
  /** Logarithms of red over green and of blue over green, at the same places. */
  readonly hues: readonly [Raster, Raster];
  readonly mmPerPlace: number;
  /** Photo row and column of an output place. */
  readonly toPhoto: (row: number, column: number) => PixelPoint;
}

/** Tray kept around the stone, mm. */
const MARGIN_MM = 1.5;
/** Least median luminance divided by: a black stone in the dark. */
const LEAST_MEDIAN = 1e-4;
/** Added to luminance before the logarithm, as in the network. */
const LOG_FLOOR = 0.05;
/** Luminance of linear sRGB, IEC 61966-2-1. */
const LUMINANCE = [0.2126, 0.7152, 0.0722] as const;

/**
 * Prepares one stone for the flaw network.
 *
 * @param photo - The whole photo.
 * @param outline - The stone's outline, rows and columns of the photo.
 * @param mmPerPx - Scale of the photo.
 * @param lampXy - First two parts of the unit vector to the lamp: x right, y up; zeros when nobody knows.
 */
export function flawPlanes(
  cv: OpenCv,
  photo: Photo,
  outline: readonly PixelPoint[],
  mmPerPx: number,
  lampXy: readonly [number, number],
): FlawPlanes {
  const box = boxOfPlaces(outline, MARGIN_MM / mmPerPx, photo);
  const scale = FLAW_PX_PER_MM * mmPerPx;
  const light = scaled(cv, cropLinear(photo, box), scale);
  const down = light.height / box.height;
  const across = light.width / box.width;
  const inside = fillPolygon(
    outline.map(
      ([row, column]): PixelPoint => [
        (row - box.row + 0.5) * down - 0.5,
        (column - box.column + 0.5) * across - 0.5,
      ],
    ),
    light.width,
    light.height,
  );
  const rows = stepUp(light.height);
  const columns = stepUp(light.width);
  // Also where a darker shot shows more: the lamp's image is no surface to look for flaws on.
  const clipped = clippedPixels({ ...light, clipLevel: 1 }).data;
  const data = padded(light, inside, rows, columns, lampXy);
  const green = logsOf(data, rows, columns, [0, 1, 0]);
  return {
    data,
    rows,
    columns,
    mask: everySecond(inside, rows, columns),
    seen: everySecond({ ...inside, data: inside.data.map((is, i) => is & (1 - clipped[i]!)) }, rows, columns),
    logs: logsOf(data, rows, columns, LUMINANCE),
    hues: [
      difference(logsOf(data, rows, columns, [1, 0, 0]), green),
      difference(logsOf(data, rows, columns, [0, 0, 1]), green),
    ],
    mmPerPlace: 2 / FLAW_PX_PER_MM,
    toPhoto: (row, column) => [
      box.row + (2 * row + 1) / down - 0.5,
      box.column + (2 * column + 1) / across - 0.5,
    ],
  };
}

const stepUp = (size: number) => Math.ceil(size / FLAW_STEP_PX) * FLAW_STEP_PX;

function scaled(cv: OpenCv, raster: Raster, scale: number): Raster {
  const width = Math.max(1, Math.round(raster.width * scale));
  const height = Math.max(1, Math.round(raster.height * scale));
  return scale < 1 ? areaResize(cv, raster, width, height) : linearResize(cv, raster, width, height);
}

/** The planes, filled up at the right and bottom: colors repeat the edge, the mask gets 0. */
function padded(
  light: Raster,
  inside: Mask,
  rows: number,
  columns: number,
  lampXy: readonly [number, number],
): Float32Array {
  const size = rows * columns;
  const data = new Float32Array(FLAW_PLANES * size);
  const median = medianLuminance(light, inside);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column;
      const from = Math.min(row, light.height - 1) * light.width + Math.min(column, light.width - 1);
      for (let k = 0; k < 3; k++) data[k * size + at] = light.data[3 * from + k]! / median;
      if (row < light.height && column < light.width) data[3 * size + at] = inside.data[from]!;
    }
  }
  data.fill(lampXy[0], 4 * size, 5 * size);
  data.fill(lampXy[1], 5 * size);
  return data;
}

/** The lower of two middle values, over the whole stone. */
function medianLuminance(light: Raster, inside: Mask): number {
  const [ofRed, ofGreen, ofBlue] = LUMINANCE;
  const { data } = light;
  const values = new Float64Array(inside.data.length);
  let count = 0;
  for (let i = 0, j = 0; i < values.length; i++, j += 3) {
    if (inside.data[i]) values[count++] = ofRed * data[j]! + ofGreen * data[j + 1]! + ofBlue * data[j + 2]!;
  }
  return Math.max(LEAST_MEDIAN, nthSmallest(values.subarray(0, count), (count - 1) >> 1) ?? 1);
}

function everySecond(inside: Mask, rows: number, columns: number): Mask {
  const mask = new Uint8Array((rows / 2) * (columns / 2));
  for (let row = 0; row < Math.min(rows, inside.height); row += 2) {
    for (let column = 0; column < Math.min(columns, inside.width); column += 2) {
      mask[(row / 2) * (columns / 2) + column / 2] = inside.data[row * inside.width + column]!;
    }
  }
  return { width: columns / 2, height: rows / 2, data: mask };
}

function difference(a: Raster, b: Raster): Raster {
  return { ...a, data: a.data.map((value, i) => value - b.data[i]!) };
}

/** Logarithms of a weighted sum of the colors, averaged over the four pixels of each place. */
function logsOf(
  planes: Float32Array,
  rows: number,
  columns: number,
  [ofRed, ofGreen, ofBlue]: readonly [number, number, number],
): Raster {
  const size = rows * columns;
  const logs = new Float32Array(size);
  for (let i = 0; i < size; i++) {
    logs[i] = LOG_FLOOR + ofRed * planes[i]! + ofGreen * planes[size + i]! + ofBlue * planes[2 * size + i]!;
  }
  lnInPlace(logs);
  const width = columns / 2;
  const data = new Float32Array((rows / 2) * width);
  for (let row = 0, i = 0; row < rows; row += 2) {
    for (let at = row * columns; at < (row + 1) * columns; at += 2, i++) {
      data[i] = (logs[at]! + logs[at + 1]! + logs[at + columns]! + logs[at + columns + 1]!) / 4;
    }
  }
  return { width, height: rows / 2, channels: 1, data };
}
