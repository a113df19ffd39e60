/** A figure as the help page says it, and where DEVELOPERS.md has it. */
export interface TrustFigure {
  readonly said: string;
  /** How the table's row there begins. */
  readonly row: string;
  /** What must stand in that row. */
  readonly holds: readonly string[];
}

/** Targets of our own that are not reached. Rendered trays unless it says otherwise. */
export const NOT_REACHED: readonly TrustFigure[] = [
  {
    said: 'One photo shows only four pits of ten.',
    row: 'pits, recall and precision',
    holds: ['0.37', '**not met**'],
  },
  {
    said: 'Of pits below 0.8 mm it shows one of eight, of those above 1.2 mm every second.',
    row: '– of 0.6 to 0.8, to 1.2, above 1.2 mm, recall',
    holds: ['0.13, 0.32, 0.51'],
  },
  {
    said: 'It shows six chips of ten.',
    row: 'chips, recall (precision)',
    holds: ['0.59', '**not met**'],
  },
  {
    said: 'It shows four scratches of ten that an eye could see.',
    row: 'scratches that show',
    holds: ['16 of 38'],
  },
  {
    said: 'Of 142 stones over the limits it would have advanced five.',
    row: 'stones over the limits not told to advance',
    holds: ['0.965 of 142', '**not met**'],
  },
  {
    said: 'Of 19 good stones it sent two back.',
    row: 'stones within the limits sent back',
    holds: ['two of 19', '**not met**'],
  },
  {
    said: 'One stone in twelve gets no gloss number, most of them matte.',
    row: 'stones without a number',
    holds: ['6 of 70', '**not met**'],
  },
  {
    said: 'In changed photos (sharpened, blurred) two near-mirrors were read twice as rough as they are, without a warning.',
    row: 'off by more than ×2 without a warning',
    holds: ['| 2 (blurred', '**not met**'],
  },
  {
    said: 'On real photographs of ground tiles it found half of the holes.',
    row: 'blowholes on ground tiles, recall',
    holds: ['0.48', '**not met**'],
  },
  {
    said: 'On ten sound tiles it claimed three holes that are none.',
    row: 'pits claimed on a sound tile',
    holds: ['0.29', '**not met**'],
  },
  {
    said: 'When a stone will be ready is off by more than one check, half of the time.',
    row: 'median error, all checks',
    holds: ['1.37', '**not met**'],
  },
];

/** What it does well. */
export const REACHED: readonly TrustFigure[] = [
  {
    said: 'What it calls a pit is one, more than nine times in ten.',
    row: 'pits, recall and precision',
    holds: ['0.93'],
  },
  {
    said: 'With a second photo, the lamp moved, it finds two pits of three; one claim in seven is then wrong.',
    row: 'both, confidence 0.5',
    holds: ['0.68, 0.86'],
  },
  {
    said: 'It finds more than nine fractures of ten, and invents hardly any.',
    row: 'fractures of 2 mm and more, recall',
    holds: ['0.93 of 85; 0.005', 'met'],
  },
  {
    said: 'Gloss is right within 2.1 units half of the time, within 8 nine times in ten, when the material is known.',
    row: '60° gloss error, material known',
    holds: ['2.1, 7.95', 'met'],
  },
  {
    said: 'Its gloss intervals hold the truth in 95 of 100 stones.',
    row: '90 % intervals that hold',
    holds: ['95.3 %', 'met'],
  },
  {
    said: 'It knows a stone again from check to check, and asks where it is not sure: wrong once in 150 times that it did not ask.',
    row: 'right among those taken without asking',
    holds: ['0.994', 'met'],
  },
  {
    said: 'When it says that a stone will not clear, that is right 96 times in 100, if stones grind as we think.',
    row: '"will not clear" right',
    holds: ['0.961', 'met'],
  },
];
