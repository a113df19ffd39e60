import { expect, it } from 'vitest';
import { GRITS } from '../../src/grading/grits';

it('gets finer with every higher number', () => {
  for (let at = 1; at < GRITS.length; at++) {
    expect(GRITS[at]!.micrometers).toBeLessThan(GRITS[at - 1]!.micrometers);
    expect(Number(GRITS[at]!.name.slice(1))).toBeGreaterThan(Number(GRITS[at - 1]!.name.slice(1)));
  }
});
