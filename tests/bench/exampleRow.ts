import type { GlossReading, GlossRow } from './glossRow';

/** A stone of α 0.1, found, without a number; what a test is about is given. */
export function exampleRow(given: Partial<GlossRow> = {}): GlossRow {
  return {
    scene: 'scene',
    variant: 'clean',
    photoPath: 'scene.clean.jpg',
    stone: 1,
    sameStone: null,
    material: 'basalt',
    form: 'oval',
    pattern: 'speckle',
    alpha: 0.1,
    n: 1.54,
    gu60: 15,
    lampDeg: 12,
    lampShape: 'round',
    pxPerMm: 10,
    pitsInHighlight: 0,
    isHighlightSeen: true,
    row: 5,
    column: 5,
    box: { top: 0, left: 0, bottom: 10, right: 10 },
    isFound: true,
    reading: null,
    alphaAtLeast: null,
    warnings: [],
    gradientScore: 0.1,
    areaScore: 0.1,
    ...given,
  };
}

/** A reading with that roughness, an interval of a tenth around it, and that 60° gloss. */
export function exampleReading(alpha: number, gu60 = 15): GlossReading {
  const gloss = { gu60, gu60Unknown: gu60, gu60UnknownLow: gu60 - 2, gu60UnknownHigh: gu60 + 2 };
  return { alpha, alphaLow: 0.9 * alpha, alphaHigh: 1.1 * alpha, ...gloss };
}
