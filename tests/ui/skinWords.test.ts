import { expect, it } from 'vitest';
import { furtherWords, skinWords } from '../../src/ui/stone/skinWords';

const waves = { slopeDeg: 0.71, slopeLowDeg: 0.4, slopeHighDeg: 1.26, wavelengthMm: 0.54, longestMm: 1.3 };
const even = { slopeDeg: null, slopeLowDeg: 0, slopeHighDeg: 0.5, wavelengthMm: null, longestMm: 1.3 };
const patch = { row: 3, column: 4, areaMm2: 0.12, share: 0 };

it('says slope, interval and length of waves', () => {
  expect(skinWords({ waviness: waves, dullPatches: [] })).toEqual([
    'Waviness, apart from the gloss: slopes of 0.7° (0.4 to 1.3) in waves about 0.5 mm long, as orange peel has.',
  ]);
});

it('says up to which length no waves are seen', () => {
  expect(skinWords({ waviness: even, dullPatches: [] })).toEqual([
    'No waviness seen, in waves of up to 1.3 mm.',
  ]);
});

it('says how large dull patches are, together when there are several', () => {
  expect(skinWords({ waviness: null, dullPatches: [patch] })).toEqual([
    'A dull patch of 0.1 mm² inside the mirrored lamp: a pit, frosting or an undercut grain.',
  ]);
  const small = { ...patch, areaMm2: 0.02 };
  expect(skinWords({ waviness: null, dullPatches: [small, small] })).toEqual([
    '2 dull patches inside the mirrored lamp, together 0.04 mm²: pits, frosting or undercut grains.',
  ]);
});

it('says nothing where the photo does not tell', () => {
  expect(skinWords(null)).toEqual([]);
  expect(skinWords({ waviness: null, dullPatches: [] })).toEqual([]);
});

it('says the gloss at further images of the lamp, and whether the polish is uneven', () => {
  const further = { row: 3, column: 4, gu60: 34.2, gu60Low: 20.4, gu60High: 45.1 };
  expect(furtherWords([{ ...further, differs: true }])).toBe(
    'Unevenly polished. The lamp is mirrored elsewhere on this stone too, there with 34 gloss units (20 to 45).',
  );
  expect(furtherWords([{ ...further, differs: false }])).toContain('as even as can be told');
  expect(furtherWords([])).toBeNull();
});
