/** The photo, its sorting picture and the list of its stones. */
export const tray = {
  empty: 'Take or choose a photo of your tray.',
  takePhoto: 'Take a photo',
  choosePhotos: 'Choose photos',
  camera: 'Camera',
  photoFiles: 'Photo files',
  /** Name of a picture that has none. */
  pastedPhoto: 'Pasted photo',
  photoStates: {
    waiting: 'waiting',
    measuring: 'being measured',
    measured: 'measured',
    refused: 'not measured',
    failed: 'not measured',
    cancelled: 'stopped',
  },
  stoneCount: (count: number) => (count === 1 ? '1 stone' : `${count} stones`),
  /** While a photo is measured. */
  waiting: 'Waiting for its turn …',
  stages: {
    decode: 'Opening the photo …',
    ball: 'Finding the ball and the lamp …',
    stones: 'Outlining the stones …',
    highlights: 'Reading the highlights …',
    flaws: 'Looking for pits and fractures …',
  },
  measuredSoFar: 'Measured so far',
  /** Where a photo could not be measured. */
  showBall: 'Show where the ball is',
  ballSetup: 'Ball and lamp setup',
  withoutShot: 'Measure without the added shot',
  withoutSecond: 'Measure without the second photo',
  measureAgain: 'Measure it again',
  tapBall: 'Tap the dark glass ball in the photo.',
  neverMind: 'Never mind',
  ballCross: 'Cross for the ball: move it with the arrow keys, set it down with Enter',
  sampleName: 'Sample tray',
  sampleTray: 'Sample tray.',
  sampleNote: 'A rendered picture, measured here like any photo.',
  warnings: 'Warnings about this photo',
  /** Other shots of the same scene, with how bright each is: "0.25 ×". */
  merged: (lights: readonly string[]) => {
    const which = lights.length === 1 ? 'another shot' : `${lights.length} other shots`;
    return `Merged with ${which}, ${lights.join(' and ')} as bright.`;
  },
  takeAway: 'Take it away',
  addShot: 'Add a darker shot',
  darkerShots: 'Darker shots',
  /** A second photo with the lamp elsewhere. */
  lampMoved: {
    offer: 'Pit or pattern? Carry the lamp a third of the way around the tray and photograph it again.',
    unused: 'The second photo was not used.',
    add: 'Add one with the lamp moved',
    file: 'Photo with the lamp moved',
    /** Degrees that the tray was turned by; null when it lay still. */
    used: (turnedDeg: number | null) => {
      const turned = turnedDeg === null ? '' : `, the tray turned by ${turnedDeg}°`;
      return `Pits checked against a second photo, the light from elsewhere${turned}: what it shades differently is relief.`;
    },
  },
  trayOfStones: 'The tray of stones',
  enlarge: 'Enlarge the photo',
  reduce: 'Reduce the photo',
  wholeTray: 'Whole tray',
  stonesInTray: 'Stones in the tray',
  /** Name of a stone and its verdict as a title; null before it is graded. */
  stoneAndVerdict: (stone: string, verdict: string | null) => `${stone}: ${verdict ?? 'not graded'}`,
  sortTray: 'Sort the tray',
  /** The sorting picture in large print. */
  bench: {
    open: 'Large print',
    next: 'Next',
    back: 'Back',
    nextPile: 'Next pile',
    close: 'Close',
  },
  scratchesIn: { batch: 'Fresh scratches in the batch.', stones: 'Fresh scratches.' },
  /** A verdict as a title and how many stones have it. */
  groupAndCount: (verdict: string, count: number) => `${verdict}: ${count}`,
  showAll: 'Show all',
  showOnly: 'Show only these',
  showAllOf: (verdict: string) => `Show all: ${verdict}`,
  showOnlyOf: (verdict: string) => `Show only these: ${verdict}`,
  /** What to do with the stones of a group; their numbers follow. */
  errands: {
    finished: 'Done. Take these out:',
    advance: 'Ready for the next step. Pick out these:',
    repeat: 'Same step once more. Leave these in:',
    'back-to-coarse': 'Flaws too deep for this step. Pull these back:',
    'set-aside': 'Grinding on will not help. Lay these aside and decide:',
    'look-closer': 'The photo cannot tell. Look at these by hand:',
  },
  savePicture: 'Save the sorting picture',
  saveTrouble: 'The sorting picture could not be saved on this device: take a screenshot instead.',
  /** Drawn in strokes, so only in characters that `picture/strokeGlyphs` has. */
  ball: 'Ball',
  warningWords: {
    blurred: 'Blurred',
    'too-dark': 'Too dark',
    clipped: 'Too bright here',
    'ball-clipped': 'Lamp too bright on the ball',
    'second-light': 'Second light',
    'lamp-partly': 'Lamp partly hidden',
    'wet-stones': 'Wet',
    'lamp-too-large': 'Lamp too large',
    'stone-cut-off': 'Cut off by the edge',
    'low-resolution': 'Too few pixels',
  },
} as const;
