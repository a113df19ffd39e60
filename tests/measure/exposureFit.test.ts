import { expect, it } from 'vitest';
import { exposureFit } from '../../src/measure/exposureFit';
import type { TonePair } from '../../src/measure/tonePairs';
import { srgbFromLinear } from '../../src/optics/srgbTransfer';
import { toneDecoder } from '../../src/optics/toneDecoder';
import { sCurve } from '../helpers/shoot';

/** Levels of a scene of all brightnesses, seen through a curve at an exposure for each channel. */
function levels(exposure: readonly number[], curve: (v: number) => number): TonePair[] {
  return exposure.flatMap((share, channel) =>
    Array.from({ length: 40 }, (_, i): TonePair => {
      const light = 0.003 * 300 ** (i / 39);
      const record = (level: number) => curve(srgbFromLinear(level));
      return { channel: channel as 0, base: record(light), other: record(light * share), count: 30 };
    }).filter(({ other }) => other > 0.03),
  );
}

const SHARES = [0.25, 0.24, 0.26];

it('finds the ratio of each channel and a plain curve', () => {
  const fit = exposureFit([levels(SHARES, (v) => v)], [null]);
  fit!.exposures[0]!.forEach((exposure, c) => {
    expect(exposure / SHARES[c]! - 1).toBeCloseTo(0, 3);
  });
  expect(Math.abs(fit!.tone.contrast) + Math.abs(fit!.tone.bow)).toBeLessThan(0.005);
  expect(fit!.misfit).toBeLessThan(1e-3);
});

it('finds an S-curve within 2 % from the pixels alone', () => {
  const curve = sCurve(0.5);
  const fit = exposureFit([levels(SHARES, curve)], [null])!;
  const decode = toneDecoder(fit.tone);
  for (const light of [0.01, 0.05, 0.2, 0.5, 0.9]) {
    expect(Math.abs(decode(curve(srgbFromLinear(light))) / light - 1)).toBeLessThan(0.02);
  }
  expect(Math.abs(fit.exposures[0]![1]! / 0.24 - 1)).toBeLessThan(0.01);
});

// Source: Grossberg & Nayar 2003, section 4: response and ratio are known up to a common power.
it('cannot tell a power of the response from the pixels, but can when the exposure is stated', () => {
  const curve = (v: number) => v ** 1.1;
  const [alone, stated] = [null, 0.25].map(
    (ratio) => exposureFit([levels([0.25, 0.25, 0.25], curve)], [ratio])!.exposures[0]![1]!,
  );
  expect(Math.abs(alone! / 0.25 - 1)).toBeGreaterThan(0.04);
  expect(Math.abs(stated! / 0.25 - 1)).toBeLessThan(0.03);
});

it('does not listen to a stated exposure that is far off', () => {
  const fit = exposureFit([levels(SHARES, (v) => v)], [0.05]);
  expect(fit!.exposures[0]![0]! / 0.25 - 1).toBeCloseTo(0, 3);
});

it('leaves out levels that went astray', () => {
  const pairs = levels(SHARES, (v) => v).map((pair, i) =>
    i % 12 === 5 ? { ...pair, other: pair.other * 1.3 } : pair,
  );
  expect(Math.abs(exposureFit([pairs], [null])!.exposures[0]![0]! / 0.25 - 1)).toBeLessThan(0.01);
});

it('says nothing when the shots have too few levels in common', () => {
  expect(exposureFit([levels(SHARES, (v) => v).slice(0, 3)], [null])).toBeNull();
});
