import { expect, it } from 'vitest';
import { apertureFlux } from '../../src/optics/apertureFlux';
import { fresnelReflectance } from '../../src/optics/fresnelReflectance';
import { GLOSS_GEOMETRIES } from '../../src/optics/glossGeometry';

it('is the reflectance of Fresnel on a perfect polish, but for the width of the source', () => {
  for (const angleDeg of [20, 60] as const) {
    const mirrored = fresnelReflectance(1.54, Math.cos((angleDeg * Math.PI) / 180));
    expect(Math.abs(apertureFlux(GLOSS_GEOMETRIES[angleDeg], 0, 1.54) / mirrored - 1)).toBeLessThan(1e-3);
  }
});

it('receives nothing from a surface without a change of index', () => {
  expect(apertureFlux(GLOSS_GEOMETRIES[60], 0.1, 1)).toBeCloseTo(0, 12);
});

it('refuses a roughness outside 0 to 1', () => {
  expect(() => apertureFlux(GLOSS_GEOMETRIES[60], 2, 1.54)).toThrow(
    'The roughness must lie in 0 to 1, not 2.',
  );
});
