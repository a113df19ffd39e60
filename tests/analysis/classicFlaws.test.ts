import { expect, it } from 'vitest';
import { classicFlaws } from '../../src/analysis/classicFlaws';
import type { StoneCrop } from '../../src/analysis/stoneCrop';
import { openOpenCv } from '../../src/vision/openCv';
import { bowlShade, drawSkin, type Paint, PX_PER_MM, type Rgb, scaled } from '../helpers/drawSkin';

const cv = await openOpenCv();
const JASPER: Rgb = [0.3, 0.1, 0.06];
const LAMP = [0.6, 0.8] as const;
const pitted: Paint = (x, y) => scaled(JASPER, bowlShade([x - 2, y - 1], LAMP, 0.7));

/** The drawn stone as cut out of a photo at its row 100, column 50. */
function cropOf(paint: Paint): StoneCrop {
  const { color, mask } = drawSkin(paint);
  return { stone: color, mask, factor: 1, toPhoto: (row, column) => [row + 100, column + 50] };
}

it('names a pit with its place in the photo and its diameter', () => {
  const { flaws } = classicFlaws(cv, cropOf(pitted), 1 / PX_PER_MM, LAMP);
  const [pit] = flaws;
  expect(flaws.filter(({ confidence }) => confidence >= 0.5)).toHaveLength(1);
  expect(pit!.kind).toBe('pit');
  expect(Math.hypot(pit!.row - (100 + 69.5), pit!.column - (50 + 99.5)) / PX_PER_MM).toBeLessThan(0.4);
  expect(pit!.diameterMm).toBeGreaterThan(1);
  expect(pit!.diameterMm).toBeLessThan(2);
});

it('measures the surface it looked at', () => {
  // A disc of 14 mm less a rim of 0.45 mm is 1.35 cm²; the ball it belongs to has up to twice that.
  const { inspectedCm2 } = classicFlaws(
    cv,
    cropOf(() => JASPER),
    1 / PX_PER_MM,
    LAMP,
  );
  expect(inspectedCm2).toBeGreaterThan(1.35);
  expect(inspectedCm2).toBeLessThan(2.7);
});

it('finds the same pit in a photo of twice the resolution', () => {
  const { color, mask } = drawSkin(pitted);
  const double = 2 * mask.width;
  const from = (i: number) => (Math.floor(i / double) >> 1) * mask.width + ((i % double) >> 1);
  const crop: StoneCrop = {
    stone: {
      width: double,
      height: double,
      channels: 3,
      data: Float32Array.from(
        { length: 3 * double * double },
        (_, k) => color.data[3 * from(Math.floor(k / 3)) + (k % 3)]!,
      ),
    },
    mask: {
      width: double,
      height: double,
      data: Uint8Array.from({ length: double * double }, (_, i) => mask.data[from(i)]!),
    },
    factor: 1,
    toPhoto: (row, column) => [row, column],
  };
  const [once] = classicFlaws(cv, cropOf(pitted), 1 / PX_PER_MM, LAMP).flaws;
  const [twice] = classicFlaws(cv, crop, 0.5 / PX_PER_MM, LAMP).flaws;
  expect(twice!.diameterMm).toBeCloseTo(once!.diameterMm!, 2);
  expect(Math.abs(twice!.row - (2 * (once!.row - 100) + 0.5))).toBeLessThan(1);
  expect(twice!.confidence).toBeCloseTo(once!.confidence, 2);
});

it('finds no flaw on an even stone', () => {
  expect(
    classicFlaws(
      cv,
      cropOf(() => JASPER),
      1 / PX_PER_MM,
      LAMP,
    ).flaws,
  ).toEqual([]);
});
