import { boxAround } from '../image/boxAround';
import { cropLinear, cropLuminance } from '../image/cropLinear';
import { luminance } from '../image/luminance';
import type { Photo } from '../image/photo';
import type { Raster } from '../image/raster';
import type { ShrunkPhoto } from '../image/shrinkPhoto';
import { BALL_INDEX, type BallLamp, ballLamp } from '../measure/ballLamp';
import { ballRim } from '../measure/ballRim';
import type { Circle } from '../measure/circleFit';
import { type BallCandidate, ballCandidates, bestBalls } from '../measure/findBall';
import { fitBallLamp, fitRoundLamp, type LampFit } from '../measure/lampFit';
import { rimShift } from '../measure/rimShift';
import { sharpestCircle } from '../measure/sharpestCircle';
import { viewDirection } from '../measure/viewDirection';
import type { Vector } from '../optics/vector';
import type { PixelPoint } from './report';

/** The reference ball and all that it tells. */
export interface BallReading {
  readonly ball: Circle;
  readonly lamp: BallLamp;
}

type RimmedReading = BallReading & { readonly onCircle: number };

/** A circle so clear whose rim holds as many rays is the ball: on photos at hand nothing else came near both. */
const CLEAR = { score: 0.85, onCircle: 0.55 };
/** Candidates looked at closely where none is so clear. */
const TRIED = 6;
/** Share of the rays around the ball that must meet its circle: about half lie in its own shadow or against stones. */
const LEAST_ON_CIRCLE = 0.33;
/** A blur above this share of the radius was fitted to something that is no ball. */
const MOST_BLUR = 0.12;
/** Radius of the lamp's image under which it is a noisy pixel, pixels. */
const LEAST_LAMP_PX = 0.15;
/** From one frame to the next a ball grows or shrinks by no more, ln units. */
const SAME_SIZE = 0.1;
/** The crop around the ball reaches this many radii. */
const CROP_RADII = 1.4;

/**
 * Finds the reference ball in a photo and reads scale, lamp and blur from it.
 *
 * @param photo - The photo in full size.
 * @param small - The same, reduced.
 * @param near - Where a person said it lies, or null.
 * @returns The best ball, in photo pixels; null when nothing holds up as one.
 */
export function readBall(photo: Photo, small: ShrunkPhoto, near: PixelPoint | null): BallReading | null {
  const { factor, raster } = small;
  const nearSmall = near && { row: (near[0] + 0.5) / factor - 0.5, column: (near[1] + 0.5) / factor - 0.5 };
  const light = luminance(raster);
  const found: BallCandidate[] = [];
  for (const candidate of ballCandidates(light, nearSmall)) {
    const isClear = candidate.score >= CLEAR.score;
    const reading = isClear ? readAt(photo, inPhoto(candidate, factor), CLEAR.onCircle) : null;
    if (reading) return reading;
    found.push(candidate);
  }
  let best = null as RimmedReading | null;
  for (const candidate of bestBalls(found).slice(0, TRIED)) {
    // A ball and its shadow can pass for a larger, softer ball: each candidate is also tried at its sharpest.
    for (const circle of [candidate, sharpestCircle(light, candidate)]) {
      best = readAt(photo, inPhoto(circle, factor), best?.onCircle ?? LEAST_ON_CIRCLE) ?? best;
    }
  }
  return best;
}

/**
 * Reads a ball that lies about where it lay in the frame before, which takes much less than to search for it. Its radius
 * may be off by some thousandths.
 *
 * @param photo - The frame in full size.
 * @param small - The same, reduced.
 * @param before - The ball's circle then, photo pixels.
 * @returns Null when it is not within a third of its radius from there.
 */
export function readBallAgain(photo: Photo, small: ShrunkPhoto, before: Circle): BallReading | null {
  const { factor, raster } = small;
  const inSmall = (at: number) => (at + 0.5) / factor - 0.5;
  const rough = {
    row: inSmall(before.row),
    column: inSmall(before.column),
    radiusPx: before.radiusPx / factor,
  };
  const start = inPhoto(sharpestCircle(luminance(raster), rough), factor);
  const reading = readAt(photo, start, LEAST_ON_CIRCLE, fitRoundLamp);
  return reading && Math.abs(Math.log(reading.ball.radiusPx / before.radiusPx)) < SAME_SIZE ? reading : null;
}

/** A circle of the reduced picture in pixels of the photo. */
const inPhoto = ({ row, column, radiusPx }: Circle, factor: number): Circle => ({
  row: (row + 0.5) * factor - 0.5,
  column: (column + 0.5) * factor - 0.5,
  radiusPx: radiusPx * factor,
});

/** The lamp as a first look at the ball sees it; of its readings only the blur counts. */
type FirstLook = (crop: Raster, ball: Circle, view: Vector) => LampFit | null;

/** Reads the ball near a circle; null unless more of its rim than `beat` lies on a circle and it holds a lamp. */
function readAt(
  photo: Photo,
  start: Circle,
  beat: number,
  firstLook: FirstLook = fitBallLamp,
): RimmedReading | null {
  const size = { width: photo.widthPx, height: photo.heightPx };
  const box = boxAround(start, CROP_RADII * start.radiusPx, size);
  const rim = ballRim(cropLuminance(photo, box), {
    ...start,
    row: start.row - box.row,
    column: start.column - box.column,
  });
  if (!rim || rim.onCircle <= beat) return null;
  const crop = cropLinear(photo, box);
  const view = viewDirection(photo, rim.row + box.row, rim.column + box.column);
  const first = firstLook(crop, rim, view);
  if (!first || first.blurPx > MOST_BLUR * rim.radiusPx) return null;
  const inCrop = {
    ...rim,
    radiusPx: rim.radiusPx + rimShift(rim.radiusPx, Math.max(0.3, first.blurPx), BALL_INDEX),
  };
  const lamp = ballLamp(crop, inCrop, view, first);
  if (!lamp || lamp.blurPx > MOST_BLUR * rim.radiusPx) return null;
  if (lamp.sourceSlope * inCrop.radiusPx < LEAST_LAMP_PX) return null;
  const ball = { row: inCrop.row + box.row, column: inCrop.column + box.column, radiusPx: inCrop.radiusPx };
  return { ball, lamp, onCircle: rim.onCircle };
}
