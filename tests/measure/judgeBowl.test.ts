import fc from 'fast-check';
import { expect, it } from 'vitest';
import { judgeBowl } from '../../src/measure/judgeBowl';
import { stoneBowls } from '../../src/measure/stoneBowls';
import { stoneSurface } from '../../src/measure/stoneSurface';
import { bowlShade, drawSkin, type Paint, PX_PER_MM, plainBlur, type Rgb, scaled } from '../helpers/drawSkin';

const JASPER: Rgb = [0.3, 0.1, 0.06];
const at = (angleDeg: number) =>
  [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)] as const;

/** The likeliest hole within a millimeter of the middle. */
function confidenceOf(paint: Paint, lampSide: readonly [number, number]): number {
  const { color, mask } = drawSkin(paint);
  const surface = stoneSurface(color, mask, 1 / PX_PER_MM, lampSide, plainBlur);
  const middle = color.width / 2;
  const judged = stoneBowls(surface, plainBlur)
    .filter(({ fit }) => Math.hypot(fit.row - middle, fit.column - middle) < PX_PER_MM)
    .map((bowl) => judgeBowl(bowl, 1 / PX_PER_MM));
  return Math.max(0, ...judged);
}

it('takes a round place that is dark toward the lamp and bright away from it for a hole', () => {
  const lamp = at(40);
  expect(confidenceOf((x, y) => scaled(JASPER, bowlShade([x, y], lamp, 0.7)), lamp)).toBeGreaterThan(0.5);
});

it('does not take a dark speck of another color for one', () => {
  const speck: Paint = (x, y) => (Math.hypot(x, y) < 0.6 ? [0.03, 0.045, 0.05] : JASPER);
  expect(confidenceOf(speck, at(40))).toBeLessThan(0.25);
});

it('does not take a black speck for one: no open pit is that dark', () => {
  const speck: Paint = (x, y) => (Math.hypot(x, y) < 0.6 ? scaled(JASPER, 0.06) : JASPER);
  expect(confidenceOf(speck, at(40))).toBeLessThan(0.25);
});

it('finds a hole less likely where the light comes from the wrong side', () => {
  const lamp = at(10);
  const right = confidenceOf((x, y) => scaled(JASPER, bowlShade([x, y], lamp, 0.7)), lamp);
  const wrong = confidenceOf((x, y) => scaled(JASPER, bowlShade([x, y], lamp, 0.7)), at(190));
  expect(wrong).toBeLessThan(right - 0.2);
});

it('finds a hole less likely where many places look like it', () => {
  const lamp = at(90);
  const one: Paint = (x, y) => scaled(JASPER, bowlShade([x, y], lamp, 0.5));
  const wrap = (v: number) => v - 2 * Math.round(v / 2);
  const many: Paint = (x, y) => one(wrap(x), wrap(y));
  expect(confidenceOf(many, lamp)).toBeLessThan(confidenceOf(one, lamp) - 0.2);
});

it('sees the same hole from whatever side the lamp shines', () => {
  const anySide = fc.property(fc.integer({ min: 0, max: 359 }), (angleDeg) => {
    const lamp = at(angleDeg);
    const confidence = confidenceOf((x, y) => scaled(JASPER, bowlShade([x, y], lamp, 0.7)), lamp);
    expect(confidence).toBeGreaterThan(0.5);
  });
  fc.assert(anySide, { numRuns: 8 });
});

it('finds nothing on an even stone', () => {
  expect(confidenceOf(() => JASPER, at(40))).toBeLessThan(0.05);
});
