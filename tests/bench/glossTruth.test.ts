import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { glossPhotosIn, variantsOf } from './glossTruth';

it('tells the variants of a scene from the names of its photos, clean first', () => {
  const names = ['a-1.blur-1.jpg', 'a-1.clean.jpg', 'a-1.json', 'a-10.clean.jpg', 'a-1.quality-70.jpg'];
  expect([...variantsOf('a-1', names)]).toEqual([
    ['clean', 'a-1.clean.jpg'],
    ['blur-1', 'a-1.blur-1.jpg'],
    ['quality-70', 'a-1.quality-70.jpg'],
  ]);
});

it('takes a photo without a variant for the clean one, unless there is a clean one', () => {
  expect([...variantsOf('tray', ['tray.jpg'])]).toEqual([['clean', 'tray.jpg']]);
  expect([...variantsOf('tray', ['tray.clean.jpg', 'tray.jpg'])]).toEqual([['clean', 'tray.clean.jpg']]);
});

it('reads a folder scene by scene, other JSON files aside, and a pair of exposures once more together', () => {
  const folder = mkdtempSync(join(tmpdir(), 'gloss-'));
  for (const name of ['a.json', 'b.json']) writeFileSync(join(folder, name), '{"stones":[]}');
  writeFileSync(join(folder, 'other.json'), '{"rows":[]}');
  for (const name of ['a.pair-dark', 'a.pair-bright', 'a.clean', 'b.clean']) {
    writeFileSync(join(folder, `${name}.jpg`), '');
  }
  const photos = glossPhotosIn(folder);
  rmSync(folder, { recursive: true });
  expect(photos.map(({ scene, variant }) => `${scene} ${variant}`)).toEqual([
    'a clean',
    'a pair-bright',
    'a pair-dark',
    'a pair',
    'b clean',
  ]);
  const merged = photos.find(({ variant }) => variant === 'pair');
  expect(merged?.photoPath).toBe(join(folder, 'a.pair-bright.jpg'));
  expect(merged?.darkerPath).toBe(join(folder, 'a.pair-dark.jpg'));
});
