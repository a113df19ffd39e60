import { beforeAll, expect, it } from 'vitest';
import { type Engines, openEngines } from '../../src/vision/openEngines';
import { judgeWrong, placesOf, wrongPhoto } from '../bench/wrongPhotos';

/** Rendered scenes whose contents are known, see tests/bench/wrong-photos/build.py; the rest are scored by a command. */
let engines: Engines;
beforeAll(async () => {
  engines = await openEngines();
});

const judge = async (name: string, variant: 'ball' | 'bare' = 'ball') => {
  const photo = await wrongPhoto('development', name, variant);
  return judgeWrong(photo!, { set: 'development', name, rig: null }, engines);
};

it('says nothing against stones that are photographed as they should be', { timeout: 60_000 }, async () => {
  const { things, warnings } = await judge('good');
  expect(things).toHaveLength(6);
  expect(things.every(({ isReal, unlike }) => isReal && unlike === null)).toBe(true);
  expect(warnings).toEqual([]);
});

it.each([
  ['coins', 'unlike-stones', ['shadow']],
  ['keys', 'unlike-stones', ['shadow', 'photo', 'ragged']],
  ['beans', 'unlike-stones', ['photo', 'round']],
  ['grapes', 'unlike-stones', ['photo', 'round']],
  ['two-lamps', 'second-light', ['photo', 'shadow', 'round', 'ragged']],
  ['wet', 'wet-stones', ['photo', 'shadow', 'round', 'ragged']],
])('lets nothing of %s go on, warns %s and says why', { timeout: 120_000 }, async (name, code, reasons) => {
  const { things, letPass, warnings } = await judge(name);
  expect(things.length).toBeGreaterThan(3);
  expect(letPass).toEqual([]);
  expect(warnings).toContain(code);
  for (const { unlike } of things) expect(reasons).toContain(unlike);
});

it('lets nothing of a print go on whose ball is printed too', { timeout: 120_000 }, async () => {
  const { things, letPass, warnings } = await judge('print', 'bare');
  expect(things.length).toBeGreaterThan(3);
  expect(letPass).toEqual([]);
  expect(warnings).toContain('ball-unlit');
  for (const { unlike } of things) expect(['photo', 'ragged']).toContain(unlike);
});

it('reads the real ball beside a printed one, and lets nothing of that print go on', {
  timeout: 60_000,
}, async () => {
  const { report, letPass } = await judge('print');
  const [row, column, radiusPx] = placesOf('development', 'print').ball!;
  expect(Math.hypot(report!.ball!.row - row, report!.ball!.column - column)).toBeLessThan(0.05 * radiusPx);
  expect(letPass).toEqual([]);
});

it('refuses an empty tray', { timeout: 60_000 }, async () => {
  expect((await judge('ball-alone')).refused).toBe('no-stone');
});
