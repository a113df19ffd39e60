import { expect, it } from 'vitest';
import { shotsSentence } from '../../src/ui/photo/shotsSentence';

it('says how much light each other shot let in', () => {
  expect(shotsSentence([1, 0.2503])).toBe('Merged with another shot, 0.25 × as bright.');
  expect(shotsSentence([1, 0.25, 4.04])).toBe('Merged with 2 other shots, 0.25 × and 4 × as bright.');
});
