import { expect, it } from 'vitest';
import { flawConfidence, type JudgedMark } from '../../src/analysis/flawConfidence';

/** A mark the network is sure of, with the signs of a hollow in plain skin. */
const hollow: JudgedMark = {
  peak: 0.9,
  contrast: -0.15,
  along: 0.08,
  across: 0.01,
  ringNoise: 0.06,
  colorStep: 0.4,
  sharpness: 0.75,
  aspect: 1.15,
  fractureShare: 0.01,
  diameterMm: 1.2,
  placeCount: 40,
  rimMm: 3,
};

it('believes a hollow, and less of it the more it looks like a speck', () => {
  const sure = flawConfidence('pit', hollow, true);
  expect(sure).toBeGreaterThan(0.85);
  const worse: Partial<JudgedMark>[] = [
    { contrast: -0.9 },
    { across: 0.2 },
    { colorStep: 4 },
    { fractureShare: 0.8 },
    { sharpness: 0.3 },
    { peak: 0.1 },
  ];
  for (const part of worse) expect(flawConfidence('pit', { ...hollow, ...part }, true)).toBeLessThan(sure);
  const speck = { ...hollow, contrast: -1.2, colorStep: 4, across: 0.1 };
  expect(flawConfidence('pit', speck, true)).toBeLessThan(0.1);
});

it('goes by the network’s share alone when nobody knows the lamp', () => {
  const speck = { ...hollow, contrast: -1.2 };
  expect(flawConfidence('pit', speck, false)).toBe(flawConfidence('pit', hollow, false));
  expect(flawConfidence('pit', { ...hollow, peak: 0.75 }, false)).toBeCloseTo(0.5, 6);
  expect(flawConfidence('fracture', { ...hollow, peak: 0.42 }, false)).toBeCloseTo(0.5, 6);
});
