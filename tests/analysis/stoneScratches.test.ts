import { expect, it } from 'vitest';
import { GROOVE_LIGHT } from '../../src/analysis/stoneScratches';
import { whiteFacing } from '../../src/measure/bodyReflectance';
import { lobeShare } from '../../src/optics/lobeShare';

/** Light of a rough wall whose normal leans `slope` from the half vector, as a share of a white surface facing the lamp. */
function wallLight(slope: number, lampDegrees: number): number {
  // Half-vector radius: a quarter of the lamp's angular diameter (optics of a disc lamp, small angles).
  const sourceSlope = Math.tan((lampDegrees * Math.PI) / 180 / 4);
  const alpha = 0.3;
  const fresnel = ((1.54 - 1) / (1.54 + 1)) ** 2;
  const mirrored = fresnel * lobeShare(slope / sourceSlope, alpha / sourceSlope);
  return mirrored / whiteFacing(1, sourceSlope, Math.cos((17 * Math.PI) / 180));
}

// Walter et al. 2007 (GGX), by lobeShare: the fitted figure must be one that rough walls can have.
it('takes grooves for as bright as rough walls of the usual lean are', () => {
  const steep = wallLight(Math.tan((20 * Math.PI) / 180), 12);
  const facing = wallLight(0, 12);
  expect(steep).toBeLessThan(GROOVE_LIGHT);
  expect(facing).toBeGreaterThan(GROOVE_LIGHT);
});

it('hardly depends on the size of the lamp', () => {
  expect(wallLight(0.1, 8) / wallLight(0.1, 15)).toBeCloseTo(1, 1);
});
