import { expect, it } from 'vitest';
import { GLOSS_GEOMETRIES } from '../../src/optics/glossGeometry';
import { receptorRays } from '../../src/optics/receptorRays';

it('weighs all its rays to one', () => {
  for (const angleDeg of [20, 60, 85] as const) {
    expect(receptorRays(GLOSS_GEOMETRIES[angleDeg]).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(
      1,
      12,
    );
  }
});

it('reaches half the receptor window in the plane of measurement', () => {
  // ISO 2813: 20°, receptor 1.8° and source 0.75° in the plane, so slopes end between tan((0.9° ± 0.375°) / 2).
  const inPlane = receptorRays(GLOSS_GEOMETRIES[20]).filter(({ sinPhi }) => Math.abs(sinPhi) < 0.14);
  for (const { slopeLimit } of inPlane) {
    expect(slopeLimit).toBeGreaterThan(Math.tan(((0.9 - 0.375) * Math.PI) / 360));
    expect(slopeLimit).toBeLessThan(1.01 * Math.tan(((0.9 + 0.375) * Math.PI) / 360));
  }
  expect(inPlane.length).toBeGreaterThan(0);
});

it('samples a long narrow slit along its length', () => {
  // With directions spread evenly, the ends of a 0.14° × 3° slit would fall between them.
  const slit = { inPlaneDeg: 0.14, acrossDeg: 3 };
  const rays = receptorRays({ angleDeg: 30, source: slit, receptor: slit });
  const longest = Math.max(...rays.map(({ slopeLimit }) => slopeLimit));
  // Half the slit's length and half the source's, 3° together, turn the ray by 2 cos 30° times the slope.
  expect(longest).toBeGreaterThan((0.9 * (3 * Math.PI)) / 180 / (2 * Math.cos(Math.PI / 6)));
});

it('refuses a source wider than the receptor', () => {
  const narrow = { inPlaneDeg: 0.1, acrossDeg: 1 };
  const wide = { inPlaneDeg: 0.2, acrossDeg: 1 };
  expect(() => receptorRays({ angleDeg: 20, source: wide, receptor: narrow })).toThrow(
    'The receptor must be at least as wide as the source.',
  );
});
