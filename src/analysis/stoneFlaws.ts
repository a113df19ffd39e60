import type { Photo } from '../image/photo';
import type { Raster } from '../image/raster';
import { domeCosine } from '../measure/domeCosine';
import { markLength } from '../measure/markLength';
import { markSigns } from '../measure/markSigns';
import { type ShareMark, shareMarks } from '../measure/shareMarks';
import { distanceToEdge } from '../vision/distanceToEdge';
import type { Engines } from '../vision/openEngines';
import { FLAW_CLASSES } from '../vision/openFlawNet';
import { confirmByLamp } from './confirmByLamp';
import { flawConfidence } from './flawConfidence';
import { type FlawPlanes, flawPlanes } from './flawPlanes';
import { flawShares } from './flawShares';
import { jointShares } from './jointShares';
import type { FlawReport, PixelPoint } from './report';
import type { SecondLamp } from './secondLamp';
import { stoneScratches } from './stoneScratches';
import { stoneUnderBoth } from './stoneUnderBoth';

/** Flaws of one stone, and how much of its surface was looked at. */
export interface StoneFlaws {
  readonly flaws: readonly FlawReport[];
  /** Surface inspected, foreshortening undone. */
  readonly inspectedCm2: number;
}

/** What is said about a stone before its flaws are looked for. */
export interface FlawScene {
  readonly photo: Photo;
  readonly outline: readonly PixelPoint[];
  readonly mmPerPx: number;
  /** First two parts of the unit vector to the lamp: x right, y up. */
  readonly lampXy: readonly [number, number];
  /** A second photo with the lamp elsewhere; left out when there is none. */
  readonly second?: SecondLamp | null | undefined;
  /** Light that a white surface facing the lamp sends back, linear; null or left out when nobody knows. */
  readonly white?: number | null | undefined;
}

export type Kind = 'pit' | 'fracture' | 'chip';

/** Marks smaller than this are grain, mm: diameter, length, diameter. */
const LEAST_MM: Readonly<Record<Kind, number>> = { pit: 0.35, fracture: 1, chip: 1.2 };
/** Flaws below this confidence are not reported: the grading calls them doubtful from 0.125 on. */
const LEAST_CONFIDENCE = 0.1;
/** A mark ends where the share falls to the first, and is left out when its peak is below the second. */
const MARK: Readonly<Record<Kind, { readonly low: number; readonly peak: number }>> = {
  pit: { low: 0.05, peak: 0.06 },
  fracture: { low: 0.2, peak: 0.2 },
  chip: { low: 0.25, peak: 0.25 },
};
/** A pit's mouth as a share of its mark, which reaches beyond by the camera's and the network's blur: median of the development trays. */
const MOUTH_SHARE = 0.88;
/** Nearer the outline than this the surface is seen too slantwise to be inspected, mm. */
const RIM_MM = 0.45;
/** Every so many places of a line are kept. */
const PATH_STEP = 3;
/** A pit's places count fully from this share on, in part below: its soft edge is not all pit. */
const FULL_SHARE = 0.5;

/**
 * Finds pits, fractures, chips and scratches on one stone with the flaw network.
 *
 * @returns Flaws, the surest first, none below a confidence of 0.1.
 */
export async function stoneFlaws({ cv, flawNet }: Engines, scene: FlawScene): Promise<StoneFlaws> {
  const planes = flawPlanes(cv, scene.photo, scene.outline, scene.mmPerPx, scene.lampXy);
  const shares = await flawShares(flawNet, planes);
  const depth = distanceToEdge(cv, planes.mask);
  const { second, photo, outline, lampXy } = scene;
  const scratches = stoneScratches(planes, shares, scene, domeCosine(depth));
  const withScratches = ({ flaws, inspectedCm2 }: StoneFlaws): StoneFlaws => ({
    flaws: [...flaws, ...scratches].sort((a, b) => b.confidence - a.confidence),
    inspectedCm2,
  });
  if (!second) return withScratches(readFlaws(planes, shares, depth, lampXy, null));
  const joint = await jointShares(cv, flawNet, planes, shares, outline, second);
  const confirm = confirmByLamp(planes, joint, stoneUnderBoth(photo, planes, lampXy, second));
  return withScratches(readFlaws(planes, joint, depth, lampXy, confirm));
}

/** A flaw while it is being judged, in the network's places. */
export interface FlawDraft {
  readonly kind: Kind;
  readonly row: number;
  readonly column: number;
  /** Radius of a hole; half the width of a line, places. */
  readonly radius: number;
  readonly sizeMm: number;
  /** Lines: row-major places from end to end. */
  readonly way?: readonly number[];
  readonly confidence: number;
  /** Whether its shading follows the lamp; left out where no second photo tells. */
  readonly followsLamp?: boolean;
}

/**
 * Reads flaws out of a map of shares.
 *
 * @param planes - The stone.
 * @param shares - 6 × rows/2 × columns/2.
 * @param depth - Distance of each place to the outline, places.
 * @param lampXy - Toward the lamp; (0, 0) when nobody knows.
 * @param confirm - Weighs the drafts by a second photo; null without one.
 */
export function readFlaws(
  planes: FlawPlanes,
  shares: Float32Array,
  depth: Raster,
  lampXy: readonly [number, number],
  confirm: ((drafts: readonly FlawDraft[], cosine: (place: number) => number) => FlawDraft[]) | null,
): StoneFlaws {
  const cosine = domeCosine(depth);
  const size = planes.mask.data.length;
  const sharesOf = (kind: Kind) => {
    const index = FLAW_CLASSES.indexOf(kind);
    return shares.subarray(index * size, (index + 1) * size);
  };
  const lines = sharesOf('fracture');
  const judge = (kind: Kind, mark: ShareMark): FlawDraft => {
    const shape = kind === 'fracture' ? fractureOf(mark, planes, cosine) : holeOf(kind, mark, planes, cosine);
    const middle = Math.round(shape.row) * planes.mask.width + Math.round(shape.column);
    const signs = {
      ...markSigns(mark, planes, lampXy),
      peak: mark.peak,
      fractureShare: mark.places.reduce((most, place) => Math.max(most, lines[place]!), 0),
      diameterMm: shape.sizeMm,
      placeCount: mark.places.length,
      rimMm: depth.data[middle]! * planes.mmPerPlace,
    };
    const confidence = flawConfidence(kind, signs, Math.hypot(...lampXy) > 1e-3);
    return { ...shape, sizeMm: shape.sizeMm * (kind === 'pit' ? MOUTH_SHARE : 1), confidence };
  };
  const drafts = (['pit', 'chip', 'fracture'] as const).flatMap((kind) =>
    shareMarks(sharesOf(kind), planes.mask, MARK[kind].low, MARK[kind].peak).map((mark) => judge(kind, mark)),
  );
  const judged = confirm ? confirm(drafts, cosine) : drafts;
  const flaws = judged
    .filter(({ kind, sizeMm, confidence }) => confidence >= LEAST_CONFIDENCE && sizeMm >= LEAST_MM[kind])
    .sort((a, b) => b.confidence - a.confidence)
    .map((draft) => reportOf(draft, planes));
  return { flaws, inspectedCm2: inspectedCm2(planes, depth, cosine) };
}

function reportOf(draft: FlawDraft, { mask, toPhoto }: FlawPlanes): FlawReport {
  const { kind, confidence, sizeMm, way, followsLamp } = draft;
  const told = followsLamp === undefined ? {} : { followsLamp };
  const [row, column] = toPhoto(draft.row, draft.column);
  if (!way) return { kind, row, column, diameterMm: sizeMm, confidence, ...told };
  const path = way
    .filter((_, i) => i % PATH_STEP === 0 || i === way.length - 1)
    .map((place) => toPhoto(Math.floor(place / mask.width), place % mask.width));
  return { kind, row, column, lengthMm: sizeMm, path, confidence, ...told };
}

/** A pit or chip: center of gravity, and diameter of the circle of its area on the surface. */
function holeOf(
  kind: 'pit' | 'chip',
  { places, values }: ShareMark,
  { mask, mmPerPlace }: FlawPlanes,
  cosine: (place: number) => number,
): Omit<FlawDraft, 'confidence'> {
  let [weight, area, row, column] = [0, 0, 0, 0];
  places.forEach((place, i) => {
    const share = kind === 'pit' ? Math.min(1, values[i]! / FULL_SHARE) : 1;
    weight += share;
    area += share / cosine(place);
    row += share * Math.floor(place / mask.width);
    column += share * (place % mask.width);
  });
  return {
    kind,
    row: row / weight,
    column: column / weight,
    radius: Math.sqrt(weight / Math.PI),
    sizeMm: 2 * mmPerPlace * Math.sqrt(area / Math.PI),
  };
}

/** A fracture: the middle of the longest way through it, and that way's length on the surface. */
function fractureOf(
  { places }: ShareMark,
  { mask, mmPerPlace }: FlawPlanes,
  cosine: (place: number) => number,
): Omit<FlawDraft, 'confidence'> {
  const { length, way } = markLength(places, mask.width);
  // Half of all directions run across the slope, where nothing is foreshortened.
  const stretch = places.reduce((sum, place) => sum + (1 + 1 / cosine(place)) / 2, 0) / places.length;
  const middle = way[way.length >> 1]!;
  return {
    kind: 'fracture',
    row: Math.floor(middle / mask.width),
    column: middle % mask.width,
    radius: places.length / way.length / 2,
    sizeMm: length * mmPerPlace * stretch,
    way,
  };
}

function inspectedCm2({ seen, mmPerPlace }: FlawPlanes, depth: Raster, cosine: (i: number) => number) {
  let area = 0;
  seen.data.forEach((isSeen, i) => {
    if (isSeen && depth.data[i]! * mmPerPlace >= RIM_MM) area += 1 / cosine(i);
  });
  return (area * mmPerPlace ** 2) / 100;
}
