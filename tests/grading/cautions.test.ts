import { expect, it } from 'vitest';
import { MATERIALS } from '../../src/grading/materials';
import { verdicts } from '../../src/texts/english/verdicts';

it('warns of drains, dust, flying chips and harmful stones', () => {
  // Common practice.
  const all = Object.values(verdicts.cautions).join(' ');
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
  expect(verdicts.cautions['hazardous-stones']).toMatch(/local rules.*qualified/);
});

it('marks the materials that need care', () => {
  // Common practice: copper minerals, and asbestos in some serpentines.
  const warned = (name: 'malachite' | 'chrysocolla' | 'serpentine') =>
    verdicts.hazards[MATERIALS[name].hazard];
  expect(warned('malachite')).toContain('copper');
  expect(warned('chrysocolla')).toContain('copper');
  expect(warned('serpentine')).toContain('asbestos');
});
