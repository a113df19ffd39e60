import type { GlossDigest, StoneDigest } from '../../src/history/batchDigest';

/** An agate that was finished after all five steps, but for what is said. */
export function inventedDigest(said: Partial<StoneDigest> = {}): StoneDigest {
  return {
    stone: 'stone-1',
    batch: 'batch-1',
    name: '1',
    material: 'agate',
    source: 'Dry Creek',
    isFavorite: false,
    checkCount: 5,
    firstDay: '2031-03-02',
    lastDay: '2031-06-01',
    coarseDays: 42,
    lengthMm: [30, 27],
    areaMm2: [600, 480],
    gloss: inventedGloss(0.9),
    steps: ['coarse', 'medium', 'fine', 'prepolish', 'polish'],
    lastStep: said.steps?.at(-1) ?? 'polish',
    action: 'finished',
    ...said,
  };
}

/** A reading at a share of a ceiling of 95 gloss units, good to 5 gloss units either way. */
export function inventedGloss(shareOfCeiling: number): GlossDigest {
  const gu60 = 95 * shareOfCeiling;
  return {
    gu60,
    gu60Low: gu60 - 5,
    gu60High: gu60 + 5,
    ceilingGu60: 95,
    shareOfCeiling,
    finish: gu60 >= 85 ? 'mirror' : gu60 >= 70 ? 'gloss' : 'semi-gloss',
  };
}

/** Stones alike but for one thing that differs from each to the next. */
export function inventedDigests<T>(
  values: readonly T[],
  said: (value: T, place: number) => Partial<StoneDigest>,
): StoneDigest[] {
  return values.map((value, place) =>
    inventedDigest({ stone: `stone-${place}`, name: String(place + 1), ...said(value, place) }),
  );
}
