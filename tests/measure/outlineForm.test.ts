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
const circle = (radius: number) => ellipse(radius, radius, 0);

it.each([0, 0.4, 1.1, 2])('finds an ellipse, and its length, however it lies: %f', (tilt) => {
  const form = outlineForm(ellipse(80, 50, tilt));
  // Ramanujan's second approximation, 1914, of the ellipse's perimeter: relative error below 1e-9 here.
  const h = ((80 - 50) / (80 + 50)) ** 2;
  const perimeter = Math.PI * 130 * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  expect(form.offEllipse).toBeLessThan(0.001);
  expect(form.lengthRatio).toBeCloseTo(perimeter / (2 * Math.PI * Math.sqrt(80 * 50)), 2);
  expect(form.onCircle).toBeLessThan(0.2);
});

it('finds a circle’s whole outline on one circle, and most of it where something small was taken in', () => {
  expect(outlineForm(circle(60)).onCircle).toBe(1);
  const bump = around(400, (turn) => {
    const reach = turn < 0.5 ? 60 + 12 * Math.sin(2 * Math.PI * turn) : 60;
    return [reach * Math.sin(turn), reach * Math.cos(turn)];
  });
  const { onCircle } = outlineForm(bump);
  expect(onCircle).toBeGreaterThan(0.6);
  expect(onCircle).toBeLessThan(0.95);
});

it('measures a square: 2/√π as long as its circle, off its ellipse, of equal axes', () => {
  const square: Points = [
    [0, 0],
    [0, 100],
    [100, 100],
    [100, 0],
  ];
  const form = outlineForm(square);
  expect(form.lengthRatio).toBeCloseTo(2 / Math.sqrt(Math.PI), 2);
  // A side's distance from the middle, s/2·√(1 + u²) with u even from 0 to 1, has the mean square s²/3 and the mean
  // 0.5739 s; the circle of the square's moments has the radius s/√3. The root mean square between them is 0.063 s.
  expect(form.offEllipse).toBeCloseTo(0.112, 2);
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
