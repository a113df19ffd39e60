import { expect, it } from 'vitest';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import { checkByScene } from '../../src/analysis/checkByScene';
import type { PhotoReport } from '../../src/analysis/report';
import { decodeFile } from '../../src/cli/decodeFile';
import { openEngines } from '../../src/vision/openEngines';
import { exposed, paintedOver, turnedAround } from '../helpers/alteredPhoto';
import { readPhoto } from '../helpers/readPhoto';

const engines = await openEngines();
const { cv } = engines;
const quietly = () => {};

const photo = await decodeFile('sample-images/close-up.jpg');
const withBall = await analyzePhoto(photo, { ballMm: 16, ballAt: null, rig: null }, engines, quietly);
const { rig, ball } = withBall;
const bare = paintedOver(photo, { ...ball!, radiusPx: 1.9 * ball!.radiusPx }, rig.scene!.tray[4]!);
const byRig = await analyzePhoto(bare, { ballMm: 16, ballAt: null, rig }, engines, quietly);
const darker = await analyzePhoto(exposed(bare, 0.8), { ballMm: null, ballAt: null, rig }, engines, quietly);

/** Roughness of every stone at n = 1.54, with the interval. */
const readings = (report: PhotoReport) =>
  report.stones.map(({ highlight }) => highlight?.byIndex.find(({ n }) => n === 1.54) ?? null);

it('finds nothing changed in the photo with its own ball', async () => {
  const again = await analyzePhoto(photo, { ballMm: 16, ballAt: null, rig }, engines, quietly);
  expect(again.rigCheck).toMatchObject({ byBall: true, changes: [] });
  expect(again.warnings).toEqual(withBall.warnings);
});

it('grades the tray without its ball by the rig, within the intervals read with the ball', () => {
  expect(byRig.ball).toBeNull();
  expect(byRig.rigCheck).toMatchObject({ byBall: false, changes: [] });
  expect(byRig.stones).toHaveLength(withBall.stones.length);
  expect(readings(byRig).filter((reading) => reading !== null)).toHaveLength(2);
  readings(byRig).forEach((reading, i) => {
    const before = readings(withBall)[i]!;
    expect(reading!.alpha).toBeGreaterThan(before.alphaLow);
    expect(reading!.alpha).toBeLessThan(before.alphaHigh);
  });
});

it('corrects another exposure by the light on the tray and says so', () => {
  expect(darker.rigCheck!.changes).toEqual(['exposure-changed']);
  expect(Math.abs(darker.rigCheck!.exposureRatio! - 0.8)).toBeLessThan(0.02);
  expect(darker.warnings.map(({ code }) => code)).toContain('exposure-changed');
  readings(darker).forEach((reading, i) => {
    const before = readings(withBall)[i]!;
    expect(reading!.alpha).toBeGreaterThan(before.alphaLow);
    expect(reading!.alpha).toBeLessThan(before.alphaHigh);
  });
});

it('reads no gloss when the light comes from the other side', async () => {
  const turned = await analyzePhoto(
    turnedAround(bare),
    { ballMm: null, ballAt: null, rig },
    engines,
    quietly,
  );
  expect(turned.rigCheck!.changes).toContain('lamp-moved');
  expect(turned.warnings.map(({ code }) => code)).toContain('lamp-moved');
  expect(turned.stones.length).toBeGreaterThan(0);
  for (const { highlight, glossWithheld } of turned.stones) {
    expect(highlight).toBeNull();
    expect(glossWithheld).toBe(true);
  }
});

it('law: another exposure alone is never a moved lamp, camera or focus, and its ratio is read within 2 %', async () => {
  for (const name of ['coarse-tray', 'mid-tray', 'polished-tray']) {
    const sample = await decodeFile(`sample-images/${name}.jpg`);
    const read = readPhoto(cv, sample);
    for (const factor of [0.5, 0.8, 1.25]) {
      const { changes, exposureRatio } = checkByScene(read.sceneIn(exposed(sample, factor)), read.rig);
      expect(changes).toEqual(['exposure-changed']);
      expect(Math.abs(exposureRatio! / factor - 1)).toBeLessThan(0.02);
    }
    const turned = checkByScene(read.sceneIn(sample), {
      ...read.rig,
      scene: { ...read.rig.scene, shadow: { ...read.rig.scene.shadow!, turnDeg: 200 } },
    });
    expect(turned.changes).toEqual(['lamp-moved']);
  }
});
