import fc from 'fast-check';
import { expect, it } from 'vitest';
import { linearFromSrgb } from '../../src/optics/srgbTransfer';
import { PLAIN_TONE, recordThroughTone } from '../../src/optics/toneCurve';
import { toneDecoder } from '../../src/optics/toneDecoder';
import { toneUncertainty } from '../../src/optics/toneUncertainty';

const CONTRASTY = { contrast: 0.4, knee: 0, bow: 0 };

it('records the weighted mean of a value and its smoothstep', () => {
  // 0.6 · 0.25 + 0.4 · (3 · 0.0625 − 2 · 0.015625) = 0.2125
  expect(recordThroughTone(0.25, CONTRASTY)).toBeCloseTo(0.2125, 12);
  expect(recordThroughTone(0.5, CONTRASTY)).toBe(0.5);
});

it('decodes plain sRGB as the standard does', () => {
  const decode = toneDecoder(PLAIN_TONE);
  for (const v of [0, 0.02, 0.2, 0.5, 0.9, 1]) expect(decode(v)).toBeCloseTo(linearFromSrgb(v), 6);
});

it('undoes what any rising curve recorded, and leaves black and white alone', () => {
  const share = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  const tones = fc.record({ contrast: share(0.5), knee: share(0.2), bow: share(0.1) });
  fc.assert(
    fc.property(tones, fc.double({ min: 0, max: 1, noNaN: true }), (tone, v) => {
      const decode = toneDecoder(tone);
      expect(decode(recordThroughTone(v, tone))).toBeCloseTo(linearFromSrgb(v), 3);
      expect([decode(0), decode(1)]).toEqual([0, 1]);
    }),
  );
});

it('never falls, even under a curve that does', () => {
  const decode = toneDecoder({ contrast: 2.5, knee: 1, bow: 0.5 });
  const levels = Array.from({ length: 256 }, (_, code) => decode(code / 255));
  expect(levels.every((level, i) => i === 0 || level >= levels[i - 1]!)).toBe(true);
});

it('says nothing of a highlight as high as the ball’s, and much of a faint one', () => {
  expect(toneUncertainty({ height: 0.5, body: 0, reference: 0.5 })).toBeCloseTo(0, 9);
  const faint = toneUncertainty({ height: 0.02, body: 0, reference: 0.9 });
  const half = toneUncertainty({ height: 0.4, body: 0, reference: 0.9 });
  expect(faint).toBeGreaterThan(half);
  expect(half).toBeGreaterThan(0.02);
});

it('grows with the curve’s strength and is nothing without one', () => {
  const levels = { height: 0.1, body: 0.05, reference: 0.8 };
  expect(toneUncertainty(levels, 0)).toBeCloseTo(0, 5);
  expect(toneUncertainty(levels, 0.2)).toBeLessThan(toneUncertainty(levels, 0.4));
});

it('refuses a highlight of no height', () => {
  expect(() => toneUncertainty({ height: 0, body: 0, reference: 1 })).toThrow('must be positive');
});
