/** One character drawn with a pen: capitals stand 10 units high, y runs from 0 down to the baseline at 10; dots lie above. */
export interface StrokeGlyph {
  /** Units from this character's left edge to its right edge, without spacing. */
  readonly width: number;
  /** SVG path data, to be stroked and never filled. */
  readonly path: string;
}

/** Height of capitals and digits, in the units of the paths. */
export const GLYPH_HEIGHT = 10;

/**
 * Our own single-stroke characters, so that a picture rasterized without any font looks the same everywhere.
 * Digits are drawn open and unlike one another (footed one, wide bowls), to be read with tired eyes.
 */
export const STROKE_GLYPHS: Readonly<Record<string, StrokeGlyph>> = {
  ' ': { width: 3, path: '' },
  '-': { width: 4, path: 'M0 5.6H4' },
  '–': { width: 6, path: 'M0 5.6H6' },
  ',': { width: 1, path: 'M.8 9.4L.2 11.4' },
  '.': { width: 0.5, path: 'M.2 9.9V10' },
  ':': { width: 0.5, path: 'M.2 4.3V4.4M.2 9.9V10' },
  '"': { width: 2.8, path: 'M.3 0V2.8M2.5 0V2.8' },
  '²': { width: 3.4, path: 'M.2 1.2C.4 .4 1 0 1.7 0C2.7 0 3.2 .6 3.2 1.4C3.2 2.4 2 3.4 .1 5.2H3.4' },
  '0': { width: 6, path: 'M3 0C5.2 0 6 2 6 5S5.2 10 3 10S0 8 0 5S.8 0 3 0Z' },
  '1': { width: 4.8, path: 'M.4 2.3L2.7 0V10M.5 10H4.8' },
  '2': {
    width: 6,
    path: 'M.3 2.4C.6 .8 1.7 0 3.1 0C4.8 0 5.8 1.1 5.8 2.7C5.8 4.6 3.6 6.4 .2 10H6',
  },
  '3': {
    width: 6,
    path: 'M.5 1.4C1.1 .5 2 0 3.1 0C4.7 0 5.6 1 5.6 2.4C5.6 3.9 4.5 4.7 2.6 4.7C4.7 4.7 6 5.7 6 7.3C6 8.9 4.7 10 2.9 10C1.6 10 .6 9.4 .1 8.4',
  },
  '4': { width: 6, path: 'M4.4 10V0L0 6.9H6' },
  '5': {
    width: 6,
    path: 'M5.4 0H1.1L.7 4.4C1.4 3.9 2.2 3.7 3 3.7C4.8 3.7 6 4.9 6 6.8C6 8.7 4.7 10 2.8 10C1.6 10 .7 9.5 .1 8.7',
  },
  '6': {
    width: 6,
    path: 'M5 .1C2.2 .9 .2 3.4 .2 6.7C.2 8.7 1.4 10 3.1 10C4.8 10 6 8.7 6 6.9C6 5.1 4.8 4 3.2 4C1.7 4 .5 5 .2 6.7',
  },
  '7': { width: 6, path: 'M.1 0H6L2.2 10' },
  '8': {
    width: 6,
    path: 'M3 4.6C1.5 4.6 .5 3.7 .5 2.3S1.5 0 3 0S5.5 .9 5.5 2.3S4.5 4.6 3 4.6C1.2 4.6 0 5.7 0 7.3S1.2 10 3 10S6 8.9 6 7.3S4.8 4.6 3 4.6Z',
  },
  '9': {
    width: 6,
    path: 'M1 9.9C3.8 9.1 5.8 6.6 5.8 3.3C5.8 1.3 4.6 0 2.9 0C1.2 0 0 1.3 0 3.1C0 4.9 1.2 6 2.8 6C4.3 6 5.5 5 5.8 3.3',
  },
  A: { width: 7, path: 'M0 10L3.5 0L7 10M1.2 6.6H5.8' },
  B: {
    width: 6,
    path: 'M0 0V10H3.3C5 10 6 9 6 7.4S5 4.8 3.3 4.8H0M0 0H3C4.6 0 5.4 .9 5.4 2.4S4.6 4.8 3 4.8',
  },
  C: { width: 6.6, path: 'M6.6 1.8C6 .7 5 0 3.8 0C1.5 0 0 2.1 0 5S1.5 10 3.8 10C5 10 6 9.3 6.6 8.2' },
  D: { width: 6.6, path: 'M0 0V10H2.4C5 10 6.6 8.1 6.6 5S5 0 2.4 0Z' },
  E: { width: 5.2, path: 'M5.2 0H0V10H5.2M0 4.8H4.4' },
  F: { width: 5.2, path: 'M5.2 0H0V10M0 4.9H4.4' },
  G: {
    width: 6.8,
    path: 'M6.5 1.8C5.9 .7 5 0 3.8 0C1.5 0 0 2.1 0 5S1.5 10 3.8 10C5.2 10 6.2 9.4 6.8 8.6V5.4H4.2',
  },
  H: { width: 6.4, path: 'M0 0V10M6.4 0V10M0 4.9H6.4' },
  I: { width: 0.6, path: 'M.3 0V10' },
  J: { width: 4.4, path: 'M4.4 0V7.2C4.4 9 3.6 10 2.2 10C1.1 10 .3 9.4 0 8.4' },
  K: { width: 6, path: 'M0 0V10M5.8 0L0 6M2.2 3.9L6 10' },
  L: { width: 5, path: 'M0 0V10H5' },
  M: { width: 8, path: 'M0 10V0L4 6.4L8 0V10' },
  N: { width: 6.6, path: 'M0 10V0L6.6 10V0' },
  O: { width: 7.4, path: 'M3.7 0C6 0 7.4 2.1 7.4 5S6 10 3.7 10S0 7.9 0 5S1.4 0 3.7 0Z' },
  P: { width: 5.8, path: 'M0 10V0H3.1C4.8 0 5.8 1 5.8 2.7S4.8 5.5 3.1 5.5H0' },
  Q: { width: 7.4, path: 'M3.7 0C6 0 7.4 2.1 7.4 5S6 10 3.7 10S0 7.9 0 5S1.4 0 3.7 0ZM4.6 7.6L7.2 10.6' },
  R: { width: 6, path: 'M0 10V0H3.1C4.8 0 5.7 .9 5.7 2.6S4.8 5.2 3.1 5.2H0M3 5.2L6 10' },
  S: {
    width: 5.8,
    path: 'M5.4 1.6C4.9 .6 4 0 2.9 0C1.4 0 .4 .9 .4 2.3C.4 3.9 1.7 4.4 3 4.8C4.5 5.3 5.8 5.9 5.8 7.5C5.8 9 4.6 10 3 10C1.6 10 .5 9.3 0 8.2',
  },
  T: { width: 6.4, path: 'M0 0H6.4M3.2 0V10' },
  U: { width: 6.4, path: 'M0 0V6.2C0 8.6 1.2 10 3.2 10S6.4 8.6 6.4 6.2V0' },
  V: { width: 6.8, path: 'M0 0L3.4 10L6.8 0' },
  W: { width: 9.6, path: 'M0 0L2.4 10L4.8 1.6L7.2 10L9.6 0' },
  X: { width: 6.4, path: 'M0 0L6.4 10M6.4 0L0 10' },
  Y: { width: 6.4, path: 'M0 0L3.2 5L6.4 0M3.2 5V10' },
  Ä: { width: 7, path: 'M0 10L3.5 0L7 10M1.2 6.6H5.8M1.3 -2.6V-2.4M5.7 -2.6V-2.4' },
  Ö: {
    width: 7.4,
    path: 'M3.7 0C6 0 7.4 2.1 7.4 5S6 10 3.7 10S0 7.9 0 5S1.4 0 3.7 0ZM1.8 -2.8V-2.6M5.6 -2.8V-2.6',
  },
  Ü: { width: 6.4, path: 'M0 0V6.2C0 8.6 1.2 10 3.2 10S6.4 8.6 6.4 6.2V0M1.4 -2.6V-2.4M5 -2.6V-2.4' },
  Z: { width: 6, path: 'M.2 0H6L0 10H6' },
};
