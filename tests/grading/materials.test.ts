import { expect, it } from 'vitest';
import { MATERIALS } from '../../src/grading/materials';

// Gemmological handbook tables.
it.each([
  ['quartz', 1.544, 1.553],
  ['chalcedony', 1.53, 1.54],
  ['obsidian', 1.48, 1.51],
  ['fluorite', 1.434, 1.434],
  ['calcite', 1.486, 1.658],
  ['beryl', 1.577, 1.583],
  ['topaz', 1.61, 1.64],
  ['corundum', 1.762, 1.77],
] as const)('has the handbook index of %s', (name, low, high) => {
  expect(MATERIALS[name].n).toEqual([low, high]);
});

// Mohs 1812: the scale's own minerals.
it.each([
  ['calcite', 3],
  ['fluorite', 4],
  ['quartz', 7],
  ['topaz', 8],
  ['corundum', 9],
] as const)('gives %s its place on the Mohs scale', (name, mohs) => {
  expect(MATERIALS[name].mohs).toEqual([mohs, mohs]);
});

it('keeps every range in order and every value sourced', () => {
  for (const { n, mohs, source } of Object.values(MATERIALS)) {
    expect(n[0]).toBeGreaterThan(1.3);
    expect(n[1]).toBeGreaterThanOrEqual(n[0]);
    expect(n[1]).toBeLessThan(2);
    expect(mohs[1]).toBeGreaterThanOrEqual(mohs[0]);
    expect(source).toMatch(/handbook|from memory/);
  }
});
