/** How far the numbers can be trusted; `src/ui/help/trustFigures.ts` ties each figure to where it comes from. */
export const trust = {
  intro:
    '**Look at the marked picture before you act on it, and trust your thumb-nail over the program.** Nearly all figures here come from rendered trays, where the truth is known. Real photos are harder.',
  missed: 'What it does not reach',
  reached: 'What it does well',
  outro:
    'It sees only what faces the camera. Turn the stones over and photograph them again: both sides add up. It is a help for sorting, no gem report and no word on safety.',
} as const;

/** Targets of our own that are not reached. Rendered trays unless it says otherwise. */
export const missed = {
  pits: 'One photo shows only four pits of ten.',
  /** Lengths come with their unit. */
  smallPits: (small: string, large: string) =>
    `Of pits below ${small} it shows one of eight, of those above ${large} every second.`,
  chips: 'It shows six chips of ten.',
  scratches: 'It shows four scratches of ten that an eye could see.',
  advanced: 'Of 142 stones over the limits it would have advanced five.',
  sentBack: 'Of 19 good stones it sent two back.',
  noNumber: 'One stone in twelve gets no gloss number, most of them matte.',
  roughness:
    'In changed photos (sharpened, blurred) two near-mirrors were read twice as rough as they are, without a warning.',
  tileHoles: 'On real photographs of ground tiles it found half of the holes.',
  soundTiles: 'On ten sound tiles it claimed three holes that are none.',
  forecast: 'When a stone will be ready is off by more than one check, half of the time.',
} as const;

/** What it does well. */
export const reached = {
  pitClaims: 'What it calls a pit is one, more than nine times in ten.',
  lampMoved:
    'With a second photo, the lamp moved, it finds two pits of three; one claim in seven is then wrong.',
  fractures: 'It finds more than nine fractures of ten, and invents hardly any.',
  gloss:
    'Gloss is right within 2.1 units half of the time, within 8 nine times in ten, when the material is known.',
  intervals: 'Its gloss intervals hold the truth in 95 of 100 stones.',
  identity:
    'It knows a stone again from check to check, and asks where it is not sure: wrong once in 150 times that it did not ask.',
  willNotClear:
    'When it says that a stone will not clear, that is right 96 times in 100, if stones grind as we think.',
} as const;
