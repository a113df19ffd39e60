import type { CompareWhat } from '../../compare/compareBy';
import { percent, percents, weeks } from '../../compare/compareWords';
import { areaLoss, lengthLoss, type StoneFigure } from '../../compare/stoneFigure';
import type { StoneDigest } from '../../history/batchDigest';
import { lengthWords } from '../../texts/measures';
import { plainNumber } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';

/** A stone's own figure: "91 % of the ceiling (86 to 96 %), 86 gloss units". */
export function stoneWords({ stone, value, low, high, state }: StoneFigure, what: CompareWhat): string {
  const words = texts().compare;
  switch (what) {
    case 'gloss':
      return words.stoneGloss(percent(value), percents(low, high), plainNumber(stone.gloss?.gu60 ?? 0));
    case 'coarse':
      if (state === 'known') return words.stoneInCoarse(weeks(value));
      return state === 'waiting' ? words.stoneSoFar(weeks(value)) : words.stoneSetAside(weeks(value));
    case 'size':
      return sizeWords(stone);
    case 'finished':
      return words.stoneEnd[state];
  }
}

/** "35 mm, now 32 mm: 8 % of the length and 15 % of the area lost". */
function sizeWords(stone: StoneDigest): string {
  const [first, last] = stone.lengthMm;
  const losses = [percent(lengthLoss(stone) ?? 0), percent(areaLoss(stone) ?? 0)] as const;
  return texts().compare.stoneSize(lengthWords(first), lengthWords(last), ...losses);
}

/** A stone's material, within a sentence. */
export const materialWords = ({ material }: Pick<StoneDigest, 'material'>) =>
  material === null ? texts().compare.favoriteMaterialUnsaid : texts().verdicts.materials[material];

/** What is said of a favorite, a line each. */
export function favoriteLines(stone: StoneDigest): string[] {
  const { compare: words, verdicts } = texts();
  const { gloss, coarseDays, lengthMm, action } = stone;
  return [
    gloss === null
      ? words.favoriteUnread
      : words.favoriteGloss(percent(gloss.shareOfCeiling), verdicts.finishes[gloss.finish]),
    ...(coarseDays === null ? [] : [words.stoneInCoarse(weeks(coarseDays / 7))]),
    words.favoriteLong(lengthWords(lengthMm[1])),
    verdicts.actionsWithin[action],
  ];
}
