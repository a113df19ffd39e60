import fc from 'fast-check';
import { expect, it } from 'vitest';
import { stoneFractures } from '../../src/measure/stoneFractures';
import { stoneSurface } from '../../src/measure/stoneSurface';
import { drawSkin, type Paint, PX_PER_MM, plainBlur, type Rgb, scaled } from '../helpers/drawSkin';

const QUARTZ: Rgb = [0.5, 0.48, 0.42];
const LAMP = [Math.SQRT1_2, Math.SQRT1_2] as const;

function fracturesOf(paint: Paint) {
  const { color, mask } = drawSkin(paint);
  const surface = stoneSurface(color, mask, 1 / PX_PER_MM, LAMP, plainBlur);
  return stoneFractures(surface, plainBlur, 0.2);
}

/** A winding slot of 8 mm across the middle, 0.4 mm wide, turned by an angle; its far lip is lit. */
const slot =
  (angleDeg: number, body: Paint): Paint =>
  (x, y) => {
    const [c, s] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
    const [along, off] = [c * x + s * y, c * y - s * x];
    const across = off - 0.5 * Math.sin(along);
    const color = body(x, y);
    if (Math.abs(along) > 4 || Math.abs(across) > 0.4) return color;
    return Math.abs(across) < 0.2 ? scaled(color, 0.25) : scaled(color, across < 0 ? 1.1 : 1);
  };

it('finds a thin dark winding line, whichever way it runs, and measures its length within a tenth', () => {
  const anyWay = fc.property(fc.integer({ min: 0, max: 179 }), (angleDeg) => {
    const found = fracturesOf(slot(angleDeg, () => QUARTZ));
    expect(found[0]!.confidence).toBeGreaterThan(0.5);
    // ∫ √(1 + (0.5 cos t)²) dt from −4 to 4 = 8.5 mm.
    expect(Math.abs(found[0]!.signs.lengthMm / 8.5 - 1)).toBeLessThan(0.1);
    expect(found).toHaveLength(1);
  });
  fc.assert(anyWay, { numRuns: 8 });
});

it('finds nothing along the edge of a band', () => {
  expect(fracturesOf((x) => (x < 0 ? QUARTZ : [0.3, 0.12, 0.05]))).toEqual([]);
});

it('is not sure of any of many dark bands that run across the whole stone', () => {
  const banded: Paint = (x) => (Math.abs(x - 1.6 * Math.round(x / 1.6)) < 0.2 ? [0.13, 0.1, 0.05] : QUARTZ);
  expect(fracturesOf(banded).filter(({ confidence }) => confidence >= 0.5)).toEqual([]);
});

it('finds the fracture that crosses bands', () => {
  const banded: Paint = (x) => (Math.sin(2 * x) < 0 ? QUARTZ : scaled(QUARTZ, 0.8));
  const [first] = fracturesOf(slot(20, banded));
  expect(first!.confidence).toBeGreaterThan(0.5);
});

it('finds nothing on an even stone', () => {
  expect(fracturesOf(() => QUARTZ)).toEqual([]);
});
