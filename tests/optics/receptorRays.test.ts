import { expect, it } from 'vitest';
import { receptorRays } from '../../src/optics/receptorRays';

it('weighs all its rays to one', () => {
  for (const angleDeg of [20, 60, 85] as const) {
    expect(receptorRays(angleDeg).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  }
});

it('reaches half the receptor window in the plane of measurement', () => {
  // ISO 2813: 20°, receptor 1.8° and source 0.75° in the plane, so slopes end between tan((0.9° ± 0.375°) / 2).
  const inPlane = receptorRays(20).filter(({ sinPhi }) => Math.abs(sinPhi) < 0.07);
  for (const { slopeLimit } of inPlane) {
    expect(slopeLimit).toBeGreaterThan(Math.tan(((0.9 - 0.375) * Math.PI) / 360));
    expect(slopeLimit).toBeLessThan(1.01 * Math.tan(((0.9 + 0.375) * Math.PI) / 360));
  }
  expect(inPlane.length).toBeGreaterThan(0);
});
