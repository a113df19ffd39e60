import { expect, it } from 'vitest';
import type { Mask } from '../../src/image/raster';
import { straightMarks } from '../../src/measure/straightMarks';

const WIDTH = 80;
const HEIGHT = 60;
const everywhere: Mask = { width: WIDTH, height: HEIGHT, data: new Uint8Array(WIDTH * HEIGHT).fill(1) };

/** A map with lines of one share, a gap left out of each if wished. */
function mapOf(
  lines: readonly { from: readonly number[]; to: readonly number[]; gap?: number }[],
  share = 0.8,
) {
  const shares = new Float32Array(WIDTH * HEIGHT);
  for (const { from, to, gap = 0 } of lines) {
    const length = Math.hypot(to[0]! - from[0]!, to[1]! - from[1]!);
    for (let s = 0; s <= length; s += 0.25) {
      if (Math.abs(s - length / 2) < gap / 2) continue;
      const at = [0, 1].map((k) => Math.round(from[k]! + (s / length) * (to[k]! - from[k]!)));
      shares[at[0]! * WIDTH + at[1]!] = share;
    }
  }
  return shares;
}

/** Distance of a mark's ends from those wanted, the nearer way round. */
function endsApart(
  ends: readonly (readonly [number, number])[],
  from: readonly number[],
  to: readonly number[],
) {
  const apart = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);
  const [first, last] = [ends[0]!, ends[1]!];
  return Math.min(
    Math.max(apart(first, from), apart(last, to)),
    Math.max(apart(first, to), apart(last, from)),
  );
}

it.each([
  { from: [10, 10], to: [10, 60] },
  { from: [5, 40], to: [50, 40] },
  { from: [8, 12], to: [44, 70] },
  { from: [50, 9], to: [12, 66] },
])('finds a line from $from to $to', (line) => {
  const marks = straightMarks(mapOf([line]), everywhere);
  expect(marks).toHaveLength(1);
  expect(endsApart(marks[0]!.ends, line.from, line.to)).toBeLessThan(1.5);
  expect(marks[0]!.peak).toBeCloseTo(0.8, 5);
});

it('takes crossing lines apart', () => {
  const [one, other] = [
    { from: [10, 10], to: [50, 62] },
    { from: [52, 14], to: [8, 58] },
  ];
  const marks = straightMarks(mapOf([one!, other!]), everywhere);
  expect(marks).toHaveLength(2);
  for (const line of [one!, other!]) {
    const apart = marks.map(({ ends }) => endsApart(ends, line.from, line.to));
    expect(Math.min(...apart)).toBeLessThan(2.5);
  }
});

it('joins a line over a short gap, not over a long one', () => {
  const line = { from: [30, 6], to: [30, 74] };
  expect(straightMarks(mapOf([{ ...line, gap: 6 }]), everywhere)).toHaveLength(1);
  expect(straightMarks(mapOf([{ ...line, gap: 16 }]), everywhere)).toHaveLength(2);
});

it('finds no line in a round spot, a faint haze or beside the stone', () => {
  const spot = new Float32Array(WIDTH * HEIGHT).map((_, i) =>
    Math.hypot(Math.floor(i / WIDTH) - 30, (i % WIDTH) - 40) < 3.2 ? 0.9 : 0,
  );
  expect(straightMarks(spot, everywhere)).toEqual([]);
  expect(straightMarks(new Float32Array(WIDTH * HEIGHT).fill(0.04), everywhere)).toEqual([]);
  const nowhere = { ...everywhere, data: new Uint8Array(WIDTH * HEIGHT) };
  expect(straightMarks(mapOf([{ from: [10, 10], to: [10, 60] }]), nowhere)).toEqual([]);
});
