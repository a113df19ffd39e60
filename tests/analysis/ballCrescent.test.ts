import { expect, it } from 'vitest';
import { locateTray } from '../../src/analysis/locateTray';
import { decodeFile } from '../../src/cli/decodeFile';
import { openOpenCv } from '../../src/vision/openCv';

const scene = (name: string) => decodeFile(`tests/bench/wrong-photos/development/${name}.jpg`);
const options = { ballMm: 16, ballAt: null, rig: null };

it('takes the light that the ball throws on the tray beside it for no stone', async () => {
  const cv = await openOpenCv();
  const watch = async () => {};
  await expect(locateTray(await scene('ball-alone'), options, cv, watch)).rejects.toMatchObject({
    code: 'no-stone',
  });
  const { stones } = await locateTray(await scene('good'), options, cv, watch);
  expect(stones).toHaveLength(6);
});
