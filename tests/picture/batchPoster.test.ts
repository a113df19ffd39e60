import sharp from 'sharp';
import { expect, it } from 'vitest';
import { batchPoster } from '../../src/picture/batchPoster';
import { HARD_NAMES, inventedPoster } from './inventedKeepsake';

it('counts on the poster, and marks every favorite', () => {
  const { svg, places } = batchPoster(inventedPoster(12));
  expect(places).toHaveLength(12);
  for (const words of [
    'Winter barrel',
    '12 stones, 3 of them favorites',
    '6 finished',
    '6 advance',
    '9 checks',
  ])
    expect(svg).toContain(words);
  expect(svg.match(/data-star/g)).toHaveLength(3);
});

it('makes a lower sheet for a few stones and smaller stones for many', () => {
  const [few, dozen, many] = [2, 12, 40].map((count) => batchPoster(inventedPoster(count)));
  expect(few!.heightPx).toBeGreaterThanOrEqual(1485);
  expect(dozen!.heightPx).toBeGreaterThan(few!.heightPx);
  expect(many!.heightPx).toBeLessThanOrEqual(2970);
  expect(many!.places[0]!.scale).toBeLessThan(dozen!.places[0]!.scale);
});

it('does not enlarge a photo more than three times on a poster', () => {
  for (const count of [1, 12, 40])
    for (const { scale } of batchPoster(inventedPoster(count)).places)
      expect(scale).toBeLessThanOrEqual(3.0001);
});

it.each(HARD_NAMES)('stays a picture of the same size under the name "%.40s"', async (name) => {
  const { svg, widthPx, heightPx } = batchPoster(inventedPoster(3, name));
  const drawn = await sharp(Buffer.from(svg)).metadata();
  expect([drawn.width, drawn.height]).toEqual([widthPx, heightPx]);
});
