import { expect, it } from 'vitest';
import { ggxDensity } from '../../src/optics/ggxDensity';

it('is 1 / (π α²) along the surface normal', () => {
  // Walter et al. 2007, eq. 33, at θ = 0.
  expect(ggxDensity(1, 0.5)).toBeCloseTo(4 / Math.PI, 12);
});

it('covers the whole surface: the projected facets add up to one', () => {
  // Walter et al. 2007, eq. 4.
  for (const alpha of [0.1, 0.4, 1]) {
    const steps = 20000;
    let area = 0;
    for (let step = 0; step < steps; step++) {
      const theta = ((step + 0.5) / steps) * (Math.PI / 2);
      area += (ggxDensity(Math.cos(theta), alpha) * Math.cos(theta) * Math.sin(theta) * Math.PI ** 2) / steps;
    }
    expect(area).toBeCloseTo(1, 5);
  }
});

it('refuses a roughness of 0', () => {
  expect(() => ggxDensity(1, 0)).toThrow('The roughness must be above 0, not 0.');
});
