import { lengthWords } from '../../texts/measures';
import type { HelpTexts } from '../../texts/texts';

/** A figure as the help page says it, and where DEVELOPERS.md has it. */
export interface TrustFigure {
  readonly said: (texts: HelpTexts) => string;
  /** How the table's row there begins. */
  readonly row: string;
  /** What must stand in that row. */
  readonly holds: readonly string[];
}

/** Targets of our own that are not reached. Rendered trays unless it says otherwise. */
export const NOT_REACHED: readonly TrustFigure[] = [
  {
    said: ({ missed }) => missed.pits,
    row: 'pits, recall and precision',
    holds: ['0.37', '**not met**'],
  },
  {
    said: ({ missed }) => missed.smallPits(lengthWords(0.8), lengthWords(1.2)),
    row: '– of 0.6 to 0.8, to 1.2, above 1.2 mm, recall',
    holds: ['0.13, 0.32, 0.51'],
  },
  {
    said: ({ missed }) => missed.chips,
    row: 'chips, recall (precision)',
    holds: ['0.59', '**not met**'],
  },
  {
    said: ({ missed }) => missed.scratches,
    row: 'scratches that show',
    holds: ['16 of 38'],
  },
  {
    said: ({ missed }) => missed.advanced,
    row: 'stones over the limits not told to advance',
    holds: ['0.965 of 142', '**not met**'],
  },
  {
    said: ({ missed }) => missed.sentBack,
    row: 'stones within the limits sent back',
    holds: ['two of 19', '**not met**'],
  },
  {
    said: ({ missed }) => missed.noNumber,
    row: 'stones without a number',
    holds: ['6 of 70', '**not met**'],
  },
  {
    said: ({ missed }) => missed.roughness,
    row: 'off by more than ×2 without a warning',
    holds: ['| 2 (blurred', '**not met**'],
  },
  {
    said: ({ missed }) => missed.tileHoles,
    row: 'blowholes on ground tiles, recall',
    holds: ['0.48', '**not met**'],
  },
  {
    said: ({ missed }) => missed.soundTiles,
    row: 'pits claimed on a sound tile',
    holds: ['0.29', '**not met**'],
  },
  {
    said: ({ missed }) => missed.forecast,
    row: 'median error, all checks',
    holds: ['1.37', '**not met**'],
  },
];

/** What it does well. */
export const REACHED: readonly TrustFigure[] = [
  {
    said: ({ reached }) => reached.pitClaims,
    row: 'pits, recall and precision',
    holds: ['0.93'],
  },
  {
    said: ({ reached }) => reached.lampMoved,
    row: 'both, confidence 0.5',
    holds: ['0.68, 0.86'],
  },
  {
    said: ({ reached }) => reached.fractures,
    row: 'fractures of 2 mm and more, recall',
    holds: ['0.93 of 85; 0.005', 'met'],
  },
  {
    said: ({ reached }) => reached.gloss,
    row: '60° gloss error, material known',
    holds: ['2.1, 7.95', 'met'],
  },
  {
    said: ({ reached }) => reached.intervals,
    row: '90 % intervals that hold',
    holds: ['95.3 %', 'met'],
  },
  {
    said: ({ reached }) => reached.identity,
    row: 'right among those taken without asking',
    holds: ['0.994', 'met'],
  },
  {
    said: ({ reached }) => reached.willNotClear,
    row: '"will not clear" right',
    holds: ['0.961', 'met'],
  },
];
