import type { GlossRow } from './glossRow';
import { quantile } from './quantile';
import { rankCorrelation } from './rankCorrelation';

/** How waviness and dull patches compare with what was pressed into the stones. */
export interface SkinScores {
  /** Stones whose lamp's image was fitted in a window, and those of them whose outline could be traced. */
  readonly fitted: number;
  readonly traced: number;
  /** Wavy stones among the traced, those whose waves are short enough to be told from shape, and those seen. */
  readonly wavy: number;
  readonly tellable: number;
  readonly seen: number;
  /** Of the seen: median of estimated over true slope, share of intervals that hold, Spearman; NaN without any. */
  readonly medianRatio: number;
  readonly coverage: number;
  readonly ranks: number;
  /** Traced stones without waves, and those of them that are said to have some. */
  readonly smooth: number;
  readonly falseWaves: number;
  /** Fitted stones with pits in the highlight and those with a patch found; the same of stones without pits. */
  readonly pitted: number;
  readonly pittedFound: number;
  readonly sound: number;
  readonly falsePatches: number;
}

const degrees = (slope: number) => (Math.atan(slope) * 180) / Math.PI;

/** Scores rows of one kind of photo; rows saved before skins were read count as not fitted. */
export function skinScores(rows: readonly GlossRow[]): SkinScores {
  const fitted = rows.filter(({ skin }) => skin);
  const traced = fitted.filter(({ skin }) => skin!.waviness);
  const wavy = traced.filter(({ trueWaves }) => trueWaves);
  const tellable = wavy.filter(({ trueWaves, skin }) => trueWaves!.wavelengthMm <= skin!.waviness!.longestMm);
  const said = ({ skin }: GlossRow) => skin!.waviness!.slopeDeg;
  const seen = wavy.filter((row) => said(row) !== null);
  const truths = seen.map(({ trueWaves }) => degrees(trueWaves!.slope));
  const estimates = seen.map((row) => said(row)!);
  const held = seen.filter(({ skin }, i) => {
    const { slopeLowDeg, slopeHighDeg } = skin!.waviness!;
    return slopeLowDeg <= truths[i]! && truths[i]! <= slopeHighDeg;
  });
  const smooth = traced.filter(({ trueWaves }) => !trueWaves);
  const pitted = fitted.filter(({ pitsInHighlight }) => pitsInHighlight > 0);
  const sound = fitted.filter(({ pitsInHighlight }) => pitsInHighlight === 0);
  const patched = (some: readonly GlossRow[]) =>
    some.filter(({ skin }) => skin!.dullPatches.length > 0).length;
  return {
    fitted: fitted.length,
    traced: traced.length,
    wavy: wavy.length,
    tellable: tellable.length,
    seen: seen.length,
    medianRatio: quantile(
      estimates.map((estimate, i) => estimate / truths[i]!),
      0.5,
    ),
    coverage: held.length / seen.length,
    ranks: rankCorrelation(estimates, truths),
    smooth: smooth.length,
    falseWaves: smooth.filter((row) => said(row) !== null).length,
    pitted: pitted.length,
    pittedFound: patched(pitted),
    sound: sound.length,
    falsePatches: patched(sound),
  };
}

/** The same in a few lines; none when no row knows of skins. */
export function skinLines(rows: readonly GlossRow[]): string[] {
  const scores = skinScores(rows);
  if (scores.fitted === 0) return [];
  const { fitted, traced, wavy, tellable, seen, smooth, falseWaves } = scores;
  const figure = (value: number) => (Number.isNaN(value) ? '–' : value.toFixed(2));
  return [
    '',
    'Skin, apart from roughness',
    `  outline traced on ${traced} of ${fitted} stones fitted in a window`,
    `  waves seen on ${seen} of ${wavy} wavy stones traced, ${tellable} of which have waves short enough to tell from shape`,
    `  of those seen: slope over the true one ${figure(scores.medianRatio)} (median), intervals that hold ${figure(scores.coverage)}, Spearman ${figure(scores.ranks)}`,
    `  waves said of ${falseWaves} of ${smooth} stones without any`,
    `  dull patches on ${scores.pittedFound} of ${scores.pitted} stones with pits in the highlight, on ${scores.falsePatches} of ${scores.sound} without`,
  ];
}
