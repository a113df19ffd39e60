import { expect, it } from 'vitest';
import { flawMarks } from '../../src/picture/flawMarks';

const pit = { kind: 'pit', row: 40, column: 60, diameterMm: 5, confidence: 0.9 } as const;

it('rings a pit a little wider than it is', () => {
  // 5 mm at 0.1 mm a pixel is 50 px; 3 px of room on each side: half-size 28.
  expect(flawMarks([pit], 0.1, 1, null)).toContain('M32 40a28 28');
});

it('never rings smaller than can be seen', () => {
  expect(flawMarks([{ ...pit, diameterMm: 0.1 }], 0.1, 1, null)).toContain('M52 40a8 8');
});

it('gives each kind its own shape', () => {
  const shapes = (['pit', 'chip', 'fracture', 'scratch'] as const).map(
    (kind) => flawMarks([{ ...pit, kind }], 0.1, 1, null).match(/ d="([^"]+)"/)?.[1],
  );
  expect(new Set(shapes).size).toBe(4);
});

it('draws the one that is brought out thicker', () => {
  expect(flawMarks([pit], 0.1, 1, 0)).toContain('stroke-width="3.2"');
  expect(flawMarks([pit], 0.1, 1, null)).not.toContain('stroke-width="3.2"');
});

it('draws nothing for a stone without flaws', () => {
  expect(flawMarks([], 0.1, 1, null)).toBe('');
});

it('puts the corners of a fracture around its line', () => {
  const path = [
    [100, 40],
    [120, 90],
    [110, 140],
  ] as const;
  const svg = flawMarks(
    [{ kind: 'fracture', row: 118, column: 90, lengthMm: 9, path, confidence: 0.9 }],
    0.1,
    1,
    null,
  );
  // Columns 40 to 140 and rows 100 to 120, with a margin of three dots.
  expect(svg).toContain('M37 ');
  expect(svg).toContain('H143V');
});

it('draws a scratch between two lines along it', () => {
  const path = [
    [100, 40],
    [100, 140],
  ] as const;
  const svg = flawMarks(
    [{ kind: 'scratch', row: 100, column: 90, lengthMm: 10, path, confidence: 0.9 }],
    0.1,
    1,
    null,
  );
  expect(svg).toContain('d="M40 107L140 107M40 93L140 93"');
});
