/** One stone looked at closely. Numbers come written already. */
export const stone = {
  previous: 'Previous stone',
  next: 'Next stone',
  close: 'Close',
  enlarged: (stone: string) => `${stone} enlarged`,
  hideMarks: 'Hide the marks',
  showMarks: 'Show the marks',
  /** Goes on after the stone's name, which leads to its own page. */
  ofBatch: (checks: number) => `of its batch, ${checks === 1 ? 'first check' : `${checks} checks`}.`,
  /** A verdict within a sentence. */
  photoAlone: (verdict: string) => `The photo alone would say ${verdict}.`,
  decide: 'What you do with it',
  flawsFound: 'Flaws found',
  noFlaws: 'No pits, fractures, chips or scratches found on the side that faces the camera.',
  hideUncertain: 'Hide what is uncertain',
  showUncertain: (count: number) => `Show ${count} more that may be pattern or shadow`,
  /** One flaw: its kind as a title, its sizes with units where known, and what a second photo told of it. */
  flaw: (flaw: {
    title: string;
    across: string | null;
    long: string | null;
    wide: string | null;
    followsLamp: boolean | null;
    isUncertain: boolean;
  }) =>
    [
      flaw.title,
      flaw.across && `${flaw.across} across`,
      flaw.long && `${flaw.long} long`,
      flaw.wide && `about ${flaw.wide} wide`,
      flaw.followsLamp === true && 'shaded by the lamp',
      flaw.followsLamp === false && 'not shaded by the lamp: likely pattern',
      flaw.isUncertain && 'uncertain',
    ]
      .filter((part) => part)
      .join(', '),
  smoothness: 'Smoothness',
  smoothnessOf: (score: string) => `**${score}** of 100`,
  inspected: (surface: string) => `${surface} looked at; what lies beyond is not seen, not sound.`,
  /** ASTM G46 is a standard; its classes are such as "A-3". */
  pitClasses: (classes: readonly string[]) => `Pits in the classes of ASTM G46: ${classes.join(', ')}.`,
  gloss: 'Gloss',
  glossEstimated: 'Gloss, estimated',
  noGloss: {
    'second-light': 'Not read: its highlight lies where it mirrors a second light.',
    moved: 'Not read: lamp or camera are not where they were when they were remembered.',
    dull: 'No highlight could be read on this stone: it is dull, or its top faces away from lamp and camera.',
  },
  glossAtMost: (gu: string) => `It has at most about ${gu} gloss units at 60°.`,
  finishAndLevel: (finish: string, level: string) => `**${finish}**, gloss level ${level}`,
  glossReading: (gu: string, low: string, high: string, percent: string, ceiling: string) =>
    `${gu} gloss units at 60° (${low} to ${high}): ${percent} % of what this material can reach. A perfect polish of it reads ${ceiling}.`,
  glossOfCeiling: (gu: string, ceiling: string) => `${gu} of ${ceiling} gloss units`,
  perfectPolish: 'perfect polish',
  highlight: 'Its highlight',
  chart: {
    title: 'Brightness of the highlight from its center outward, measured and fitted',
    across: 'lamp radii from the center',
    /** First the dots in strong words, then the line: each has its color. */
    caption:
      'Percent of what a perfect polish would send back. **Dots**: your photo. **Line**: the surface that fits best. A tall narrow peak is a mirror, a low wide one is matte.',
  },
  noWaves: (longest: string) => `No waviness seen, in waves of up to ${longest}.`,
  waves: (slope: string, low: string, high: string, wavelength: string) =>
    `Waviness, apart from the gloss: slopes of ${slope}° (${low} to ${high}) in waves about ${wavelength} long, as orange peel has.`,
  dullPatches: (count: number, area: string) =>
    count === 1
      ? `A dull patch of ${area} inside the mirrored lamp: a pit, frosting or an undercut grain.`
      : `${count} dull patches inside the mirrored lamp, together ${area}: pits, frosting or undercut grains.`,
  furtherReading: (gu: string, low: string, high: string) => `${gu} gloss units (${low} to ${high})`,
  /** Such readings at other places of the stone, and whether they are unlike the first. */
  further: (readings: readonly string[], differs: boolean) => {
    const read = `The lamp is mirrored elsewhere on this stone too, there with ${readings.join(' and ')}`;
    return differs ? `Unevenly polished. ${read}.` : `${read}: as even as can be told.`;
  },
  allFigures: 'All figures of its shine',
  figuresNote: 'What instruments would read on a flat of the same finish, estimated from this photo.',
  figureNames: {
    gu20: 'Gloss at 20°',
    gu60: 'Gloss at 60°',
    gu85: 'Gloss at 85°',
    imageClarity: 'Image clarity',
    distinctnessOfImage: 'Distinctness of image',
    haze: 'Haze',
    contrast: 'Contrast to the eye',
    distinctness: 'Distinctness to the eye',
  },
  figureWords: {
    gu20: 'Seen from above. Tells a mirror from a near-mirror.',
    gu60: 'The usual number: the finish is named by it.',
    gu85: 'Seen at a slant, where even satin shines.',
    distinctnessOfImage: 'How sharp the edge of a mirrored lamp is.',
    haze: 'Milky glow around a mirrored lamp. None on a perfect polish.',
    hazeOfDull: 'Milky glow around a mirrored lamp. Says nothing on a stone this dull.',
    contrast: 'How the shine stands out: more on a dark stone than on a white one.',
    contrastUnknown: 'Not known for this stone: too little of it is seen beside the highlight.',
    distinctness: 'How sharp the mirror image looks: 1 is a mirror.',
  },
  clarityOfDull: 'How clear 2 mm stripes stay in the mirror image. Only near-mirrors have any.',
  /** Clarities of the finer combs, in percent. */
  clarity: (finer: readonly string[]) =>
    `How clear 2 mm stripes stay in the mirror image. Finer ones, 1 mm down to ⅛ mm: ${finer.join(', ')} %.`,
  range: (low: string, high: string) => `${low} to ${high}`,
} as const;
