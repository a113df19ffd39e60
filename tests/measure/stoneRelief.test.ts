import { expect, it } from 'vitest';
import { maskWhere } from '../../src/image/maskWhere';
import { domeSlope, silhouetteOf } from '../../src/measure/stoneRelief';

const disc = maskWhere(101, 101, (i) => Math.hypot(Math.floor(i / 101) - 50, (i % 101) - 50) < 40);
const silhouette = silhouetteOf(disc);
const half = { heightShare: 1, tilt: [0, 0], flatness: 2 } as const;

it('finds the middle and the radius of a disc', () => {
  expect(silhouette.row).toBeCloseTo(50, 6);
  expect(silhouette.column).toBeCloseTo(50, 6);
  expect(silhouette.radiusPx).toBeCloseTo(40, 0);
});

it('has the slope of a half sphere, x / √(R² − x²), over a disc', () => {
  const [right, up] = domeSlope(silhouette, half, 20, 0)!;
  expect(right).toBeCloseTo(20 / Math.sqrt(40 ** 2 - 20 ** 2), 1);
  expect(up).toBeCloseTo(0, 9);
});

it('leans with its tilt and lies flat in the middle without', () => {
  expect(domeSlope(silhouette, half, 0, 0)).toEqual([0, 0]);
  expect(domeSlope(silhouette, { ...half, tilt: [0.1, -0.2] }, 0, 0)).toEqual([-0.1, 0.2]);
});

it('says nothing of the rim', () => {
  expect(domeSlope(silhouette, half, 39.9, 0)).toBeNull();
});
