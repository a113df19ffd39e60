import { expect, it } from 'vitest';
import { CAUTIONS } from '../../src/grading/cautions';
import { MATERIALS } from '../../src/grading/materials';

it('warns of drains, dust, flying chips and harmful stones', () => {
  // Common practice.
  const all = CAUTIONS.map(({ text }) => text).join(' ');
  for (const word of [
    'drain',
    'respirator',
    'eye protection',
    'asbestos',
    'copper',
    'arsenic',
    'lead',
    'mercury',
  ]) {
    expect(all).toContain(word);
  }
});

it('defers to local rules and qualified advice', () => {
  expect(CAUTIONS.find(({ about }) => about === 'Hazardous stones')?.text).toMatch(/local rules.*qualified/);
});

it('marks the materials that need care', () => {
  // Common practice: copper minerals, and asbestos in some serpentines.
  expect(MATERIALS.malachite.hazard).toContain('copper');
  expect(MATERIALS.chrysocolla.hazard).toContain('copper');
  expect(MATERIALS.serpentine.hazard).toContain('asbestos');
});
