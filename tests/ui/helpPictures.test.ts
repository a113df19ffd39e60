import { readdirSync, statSync } from 'node:fs';
import { expect, it } from 'vitest';
import { FINISHES, finishOf } from '../../src/grading/finish';
import { glossUnits } from '../../src/optics/glossUnits';
import pictures from '../../src/ui/help/pictures.json';

const folder = new URL('../../sample-images/help/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.webp'));
const MOST_BYTES = 250_000;
const SIDE_PX = 320;

it('has a picture for every name and no other, small enough to be there without a network', () => {
  expect(files.map((file) => file.replace('.webp', '')).sort()).toEqual(Object.keys(pictures).sort());
  const bytes = files.reduce((sum, file) => sum + statSync(new URL(file, folder)).size, 0);
  expect(bytes).toBeLessThan(MOST_BYTES);
});

it.each(FINISHES)('shows a stone whose true roughness reads %s', (finish) => {
  const { alpha, n } = pictures[finish];
  expect(finishOf(glossUnits(alpha, n, 60))).toBe(finish);
});

it.each(['specks', 'grains', 'bands', 'orbs', 'moss', ...FINISHES] as const)(
  'shows no flaw on the stone named %s',
  (name) => {
    expect(pictures[name].flaws).toEqual([]);
  },
);

it('shows the flaw it is named after, and marks only what lies in the picture', () => {
  const kinds = [
    ...(['pit', 'pits', 'lamp-here', 'lamp-there'] as const).map((name) => [name, 'pit'] as const),
    ...(['fracture', 'fracture-long'] as const).map((name) => [name, 'fracture'] as const),
    ...(['chip', 'chip-red'] as const).map((name) => [name, 'chip'] as const),
    ...(['scratches', 'scratches-agate'] as const).map((name) => [name, 'scratch'] as const),
  ];
  for (const [name, kind] of kinds) {
    expect(pictures[name].flaws, name).toContain(kind);
    for (const mark of pictures[name].marks) {
      expect(mark.kind).toBe(kind);
      expect(Math.min(mark.row, mark.column)).toBeGreaterThan(0);
      expect(Math.max(mark.row, mark.column)).toBeLessThan(SIDE_PX);
    }
  }
});

it('counts as many as its captions do', () => {
  expect(pictures.pits.marks).toHaveLength(5);
  expect(pictures.pits.specks).toBe(3);
  expect(pictures['fracture-long'].marks).toHaveLength(2);
  expect(pictures.scratches.marks).toHaveLength(2);
  expect(pictures['scratches-agate'].marks).toHaveLength(6);
});
