import type { FlawReport } from '../../src/analysis/report';
import type { TrueFlaw } from './truth';

/** What of one kind was found on a stone, and what not. */
export interface KindMatch {
  readonly hits: readonly { readonly truth: TrueFlaw; readonly claim: FlawReport }[];
  readonly missed: readonly TrueFlaw[];
  readonly invented: readonly FlawReport[];
  /** Claims that count toward precision as right. */
  readonly right: number;
}

export interface StoneFlawMatch {
  readonly pit: KindMatch;
  readonly fracture: KindMatch;
  readonly chip: KindMatch;
}

/** Smaller flaws are asked for by nobody, mm: diameter, length, diameter, length. */
const ASKED_MM = { pit: 0.6, fracture: 2, chip: 1.2, scratch: 2 } as const;
/** A pit's claim lies within the true radius, or this, mm; a chip's likewise. */
const NEAR_MM = { pit: 0.5, chip: 1 } as const;
/** A fracture is found where a claim runs within the first distance along this share of it; a claim is invented when less than that share of it runs within the second, mm. */
const LINE = { foundMm: 0.6, ownMm: 0.8, share: 1 / 3 } as const;
/** Lines are compared at points this far apart, mm. */
const POINT_MM = 0.2;

/**
 * Compares the claimed flaws of one stone with the true ones.
 *
 * Flaws that hardly face the camera, or smaller than what is asked for, need not be found; claims on them are neither
 * right nor wrong. One claim finds one pit, the nearest pairs first.
 *
 * @param claims - Claims of sufficient confidence.
 * @param truths - All true flaws of the stone.
 */
export function matchFlaws(
  claims: readonly FlawReport[],
  truths: readonly TrueFlaw[],
  mmPerPx: number,
): StoneFlawMatch {
  const ofKind = <T extends { kind: string }>(flaws: readonly T[], kind: string) =>
    flaws.filter((flaw) => flaw.kind === kind);
  return {
    pit: matchPits(ofKind(claims, 'pit'), ofKind(truths, 'pit'), mmPerPx),
    fracture: matchLines(ofKind(claims, 'fracture'), ofKind(truths, 'fracture'), mmPerPx),
    chip: matchChips(ofKind(claims, 'chip'), ofKind(truths, 'chip'), mmPerPx),
  };
}

type Place = { readonly row: number; readonly column: number };
const apartMm = (a: Place, b: Place, mmPerPx: number) =>
  Math.hypot(a.row - b.row, a.column - b.column) * mmPerPx;
const isAsked = (truth: TrueFlaw) =>
  truth.visible && (truth.diameterMm ?? truth.lengthMm ?? 0) >= ASKED_MM[truth.kind];

function matchPits(claims: readonly FlawReport[], truths: readonly TrueFlaw[], mmPerPx: number): KindMatch {
  const reach = (truth: TrueFlaw) => Math.max((truth.diameterMm ?? 0) / 2, NEAR_MM.pit);
  const pairs = claims
    .flatMap((claim) => truths.map((truth) => ({ claim, truth, apart: apartMm(claim, truth, mmPerPx) })))
    .filter(({ truth, apart }) => apart <= reach(truth))
    .sort((a, b) => a.apart - b.apart);
  const found = new Map<TrueFlaw, FlawReport>();
  const used = new Set<FlawReport>();
  for (const { claim, truth } of pairs) {
    if (found.has(truth) || used.has(claim)) continue;
    found.set(truth, claim);
    used.add(claim);
  }
  const large = (claim: FlawReport) => (claim.diameterMm ?? 0) >= ASKED_MM.pit;
  return {
    hits: truths
      .filter((truth) => isAsked(truth) && found.has(truth))
      .map((truth) => ({ truth, claim: found.get(truth)! })),
    missed: truths.filter((truth) => isAsked(truth) && !found.has(truth)),
    invented: claims.filter((claim) => large(claim) && !pairs.some((pair) => pair.claim === claim)),
    right: [...used].filter(large).length,
  };
}

function matchChips(claims: readonly FlawReport[], truths: readonly TrueFlaw[], mmPerPx: number): KindMatch {
  const isNear = (claim: FlawReport, truth: TrueFlaw) =>
    apartMm(claim, truth, mmPerPx) <= Math.max((truth.diameterMm ?? 0) / 2, NEAR_MM.chip);
  const hits = truths.filter(isAsked).flatMap((truth) => {
    const claim = claims.find((one) => isNear(one, truth));
    return claim ? [{ truth, claim }] : [];
  });
  return {
    hits,
    missed: truths.filter((truth) => isAsked(truth) && !hits.some((hit) => hit.truth === truth)),
    invented: claims.filter(
      (claim) => (claim.diameterMm ?? 0) >= ASKED_MM.chip && !truths.some((truth) => isNear(claim, truth)),
    ),
    right: hits.length,
  };
}

/** Compares claimed lines with true ones; a line may be claimed in pieces. */
export function matchLines(
  claims: readonly FlawReport[],
  truths: readonly TrueFlaw[],
  mmPerPx: number,
): KindMatch {
  const lineOf = (flaw: { path?: readonly (readonly [number, number])[] | undefined } & Place) =>
    dense(flaw.path ?? [[flaw.row, flaw.column]], POINT_MM / mmPerPx);
  const shareNear = (line: readonly Place[], others: readonly Place[], mm: number) =>
    line.filter((point) => others.some((other) => apartMm(point, other, mmPerPx) <= mm)).length / line.length;
  const claimed = claims.map((claim) => ({ claim, line: lineOf(claim) }));
  const all = truths.flatMap((truth) => lineOf(truth));
  const hits = truths.filter(isAsked).flatMap((truth) => {
    const line = lineOf(truth);
    const near = (one: { line: readonly Place[] }) => shareNear(line, one.line, LINE.foundMm);
    const best = [...claimed].sort((a, b) => near(b) - near(a))[0];
    const together = shareNear(
      line,
      claimed.flatMap((one) => one.line),
      LINE.foundMm,
    );
    return best && together >= LINE.share ? [{ truth, claim: best.claim }] : [];
  });
  return {
    hits,
    missed: truths.filter((truth) => isAsked(truth) && !hits.some((hit) => hit.truth === truth)),
    invented: claimed
      .filter(
        ({ claim, line }) =>
          (claim.lengthMm ?? 0) >= ASKED_MM[claim.kind] && shareNear(line, all, LINE.ownMm) < LINE.share,
      )
      .map(({ claim }) => claim),
    right: hits.length,
  };
}

/** A polyline with points no farther apart than `step` pixels. */
function dense(path: readonly (readonly [number, number])[], step: number): Place[] {
  const points: Place[] = path.slice(0, 1).map(([row, column]) => ({ row, column }));
  for (let i = 1; i < path.length; i++) {
    const [r0, c0] = path[i - 1]!;
    const [r1, c1] = path[i]!;
    const n = Math.max(1, Math.ceil(Math.hypot(r1 - r0, c1 - c0) / step));
    for (let k = 1; k <= n; k++) {
      points.push({ row: r0 + ((r1 - r0) * k) / n, column: c0 + ((c1 - c0) * k) / n });
    }
  }
  return points;
}
