import { expect, it } from 'vitest';
import { variantsOf } from './glossTruth';

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
