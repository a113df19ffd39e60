import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readRig } from '../../src/cli/rigFile';
import { ACTIONS_BEST_FIRST } from '../../src/grading/opinion';
import { runGrade } from '../helpers/runGrade';
import { temporaryFolder } from '../helpers/temporaryFolder';

const SAMPLE = 'sample-images/polished-tray.jpg';
const folder = await temporaryFolder();

it('grades a sample tray: JSON, sorting picture and rig, and ends with 0', async () => {
  const json = join(folder.path, 'result.json');
  const rigFile = join(folder.path, 'rig.json');
  const words = ['--step', 'polish', '--json', json, '--picture', folder.path, '--save-rig', rigFile];
  const { code, stdout } = await runGrade(SAMPLE, ...words);
  expect(code).toBe(0);

  const [photo] = JSON.parse(await readFile(json, 'utf8')).photos;
  expect(photo).toMatchObject({ file: SAMPLE, refused: null, widthPx: 1800, heightPx: 1200 });
  expect(stdout).toContain(`${SAMPLE}: ${photo.stones.length} stones`);
  expect(photo.stones.length).toBeGreaterThan(0);
  for (const { id, center, outline, verdict, smoothness } of photo.stones) {
    expect([id, ...center, ...outline.flat(), smoothness].every(Number.isFinite)).toBe(true);
    expect(ACTIONS_BEST_FIRST).toContain(verdict.action);
    expect(verdict.reasons.length).toBeGreaterThan(0);
  }

  const picture = await sharp(join(folder.path, 'polished-tray-sorted.png')).metadata();
  expect(picture.width).toBe(1800);
  expect(picture.height).toBeGreaterThan(1200);
  const rig = await readRig(rigFile);
  expect(rig).toMatchObject({ mmPerPx: photo.mmPerPx, light: photo.light });
  expect(rig.scene).toMatchObject({ widthPx: 1800, heightPx: 1200 });
  expect(stdout).toContain('  rig: The lamp is 11° across');
});

it('refuses a tray without ball and rig', async () => {
  const { code, stdout } = await runGrade(SAMPLE, '--no-ball');
  expect(code).toBe(3);
  expect(stdout).toContain('refused (no-ball)');
});
