import fc from 'fast-check';
import { expect, it } from 'vitest';
import { FINISHES, type Finish, finishOf } from '../../src/grading/finish';
import { GLOSS_LEVELS, type GlossLevel, glossLevel } from '../../src/grading/glossLevel';

// MPI gloss and sheen levels, table of 60° gloss and 85° sheen.
it.each([
  [3, 5, 'G1'],
  [3, 20, 'G2'],
  [8, 12, 'G2'],
  [12, 20, 'G3'],
  [22, 30, 'G3'],
  [22, 40, 'G4'],
  [30, 50, 'G4'],
  [35, 60, 'G5'],
  [70, 90, 'G6'],
  [85, 95, 'G7'],
  [130, 101, 'G7'],
])('calls %f at 60° and %f at 85° %s', (gu60, gu85, level) => {
  expect(glossLevel(gu60, gu85)).toBe(level);
});

const reading = fc.double({ min: 0, max: 140, noNaN: true });

it('never names a lower level for higher readings', () => {
  fc.assert(
    fc.property(reading, reading, reading, reading, (a, b, c, d) => {
      const rank = (gu60: number, gu85: number) => GLOSS_LEVELS.indexOf(glossLevel(gu60, gu85));
      expect(rank(Math.max(a, b), Math.max(c, d))).toBeGreaterThanOrEqual(
        rank(Math.min(a, b), Math.min(c, d)),
      );
    }),
  );
});

it('never contradicts the finish', () => {
  const finishes: Record<GlossLevel, Finish> = {
    ...{ G1: 'matte', G2: 'matte', G3: 'satin', G4: 'satin' },
    ...{ G5: 'semi-gloss', G6: 'gloss', G7: 'mirror' },
  };
  expect(new Set(Object.values(finishes))).toEqual(new Set(FINISHES));
  fc.assert(
    fc.property(reading, reading, (gu60, gu85) => {
      expect(finishes[glossLevel(gu60, gu85)]).toBe(finishOf(gu60));
    }),
  );
});

it('refuses negative readings', () => {
  expect(() => glossLevel(-1, 5)).toThrow('Gloss readings must be 0 or more, not -1 and 5.');
});
