import type { CompareWhat } from '../../compare/compareBy';

const needed = {
  gloss: 'a check after polish, with a highlight the photo could read',
  coarse: 'checks in coarse, and one after the next step or the word that it advanced',
  size: 'two checks of the same stone',
  finished: 'what became of it: finished or set aside',
} as const;

const stones = (count: number) => (count === 1 ? '1 stone' : `${count} stones`);

/** Comparing materials, sources and batches. Shares, weeks and lengths come as they are written. */
export const compare = {
  title: 'Compare',
  chooseWhat: 'Compare',
  chooseBy: 'of stones of one',
  /** Names of the choices, short enough for a quarter of a phone's width. */
  by: { material: 'Material', source: 'Source', batch: 'Batch', recipe: 'Steps' },
  what: { gloss: 'Shine', coarse: 'Weeks in coarse', size: 'Size lost', finished: 'Share finished' },
  /** What stands along the axis. */
  axis: {
    gloss: 'Gloss after polish, percent',
    coarse: 'Weeks in coarse',
    size: 'Length lost, percent',
    finished: 'Stones that finished, percent',
  },
  ceiling: 'ceiling',
  /** How the dots are read. */
  reading: {
    gloss:
      'Every pebble is a stone at its last reading after polish. The ceiling is what a perfect polish of its material would read. Half of the stones lie on the colored band, the long stroke marks the median.',
    coarse:
      'Every pebble is a stone, from its batch’s start to its last check in coarse. Hollow with a tail: still there, so it takes at least so long. Cross: set aside there. The stroke marks when half had left, the band runs from a quarter to three quarters, open where too few have left.',
    size: 'Every pebble is a stone, from its first check to its last. A stone photographed on another side may look a little longer than before. Half of the stones lie on the colored band, the long stroke marks the median.',
    finished:
      'The stones of a group fill its whole width. Pebbles on the thick thread: finished; crosses on the thin one: set aside. Where they meet is the share that finished, and the colored band is what it may truly be. Stones still under way are left out.',
  },
  /** What must be kept before this can be compared. */
  needed,
  nothingYet:
    'Nothing can be compared yet. Keep every check of a batch in the journal, say which stone is which, and give stones their material and source; from then on each check adds to the comparison.',
  noneTells: (what: CompareWhat) => `No stone kept so far tells this. It takes ${needed[what]}.`,
  fiveOfAKind: 'Five stones of a kind are needed before anything is claimed of them.',
  fiveOfAGroup: 'Five stones are needed before anything is claimed of a group.',
  noGroupYet:
    'No group has five stones yet that tell this, so nothing is compared; the dots show what there is.',
  fewTitle: 'Too few stones to compare yet',
  showMore: (more: number, all: number) => `Show ${more} more of ${all}`,
  withoutFigure: (count: number) =>
    `${count === 1 ? '1 stone has' : `${count} stones have`} no such figure yet.`,
  asTable: 'The same as a table',
  tableCaption: (axis: string) => `${axis}; the best first.`,
  favorites: 'Favorites',
  showFewer: 'Show fewer',
  showAllFavorites: (count: number) => `Show all ${count} favorites`,
  /** After a stone's name. */
  ofBatch: (batch: string) => `of ${batch}`,
  ofUnnamedBatch: 'of a batch without a name',
  oneBatch: (group: string) => `All of one batch: what sets ${group} apart may be the batch.`,

  // Figures
  range: (low: string, high: string) => `${low} to ${high}`,
  weeks: (count: string) => (count === '1' ? '1 week' : `${count} weeks`),
  count: stones,
  countOnly: (count: number) => `${stones(count)} only`,
  countOfBatches: (count: number, batches: number) => `${stones(count)} of ${batches} batches`,
  stillInCoarse: (count: number) => `${count} still in coarse`,
  stillUnderWay: (count: number) => `${count} still under way`,
  setAside: (count: number) => `${count} set aside`,

  // What a group is called
  batchSince: (day: string) => `Batch of ${day}`,
  /** Where nothing was said. */
  unsaid: {
    material: 'Material not said',
    source: 'Source not said',
    batch: 'Batch without a name',
    recipe: 'No step kept',
  },
  unsaidWithin: {
    material: 'material not said',
    source: 'source not said',
    batch: 'batch without a name',
    recipe: 'no step kept',
  },
  /** A name of ours, which begins with a capital, in the middle of a sentence. */
  within: (name: string) => name.charAt(0).toLowerCase() + name.slice(1),
  /** A group at the head of a sentence. */
  subject: {
    material: (name: string) => name,
    source: (name: string) => `Stones from ${name}`,
    batch: (name: string) => name,
    recipe: (steps: string) => `Stones through ${steps}`,
  },
  subjectUnsaid: {
    material: 'Stones whose material was not said',
    source: 'Stones whose source was not said',
    batch: 'Batch without a name',
    recipe: 'Stones without a step',
  },

  // What a group came to
  sentence: (subject: string, words: string) => `${subject}: ${words}.`,
  tooFew: (subject: string, count: number) => `${subject}: ${stones(count)} only, so nothing is claimed.`,
  /** `isOne`: the subject is one material, not several stones. */
  reached: (subject: string, isOne: boolean, share: string, count: number, half: string) =>
    `${subject} reached ${share} of ${isOne ? 'its' : 'their'} ceiling (median of ${count}; half of them ${half}).`,
  lost: (subject: string, isOne: boolean, share: string, count: number, half: string) =>
    `${subject} lost ${share} of ${isOne ? 'its' : 'their'} length (median of ${count}; half of them ${half}).`,
  gloss: (share: string, half: string) => `${share} of the ceiling; half of them ${half}`,
  size: (ofLength: string, ofArea: string, half: string) =>
    `${ofLength} of the length lost, ${ofArea} of the area; half of them ${half} of the length`,
  finished: (known: number, all: number, share: string, likely: string) =>
    `${known} of ${all} finished, ${share}; the true share is likely ${likely}`,
  halfHadLeft: (weeks: string) => `half had left coarse after ${weeks}`,
  /** After {@link halfHadLeft}: bare numbers of weeks. */
  quarterAfter: (count: string) => `a quarter after ${count}`,
  threeQuartersAfter: (count: string) => `three quarters after ${count}`,
  fewHadLeft: (known: number, all: number) => `fewer than half have left coarse, ${known} of ${all}`,
  eachOfCeiling: (shares: string) => `${shares} of the ceiling`,
  eachOfLength: (shares: string) => `${shares} of the length lost`,
  leftCoarse: (count: number) => `${count} left coarse`,
  finishedCount: (count: number) => `${count} finished`,
  likelyShare: (range: string) => `The true share is likely ${range} (19 times in 20).`,
  likelyMedian: (range: string) => `The true median is likely ${range} (19 times in 20).`,
  likelyWeeks: (low: string, high: string) => `The true median is likely between ${low} and ${high}.`,
  likelyWeeksOpen: (low: string) =>
    `The true median is likely ${low} or more; how much more, those still in coarse will tell.`,

  // Where a group stands
  better: {
    gloss: (names: string) => `Higher than ${names}.`,
    coarse: (names: string) => `Sooner than ${names}.`,
    size: (names: string) => `Less than ${names}.`,
    finished: (names: string) => `More often than ${names}.`,
  },
  worse: {
    gloss: (names: string) => `Lower than ${names}.`,
    coarse: (names: string) => `Later than ${names}.`,
    size: (names: string) => `More than ${names}.`,
    finished: (names: string) => `Less often than ${names}.`,
  },
  undecided: (names: string) => `No difference that can be told yet from ${names}.`,
  others: (count: number) => `${count} others`,
  /** The end of a list; names with commas are parted by semicolons. */
  andLast: (before: string, last: string, hasCommas: boolean) =>
    `${before}${hasCommas ? ';' : ''} and ${last}`,

  // A stone
  stoneGloss: (share: string, range: string, units: string) =>
    `${share} of the ceiling (${range}), ${units} gloss units`,
  stoneInCoarse: (weeks: string) => `${weeks} in coarse`,
  stoneSoFar: (weeks: string) => `${weeks} so far, still in coarse`,
  stoneSetAside: (weeks: string) => `set aside after ${weeks} in coarse`,
  stoneSize: (first: string, last: string, ofLength: string, ofArea: string) =>
    `${first}, now ${last}: ${ofLength} of the length and ${ofArea} of the area lost`,
  stoneEnd: { known: 'finished', waiting: 'under way', 'given up': 'set aside' },
  favoriteGloss: (share: string, finish: string) => `${share} of its ceiling, ${finish}`,
  favoriteUnread: 'no shine read yet',
  favoriteMaterialUnsaid: 'material not said',
  favoriteLong: (length: string) => `${length} long`,
} as const;
