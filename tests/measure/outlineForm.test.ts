import { expect, it } from 'vitest';
import { outlineForm } from '../../src/measure/outlineForm';

type Points = [number, number][];
const around = (count: number, radius: (turn: number) => readonly [number, number]): Points =>
  Array.from({ length: count }, (_, k) => {
    const [row, column] = radius((2 * Math.PI * k) / count);
    return [200 + row, 300 + column];
  });
const ellipse = (long: number, short: number, tilt: number) =>
  around(400, (turn) => {
    const [u, v] = [long * Math.cos(turn), short * Math.sin(turn)];
    return [u * Math.sin(tilt) + v * Math.cos(tilt), u * Math.cos(tilt) - v * Math.sin(tilt)];
  });

it.each([0, 0.4, 1.1, 2])('finds an ellipse, and its length, however it lies: %f', (tilt) => {
  const form = outlineForm(ellipse(80, 50, tilt));
  // Ramanujan's second approximation, 1914, of the ellipse's perimeter: relative error below 1e-9 here.
  const h = ((80 - 50) / (80 + 50)) ** 2;
  const perimeter = Math.PI * 130 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  expect(form.offEllipse).toBeLessThan(0.001);
  expect(form.lengthRatio).toBeCloseTo(perimeter / (2 * Math.PI * Math.sqrt(80 * 50)), 2);
});

it.each([0, 1, 2.5, 5])(
  'finds an ellipse where a third of the outline was drawn around something beside it: %f',
  (turned) => {
    const shadow = around(400, (turn) => {
      const bulge = turn < 2 ? 1 + 0.25 * Math.sin((Math.PI * turn) / 2) : 1;
      const [u, v] = [70 * bulge * Math.cos(turn + turned), 55 * bulge * Math.sin(turn + turned)];
      return [v, u];
    });
    expect(outlineForm(shadow).offEllipse).toBeLessThan(0.002);
  },
);

it('measures how far waves are from an ellipse', () => {
  // No ellipse follows five waves around: the best is their circle, and half of |cos| lies below 1/√2.
  const [radius, height] = [50, 1];
  const wavy = around(400, (turn) => {
    const reach = radius + height * Math.cos(5 * turn);
    return [reach * Math.sin(turn), reach * Math.cos(turn)];
  });
  expect((outlineForm(wavy).offEllipse * radius) / height).toBeCloseTo(Math.SQRT1_2, 1);
});

it('measures a square: 2/√π as long as its circle, and no ellipse', () => {
  const square: Points = [
    [0, 0],
    [0, 100],
    [100, 100],
    [100, 0],
  ];
  const form = outlineForm(square);
  expect(form.lengthRatio).toBeCloseTo(2 / Math.sqrt(Math.PI), 2);
  expect(form.offEllipse).toBeGreaterThan(0.02);
});

it('does not depend on where a polygon begins, or which way it turns', () => {
  const lumpy = around(97, (turn) => {
    const reach = 50 + 6 * Math.cos(3 * turn) + 3 * Math.sin(5 * turn);
    return [reach * Math.sin(turn), reach * Math.cos(turn)];
  });
  const straight = outlineForm(lumpy);
  for (const other of [[...lumpy].reverse(), [...lumpy.slice(40), ...lumpy.slice(0, 40)]]) {
    const form = outlineForm(other);
    expect(form.offEllipse).toBeCloseTo(straight.offEllipse, 2);
    expect(form.lengthRatio).toBeCloseTo(straight.lengthRatio, 2);
  }
});

it('finds the mirror axis of a kidney bean, a drop and a rectangle, however they lie', () => {
  const tilted = (points: Points, tilt: number): Points =>
    points.map(([r, c]) => [
      r * Math.cos(tilt) - c * Math.sin(tilt),
      r * Math.sin(tilt) + c * Math.cos(tilt),
    ]);
  const bean = around(400, (turn) => {
    const [u, v] = [60 * Math.cos(turn), 34 * Math.sin(turn)];
    return [v + 0.006 * u * u, u];
  });
  const drop = around(400, (turn) => {
    const reach = 40 + 12 * Math.max(0, Math.cos(turn)) ** 6;
    return [reach * Math.sin(turn), reach * Math.cos(turn)];
  });
  const rectangle = [0, 1, 1, 0].map((row, i): [number, number] => [60 * row, i > 1 ? 110 : 0]);
  for (const points of [bean, drop, rectangle])
    for (const tilt of [0, 0.4, 1.3]) expect(outlineForm(tilted(points, tilt)).offMirror).toBeLessThan(0.006);
});

it('measures how far waves out of step are from their mirror image', () => {
  const [radius, height, out] = [50, 1, Math.PI / 4];
  const lumpy = around(400, (turn) => {
    const reach = radius + height * (Math.cos(2 * turn) + Math.cos(3 * turn + out));
    return [reach * Math.sin(turn), reach * Math.cos(turn)];
  });
  // A wave of n mirrored at an axis δ off its own differs from itself by a wave of height 2 sin(n δ).
  const axes = Array.from({ length: 3600 }, (_, k) => (k * Math.PI) / 3600);
  const least = Math.min(...axes.map((axis) => Math.hypot(Math.sin(2 * axis), Math.sin(3 * axis + out))));
  const expected = (height * least) / (Math.SQRT2 * radius);
  expect(outlineForm(lumpy).offMirror / expected).toBeCloseTo(1, 1);
});
