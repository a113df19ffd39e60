import fc from 'fast-check';
import { expect, it } from 'vitest';
import { gradeStone } from '../../src/grading/gradeStone';
import type { MeasuredStone } from '../../src/grading/measuredStone';
import { ACTIONS_BEST_FIRST } from '../../src/grading/opinion';
import { STEPS, type Step } from '../../src/grading/steps';
import { fracture, highlightOf, measuredStone, pits } from '../helpers/measuredStone';

function verdictOn(stone: Partial<MeasuredStone>, step: Step) {
  return gradeStone(measuredStone(stone), { step, material: 'agate', limits: null }).verdict;
}

it('advances a sound dull stone out of coarse', () => {
  expect(verdictOn({ highlight: highlightOf(0.35) }, 'coarse')).toMatchObject({ action: 'advance' });
  expect(verdictOn({}, 'coarse').reasons).toEqual([
    'Sound: no pits and no fractures on the side in view.',
    'No highlight stands out, as expected after coarse grit.',
  ]);
});

it('repeats coarse on a pitted stone', () => {
  expect(verdictOn({ flaws: pits(15) }, 'coarse')).toEqual({
    action: 'repeat',
    reasons: ['3 pits per cm², the limit for leaving coarse is 0.5.'],
  });
});

it('takes a pitted stone out of a late step', () => {
  for (const step of ['medium', 'fine', 'prepolish', 'polish'] as const) {
    expect(verdictOn({ flaws: pits(15) }, step).action).toBe('back-to-coarse');
  }
});

it('sets a badly fractured stone aside at any step', () => {
  for (const step of STEPS) expect(verdictOn({ flaws: [fracture(11)] }, step).action).toBe('set-aside');
});

it('calls a flawless mirror finished after polish', () => {
  expect(verdictOn({ highlight: highlightOf(0.008) }, 'polish').action).toBe('finished');
});

it('repeats polish on a satin stone', () => {
  expect(verdictOn({ highlight: highlightOf(0.06) }, 'polish').action).toBe('repeat');
});

it('looks closer at a stone it could not see, even a sound one', () => {
  expect(verdictOn({ cutOff: true }, 'coarse').action).toBe('look-closer');
  expect(verdictOn({ inspectedCm2: 0 }, 'medium').action).toBe('look-closer');
  expect(verdictOn({}, 'polish').action).toBe('look-closer');
});

it('judges a wet stone no further, but tells what it saw', () => {
  const { action, reasons } = verdictOn({ highlight: highlightOf(0.02), flaws: [fracture(11)] }, 'coarse');
  expect(action).toBe('look-closer');
  expect(reasons[0]).toContain('it looks wet');
  expect(reasons[1]).toContain('One fracture of 11 mm');
});

it.each(['shadow', 'round', 'ragged'] as const)('judges what is unlike a stone no further: %s', (unlike) => {
  for (const step of STEPS) {
    for (const part of [{}, { highlight: highlightOf(0.008) }, { flaws: [fracture(11)] }]) {
      const { action, reasons } = verdictOn({ ...part, unlike }, step);
      expect(action).toBe('look-closer');
      expect(reasons[0]).toContain('look at it yourself');
    }
  }
});

it('keeps a stone of a photo that a warning stands against from going on, and judges its flaws', () => {
  const unlike = 'photo';
  for (const step of STEPS) {
    const action = verdictOn({ highlight: highlightOf(0.008), unlike }, step).action;
    expect(['advance', 'finished']).not.toContain(action);
  }
  const { action, reasons } = verdictOn({ flaws: [fracture(11)], unlike }, 'coarse');
  expect(action).toBe('set-aside');
  expect(reasons.join(' ')).toContain('A warning about this photo stands against everything on it');
});

it('stops grinding stones that got too small', () => {
  const small = { lengthMm: 9, widthMm: 8, areaMm2: 55, inspectedCm2: 0.7, flaws: pits(3) };
  expect(verdictOn(small, 'coarse').action).toBe('set-aside');
  expect(verdictOn(small, 'fine').reasons[0]).toMatch(/^It is down to 9 mm, and below 10 mm/);
  expect(verdictOn({ ...small, flaws: [] }, 'coarse').action).toBe('advance');
});

it('gives the deciding reason first and leaves praise out of bad news', () => {
  const { action, reasons } = verdictOn(
    { highlight: highlightOf(0.5), flaws: [...pits(15), fracture(11)] },
    'fine',
  );
  expect(action).toBe('set-aside');
  expect(reasons[0]).toContain('fracture');
  expect(reasons[1]).toContain('pits per cm²');
  expect(reasons[2]).toContain('is expected after fine');
  expect(reasons.join(' ')).not.toContain('Sound');
});

const step = fc.constantFrom(...STEPS);
const confidence = fc.double({ min: 0, max: 1, noNaN: true });
const size = fc.double({ min: 0, max: 15, noNaN: true });
const flaw = fc.oneof(
  fc.record({ kind: fc.constantFrom('pit' as const, 'chip' as const), diameterMm: size, confidence }),
  fc.record({ kind: fc.constantFrom('fracture' as const, 'scratch' as const), lengthMm: size, confidence }),
);
const stone = fc.record({
  flaws: fc.array(flaw, { maxLength: 12 }),
  highlight: fc.option(fc.double({ min: 0.001, max: 0.9, noNaN: true }).map((alpha) => highlightOf(alpha))),
  cutOff: fc.boolean(),
  lengthMm: fc.double({ min: 5, max: 60, noNaN: true }),
  inspectedCm2: fc.double({ min: 0, max: 20, noNaN: true }),
});

it('never gets better with one more flaw', () => {
  fc.assert(
    fc.property(stone, flaw, step, (before, more, at) => {
      const rank = (flaws: typeof before.flaws) =>
        ACTIONS_BEST_FIRST.indexOf(verdictOn({ ...before, flaws }, at).action);
      expect(rank([...before.flaws, more])).toBeGreaterThanOrEqual(rank(before.flaws));
    }),
    { numRuns: 500 },
  );
});

it('never gets better after polish when it is rougher', () => {
  const roughness = fc.double({ min: 0.001, max: 0.9, noNaN: true });
  fc.assert(
    fc.property(roughness, roughness, (a, b) => {
      const rank = (alpha: number) =>
        ACTIONS_BEST_FIRST.indexOf(verdictOn({ highlight: highlightOf(alpha) }, 'polish').action);
      expect(rank(Math.max(a, b))).toBeGreaterThanOrEqual(rank(Math.min(a, b)));
    }),
  );
});

it('always gives whole sentences, and only ends at finished after polish', () => {
  fc.assert(
    fc.property(stone, step, (any, at) => {
      const { action, reasons } = verdictOn(any, at);
      expect(reasons.length).toBeGreaterThan(0);
      for (const reason of reasons) {
        expect(reason).toMatch(/^[A-Z0-9].*\.$/);
        expect(reason).not.toMatch(/NaN|Infinity|undefined|null/);
      }
      expect(action === 'finished' && at !== 'polish').toBe(false);
      expect(action === 'advance' && at === 'polish').toBe(false);
    }),
    { numRuns: 500 },
  );
});
