import type { PhotoReport, SkinReport, StoneReport } from '../../src/analysis/report';
import { glossOf } from '../../src/grading/gloss';
import { glossUnits } from '../../src/optics/glossUnits';
import type { GlossPhoto, GlossTruth, TrueGlossStone } from './glossTruth';
import { roughnessAt } from './roughnessAt';

/** What the analysis said about one stone's gloss. */
export interface GlossReading {
  /** Roughness and its 90 % interval at the stone's true index: the material is known. */
  readonly alpha: number;
  readonly alphaLow: number;
  readonly alphaHigh: number;
  readonly gu60: number;
  /** 60° gloss and its interval when nothing is said about the material. */
  readonly gu60Unknown: number;
  readonly gu60UnknownLow: number;
  readonly gu60UnknownHigh: number;
}

/** One true stone in one photo and what came of it. */
export interface GlossRow {
  readonly scene: string;
  readonly variant: string;
  readonly photoPath: string;
  readonly stone: number;
  /** Names the very stone in all photos that show it turned; null when only this one does. */
  readonly sameStone: string | null;
  readonly material: string;
  readonly form: string;
  readonly pattern: string;
  readonly alpha: number;
  readonly n: number;
  readonly gu60: number;
  readonly lampDeg: number;
  readonly lampShape: string;
  readonly pxPerMm: number;
  readonly pitsInHighlight: number;
  /** False when a neighbor hides the lamp's image, so that no photo could show it. */
  readonly isHighlightSeen: boolean;
  /** Where the highlight was read, else where it truly is. */
  readonly row: number;
  readonly column: number;
  readonly box: {
    readonly top: number;
    readonly left: number;
    readonly bottom: number;
    readonly right: number;
  };
  /** False when no outline found covers the true one well enough. */
  readonly isFound: boolean;
  readonly reading: GlossReading | null;
  /** Least roughness said of a stone without a number, at its true index; 0 or null where nothing is said. */
  readonly alphaAtLeast: number | null;
  /** Waves pressed into the stone, for true; null without any, left out of older rows as what was read of them is. */
  readonly trueWaves?: { readonly wavelengthMm: number; readonly slope: number } | null;
  /** What was read of the skin; null where the photo did not tell. */
  readonly skin?: SkinReport | null;
  /** Codes of the warnings that a reader of this stone's number sees. */
  readonly warnings: readonly string[];
  /** Two plain scores, larger for glossier; null when the stone was not found. */
  readonly gradientScore: number | null;
  readonly areaScore: number | null;
}

/** One photo and what the analysis said about it as a whole. */
export interface GlossPhotoRow {
  /** Part of the bench that the scene belongs to; null when its truth does not say. */
  readonly part: string | null;
  readonly scene: string;
  readonly variant: string;
  readonly photoPath: string;
  readonly faults: readonly string[];
  readonly refused: string | null;
  readonly warnings: readonly string[];
  readonly trueStones: number;
  readonly foundStones: number;
  readonly seconds: number;
}

/** What a reading at the true index and one without a word about the material say; null without a number. */
export function glossReading({ highlight }: StoneReport, n: number): GlossReading | null {
  if (!highlight) return null;
  const { alpha, alphaLow, alphaHigh } = roughnessAt(highlight.byIndex, n);
  const unknown = glossOf(highlight.byIndex, null);
  return {
    alpha,
    alphaLow,
    alphaHigh,
    gu60: glossUnits(alpha, n, 60),
    gu60Unknown: unknown.gu60,
    gu60UnknownLow: unknown.gu60Low,
    gu60UnknownHigh: unknown.gu60High,
  };
}

/** The least roughness said of a stone without a number. */
export function leastAlpha({ glossBound }: StoneReport, n: number): number | null {
  if (!glossBound) return null;
  const knots = glossBound.byIndex.map(({ n: index, alphaAtLeast: alpha }) => ({
    n: index,
    alpha,
    alphaLow: alpha,
    alphaHigh: alpha,
  }));
  return roughnessAt(knots, n).alpha;
}

/** The warnings beside a stone's number: the photo's, but that of a stone cut off only on that stone. */
export function warningsBeside(report: PhotoReport, stone: StoneReport): string[] {
  return report.warnings
    .map(({ code }): string => code)
    .filter((code) => code !== 'stone-cut-off' || stone.cutOff);
}

/** The part of a row that the truth alone says. */
export function trueRow(
  photo: GlossPhoto,
  truth: GlossTruth,
  stone: TrueGlossStone,
): Omit<GlossRow, 'isFound' | 'reading' | 'alphaAtLeast' | 'warnings' | 'gradientScore' | 'areaScore'> {
  const { highlight, center } = stone;
  const rows = stone.outline.map(([row]) => row);
  const columns = stone.outline.map(([, column]) => column);
  return {
    scene: photo.scene,
    variant: photo.variant,
    photoPath: photo.photoPath,
    stone: stone.id,
    sameStone: stone.stone ?? null,
    material: stone.material,
    form: stone.form,
    pattern: stone.pattern ?? 'not said',
    alpha: stone.alpha,
    n: stone.n,
    gu60: glossUnits(stone.alpha, stone.n, 60),
    lampDeg: truth.lamp.angularDiameterDeg,
    lampShape: truth.lamp.shape,
    pxPerMm: 1 / truth.mmPerPx,
    pitsInHighlight: stone.pitsInHighlight ?? 0,
    trueWaves: stone.waviness ?? null,
    isHighlightSeen: highlight?.visible ?? true,
    row: highlight?.row ?? center[0],
    column: highlight?.column ?? center[1],
    box: {
      top: Math.min(...rows),
      left: Math.min(...columns),
      bottom: Math.max(...rows),
      right: Math.max(...columns),
    },
  };
}
