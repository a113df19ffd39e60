import { expect, it } from 'vitest';
import { faultVerdicts, misjudgedPhotos } from './glossFaults';

const photo = (faults: string[], warnings: string[], refused: string | null = null) => ({
  faults,
  warnings,
  refused,
});

it('finds a fault by its warning, or by a refusal for it', () => {
  const [first] = faultVerdicts([
    photo(['out-of-focus'], ['blurred']),
    photo(['out-of-focus'], [], 'out-of-focus'),
    photo(['out-of-focus'], ['ball-clipped']),
    photo(['out-of-focus'], [], 'no-ball'),
  ]);
  expect(first).toMatchObject({ what: 'out-of-focus: found', measured: '2 of 4, 50.0 %', met: false });
});

it('takes any alarm or refusal on a good photo for a false one, but no other warning', () => {
  const good = [
    photo([], []),
    photo([], ['lamp-too-large']),
    photo([], ['another']),
    photo([], [], 'no-ball'),
  ];
  expect(faultVerdicts(good)).toMatchObject([
    { measured: '2 of 4, 50.0 %: lamp-too-large, no-ball', met: false },
  ]);
});

it('stops at a fault that the table lacks', () => {
  expect(() => faultVerdicts([photo(['moonlight'], [])])).toThrow('The table of faults lacks: moonlight.');
});

it('is not met without good photos', () => {
  expect(faultVerdicts([photo(['wet'], ['wet-stones'])]).map(({ met }) => met)).toEqual([true, false]);
});

it('names the photos that were misjudged', () => {
  const row = { part: null, photoPath: '', trueStones: 3, foundStones: 3, seconds: 1 };
  const lines = misjudgedPhotos([
    { ...row, ...photo(['wet'], ['second-light']), scene: 'a', variant: 'clean' },
    { ...row, ...photo(['wet'], ['wet-stones', 'second-light']), scene: 'b', variant: 'clean' },
    { ...row, ...photo([], ['too-dark']), scene: 'c', variant: 'noise' },
    { ...row, ...photo([], []), scene: 'd', variant: 'clean' },
  ]);
  expect(lines).toEqual(['  a clean missed wet; said second-light', '  c noise is good; said too-dark']);
});
