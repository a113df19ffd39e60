import { expect, it } from 'vitest';
import { refuseBlindPhoto } from '../../src/analysis/refuseBlindPhoto';
import type { Raster } from '../../src/image/raster';

const WIDTH = 60;

/** Bright and dark halves with a straight edge of a given width; `light` is the bright half's radiance. */
function edged(risePx: number, light = 0.5): Raster {
  const data = new Float32Array(3 * WIDTH * WIDTH);
  for (let i = 0; i < data.length; i++) {
    const across = (Math.floor(i / 3) % WIDTH) - WIDTH / 2 + 0.5;
    // In the logarithm, in which the blur is read, this is a logistic step.
    data[i] = Math.max(0, light * Math.exp(-3 / (1 + Math.exp((-4 * across) / risePx))));
  }
  return { width: WIDTH, height: WIDTH, channels: 3, data };
}

const LARGE = { widthPx: 1800, heightPx: 1200 };

it('lets a sharp, bright photo pass, with or without its ball', () => {
  expect(() => refuseBlindPhoto(LARGE, edged(1.5), false)).not.toThrow();
  expect(() => refuseBlindPhoto(LARGE, edged(1.5), true)).not.toThrow();
});

it('refuses strong blur, and less of it when the ball was lost in it', () => {
  expect(() => refuseBlindPhoto(LARGE, edged(12), false)).toThrow(/out of focus/);
  const soft = edged(5.2);
  expect(() => refuseBlindPhoto(LARGE, soft, false)).not.toThrow();
  expect(() => refuseBlindPhoto(LARGE, soft, true)).toThrow(/out of focus/);
});

it('says that it is too dark, or has too few pixels, rather than that the ball is missing', () => {
  const dark = edged(1.5, 0.03);
  expect(() => refuseBlindPhoto(LARGE, dark, true)).toThrow(/too dark/);
  expect(() => refuseBlindPhoto(LARGE, dark, false)).not.toThrow();
  const tiny = { widthPx: 400, heightPx: 266 };
  expect(() => refuseBlindPhoto(tiny, edged(1.5), true)).toThrow(/too few pixels/);
  expect(() => refuseBlindPhoto(tiny, edged(1.5), false)).not.toThrow();
});
