import { expect, it } from 'vitest';
import { locateTray } from '../../src/analysis/locateTray';
import type { Photo } from '../../src/image/photo';
import { openOpenCv } from '../../src/vision/openCv';
import { smallTray } from '../fuzz/bases';
import { inventedRig } from '../helpers/inventedRig';

const cv = await openOpenCv();
const { data, info } = await smallTray().ensureAlpha().raw().toBuffer({ resolveWithObject: true });
const photo: Photo = { widthPx: info.width, heightPx: info.height, rgba: new Uint8ClampedArray(data) };

/** The tray's stones, with its scale claimed to be another. */
const locate = (mmPerPx: number) =>
  locateTray(photo, { ballMm: null, ballAt: null, rig: { ...inventedRig(), mmPerPx } }, cv, () => {});

it('takes nothing longer than a tumbler is wide for a stone, whose surface would not fit into memory', async () => {
  const { stones } = await locate(0.22);
  expect(stones.length).toBeGreaterThan(0);
  const longestPx = Math.max(...stones.map(({ shape }) => shape.lengthPx));
  expect((await locate(149 / longestPx)).stones.length).toBe(stones.length);
  expect((await locate(151 / longestPx)).stones.length).toBeLessThan(stones.length);
  await expect(locate(20)).rejects.toMatchObject({ code: 'no-stone' });
});
