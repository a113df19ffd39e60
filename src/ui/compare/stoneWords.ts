import type { CompareWhat } from '../../compare/compareBy';
import { percent, percents, weeks } from '../../compare/compareWords';
import { areaLoss, lengthLoss, type StoneFigure } from '../../compare/stoneFigure';
import { plainNumber } from '../../grading/plainNumber';
import type { StoneDigest } from '../../history/batchDigest';
import { ACTION_MARKS } from '../../picture/actionMarks';

/** A stone's own figure: "91 % of the ceiling (86 to 96 %), 86 gloss units". */
export function stoneWords({ stone, value, low, high, state }: StoneFigure, what: CompareWhat): string {
  switch (what) {
    case 'gloss':
      return `${percent(value)} of the ceiling (${percents(low, high)}), ${plainNumber(stone.gloss?.gu60 ?? 0)} gloss units`;
    case 'coarse':
      if (state === 'known') return `${weeks(value)} in coarse`;
      return state === 'waiting'
        ? `${weeks(value)} so far, still in coarse`
        : `set aside after ${weeks(value)} in coarse`;
    case 'size':
      return sizeWords(stone);
    case 'finished':
      return state === 'waiting' ? 'under way' : state === 'known' ? 'finished' : 'set aside';
  }
}

/** "35 mm, now 32 mm: 8 % of the length and 15 % of the area lost". */
function sizeWords(stone: StoneDigest): string {
  const [first, last] = stone.lengthMm;
  const losses = `${percent(lengthLoss(stone) ?? 0)} of the length and ${percent(areaLoss(stone) ?? 0)} of the area lost`;
  return `${plainNumber(first)} mm, now ${plainNumber(last)} mm: ${losses}`;
}

/** What is said of a favorite, a line each. */
export function favoriteLines(stone: StoneDigest): string[] {
  const { gloss, coarseDays, lengthMm, action } = stone;
  return [
    gloss === null ? 'no shine read yet' : `${percent(gloss.shareOfCeiling)} of its ceiling, ${gloss.finish}`,
    ...(coarseDays === null ? [] : [`${weeks(coarseDays / 7)} in coarse`]),
    `${plainNumber(lengthMm[1])} mm long`,
    ACTION_MARKS[action].word.toLowerCase(),
  ];
}
