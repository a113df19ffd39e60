import sharp from 'sharp';
import { expect, it } from 'vitest';
import { frameSketch, hasChanged } from '../../src/camera/frameSketch';
import type { Raster } from '../../src/image/raster';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';

type Rgb = [number, number, number];

function raster(width: number, height: number, at: (row: number, column: number) => Rgb): Raster {
  const data = new Float32Array(3 * width * height);
  for (let i = 0; i < width * height; i++) data.set(at(Math.floor(i / width), i % width), 3 * i);
  return { width, height, channels: 3, data };
}

/** The polished sample as the camera would show it, a disc painted over it or not. */
async function tray(disc?: { row: number; column: number; radius: number }) {
  const { data, info } = await sharp('sample-images/polished-tray.jpg')
    .resize(1280, 720, { fit: 'fill' })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const rgba = new Uint8ClampedArray(data);
  for (let i = 0; disc && i < rgba.length / 4; i++) {
    const [row, column] = [Math.floor(i / 1280), i % 1280];
    if (Math.hypot(row - disc.row, column - disc.column) < disc.radius) rgba.set([110, 70, 50, 255], 4 * i);
  }
  return { widthPx: info.width, heightPx: info.height, rgba };
}
const sketchOf = (photo: Awaited<ReturnType<typeof tray>>) => frameSketch(shrinkPhoto(photo, 900).raster);

it('gives each cell the mean of its light', () => {
  const { width, light } = frameSketch(
    raster(80, 40, (row, column) => [column < 2 && row < 2 ? 0.9 : 0.3, 0.3, 0.3]),
  );
  expect(width).toBe(40);
  expect(light).toHaveLength(40 * 20);
  expect(light[0]).toBeCloseTo(0.5, 5);
  expect(light[1]).toBeCloseTo(0.3, 5);
});

it('sketches frames smaller than its cells', () => {
  expect(frameSketch(raster(3, 2, () => [0.2, 0.2, 0.2]))).toMatchObject({ width: 3 });
});

it('sees a stone that was laid down or moved by half its width, and nothing where only exposure and noise change', async () => {
  const empty = await tray();
  const disc = { row: 600, column: 140, radius: 28 };
  const [before, laidDown, moved] = [
    sketchOf(empty),
    sketchOf(await tray(disc)),
    sketchOf(await tray({ ...disc, column: 168 })),
  ];
  expect(hasChanged(before, laidDown)).toBe(true);
  expect(hasChanged(laidDown, moved)).toBe(true);
  let seed = 7;
  const noise = () => {
    seed = (seed * 16807) % 2147483647;
    return 12 * (seed / 2147483647 - 0.5);
  };
  const rgba = empty.rgba.map((level, i) => (i % 4 === 3 ? level : 0.93 * level + noise()));
  expect(hasChanged(before, sketchOf({ ...empty, rgba }))).toBe(false);
});

it('takes frames of another size for changed', () => {
  const gray = (width: number, height: number) => frameSketch(raster(width, height, () => [0.2, 0.2, 0.2]));
  expect(hasChanged(gray(120, 80), gray(80, 120))).toBe(true);
});
