import { page } from './page';

/** What each verdict means, and how its line and sign look. */
export const verdicts = {
  intro:
    'Every stone is outlined in the line of its verdict and carries its sign. You need no color to read it.',
  meanings: {
    finished: 'Done. Its gloss is near what its material can reach, and no flaw is over your limits.',
    advance: 'Ready for the next step. It is smooth enough, and no flaw is over your limits.',
    repeat: 'The same step once more. The reason says what is missing.',
    'back-to-coarse': 'A flaw this step cannot take out. It would carry grit into the finer steps.',
    'set-aside':
      'Grinding on will not help: a long fracture, or too small. Saw it, break it, or keep it as it is.',
    'look-closer': 'The photo cannot tell. Take the stone in your hand, and a loupe.',
  },
  lines: {
    finished: 'a double line and a glint',
    advance: 'an unbroken line and a stair',
    repeat: 'dashes and a spiral',
    'back-to-coarse': 'beads and two rough edges',
    'set-aside': 'dash and dot, and a stone on a shelf',
    'look-closer': 'short dashes far apart, and a loupe',
  },
  outro: `In doubt a stone is never advanced. One bad stone spoils a batch; one more week costs a week. The limits are yours: set them under *${page.setup}*.`,
} as const;

/** How each number is made, in plain words. */
export const numbers = {
  ball: 'The ball',
  /** `unit` is the name of the unit of lengths, as `page` has it. */
  aboutBall: (unit: string) =>
    `The dark glass ball is a mirror that is known. Its width gives the scale in ${unit}. The place of the lamp’s image tells where the lamp stands, its size how large the lamp looks, its edge how sharp the camera is, and its brightness what a perfect mirror would send back.`,
  highlight: 'The lamp’s image on a stone',
  aboutHighlight:
    'A stone is a curved mirror too, only rougher. Roughness makes the lamp’s image lower, wider and softer. The program draws such images for every roughness, and takes those that fit the photo.',
  gloss: 'Gloss units',
  aboutGloss:
    'From the roughness follows what a gloss meter would read on a flat of the same finish, at 60° (ISO 2813, ASTM D523). A perfect polish of the standard’s glass reads 100. It is an estimate, and says so.',
  interval: 'The interval',
  aboutInterval:
    'No photo tells the number exactly. *88 (83 to 92)* means: most likely 88, and nine times in ten between 83 and 92. When two intervals overlap widely, do not call one stone shinier.',
  ceiling: 'The ceiling',
  aboutCeiling: (agate: string, fluorite: string, corundum: string) =>
    `Each mineral sends back only so much light, however well it is polished. That is its ceiling. Agate ends near ${agate}, fluorite near ${fluorite}, corundum near ${corundum}. So tell the program what the stone is made of.`,
  smoothness: 'Smoothness',
  aboutSmoothness: (inInches: boolean) => {
    const density = inInches
      ? 'more for more inches of flaw on each square inch'
      : 'more for more millimeters of flaw on each square centimeter';
    return `It starts at 100. Pits take up to 50, fractures up to 30, chips up to 12, scratches up to 8: ${density}. What each took is shown.`;
  },
  confidence: 'Confidence',
  aboutConfidence:
    'Each mark has a confidence. On the trays it was set on, 0.8 was right eight times in ten. From 0.5 on a flaw counts. Between 0.125 and 0.5 it is doubtful; if doubtful flaws would decide, you are asked to look closer.',
} as const;
