import { expect, it } from 'vitest';
import { flawWords } from '../../src/ui/stone/flawWords';

const place = { row: 0, column: 0 };

it('says kind and size', () => {
  expect(flawWords({ kind: 'pit', diameterMm: 0.94, confidence: 0.9, ...place })).toBe('Pit, 0.9 mm across');
  expect(flawWords({ kind: 'fracture', lengthMm: 6.2, confidence: 0.9, ...place })).toBe(
    'Fracture, 6.2 mm long',
  );
});

it('says what a second photo told', () => {
  const pit = { kind: 'pit', diameterMm: 1, confidence: 0.9, ...place } as const;
  expect(flawWords({ ...pit, followsLamp: true })).toBe('Pit, 1.0 mm across, shaded by the lamp');
  expect(flawWords({ ...pit, followsLamp: false })).toBe(
    'Pit, 1.0 mm across, not shaded by the lamp: likely pattern',
  );
});

it('says how wide a scratch is about', () => {
  expect(flawWords({ kind: 'scratch', lengthMm: 4.2, widthMm: 0.07, confidence: 0.9, ...place })).toBe(
    'Scratch, 4.2 mm long, about 0.07 mm wide',
  );
});
