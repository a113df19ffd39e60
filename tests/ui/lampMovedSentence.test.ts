import { expect, it } from 'vitest';
import { lampMovedSentence } from '../../src/ui/photo/lampMovedSentence';

it('says what a second photo is good for, and what it told', () => {
  expect(lampMovedSentence(false, undefined)).toContain('Carry the lamp a third of the way around the tray');
  expect(lampMovedSentence(true, undefined)).toBe('The second photo was not used.');
  expect(lampMovedSentence(true, { inBoth: 9, turnDeg: 0.4 })).not.toContain('turned');
  expect(lampMovedSentence(true, { inBoth: 9, turnDeg: -92.2 })).toContain('the tray turned by 92°');
});
