import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { shrinkPhoto } from '../image/shrinkPhoto';
import { BALL_INDEX } from '../measure/ballLamp';
import type { HighlightLight } from '../measure/highlightScene';
import { lampSeenFrom, type SeenLamp } from '../measure/lampSeenFrom';
import { inViewFrame, viewDirection } from '../measure/viewDirection';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { combine, normalize, type Vector } from '../optics/vector';
import type { OpenCv } from '../vision/openCv';
import { ballChecks } from './ballChecks';
import { findStones, type LampSide, type StonePiece } from './findStones';
import { type HeldRig, holdRig } from './holdRig';
import { loosenBound } from './loosenBound';
import { mirrorsSecondLight } from './mirrorsSecondLight';
import type { AnalysisOptions, Watch } from './options';
import { photoChecks } from './photoChecks';
import { type BallReading, readBall } from './readBall';
import { readScene } from './readScene';
import { refuseBlindPhoto } from './refuseBlindPhoto';
import type { HighlightReport, PhotoReport, PixelPoint, Rig, StoneReport } from './report';
import { skinReport } from './skinReport';
import { type StoneCrop, stoneCrop } from './stoneCrop';
import { stoneFlaws } from './stoneFlaws';
import { stoneGloss } from './stoneGloss';
import { type StoneShape, stoneShape } from './stoneShape';
import { toneSd } from './toneSd';
import { widenGloss } from './widenGloss';

/** Longer side of the small picture in which ball and stones are found, pixels. */
const SMALL_SIDE_PX = 900;
/** Anything smaller is dust, grit or a splinter, mm²: 4 mm across. Common practice: the smallest stones tumbled are about 6 mm. */
const LEAST_STONE_MM2 = Math.PI * 2 ** 2;
/** A stone this near to the photo's edge is cut off, pixels of the small picture. */
const CUT_OFF_PX = 2;
/** Two stones belong to one row of the tray when their centers differ less than this, share of the photo's height. */
const ROW_SHARE = 0.12;

/**
 * Measures all stones of one photo: ball, rig, stones, then highlight and flaws of each.
 *
 * @param photo - The upright photo.
 * @param options - Ball or rig.
 * @param cv - OpenCV.
 * @param watch - Told about progress; what it throws stops the analysis.
 * @returns Everything measured, independent of step and material.
 * @throws Refusal `no-ball` without a ball and a rig, `out-of-focus`, `too-dark`, `low-resolution`, `no-stone`.
 */
export async function analyzePhoto(
  photo: Photo,
  options: AnalysisOptions,
  cv: OpenCv,
  watch: Watch,
): Promise<PhotoReport> {
  await watch('ball', 0);
  const small = shrinkPhoto(photo, SMALL_SIDE_PX);
  const reading = options.ballMm === null ? null : readBall(photo, small, options.ballAt);
  const own = reading && options.ballMm !== null ? rigOf(reading, options.ballMm) : null;
  const expected = own ?? options.rig;
  refuseBlindPhoto(photo, small.raster, options.ballMm !== null && reading === null);
  if (!expected) throw new Refusal('no-ball');
  await watch('stones', 0);
  const leastPx = LEAST_STONE_MM2 / (expected.mmPerPx * small.factor) ** 2;
  const ball = reading && smallBall(reading, small.factor);
  const pieces = findStones(cv, small.raster, ball, lampSide(expected), leastPx);
  if (pieces.length === 0) throw new Refusal('no-stone');
  const shaped = inReadingOrder(
    pieces.map((piece) => ({
      shape: stoneShape(cv, piece, small.factor),
      cutOff: isCutOff(piece, small.raster),
    })),
    photo.heightPx,
  );
  const seen = readScene(cv, photo, small, pieces, reading?.ball ?? null);
  const held = holdRig(own, seen, options.rig) ?? { ...UNCHECKED, rig: expected };
  const { rig } = held;
  const ballAt: PixelPoint | null = reading
    ? [reading.ball.row, reading.ball.column]
    : (rig.scene?.ballAt ?? null);
  const lampShare = 1 - (seen.roomShare ?? rig.scene?.roomShare ?? 0);
  const light = reading && ballChecks(photo, reading);
  const secondLights = (light?.secondLights ?? []).map(({ direction }) => direction);
  const scene: Scene = { photo, held, rig, cv, ballAt, lampShare, secondLights };
  const stones: StoneReport[] = [];
  for (const [i, { shape, cutOff }] of shaped.entries()) {
    await watch('highlights', i / shaped.length);
    stones.push(measureStone(scene, shape, cutOff, i + 1));
  }
  await watch('flaws', 1);
  return {
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    mmPerPx: rig.mmPerPx,
    ball: reading?.ball ?? null,
    light: rig.light,
    rig,
    rigCheck: held.check,
    ...(secondLights.length > 0 ? { secondLights } : {}),
    warnings: [...held.warnings, ...photoChecks({ photo, small, reading, light, rig, stones })],
    stones,
  };
}

const WITHHELD = { highlight: null, bound: null, skin: null } as const;
const UNCHECKED = { radianceSd: 0, isMoved: false, check: null, warnings: [] } as const;

interface Scene {
  readonly photo: Photo;
  readonly held: HeldRig;
  readonly rig: Rig;
  readonly cv: OpenCv;
  /** Where the ball lies, or lay when the rig was read; null when nobody knows. */
  readonly ballAt: PixelPoint | null;
  /** Share of the tray's light that comes from the lamp. */
  readonly lampShare: number;
  /** Directions to sources of light beside the lamp. */
  readonly secondLights: readonly Vector[];
}

function rigOf({ ball, lamp }: BallReading, ballMm: number): Rig {
  return {
    mmPerPx: ballMm / 2 / ball.radiusPx,
    light: { direction: lamp.direction, angularDiameterDeg: lamp.angularDiameterDeg },
    lampRadiance: lamp.lampRadiance,
    sourceSlope: lamp.sourceSlope,
    lampTurnRad: lamp.turnRad,
    blurPx: lamp.blurPx,
    lampColor: lamp.color,
  };
}

function lampSide(rig: Rig): LampSide {
  const [x, y] = rig.light.direction;
  const length = Math.hypot(x, y);
  return length < 1e-6 ? [0, 1] : [x / length, y / length];
}

function smallBall({ ball }: BallReading, factor: number) {
  const small = (at: number) => (at + 0.5) / factor - 0.5;
  return { row: small(ball.row), column: small(ball.column), radiusPx: ball.radiusPx / factor };
}

function measureStone(scene: Scene, shape: StoneShape, cutOff: boolean, id: number): StoneReport {
  const { photo, held, rig, cv, lampShare } = scene;
  const crop = stoneCrop(photo, shape.outline, rig.mmPerPx, rig.lampColor ?? [1, 1, 1]);
  const view = viewDirection(photo, shape.center[0], shape.center[1]);
  const light = highlightLight(rig, lampOver(scene, shape.center, view), crop, view);
  const read = held.isMoved ? WITHHELD : stoneGloss(crop, light);
  const halves = scene.secondLights.map((direction) => halfTo(direction, view));
  const isOther = read.highlight !== null && mirrorsSecondLight(crop, read.highlight, light.half, halves);
  const { highlight: found, bound, skin } = isOther ? WITHHELD : read;
  // Several shots tell the camera's curve themselves.
  const tone =
    found && !photo.merging
      ? toneSd(found, rig.lampRadiance * fresnelReflectance(BALL_INDEX, light.half[2]))
      : 0;
  const highlight = found && widenGloss(found, Math.hypot(held.radianceSd, tone), light.half[2]);
  const { flaws, inspectedCm2 } = stoneFlaws(cv, crop, rig.mmPerPx, lampSide(rig));
  return {
    id,
    center: shape.center,
    outline: shape.outline,
    areaMm2: shape.areaPx * rig.mmPerPx ** 2,
    lengthMm: shape.lengthPx * rig.mmPerPx,
    widthMm: shape.widthPx * rig.mmPerPx,
    cutOff,
    highlight: highlight && withoutRoom(highlight, lampShare),
    glossBound: bound && loosenBound(bound, held.radianceSd),
    ...(skin ? { skin: skinReport(skin, crop, rig.mmPerPx) } : {}),
    flaws,
    inspectedCm2,
    ...(held.isMoved ? { glossWithheld: true } : isOther ? { glossWithheld: 'second-light' } : {}),
  };
}

/** The body was held against the lamp alone; what the room adds is taken off. */
function withoutRoom(highlight: HighlightReport, lampShare: number): HighlightReport {
  const body = highlight.bodyReflectance ?? null;
  return { ...highlight, bodyReflectance: body && body * lampShare };
}

/** The lamp as a place in the photo sees it; unchanged when nobody knows where the ball lay. */
function lampOver({ photo, rig, ballAt }: Scene, [row, column]: PixelPoint, view: Vector): SeenLamp {
  const atBall = { direction: rig.light.direction, sourceSlope: rig.sourceSlope };
  if (!ballAt) return atBall;
  const offset = [(column - ballAt[1]) * rig.mmPerPx, (ballAt[0] - row) * rig.mmPerPx] as const;
  return lampSeenFrom(atBall, offset, { ball: viewDirection(photo, ballAt[0], ballAt[1]), place: view });
}

/** Unit vector halfway between a light and the camera, z to the camera. */
const halfTo = (direction: Vector, view: Vector) =>
  inViewFrame(normalize(combine([1, direction], [1, view])), view);

function highlightLight(rig: Rig, lamp: SeenLamp, crop: StoneCrop, view: Vector): HighlightLight {
  // Averaging k × k pixels adds a box of variance (k² − 1) / 12.
  const blurPx = Math.sqrt(rig.blurPx ** 2 + (crop.factor ** 2 - 1) / 12) / crop.factor;
  const half = halfTo(lamp.direction, view);
  const { lampRadiance, lampTurnRad } = rig;
  return { lampRadiance, sourceSlope: lamp.sourceSlope, lampTurnRad, blurPx, half };
}

function isCutOff(
  { box }: StonePiece,
  picture: { readonly width: number; readonly height: number },
): boolean {
  const bottom = picture.height - box.row - box.height;
  const right = picture.width - box.column - box.width;
  return Math.min(box.row, box.column, bottom, right) < CUT_OFF_PX;
}

/** Sorts stones into rows from the top, each from left to right, as one reads and picks. */
function inReadingOrder<T extends { readonly shape: { readonly center: PixelPoint } }>(
  stones: T[],
  heightPx: number,
): T[] {
  const sorted = [...stones].sort((a, b) => a.shape.center[0] - b.shape.center[0]);
  const rows: T[][] = [];
  for (const stone of sorted) {
    const row = rows[rows.length - 1];
    const first = row?.[0];
    if (row && first && stone.shape.center[0] - first.shape.center[0] < ROW_SHARE * heightPx) row.push(stone);
    else rows.push([stone]);
  }
  return rows.flatMap((row) => row.sort((a, b) => a.shape.center[1] - b.shape.center[1]));
}
