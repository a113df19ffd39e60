import { expect, it } from 'vitest';
import { GRITS } from '../../src/grading/grits';
import { backTo, scratchOrigin } from '../../src/grading/scratchOrigin';

/** Source: FEPA 42 grain sizes as in grits.ts, from memory; that a groove is a third as wide as its grain is our assumption. */
it.each([
  ['F60', 'coarse'],
  ['F90', 'coarse'],
  ['F220', 'medium'],
  ['F320', 'medium'],
] as const)('takes grooves a third as wide as %s grains for those of the %s step', (name, step) => {
  const grain = GRITS.find((grit) => grit.name === name)!.micrometers / 1000;
  expect(scratchOrigin(grain / 3)).toBe(step);
});

it('sends scratches to the step that grinds them out, and never onward', () => {
  expect(backTo('coarse', 'polish')).toBe('medium');
  expect(backTo('medium', 'polish')).toBe('fine');
  expect(backTo('medium', 'fine')).toBe('fine');
  expect(backTo(null, 'polish')).toBe('prepolish');
  expect(backTo(null, 'coarse')).toBe('coarse');
});
