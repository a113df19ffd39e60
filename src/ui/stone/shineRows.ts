import type { ShineFigures } from '../../grading/shineFigures';
import type { ShineRange } from '../../grading/shineRange';
import { type ShineSpan, shineSpan } from '../../grading/shineSpan';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';

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

type Name = keyof ReturnType<typeof texts>['stone']['figureNames'];

interface Figure {
  readonly name: Name;
  /** Null where it is unknown. */
  readonly pick: (figures: ShineFigures) => number | null;
  readonly say: (value: number) => string;
  readonly unit?: ' %';
}

/** Duller than this the light beside the mirrored lamp says nothing; 60° gloss units, the lower end of semi-gloss. */
const HAZE_FROM_GU60 = 35;

const units = (value: number) => withDecimalMark(value < 9.95 ? value.toFixed(1) : value.toFixed(0));
const percent = (value: number) => (value > 99.5 || value < 0.5 ? value.toFixed(0) : units(value));
const hundredths = (value: number) => withDecimalMark(value.toFixed(2));

const FIGURES: readonly Figure[] = [
  { name: 'gu20', pick: ({ gu20 }) => gu20, say: units },
  { name: 'gu60', pick: ({ gu60 }) => gu60, say: units },
  { name: 'gu85', pick: ({ gu85 }) => gu85, say: units },
  {
    name: 'imageClarity',
    pick: ({ imageClarity }) => imageClarity.at(-1)!.percent,
    say: percent,
    unit: ' %',
  },
  { name: 'distinctnessOfImage', pick: (figures) => figures.distinctnessOfImage, say: percent, unit: ' %' },
  { name: 'haze', pick: ({ haze }) => haze, say: units },
  { name: 'contrast', pick: ({ contrast }) => contrast, say: hundredths },
  { name: 'distinctness', pick: ({ distinctness }) => distinctness, say: hundredths },
];

/** What a figure tells a person at the bench, of this stone. */
function wordsOf(name: Name, { imageClarity, contrast }: ShineFigures): string {
  const { clarity, clarityOfDull, figureWords } = texts().stone;
  if (name === 'contrast' && contrast === null) return figureWords.contrastUnknown;
  if (name !== 'imageClarity') return figureWords[name];
  if (imageClarity.at(-1)!.percent < 0.5) return clarityOfDull;
  const finer = imageClarity.slice(0, -1).map((comb) => percent(comb.percent));
  return clarity(finer.reverse());
}

/**
 * The figures of a stone's shine in words, in the order of their table.
 *
 * @param range - Figures at the estimated roughness and over its interval.
 * @returns Eight rows; no haze for a stone so dull that it would be misread.
 */
export function shineRows(range: ShineRange): ShineRow[] {
  const { figureNames, figureWords } = texts().stone;
  return FIGURES.map((figure) => {
    const { say, unit = '' } = figure;
    const name = figureNames[figure.name];
    if (figure.name === 'haze' && range.best.gu60 < HAZE_FROM_GU60) {
      return { name, value: null, range: null, words: figureWords.hazeOfDull };
    }
    const span = shineSpan(range, figure.pick);
    return {
      name,
      value: span && say(span.value) + unit,
      range: span && spoken(span, say),
      words: wordsOf(figure.name, range.best),
    };
  });
}

function spoken({ low, high }: ShineSpan, say: Figure['say']): string | null {
  return say(low) === say(high) ? null : texts().stone.range(say(low), say(high));
}
