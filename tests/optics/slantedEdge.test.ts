import { expect, it } from 'vitest';
import { slantedEdge } from '../../src/optics/slantedEdge';
import { gaussianSlantedEdge } from '../helpers/gaussianSlantedEdge';

const edge = { width: 81, height: 201, angleDeg: -5.2, sigmaPx: 0.8, left: 0.05, right: 0.95 };

// Closed form of a Gaussian blur: MTF50 = √(2 ln 2) / (2π σ) = 0.18739 / σ, 10–90 % rise = 2.5631 σ.
it.each([0.6, 0.8, 1.2, 2])('measures a Gaussian blur of %f pixels by its closed form', (sigmaPx) => {
  const found = slantedEdge(gaussianSlantedEdge({ ...edge, sigmaPx }));
  expect(Math.abs(found.mtf50CyclesPerPx * sigmaPx - 0.18739) / 0.18739).toBeLessThan(0.02);
  expect(Math.abs(found.rise10to90Px / sigmaPx - 2.5631) / 2.5631).toBeLessThan(0.03);
  expect(found.angleDeg).toBeCloseTo(-5.2, 2);
});

it('follows the whole response of a Gaussian blur', () => {
  for (const [cyclesPerPx, contrast] of slantedEdge(gaussianSlantedEdge(edge)).sfr) {
    expect(Math.abs(contrast - Math.exp(-2 * (Math.PI * 0.8 * cyclesPerPx) ** 2))).toBeLessThan(0.02);
  }
});

it('gives the same sharpness for a mirrored, dimmer or reversed edge', () => {
  const found = slantedEdge(gaussianSlantedEdge(edge));
  for (const change of [{ angleDeg: 5.2 }, { left: 0.02, right: 0.2 }, { left: 0.95, right: 0.05 }]) {
    const again = slantedEdge(gaussianSlantedEdge({ ...edge, ...change }));
    expect(again.mtf50CyclesPerPx).toBeCloseTo(found.mtf50CyclesPerPx, 3);
    expect(again.rise10to90Px).toBeCloseTo(found.rise10to90Px, 2);
  }
});

it('takes the levels of the rise from the caller when they are known', () => {
  const region = gaussianSlantedEdge({ ...edge, left: 0, right: 1 });
  const narrow = slantedEdge(region);
  expect(slantedEdge(region, { left: 0, right: 1 }).rise10to90Px).toBeCloseTo(narrow.rise10to90Px, 4);
  expect(slantedEdge(region, { left: -0.05, right: 1.05 }).rise10to90Px).toBeGreaterThan(narrow.rise10to90Px);
});

it('refuses a plain region', () => {
  expect(() => slantedEdge({ width: 40, height: 40, data: new Float32Array(1600) })).toThrow(
    'No edge was found',
  );
});
