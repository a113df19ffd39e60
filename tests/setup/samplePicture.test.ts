import { statSync } from 'node:fs';
import sharp from 'sharp';
import { expect, it } from 'vitest';

const SMALL = 'sample-images/coarse-tray.small.webp';

/** Levels of 0 to 255, three for each of 90 × 60 places. */
const levelsOf = (file: string) => sharp(file).resize(90, 60, { fit: 'fill' }).removeAlpha().raw().toBuffer();

it('shows the sample before it is there: the same picture, a twentieth of its bytes at most', async () => {
  const [photo, small] = [await levelsOf('sample-images/coarse-tray.jpg'), await levelsOf(SMALL)];
  expect(small.length).toBe(photo.length);
  const farthest = photo.reduce((most, level, i) => Math.max(most, Math.abs(level - small[i]!)), 0);
  expect(farthest).toBeLessThan(16);
  const mean = photo.reduce((sum, level, i) => sum + Math.abs(level - small[i]!), 0) / photo.length;
  expect(mean).toBeLessThan(1.5);
  expect(20 * statSync(SMALL).size).toBeLessThan(statSync('sample-images/coarse-tray.jpg').size);
});
