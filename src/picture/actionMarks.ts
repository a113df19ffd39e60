import type { Action } from '../grading/opinion';

/** How one action is drawn: three ways to tell it apart, each enough by itself. */
export interface ActionMark {
  /** Line color on the photo; bright, always drawn on the dark halo. */
  readonly color: string;
  /** Lengths of dash and gap in line widths; empty for an unbroken line. */
  readonly dashes: readonly number[];
  /** Line width in units of the picture's plain line. */
  readonly weight: number;
  /** Round ends turn dashes of no length into beads. */
  readonly cap: 'round' | 'butt';
  /** True to leave a dark line in the middle, which makes the line a double one. */
  readonly split: boolean;
  /** A sign drawn with a pen on a field of 10 × 10 units. */
  readonly glyph: string;
}

/** The halo under every line: near-black basalt. */
export const HALO = '#15130f';

/** Pale ink for numbers, the ball and other marks without a verdict. */
export const CHALK = '#f7f3ea';

/**
 * Colors are named after minerals and chosen so that any two stay apart for the color-blind too; patterns and
 * signs do not need the color at all.
 */
export const ACTION_MARKS: Readonly<Record<Action, ActionMark>> = {
  // Azurite; an unbroken line; a stair going up: on to the next step.
  advance: {
    color: '#54a2ff',
    dashes: [],
    weight: 1,
    cap: 'butt',
    split: false,
    glyph: 'M.2 9.4H5V4.9H9.8V.4',
  },
  // Sulfur; dashes; a spiral: round and round once more.
  repeat: {
    color: '#f5ee55',
    dashes: [5, 3],
    weight: 1,
    cap: 'butt',
    split: false,
    glyph: 'M5.6 5.6C5.2 3.9 2.5 4.2 2.5 6.2C2.6 9 8 9.4 8.9 5.6C9.7 1.6 4.2 -.6 .8 2.8',
  },
  // Carnelian; beads like coarse grains; two rough surfaces in profile.
  'back-to-coarse': {
    color: '#ef8340',
    dashes: [0, 2.2],
    weight: 1.5,
    cap: 'round',
    split: false,
    glyph: 'M0 4.4L2 1L4 4.4L6 1L8 4.4L10 1M0 9L2 5.6L4 9L6 5.6L8 9L10 5.6',
  },
  // Chert; dash and dot; a stone on a shelf.
  'set-aside': {
    color: '#b9b691',
    dashes: [6, 2.2, 1.2, 2.2],
    weight: 1,
    cap: 'butt',
    split: false,
    glyph: 'M0 9.2H10M5 1.6C7.4 1.6 9 2.8 9 4.3S7.4 7 5 7S1 5.8 1 4.3S2.6 1.6 5 1.6Z',
  },
  // Moonstone; a double line; a glint.
  finished: {
    color: '#ffffff',
    dashes: [],
    weight: 1.9,
    cap: 'butt',
    split: true,
    glyph: 'M5 0V10M0 5H10M2.6 2.6L3.8 3.8M7.4 2.6L6.2 3.8M2.6 7.4L3.8 6.2M7.4 7.4L6.2 6.2',
  },
  // Lepidolite; short dashes far apart; a loupe.
  'look-closer': {
    color: '#ca8fba',
    dashes: [1.6, 4],
    weight: 1.15,
    cap: 'butt',
    split: false,
    glyph: 'M4 .4A3.6 3.6 0 1 1 4 7.6A3.6 3.6 0 1 1 4 .4M6.6 6.6L9.8 9.8',
  },
};

/** The order in which actions are listed everywhere: first what leaves the tray, last what asks for another look. */
export const ACTION_ORDER: readonly Action[] = [
  'finished',
  'advance',
  'repeat',
  'back-to-coarse',
  'set-aside',
  'look-closer',
];
