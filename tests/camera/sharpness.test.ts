import { expect, it } from 'vitest';
import { sharpness } from '../../src/camera/sharpness';

/** A gray picture from rows of codes. */
function gray(rows: readonly (readonly number[])[]) {
  const codes = rows.flat();
  const rgba = new Uint8ClampedArray(codes.flatMap((code) => [code, code, code, 255]));
  return { rgba, width: rows[0]!.length, height: rows.length };
}

const of = ({ rgba, width, height }: ReturnType<typeof gray>) => sharpness(rgba, width, height);

/** Stripes eight pixels wide and their blur by a box of `side` pixels. */
function stripes(side: number, brightness = 1) {
  const code = (column: number) => (Math.floor(column / 8) % 2 === 0 ? 40 : 120);
  const row = Array.from({ length: 64 }, (_, column) => {
    let sum = 0;
    for (let k = 0; k < side; k++) sum += code(column + k - (side - 1) / 2);
    return Math.round((brightness * sum) / side);
  });
  return gray(Array.from({ length: 32 }, () => row));
}

it('is the mean square of differences two pixels apart over the square of the mean', () => {
  // Worked out by hand: across 20, 0 and 10, down 10, 0 and 0.
  const picture = gray([
    [10, 10, 30],
    [20, 20, 20],
    [20, 10, 30],
  ]);
  const mean = (10 + 10 + 30 + 20 + 20 + 20 + 20 + 10 + 30) / 9;
  const across = [20, 0, 10];
  const down = [10, 0, 0];
  const squares = [...across, ...down].reduce((sum, step) => sum + step * step, 0);
  expect(of(picture)).toBeCloseTo(squares / 6 / mean ** 2, 6);
});

it('is lower the more a picture is blurred, in whichever direction', () => {
  const values = [1, 3, 5, 9].map((side) => of(stripes(side)));
  expect([...values].sort((a, b) => b - a)).toEqual(values);
  expect(new Set(values).size).toBe(4);
  const { rgba, width, height } = stripes(3);
  const turned = new Uint8ClampedArray(rgba.length);
  for (let row = 0; row < height; row++)
    for (let column = 0; column < width; column++)
      for (let c = 0; c < 4; c++)
        turned[4 * (column * height + row) + c] = rgba[4 * (row * width + column) + c]!;
  expect(sharpness(turned, height, width)).toBeCloseTo(values[1]!, 10);
});

it('does not take a lighter picture for a sharper one', () => {
  expect(of(stripes(1, 1.5))).toBeCloseTo(of(stripes(1)), 10);
});

it('is zero for an even picture and a black one', () => {
  for (const code of [0, 90])
    expect(of(gray(Array.from({ length: 4 }, () => [code, code, code, code])))).toBe(0);
});

it('refuses a picture too small, and bytes that do not fit', () => {
  expect(() => sharpness(new Uint8ClampedArray(16), 2, 2)).toThrow(
    'The picture must be more than 2 px wide and high.',
  );
  expect(() => sharpness(new Uint8ClampedArray(16), 3, 3)).toThrow(
    'The bytes do not fit the size of the picture.',
  );
});
