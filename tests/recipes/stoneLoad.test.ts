import fc from 'fast-check';
import { expect, it } from 'vitest';
import { filling } from '../../src/recipes/filling';
import { stoneLoad, stoneVolumeCm3, THICKNESS_OF_WIDTH } from '../../src/recipes/stoneLoad';

const round = (mm: number) => ({ lengthMm: mm, widthMm: mm, areaMm2: (Math.PI / 4) * mm * mm });

it('gives a ball the volume of a ball', () => {
  // 4/3 π r³ with r = 1 cm.
  expect(stoneVolumeCm3(round(20), 1)).toBeCloseTo((4 / 3) * Math.PI, 9);
  expect(stoneVolumeCm3(round(20))).toBeCloseTo((4 / 3) * Math.PI * THICKNESS_OF_WIDTH, 9);
});

it('weighs a stone of 30 × 24 mm at about 17 g', () => {
  // 4/3 π · 1.5 · 1.2 · 0.84 cm = 6.33 cm³, of quartz 16.8 g.
  const load = stoneLoad([{ lengthMm: 30, widthMm: 24, areaMm2: Math.PI * 15 * 12 }]);
  expect(1000 * load.kg).toBeCloseTo(16.8, 1);
});

it('weighs stones of twice the size eight times as much', () => {
  const size = fc.double({ min: 5, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.array(size, { minLength: 1, maxLength: 30 }), (sizes) => {
      const [once, twice] = [1, 2].map((times) => stoneLoad(sizes.map((mm) => round(times * mm))));
      expect(twice!.kg / once!.kg).toBeCloseTo(8, 9);
      expect(once!.kgLow).toBeGreaterThan(0);
      expect(once!.kgHigh).toBeGreaterThan(once!.kg);
    }),
  );
});

it('is surer of many stones than of one, and never surer than of what all share', () => {
  const spreadOf = (count: number) => {
    const { kg, kgLow } = stoneLoad(Array.from({ length: count }, () => round(30)));
    return (kg - kgLow) / kg;
  };
  // 1.645 · √(0.25² + 0.15²) of one, 1.645 · 0.15 of ever so many.
  expect(spreadOf(1)).toBeCloseTo(1.645 * Math.sqrt(0.25 ** 2 + 0.15 ** 2), 9);
  expect(spreadOf(40)).toBeLessThan(spreadOf(12));
  expect(spreadOf(100_000)).toBeCloseTo(1.645 * 0.15, 3);
});

it('takes an outline larger than its box, or no size, for what it can be', () => {
  expect(stoneVolumeCm3({ lengthMm: 20, widthMm: 10, areaMm2: 9999 })).toBe(
    stoneVolumeCm3({ lengthMm: 20, widthMm: 10, areaMm2: 200 }),
  );
  expect(stoneVolumeCm3({ lengthMm: 0, widthMm: 0, areaMm2: 0 })).toBe(0);
  expect(stoneVolumeCm3({ lengthMm: Number.NaN, widthMm: 3, areaMm2: 3 })).toBe(0);
  expect(stoneLoad([])).toEqual({ count: 0, kg: 0, kgLow: 0, kgHigh: 0 });
});

it('says how full a machine is and what is missing', () => {
  const load = { count: 40, kg: 1.5, kgLow: 1.1, kgHigh: 1.9 };
  expect(filling(load, 3)).toMatchObject({ share: 0.5, kind: 'add', missingKg: 1.5 });
  expect(filling(load, 1.55)?.kind).toBe('full');
  expect(filling(load, 1.2)?.kind).toBe('too-full');
  // Two thirds to three quarters of a barrel's room are a full load: a seventeenth either way of the middle.
  expect(filling({ ...load, kg: 2 / 3 }, (2 / 3 + 3 / 4) / 2)?.kind).toBe('full');
  expect(filling({ ...load, kg: 0.66 }, (2 / 3 + 3 / 4) / 2)?.kind).toBe('add');
});

it('says nothing of a machine whose load is not known', () => {
  const load = stoneLoad([round(30)]);
  for (const capacityKg of [null, 0, Number.NaN]) expect(filling(load, capacityKg)).toBeNull();
});
