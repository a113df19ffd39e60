import { boxAround } from '../image/boxAround';
import { cropLinear } from '../image/cropLinear';
import { type PlaceMark, type Warning, warningAt } from '../image/notice';
import type { Photo } from '../image/photo';
import { ballFace } from '../measure/ballFace';
import { BALL_INDEX } from '../measure/ballLamp';
import { type LampRoundness, lampRoundness } from '../measure/lampRoundness';
import { type SecondLight, secondLights } from '../measure/secondLights';
import { viewDirection } from '../measure/viewDirection';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { BallReading } from './readBall';

/** What the ball tells about the light, and the warnings that follow. */
export interface BallChecks {
  readonly warnings: readonly Warning[];
  /** Sources beside the lamp, brightest first, places in photo pixels. */
  readonly secondLights: readonly SecondLight[];
  /** Where the ball mirrors the lamp, photo pixels; null when it can't be told. */
  readonly lampAt: PlaceMark | null;
  /** Radiance of the room around, as the ball mirrors it. */
  readonly room: number;
}

/** The crop around the ball reaches this many radii. */
const CROP_RADII = 1.2;
/** Smaller balls show no shapes, pixels. */
const LEAST_RADIUS_PX = 18;
/** A whole lamp's image is at least so even; with 30 % of its width hidden it has 0.5, half a disc 0.28. */
const LEAST_EVENNESS = 0.7;
const MOST_SKEWNESS = 0.15;
/** A mark is at least this large, share of the ball's radius. */
const MARK_SHARE = 0.16;
const NOTHING: BallChecks = { warnings: [], secondLights: [], lampAt: null, room: 0 };

/**
 * Looks at the ball for sources of light beside the lamp, and for a lamp of which it mirrors only part.
 *
 * @param photo - The photo in full size.
 * @param reading - The ball in it and the lamp.
 */
export function ballChecks(photo: Photo, { ball, lamp }: BallReading): BallChecks {
  if (ball.radiusPx < LEAST_RADIUS_PX) return NOTHING;
  const box = boxAround(ball, CROP_RADII * ball.radiusPx, { width: photo.widthPx, height: photo.heightPx });
  const crop = cropLinear(photo, box);
  const inCrop = { ...ball, row: ball.row - box.row, column: ball.column - box.column };
  const face = ballFace(crop, inCrop);
  if (!face) return NOTHING;
  const view = viewDirection(photo, ball.row, ball.column);
  const inPhoto = <T extends { readonly row: number; readonly column: number }>(place: T): T => ({
    ...place,
    row: place.row + box.row,
    column: place.column + box.column,
  });
  const marked = ({ row, column, radiusPx }: PlaceMark): PlaceMark => ({
    row,
    column,
    radiusPx: Math.max(1.3 * radiusPx, MARK_SHARE * ball.radiusPx),
  });
  const shape = lampRoundness(face, inCrop, view, lamp.blurPx);
  const lampAt = shape && marked(inPhoto(shape));
  const others = secondLights(face, inCrop, lamp, view).map(inPhoto);
  const warnings: Warning[] = [];
  if (others.length > 0) warnings.push(warningAt('second-light', { marks: others.map(marked) }));
  if (shape && lampAt && !isWhole(shape)) {
    warnings.push(warningAt('lamp-partly', { marks: [lampAt] }));
  }
  const room = face.room(0) / fresnelReflectance(BALL_INDEX, 1);
  return { warnings, secondLights: others, lampAt, room };
}

function isWhole({ evenness, skewness }: LampRoundness): boolean {
  return evenness > LEAST_EVENNESS && skewness < MOST_SKEWNESS;
}
