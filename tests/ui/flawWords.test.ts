import { expect, it } from 'vitest';
import { flawWords } from '../../src/ui/stone/flawWords';

const place = { row: 0, column: 0 };

it('says kind and size', () => {
  expect(flawWords({ kind: 'pit', diameterMm: 0.94, confidence: 0.9, ...place })).toBe('Pit, 0.9 mm across');
  expect(flawWords({ kind: 'fracture', lengthMm: 6.2, confidence: 0.9, ...place })).toBe(
    'Fracture, 6.2 mm long',
  );
});
