import type { BatchPoster } from '../../src/picture/batchPoster';
import type { BeforeAfter, CardMoment } from '../../src/picture/beforeAfterCard';
import { inventedReport } from '../helpers/inventedReport';

const { stones: shapes, mmPerPx } = inventedReport(40);
const stoneAt = (i: number) => ({ outline: shapes[i]!.outline, mmPerPx });
const reading = (gu60: number) => ({ gu60, gu60Low: 0.9 * gu60, gu60High: Math.min(100, 1.1 * gu60) });

const moment: CardMoment = {
  ...{ day: '2026-03-09', step: 'coarse', stone: stoneAt(0), turnDeg: 40, lengthMm: 31.6 },
  gloss: reading(3),
};
/** A stone that never was, at its first and last check. */
export const inventedCard: BeforeAfter = {
  ...{ title: 'Stone 3', about: ['agate', 'the brook'], isFavorite: true, ceilingGu60: 95.7 },
  before: moment,
  after: {
    ...moment,
    day: '2026-11-20',
    step: 'polish',
    stone: stoneAt(1),
    turnDeg: 0,
    gloss: reading(88),
  },
  ...{ steps: ['coarse', 'polish'], weeksInCoarse: 11, checkCount: 14 },
};
/** A batch of 1 to 40 stones that never were; every fifth is a favorite, every second finished. */
export const inventedPoster = (count: number, name = 'Winter barrel'): BatchPoster => ({
  ...{ name, startedOn: '2026-03-02', lastDay: '2026-11-20', checkCount: 9 },
  stones: shapes.slice(0, count).map((_, i) => ({
    ...{ stone: stoneAt(i), name: `${i + 1}`, isFavorite: i % 5 === 0 },
    action: i % 2 === 0 ? 'finished' : 'advance',
  })),
});

/** Names that would break a careless picture. */
export const HARD_NAMES = [
  'x'.repeat(200),
  'the one from the brook '.repeat(9),
  'החלוק הירוק שמצאנו בנחל '.repeat(8),
  '<svg onload="alert(1)">&amp;\u0000\ud800</svg>',
  '',
];
