import { expect, it } from 'vitest';
import { shotsSentence } from '../../src/ui/photo/shotsSentence';

it('says how much light each other shot let in', () => {
  expect(shotsSentence([1, 0.2503])).toBe('Merged with another shot at 0.25 × its light.');
  expect(shotsSentence([1, 0.25, 4.04])).toBe('Merged with 2 other shots at 0.25 × and 4 × its light.');
});
