import { expect, it } from 'vitest';
import { clippedPatches } from '../../src/measure/clippedPatches';
import { tooDark } from '../../src/measure/tooDark';

/** A gray RGB raster; each row is a string of digits, tenths of the camera's limit, and # for the limit. */
function drawGray(...rows: string[]) {
  const levels = rows.join('').split('');
  const data = Float32Array.from(
    levels.flatMap((level) => Array<number>(3).fill(level === '#' ? 1 : Number(level) / 10)),
  );
  return { width: rows[0]!.length, height: rows.length, channels: 3, data } as const;
}

it('finds clipped patches, the largest first, and their share', () => {
  const { share, patches } = clippedPatches(drawGray('2222#', '22222', '##222', '##222'));
  expect(share).toBeCloseTo(5 / 20);
  expect(patches.map(({ row, column, pixels }) => [row, column, pixels.length])).toEqual([
    [2.5, 0.5, 4],
    [0, 4, 1],
  ]);
});

it('finds nothing clipped in a picture below the limit, nor in merged shots below theirs', () => {
  expect(clippedPatches(drawGray('9999', '1234')).share).toBe(0);
  expect(clippedPatches({ ...drawGray('####'), clipLevel: 4 }).share).toBe(0);
});

it('calls a picture dark only when the ball is dark too', () => {
  const tray = { ...drawGray('2222', '2222'), data: new Float32Array(24).fill(0.02) };
  expect(tooDark(tray, 0.05)).toBe(true);
  expect(tooDark(tray, null)).toBe(true);
  expect(tooDark(tray, 0.8)).toBe(false);
  expect(tooDark(drawGray('2222', '2222'), 0.05)).toBe(false);
});
