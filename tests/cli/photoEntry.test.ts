import { expect, it } from 'vitest';
import { gradedEntry, jsonOf, refusedEntry } from '../../src/cli/photoEntry';
import { summaryOf } from '../../src/cli/summaryOf';
import { gradeStone } from '../../src/grading/gradeStone';
import { Refusal, warning } from '../../src/image/notice';
import { inventedReport } from '../helpers/inventedReport';

const report = { ...inventedReport(), warnings: [warning('blurred')] };
const settings = { step: 'fine', material: 'agate', limits: null } as const;
const grades = report.stones.map((stone) => gradeStone(stone, settings));
const entry = gradedEntry(['tray.jpg'], report, grades, null);

it('writes exactly the names other programs rely on', () => {
  const { photos, ...around } = JSON.parse(jsonOf([entry]));
  expect(around).toEqual({ schema: 1 });
  const photo =
    'file refused warnings widthPx heightPx mmPerPx ball light stones exposures exposureRatios lampMoved contamination'.split(
      ' ',
    );
  expect(Object.keys(photos[0])).toEqual(photo);
  const stone =
    'id center outline areaMm2 lengthMm widthMm gloss glossAtMost flaws pitsPerCm2 fractureMm smoothness verdict ' +
    'waviness dullPatches furtherGloss inspectedCm2 pitRating';
  expect(Object.keys(photos[0].stones[0])).toEqual(stone.split(' '));
  const gloss =
    'alpha alphaLow alphaHigh gu60 gu20 finish ceilingGu60 gu85 gu60Low gu60High level shareOfCeiling ' +
    'imageClarity distinctnessOfImage haze haze30 contrast distinctness bodyReflectance';
  expect(Object.keys(photos[0].stones[0].gloss)).toEqual(gloss.split(' '));
  expect(Object.keys(photos[0].stones[0].verdict)).toEqual(['action', 'reasons']);
});

it('says null where no gloss could be measured', () => {
  const blind = entry.stones.filter((_, i) => report.stones[i]?.highlight === null);
  expect(blind.length).toBeGreaterThan(0);
  expect(blind.every(({ gloss }) => gloss === null)).toBe(true);
});

it('tells waviness and dull patches apart from gloss, null where the photo does not tell', () => {
  const waviness = { slopeDeg: 0.7, slopeLowDeg: 0.4, slopeHighDeg: 1.3, wavelengthMm: 0.5, longestMm: 1.3 };
  const skin = { waviness, dullPatches: [{ row: 1, column: 2, areaMm2: 0.1, share: 0 }] };
  const stones = report.stones.map((stone, i) => (i === 0 ? { ...stone, skin } : stone));
  const again = stones.map((stone) => gradeStone(stone, settings));
  const [first, second] = gradedEntry(['tray.jpg'], { ...report, stones }, again, null).stones;
  expect([first!.waviness, first!.dullPatches]).toEqual([skin.waviness, skin.dullPatches]);
  expect([second!.waviness, second!.dullPatches]).toEqual([null, null]);
});

it('gives image clarity for each comb, and contrast only where the stone itself was seen', () => {
  const [seen, unseen] = [0.2, null].map((bodyReflectance) => {
    const stones = report.stones.map((stone) => ({
      ...stone,
      highlight: stone.highlight && { ...stone.highlight, bodyReflectance },
    }));
    return gradedEntry(['tray.jpg'], { ...report, stones }, grades, null).stones[0]!.gloss!;
  });
  expect(seen!.imageClarity.map(({ combMm }) => combMm)).toEqual([0.125, 0.25, 0.5, 1, 2]);
  expect(seen!.contrast).toBeGreaterThan(0);
  expect(unseen!.contrast).toBeNull();
  expect(unseen!.bodyReflectance).toBeNull();
});

it('gives a refused photo a code, a sentence, no numbers and no stones', () => {
  expect(refusedEntry(['dark.jpg'], new Refusal('no-stone'))).toMatchObject({
    file: 'dark.jpg',
    refused: { code: 'no-stone', message: expect.stringContaining('plain tray') },
    widthPx: null,
    heightPx: null,
    mmPerPx: null,
    ball: null,
    light: null,
    stones: [],
  });
});

it('names all shots of a scene and the light in each', () => {
  const merged = gradedEntry(['a.jpg', 'b.jpg'], { ...report, exposureRatios: [1, 0.25] }, grades, null);
  expect(merged).toMatchObject({ file: 'a.jpg', exposures: ['a.jpg', 'b.jpg'], exposureRatios: [1, 0.25] });
  expect(entry).toMatchObject({ exposures: ['tray.jpg'], exposureRatios: [1] });
  const refused = refusedEntry(['a.jpg', 'b.jpg'], new Refusal('exposures-differ-in-size'));
  expect(refused).toMatchObject({ file: 'a.jpg', exposures: ['a.jpg', 'b.jpg'], exposureRatios: null });
});

it('sums a photo up in words', () => {
  const lines = summaryOf(entry).split('\n');
  expect(lines[0]).toBe('tray.jpg: 12 stones');
  expect(lines.at(-1)).toMatch(
    /^ {2}note: The photo is slightly blurred, so near-mirror finishes are less certain: /,
  );
  const counted = lines.slice(1, -1).map((line) => Number(/: (\d+) \(/.exec(line)?.[1]));
  expect(counted.reduce((sum, count) => sum + count, 0)).toBe(12);
  expect(summaryOf(refusedEntry(['dark.jpg'], new Refusal('no-stone')))).toMatch(
    /^dark\.jpg: refused \(no-stone\)\. No stone/,
  );
});
