import type { CompareBy, CompareWhat } from '../../compare/compareBy';

/** Names of the choices, short enough for a quarter of a phone's width. */
export const BY_TERMS: Readonly<Record<CompareBy, string>> = {
  material: 'Material',
  source: 'Source',
  batch: 'Batch',
  recipe: 'Steps',
};

export const WHAT_TERMS: Readonly<Record<CompareWhat, string>> = {
  gloss: 'Shine',
  coarse: 'Weeks in coarse',
  size: 'Size lost',
  finished: 'Share finished',
};

/** What stands along the axis. */
export const AXIS_TERMS: Readonly<Record<CompareWhat, string>> = {
  gloss: 'Gloss after polish, percent',
  coarse: 'Weeks in coarse',
  size: 'Length lost, percent',
  finished: 'Stones that finished, percent',
};

/** How the dots are read. */
export const READING_TERMS: Readonly<Record<CompareWhat, string>> = {
  gloss:
    'Every pebble is a stone at its last reading after polish. The ceiling is what a perfect polish of its material would read. Half of the stones lie on the colored band, the long stroke marks the median.',
  coarse:
    'Every pebble is a stone, from its batch’s start to its last check in coarse. Hollow with a tail: still there, so it takes at least so long. Cross: set aside there. The stroke marks when half had left, the band runs from a quarter to three quarters, open where too few have left.',
  size: 'Every pebble is a stone, from its first check to its last. A stone photographed on another side may look a little longer than before. Half of the stones lie on the colored band, the long stroke marks the median.',
  finished:
    'The stones of a group fill its whole width. Pebbles on the thick thread: finished; crosses on the thin one: set aside. Where they meet is the share that finished, and the colored band is what it may truly be. Stones still under way are left out.',
};

/** What must be kept before this can be compared. */
export const NEEDED_TERMS: Readonly<Record<CompareWhat, string>> = {
  gloss: 'a check after polish, with a highlight the photo could read',
  coarse: 'checks in coarse, and one after the next step or the word that it advanced',
  size: 'two checks of the same stone',
  finished: 'what became of it: finished or set aside',
};
