import type { FlawReport, PhotoReport, StoneReport } from '../../src/analysis/report';
import { gradeStone } from '../../src/grading/gradeStone';
import { glossUnits } from '../../src/optics/glossUnits';

/** The figures of a photo's report that a faster way to them must leave as they are. */
export interface ReportFigures {
  readonly mmPerPx: number;
  readonly lamp: {
    readonly direction: readonly number[];
    readonly diameterDeg: number;
    readonly radiance: number;
  };
  readonly warnings: readonly string[];
  readonly stones: readonly StoneFigures[];
}

export interface StoneFigures {
  readonly center: readonly number[];
  readonly areaMm2: number;
  readonly inspectedCm2: number;
  /** ln α and its interval at each refractive index, 60° gloss; null where no highlight carries a number. */
  readonly gloss:
    | readonly { readonly lnAlpha: readonly [number, number, number]; readonly gu60: number }[]
    | null;
  readonly alphaAtLeast: readonly number[] | null;
  readonly skin: StoneReport['skin'] | null;
  readonly flaws: readonly FlawFigures[];
  readonly colors: readonly number[];
  readonly pattern: readonly number[];
  /** What is to be done after the polish step. */
  readonly action: string;
}

export interface FlawFigures {
  readonly kind: string;
  readonly place: readonly [number, number];
  readonly sizeMm: number;
  readonly confidence: number;
}

const rounded = (value: number) => Number(value.toPrecision(7));

/** What a report says, rounded to seven digits. */
export function reportFigures(report: PhotoReport): ReportFigures {
  const { mmPerPx, light, rig, warnings, stones } = report;
  return {
    mmPerPx: rounded(mmPerPx),
    lamp: {
      direction: (light?.direction ?? []).map(rounded),
      diameterDeg: rounded(light?.angularDiameterDeg ?? 0),
      radiance: rounded(rig.lampRadiance),
    },
    warnings: warnings.map(({ code }) => code),
    stones: stones.map((stone) => stoneFigures(stone, mmPerPx)),
  };
}

function stoneFigures(stone: StoneReport, mmPerPx: number): StoneFigures {
  const settings = { step: 'polish', material: null, limits: null, mmPerPx } as const;
  return {
    center: stone.center.map(rounded),
    areaMm2: rounded(stone.areaMm2),
    inspectedCm2: rounded(stone.inspectedCm2),
    gloss:
      stone.highlight?.byIndex.map(({ n, alpha, alphaLow, alphaHigh }) => ({
        lnAlpha: [
          rounded(Math.log(alpha)),
          rounded(Math.log(alphaLow)),
          rounded(Math.log(alphaHigh)),
        ] as const,
        gu60: rounded(glossUnits(alpha, n, 60)),
      })) ?? null,
    alphaAtLeast: stone.glossBound?.byIndex.map(({ alphaAtLeast }) => rounded(alphaAtLeast)) ?? null,
    skin: stone.skin ?? null,
    flaws: stone.flaws.map(flawFigures),
    colors: stone.look.colors,
    pattern: stone.look.pattern,
    action: gradeStone(stone, settings).verdict.action,
  };
}

function flawFigures({ kind, row, column, diameterMm, lengthMm, confidence }: FlawReport): FlawFigures {
  return {
    kind,
    place: [rounded(row), rounded(column)],
    sizeMm: rounded(diameterMm ?? lengthMm ?? 0),
    confidence: rounded(confidence),
  };
}
