import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  CAUTION_AT,
  isWashedOut,
  soapRun,
  WASH_OUT_ITEMS,
  type WashOut,
  type WashOutEvent,
  washOutAfter,
} from '../../src/recipes/washOut';
import { texts } from '../../src/texts/speech';

const BEGIN = { type: 'begin', batch: 'B1', from: 'coarse', to: 'medium' } as const;
const after = (...events: WashOutEvent[]) => events.reduce<WashOut | null>(washOutAfter, null);
const tick = (item: (typeof WASH_OUT_ITEMS)[number]) => ({ type: 'tick', item }) as const;

it('keeps ticks in the order of the work', () => {
  expect(after(BEGIN, tick('rinse'), tick('slurry'))?.ticked).toEqual(['slurry', 'rinse']);
});

it('keeps its ticks when the same wash-out is opened again, and drops them for the next', () => {
  const begun = after(BEGIN, tick('slurry'), { type: 'soap', atMs: 1000 });
  expect(washOutAfter(begun, BEGIN)).toBe(begun);
  const next = { ...BEGIN, from: 'medium', to: 'fine' } as const;
  expect(washOutAfter(begun, next)).toMatchObject({ from: 'medium', ticked: [], soapSinceMs: null });
  expect(washOutAfter(begun, { ...BEGIN, batch: 'B2' })?.ticked).toEqual([]);
});

it('is done when everything is ticked, whatever the order, and not before', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray([...WASH_OUT_ITEMS]), (items) => {
      const state = after(BEGIN, ...items.map(tick));
      expect(isWashedOut(state!)).toBe(items.length === WASH_OUT_ITEMS.length);
    }),
  );
});

it('undoes a tick, and a tick twice is one', () => {
  const begun = after(BEGIN, tick('slurry'));
  const twice = after(BEGIN, tick('slurry'), tick('slurry'));
  expect(twice).toEqual(begun);
  expect(washOutAfter(begun, { type: 'untick', item: 'slurry' })?.ticked).toEqual([]);
});

it('has nothing to tick before it is begun', () => {
  expect(after(tick('slurry'))).toBeNull();
});

it('runs detergent for one to two hours', () => {
  // Common practice.
  const state = { soapSinceMs: 0 };
  expect(soapRun(state, 30 * 60_000)).toEqual({
    leftMs: 30 * 60_000,
    endsMs: 3_600_000,
    latestMs: 7_200_000,
  });
  expect(soapRun(state, 100 * 60_000)?.leftMs).toBe(0);
  expect(soapRun({ soapSinceMs: null }, 0)).toBeNull();
});

it('warns of the drain where slurry is poured, and of dust where mud dries', () => {
  const { cautions } = texts().verdicts;
  expect(cautions[CAUTION_AT.slurry!]).toMatch(/down a drain/);
  expect(cautions[CAUTION_AT.mud!]).toMatch(/silica wet/);
});
