/** Setup of ball, lamp, camera and limits. Lengths come with their unit. */
export const setup = {
  gradedAs: 'Graded as',
  outOf: 'These stones come out of',
  /** Names of steps that fit a fifth of a phone's width. */
  shortSteps: {
    coarse: 'coarse',
    medium: 'medium',
    fine: 'fine',
    prepolish: 'pre-polish',
    polish: 'polish',
  },
  material: 'Material',
  mixed: 'mixed, or not sure',
  ballDiameter: (unit: string) => `Diameter of the dark glass ball, ${unit}`,
  /** The two ends, the second with its unit. */
  ballRange: (least: string, most: string) => `${least} to ${most}. All sizes are measured against it.`,
  lampAndCamera: 'Lamp and camera',
  besideCamera: 'The lamp stands right beside the camera.',
  /** Where the light comes from in the picture: from the right, then on toward the upper edge. */
  sides: {
    right: 'the right',
    'upper-right': 'the upper right',
    top: 'the top',
    'upper-left': 'the upper left',
    left: 'the left',
    'lower-left': 'the lower left',
    bottom: 'the bottom',
    'lower-right': 'the lower right',
  },
  lampFrom: (side: string, offDeg: number) =>
    `The light comes from ${side} of the picture, ${offDeg}° off the camera.`,
  nothingRemembered: 'Nothing is remembered yet.',
  remembered: 'Remembered.',
  rememberedOn: (day: string) => `Remembered on ${day}.`,
  remember: 'Remember this lamp and camera',
  rememberInstead: 'Remember these instead',
  isSample:
    'This is the sample. To remember your own lamp and camera, photograph your tray with the ball in it.',
  needsBall: 'To remember lamp and camera, photograph the tray with the ball in it.',
  noBall: 'No ball in the tray: measure by the remembered lamp and camera',
  isRemembered: 'This photo is the one remembered.',
  /** A step within a sentence. */
  limitsAt: (step: string) => `Limits at the ${step} step`,
  limits: {
    maxPitsPerCm2: 'Most pits',
    maxPitDiameterMm: 'Widest pit',
    maxFractureMm: 'Longest fractures, together',
    setAsideFractureMm: 'Fractures too long to grind out',
    maxChipMm: 'Widest chip',
    maxScratches: 'Most fresh scratches',
    minFlawConfidence: 'Count a flaw from this confidence',
    minShareOfCeiling: 'Finished from this share of the ceiling',
    minLengthMm: 'Shortest stone to grind on',
  },
  /** A label with the unit in which its field is filled in. */
  labelIn: (label: string, unit: string) => `${label}, ${unit}`,
  usualLimits: 'Back to the usual limits',
} as const;
