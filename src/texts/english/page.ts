/** The frame around every screen, and the choices of how the page speaks. */
export const page = {
  places: 'Places',
  tray: 'Tray',
  journal: 'Journal',
  plan: 'Plan',
  safety: 'Safety',
  setup: 'Setup',
  help: 'Help',
  /** Closes a window. */
  done: 'Done',
  opening: 'Opening…',
  photos: 'Photos',
  privacy: 'Photos never leave this device.',
  letGo: 'Let go to measure',
  languageAndUnits: 'Language and units',
  language: 'Language',
  asBrowser: 'as the browser',
  lengthsIn: 'Lengths in',
  millimeters: 'millimeters',
  inches: 'inches',
  gritBy: 'Grit by',
  bySpoon: 'the spoon',
  byGram: 'the gram',
  weightsIn: 'Weights in',
  kilograms: 'kilograms',
  pounds: 'pounds',
  /** Names of links into the help. */
  helpOn: {
    verdicts: 'Help: what the verdicts mean',
    flaws: 'Help: pits, fractures, chips and scratches',
    finishes: 'Help: matte to mirror',
    numbers: 'Help: how the numbers come about',
    trust: 'Help: how far to trust it',
  },
  undo: 'Undo',
  /** Where a screen should be. */
  broken: {
    said: (cause: string) =>
      `This screen broke (${cause}). Nothing that was kept is lost: open the page again, or go on elsewhere.`,
    again: 'Open the page again',
  },
  removePhoto: 'Take this photo away',
  photoRemoved: (name: string) => `${name} was taken away.`,
} as const;
