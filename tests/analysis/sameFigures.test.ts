import { expect, it } from 'vitest';
import { analyzePhoto } from '../../src/analysis/analyzePhoto';
import { decodeFile } from '../../src/cli/decodeFile';
import { openEngines } from '../../src/vision/openEngines';
import golden from '../golden/figures.json';
import { type FlawFigures, reportFigures, type StoneFigures } from '../helpers/reportFigures';

/**
 * What a faster way to the figures may change them by: far less than they are uncertain by, and than two photos of one
 * stone differ. Source: the program before it was made faster, see tests/golden/figures.ts.
 */
const MOST = {
  lnAlpha: 0.02,
  gu60: 0.5,
  area: 0.005,
  confidence: 0.02,
  look: 0.02,
  scale: 0.0005,
  placePx: 1,
};
/** Flaws of less confidence may come and go at the threshold of what is reported. */
const SURE = 0.15;

const engines = await openEngines();
const share = (a: number, b: number) => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-9);
const apart = (a: readonly number[], b: readonly number[]) =>
  Math.max(0, ...a.map((value, i) => Math.abs(value - b[i]!)));

function expectSameStone(now: StoneFigures, before: StoneFigures): void {
  expect(apart(now.center, before.center)).toBeLessThan(MOST.placePx);
  expect(share(now.areaMm2, before.areaMm2)).toBeLessThan(MOST.area);
  expect(share(now.inspectedCm2, before.inspectedCm2)).toBeLessThan(MOST.area);
  expect(now.gloss === null).toBe(before.gloss === null);
  now.gloss?.forEach((knot, k) => {
    expect(apart(knot.lnAlpha, before.gloss![k]!.lnAlpha)).toBeLessThan(MOST.lnAlpha);
    expect(Math.abs(knot.gu60 - before.gloss![k]!.gu60)).toBeLessThan(MOST.gu60);
  });
  expect(apart(now.alphaAtLeast ?? [], before.alphaAtLeast ?? [])).toBeLessThan(MOST.lnAlpha);
  expect(now.skin?.dullPatches.length).toBe(before.skin?.dullPatches.length);
  expect(apart(now.colors, before.colors)).toBeLessThan(5 * MOST.look);
  expect(apart(now.pattern, before.pattern)).toBeLessThan(MOST.look);
  expect(now.action).toBe(before.action);
  expectSameFlaws(now.flaws, before.flaws);
  expectSameFlaws(before.flaws, now.flaws);
}

/** Every sure flaw of the first list is in the second. */
function expectSameFlaws(flaws: readonly FlawFigures[], others: readonly FlawFigures[]): void {
  for (const flaw of flaws.filter(({ confidence }) => confidence > SURE)) {
    const same = others.some(
      ({ kind, place, sizeMm, confidence }) =>
        kind === flaw.kind &&
        apart(place, flaw.place) < 2 * MOST.placePx &&
        share(sizeMm, flaw.sizeMm) < 0.05 &&
        Math.abs(confidence - flaw.confidence) < MOST.confidence,
    );
    expect(same, `${flaw.kind} at ${flaw.place}`).toBe(true);
  }
}

for (const [name, before] of Object.entries(golden)) {
  it(`measures on the ${name} what it always did`, { timeout: 240_000 }, async () => {
    const photo = await decodeFile(`sample-images/${name}.jpg`);
    const report = await analyzePhoto(photo, { ballMm: 16, ballAt: null, rig: null }, engines, () => {});
    const now = reportFigures(report);
    expect(share(now.mmPerPx, before.mmPerPx)).toBeLessThan(MOST.scale);
    expect(apart(now.lamp.direction, before.lamp.direction)).toBeLessThan(0.002);
    expect(share(now.lamp.radiance, before.lamp.radiance)).toBeLessThan(0.005);
    expect(now.warnings).toEqual(before.warnings);
    expect(now.stones).toHaveLength(before.stones.length);
    now.stones.forEach((stone, i) => {
      expectSameStone(stone, before.stones[i] as unknown as StoneFigures);
    });
  });
}
