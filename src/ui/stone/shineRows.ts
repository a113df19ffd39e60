import type { ShineFigures } from '../../grading/shineFigures';
import type { ShineRange } from '../../grading/shineRange';
import { type ShineSpan, shineSpan } from '../../grading/shineSpan';

/** One figure of the table of shine. */
export interface ShineRow {
  readonly name: string;
  /** Such as "34 %"; null when it is unknown or says nothing about this stone. */
  readonly value: string | null;
  /** Such as "12 to 60"; null when it is as good as exact. */
  readonly range: string | null;
  /** What it tells a person at the bench. */
  readonly words: string;
}

interface Figure {
  readonly name: string;
  /** Null where it is unknown. */
  readonly pick: (figures: ShineFigures) => number | null;
  readonly say: (value: number) => string;
  readonly unit?: ' %';
  readonly words: (best: ShineFigures) => string;
}

/** Duller than this the light beside the mirrored lamp says nothing; 60° gloss units, the lower end of semi-gloss. */
const HAZE_FROM_GU60 = 35;

const units = (value: number) => (value < 9.95 ? value.toFixed(1) : value.toFixed(0));
const percent = (value: number) => (value > 99.5 || value < 0.5 ? value.toFixed(0) : units(value));
const hundredths = (value: number) => value.toFixed(2);

const FIGURES: readonly Figure[] = [
  {
    name: 'Gloss at 20°',
    pick: ({ gu20 }) => gu20,
    say: units,
    words: () => 'Seen from above. Tells a mirror from a near-mirror.',
  },
  {
    name: 'Gloss at 60°',
    pick: ({ gu60 }) => gu60,
    say: units,
    words: () => 'The usual number: the finish is named by it.',
  },
  {
    name: 'Gloss at 85°',
    pick: ({ gu85 }) => gu85,
    say: units,
    words: () => 'Seen at a slant, where even satin shines.',
  },
  {
    name: 'Image clarity',
    pick: ({ imageClarity }) => imageClarity.at(-1)!.percent,
    say: percent,
    unit: ' %',
    words: ({ imageClarity }) => {
      const coarsest = imageClarity.at(-1)!.percent;
      if (coarsest < 0.5)
        return 'How clear 2 mm stripes stay in the mirror image. Only near-mirrors have any.';
      const finer = imageClarity.slice(0, -1).map((comb) => percent(comb.percent));
      return `How clear 2 mm stripes stay in the mirror image. Finer ones, 1 mm down to ⅛ mm: ${finer.reverse().join(', ')} %.`;
    },
  },
  {
    name: 'Distinctness of image',
    pick: (figures) => figures.distinctnessOfImage,
    say: percent,
    unit: ' %',
    words: () => 'How sharp the edge of a mirrored lamp is.',
  },
  {
    name: 'Haze',
    pick: ({ haze }) => haze,
    say: units,
    words: () => 'Milky glow around a mirrored lamp. None on a perfect polish.',
  },
  {
    name: 'Contrast to the eye',
    pick: ({ contrast }) => contrast,
    say: hundredths,
    words: ({ contrast }) =>
      contrast === null
        ? 'Not known for this stone: too little of it is seen beside the highlight.'
        : 'How the shine stands out: more on a dark stone than on a white one.',
  },
  {
    name: 'Distinctness to the eye',
    pick: ({ distinctness }) => distinctness,
    say: hundredths,
    words: () => 'How sharp the mirror image looks: 1 is a mirror.',
  },
];

/**
 * The figures of a stone's shine in words, in the order of their table.
 *
 * @param range - Figures at the estimated roughness and over its interval.
 * @returns Eight rows; no haze for a stone so dull that it would be misread.
 */
export function shineRows(range: ShineRange): ShineRow[] {
  return FIGURES.map((figure) => {
    const { name, say, unit = '', words } = figure;
    if (name === 'Haze' && range.best.gu60 < HAZE_FROM_GU60) {
      const dull = 'Milky glow around a mirrored lamp. Says nothing on a stone this dull.';
      return { name, value: null, range: null, words: dull };
    }
    const span = shineSpan(range, figure.pick);
    return {
      name,
      value: span && say(span.value) + unit,
      range: span && spoken(span, say),
      words: words(range.best),
    };
  });
}

function spoken({ low, high }: ShineSpan, say: Figure['say']): string | null {
  return say(low) === say(high) ? null : `${say(low)} to ${say(high)}`;
}
