import { expect, it } from 'vitest';
import { materialNamed } from '../../src/grading/materialNamed';

it('takes a name however it is written', () => {
  expect(materialNamed('Agate')).toBe('agate');
  expect(materialNamed('TIGERS-EYE')).toBe("tiger's eye");
  expect(materialNamed('rose_quartz')).toBe('rose quartz');
});

it('knows nothing of other words', () => {
  expect(materialNamed('granola')).toBeNull();
  expect(materialNamed('')).toBeNull();
});
