import type { StoneGrade } from '../../grading/gradeStone';
import type { MeasuredSkin } from '../../grading/measuredStone';
import { areaWords, lengthWords } from '../../texts/measures';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { glossNumber } from './glossNumber';

/**
 * What the lamp's image says of waves and dull patches, in words.
 *
 * @param skin - Null where no highlight was fitted.
 * @returns A sentence each; none where the image does not tell, or shows no patch.
 */
export function skinWords(skin: MeasuredSkin | null): string[] {
  if (!skin) return [];
  return [wavesSentence(skin.waviness), patchesSentence(skin.dullPatches)].filter((words) => words !== null);
}

/**
 * What further images of the lamp say about how evenly the stone is polished.
 *
 * @param further - Empty when the lamp is seen once.
 * @returns A sentence, or null without a further image.
 */
export function furtherWords(further: StoneGrade['furtherGloss']): string | null {
  if (further.length === 0) return null;
  const words = texts().stone;
  const readings = further.map(({ gu60, gu60Low, gu60High }) =>
    words.furtherReading(glossNumber(gu60), glossNumber(gu60Low), glossNumber(gu60High)),
  );
  return words.further(
    readings,
    further.some(({ differs }) => differs),
  );
}

function wavesSentence(waviness: MeasuredSkin['waviness']): string | null {
  if (!waviness) return null;
  const { slopeDeg, slopeLowDeg, slopeHighDeg, wavelengthMm, longestMm } = waviness;
  const { noWaves, waves } = texts().stone;
  if (slopeDeg === null || wavelengthMm === null) return noWaves(lengthWords(longestMm, 1));
  const angle = (deg: number) => withDecimalMark(deg.toFixed(1));
  return waves(angle(slopeDeg), angle(slopeLowDeg), angle(slopeHighDeg), lengthWords(wavelengthMm, 1));
}

function patchesSentence(patches: MeasuredSkin['dullPatches']): string | null {
  if (patches.length === 0) return null;
  const total = patches.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  return texts().stone.dullPatches(patches.length, areaWords(total, total < 0.095 ? 2 : 1));
}
