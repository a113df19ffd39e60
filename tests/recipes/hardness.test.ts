import fc from 'fast-check';
import { expect, it } from 'vitest';
import { MATERIAL_NAMES } from '../../src/grading/materials';
import { hardnessMismatch, hazardsOf } from '../../src/recipes/hardness';
import { verdicts } from '../../src/texts/english/verdicts';

it('parts stones more than one Mohs step apart', () => {
  // Gemmological handbook tables: fluorite 4, agate 6.5 to 7, corundum 9.
  expect(hardnessMismatch(['agate', 'fluorite', 'jasper'])).toEqual({ softer: 'fluorite', harder: 'agate' });
  expect(hardnessMismatch(['corundum', 'agate'])).toEqual({ softer: 'agate', harder: 'corundum' });
  expect(hardnessMismatch(['agate', 'quartz', 'jasper'])).toBeNull();
  // 5 to 5.5 and 6.5 to 7: the nearest ends are one step apart.
  expect(hardnessMismatch(['obsidian', 'agate'])).toBeNull();
});

it('does not care about order, and finds more in more stones', () => {
  const some = fc.subarray([...MATERIAL_NAMES]);
  fc.assert(
    fc.property(some, some, (a, b) => {
      const apart = (names: typeof a) => hardnessMismatch(names) !== null;
      expect(apart(a.toReversed())).toBe(apart(a));
      if (apart(a)) expect(apart([...a, ...b])).toBe(true);
    }),
  );
});

it('has nothing to part without stones or with one kind', () => {
  expect(hardnessMismatch([])).toBeNull();
  for (const name of MATERIAL_NAMES) expect(hardnessMismatch([name]), name).toBeNull();
});

it('says a hazard once', () => {
  expect(hazardsOf(['malachite', 'agate', 'chrysocolla'])).toEqual([verdicts.hazards.copper]);
  expect(hazardsOf(['agate'])).toEqual([]);
});
