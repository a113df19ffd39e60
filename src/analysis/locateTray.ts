import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { type ShrunkPhoto, shrinkPhoto } from '../image/shrinkPhoto';
import type { OpenCv } from '../vision/openCv';
import { findStones, type LampSide, type StonePiece } from './findStones';
import type { AnalysisOptions, Watch } from './options';
import { type BallReading, readBall } from './readBall';
import { refuseBlindPhoto } from './refuseBlindPhoto';
import type { PixelPoint, Rig } from './report';
import { type StoneShape, stoneShape } from './stoneShape';

/** Longer side of the small picture in which ball and stones are found, pixels. */
const SMALL_SIDE_PX = 900;
/** Anything smaller is dust, grit or a splinter, mm²: 4 mm across. Common practice: the smallest stones tumbled are about 6 mm. */
const LEAST_STONE_MM2 = Math.PI * 2 ** 2;
/** Anything longer is no stone of a tumbler, but a scale read off something that is no ball, mm; common practice: their barrels are hardly wider. */
const MOST_STONE_MM = 150;
/** A stone this near to the photo's edge is cut off, pixels of the small picture. */
const CUT_OFF_PX = 2;
/** Two stones belong to one row of the tray when their centers differ less than this, share of the photo's height. */
const ROW_SHARE = 0.12;

/** Where everything lies in a photo, before anything is measured on a stone. */
export interface Tray {
  readonly small: ShrunkPhoto;
  /** Null when no ball was looked for or none was found. */
  readonly reading: BallReading | null;
  /** The rig as this photo's ball tells it; null without a ball. */
  readonly own: Rig | null;
  /** That rig, or the remembered one. */
  readonly expected: Rig;
  readonly pieces: readonly StonePiece[];
  /** In reading order. */
  readonly stones: readonly { readonly shape: StoneShape; readonly cutOff: boolean }[];
}

/**
 * Finds ball, lamp and stones of one photo.
 *
 * @param photo - The upright photo.
 * @param options - Ball or rig.
 * @param cv - OpenCV.
 * @param watch - Told about progress; what it throws stops the work.
 * @throws Refusal as `analyzePhoto` does.
 */
export async function locateTray(
  photo: Photo,
  options: AnalysisOptions,
  cv: OpenCv,
  watch: Watch,
): Promise<Tray> {
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
  const shaped = pieces.map((piece) => ({
    shape: stoneShape(cv, piece, small.factor),
    cutOff: isCutOff(piece, small.raster),
  }));
  const tumbled = shaped.filter(({ shape }) => shape.lengthPx * expected.mmPerPx <= MOST_STONE_MM);
  if (tumbled.length === 0) throw new Refusal('no-stone');
  const stones = inReadingOrder(tumbled, photo.heightPx);
  return { small, reading, own, expected, pieces, stones };
}

/** The rig as a photo's ball tells it. */
export function rigOf({ ball, lamp }: BallReading, ballMm: number): Rig {
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

/** Toward the lamp in the picture: x right, y up, a unit vector. */
export function lampSide(rig: Rig): LampSide {
  const [x, y] = rig.light.direction;
  const length = Math.hypot(x, y);
  return length < 1e-6 ? [0, 1] : [x / length, y / length];
}

function smallBall({ ball }: BallReading, factor: number) {
  const small = (at: number) => (at + 0.5) / factor - 0.5;
  return { row: small(ball.row), column: small(ball.column), radiusPx: ball.radiusPx / factor };
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
