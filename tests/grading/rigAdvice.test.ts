import { expect, it } from 'vitest';
import { rigAdvice } from '../../src/grading/rigAdvice';
import type { Advice, RigNumbers } from '../../src/grading/rigNumbers';

/** A sharp photo of a tray under a lamp 11° wide, close to those of sample-images. */
const good: RigNumbers = {
  mmPerPx: 0.11,
  light: { direction: [-0.49, 0.19, 0.85], angularDiameterDeg: 11 },
  lampRadiance: 15,
  sourceSlope: Math.tan((11 / 4) * (Math.PI / 180)),
  blurPx: 0.3,
};
const sized = (degrees: number): Partial<RigNumbers> => ({
  light: { ...good.light, angularDiameterDeg: degrees },
  sourceSlope: Math.tan((degrees / 4) * (Math.PI / 180)),
});
const about = (topic: Advice['about'], part: Partial<RigNumbers>): Advice =>
  rigAdvice({ ...good, ...part }).find((one) => one.about === topic)!;

it('has one word on each of lamp, exposure, distance and focus, and nothing against a good rig', () => {
  const all = rigAdvice(good);
  expect(all.map((one) => one.about)).toEqual(['lamp', 'exposure', 'distance', 'focus']);
  expect(all.every(({ inOrder }) => inOrder)).toBe(true);
  for (const { sentence } of all) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
});

it('tells a lamp that is too large for the sharpness, and that halving or moving it helps', () => {
  const large = about('lamp', { ...sized(12), blurPx: 0.9 });
  expect(large.inOrder).toBe(false);
  expect(large.sentence).toContain(
    'too large to tell gloss from mirror at this sharpness: halve it or double its distance',
  );
  expect(about('lamp', { ...sized(6), blurPx: 0.9 }).inOrder).toBe(true);
  expect(about('lamp', { ...sized(23), blurPx: 0.9 }).sentence).toContain('a quarter as wide');
});

it('asks for a nearer camera where no lamp would do', () => {
  expect(about('lamp', { ...sized(12), blurPx: 1.2 }).sentence).toContain('bring the camera nearer');
  expect(about('lamp', { ...sized(12), blurPx: 1.2, mmPerPx: 0.03 }).inOrder).toBe(true);
});

// A disc of radius r under a Gaussian of σ has the height 1 − exp(−r²/2σ²) at its center: 95 % at r = 2.448 σ.
it('tells a lamp whose image on a stone drowns in the blur', () => {
  const limit = (2.448 * 0.3 * 0.11) / 10;
  expect(about('lamp', { sourceSlope: 1.01 * limit }).inOrder).toBe(true);
  const small = about('lamp', { sourceSlope: 0.5 * limit });
  expect(small.inOrder).toBe(false);
  expect(small.sentence).toContain('too small for this sharpness');
  expect(small.sentence).toMatch(/2(\.1)? times as large/);
});

// F(1.52) = (0.52/2.52)² = 4.26 % head-on (Fresnel); one stop is a factor of two.
it('says by how many stops to change the exposure', () => {
  const plateau = (share: number): Partial<RigNumbers> => ({
    lampRadiance: share / (0.52 / 2.52) ** 2,
    light: { direction: [0, 0, 1], angularDiameterDeg: 11 },
  });
  expect(about('exposure', plateau(0.6)).inOrder).toBe(true);
  expect(about('exposure', plateau(1.2)).sentence).toContain(
    "above the camera's limit: take it one stop darker",
  );
  expect(about('exposure', plateau(0.95)).sentence).toContain('reaches 95 %');
  expect(about('exposure', plateau(0.15)).sentence).toContain('2 stops brighter');
  expect(about('exposure', plateau(0.21)).sentence).toContain('1½ stops brighter');
  expect(about('exposure', plateau(0.29)).sentence).toContain('one stop brighter');
});

it('sends the camera closer when pits of half a millimeter would be missed', () => {
  // 3 pixels, no blur: 0.2 mm a pixel shows 0.6 mm.
  const far = about('distance', { mmPerPx: 0.2, blurPx: 0 });
  expect(far.inOrder).toBe(false);
  expect(far.sentence).toContain(
    '1 mm is 5 pixels, and pits from 0.6 mm on are seen only: go closer, to 83 %',
  );
  expect(about('distance', { mmPerPx: 0.16, blurPx: 0 }).inOrder).toBe(true);
});

it('asks for focus from 1.3 pixels of blur on', () => {
  expect(about('focus', { blurPx: 1.2 }).inOrder).toBe(true);
  expect(about('focus', { blurPx: 1.4 }).sentence).toContain(
    'Edges are 1.4 pixels soft, 154 µm on the stones: focus',
  );
});
