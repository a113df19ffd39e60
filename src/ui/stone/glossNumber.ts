import { withDecimalMark } from '../../texts/plainNumber';

/** Gloss units as they are read: a decimal below ten, none above. */
export const glossNumber = (gu: number): string => withDecimalMark(gu.toFixed(gu < 10 ? 1 : 0));
