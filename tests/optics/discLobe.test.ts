import { expect, it } from 'vitest';
import { discLobe } from '../../src/optics/discLobe';

it('is a² / (a² + α²) at the center of the highlight', () => {
  expect(discLobe(0, 0.1, 0.05)).toBeCloseTo(0.2, 14);
});

it('depends only on the ratios to the source', () => {
  expect(discLobe(0.03, 0.01, 0.05)).toBeCloseTo(discLobe(0.3, 0.1, 0.5), 14);
});

it('refuses a roughness or a source of no size', () => {
  expect(() => discLobe(0, 0, 0.05)).toThrow('The roughness must be above 0, not 0.');
  expect(() => discLobe(0, 0.1, -1)).toThrow("The source's half-vector radius must be above 0, not -1.");
});
