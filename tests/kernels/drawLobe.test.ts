import fc from 'fast-check';
import { expect, it } from 'vitest';
import { squareLobes } from '../../src/kernels/lobeKernels';
import { type LobeOptics, type LobeShape, lobePicture, slopeField } from '../../src/measure/highlightModel';
import { lobeShare } from '../../src/optics/lobeShare';

/** 32-bit floats; slopes are divided by the lamp's radius, a twentieth, and shares change by up to one over a third of it. */
const EXACT_TO = 3e-5;
const SIDE = 19;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyShape = fc.record({
  row: between(0, SIDE - 1),
  column: between(0, SIDE - 1),
  mean: between(Math.log(0.003), Math.log(0.03)),
  stretch: between(-0.5, 0.5),
  skew: between(-0.5, 0.5),
  alpha: between(0.01, 0.5),
  change: fc.tuple(between(-0.2, 0.2), between(-0.2, 0.2), between(-0.2, 0.2), between(-0.2, 0.2)),
});
const anyTilt = fc.tuple(between(0, 0.6), between(0, 2 * Math.PI));

function opticsFor([sine, toward]: [number, number], lampTurnRad: number | null): LobeOptics {
  const half = [sine * Math.cos(toward), sine * Math.sin(toward), Math.sqrt(1 - sine * sine)] as const;
  return { sourceSlope: 0.06, lampTurnRad, blurPx: 0, half, oversampling: 1 };
}

/** Slopes to the right and down in lamp radii at a pixel, in 64-bit floats. */
const slopesAt = (shape: LobeShape, optics: LobeOptics, i: number) =>
  slopeField(shape, optics, 1)(Math.floor(i / SIDE) - shape.row, (i % SIDE) - shape.column);

it('draws a tilted round lobe as its slopes and closed form have it, pixel by pixel', () => {
  fc.assert(
    fc.property(anyShape, anyTilt, (shape, tilt) => {
      const optics = opticsFor(tilt, null);
      const lobe = lobePicture({ width: SIDE, height: SIDE, stepPx: 1 }, shape, optics);
      lobe.forEach((share, i) => {
        const apart = Math.hypot(...slopesAt(shape, optics, i));
        // Where the surface turns away from the lamp, some rounding decides on which side.
        if (apart > 100) expect(share).toBeLessThan(0.01);
        else expect(Math.abs(share - lobeShare(apart, shape.alpha / 0.06))).toBeLessThan(EXACT_TO);
      });
    }),
  );
});

it('turns a square lamp with the picture, not with the tilt', () => {
  fc.assert(
    fc.property(anyShape, anyTilt, between(0, Math.PI / 2), (shape, tilt, turn) => {
      const optics = opticsFor(tilt, turn);
      const lobe = lobePicture({ width: SIDE, height: SIDE, stepPx: 1 }, shape, optics);
      const slopes = Array.from(lobe, (_, i) => slopesAt(shape, optics, i));
      const expected = new Float32Array(lobe.length);
      const rights = Float32Array.from(slopes, ([right]) => right);
      const ups = Float32Array.from(slopes, ([, down]) => -down);
      squareLobes(rights, ups, turn, shape.alpha / 0.06, expected);
      lobe.forEach((share, i) => {
        if (Math.hypot(...slopes[i]!) < 100) expect(Math.abs(share - expected[i]!)).toBeLessThan(EXACT_TO);
      });
    }),
  );
});
