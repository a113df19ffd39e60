import { expect, it } from 'vitest';
import { runGrade } from '../helpers/runGrade';
import { shotFile } from '../helpers/shotFile';
import { temporaryFolder } from '../helpers/temporaryFolder';

const SAMPLE = 'sample-images/polished-tray.jpg';
const folder = await temporaryFolder();
const bright = await folder.save('bright.jpg', await shotFile(SAMPLE, 4));
const dark = await folder.save('dark.jpg', await shotFile(SAMPLE, 1));

it('grades two shots of one scene as one, and the ball is clipped no more', {
  timeout: 300_000,
}, async () => {
  const { code, stdout } = await runGrade(bright, '--exposures', dark, '--json', '-');
  expect(code).toBe(0);
  const { photos } = JSON.parse(stdout);
  expect(photos).toHaveLength(1);
  expect(photos[0]).toMatchObject({ file: bright, exposures: [bright, dark] });
  expect(photos[0].exposureRatios[0]).toBe(1);
  expect(Math.abs(photos[0].exposureRatios[1] / 0.25 - 1)).toBeLessThan(0.01);
  expect(photos[0].warnings.map(({ code }: { code: string }) => code)).not.toContain('ball-clipped');
  expect(photos[0].stones.filter(({ gloss }: { gloss: unknown }) => gloss).length).toBeGreaterThan(8);
});

it('refuses shots of different trays, naming both', async () => {
  const { code, stdout } = await runGrade(bright, 'sample-images/mid-tray.jpg', '--exposures', '--json', '-');
  const [photo] = JSON.parse(stdout).photos;
  expect([code, photo.refused.code]).toEqual([3, 'exposures-differ-in-scene']);
  expect(photo.exposures).toEqual([bright, 'sample-images/mid-tray.jpg']);
});
