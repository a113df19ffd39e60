import { ballChecks } from '../analysis/ballChecks';
import { findStones } from '../analysis/findStones';
import { lampSide, rigOf } from '../analysis/locateTray';
import { type BallReading, readBall, readBallAgain } from '../analysis/readBall';
import { refuseBlindPhoto } from '../analysis/refuseBlindPhoto';
import type { Rig } from '../analysis/report';
import { stoneShape } from '../analysis/stoneShape';
import { frameLight } from '../camera/frameLight';
import { frameSketch } from '../camera/frameSketch';
import type { FramedStone, FrameKnowledge, Preview } from '../camera/preview';
import { Refusal, type RefusalCode } from '../image/notice';
import type { Photo } from '../image/photo';
import { type ShrunkPhoto, shrinkPhoto } from '../image/shrinkPhoto';
import type { OpenCv } from '../vision/openCv';

/** Longer side of the picture in which ball and stones are found, as for a photo, pixels. */
const SMALL_SIDE_PX = 900;
/** Anything smaller is dust, as for a photo, mm². */
const LEAST_STONE_MM2 = Math.PI * 2 ** 2;
/** A stone this near to the frame's edge is cut off, as for a photo, pixels of the small picture. */
const CUT_OFF_PX = 2;

/**
 * Finds ball, lamp and, when asked for, stones in one frame of the live picture: the steps of `locateTray`, with a
 * refusal as a state of the frame.
 *
 * @param photo - The frame.
 * @param knowledge - Ball, rig, and where the ball was in the frame before.
 * @param cv - OpenCV.
 */
export function lookAtFrame(photo: Photo, knowledge: FrameKnowledge, cv: OpenCv): Preview {
  const { ballMm } = knowledge;
  const small = shrinkPhoto(photo, SMALL_SIDE_PX);
  const reading = ballMm === null ? null : findBallAgain(photo, small, knowledge);
  const rig = reading && ballMm !== null ? rigOf(reading, ballMm) : ballMm === null ? knowledge.rig : null;
  const refusal = refusalOf(photo, small, ballMm !== null && !reading) ?? (rig ? null : 'no-ball');
  const stones = knowledge.outline && rig && !refusal ? stonesIn(small, reading, rig, cv) : null;
  const lamp = lampChecks(photo, reading, knowledge.checkLamp);
  return {
    widthPx: photo.widthPx,
    heightPx: photo.heightPx,
    ballWanted: ballMm !== null,
    ball: reading && { row: reading.ball.row, column: reading.ball.column, radiusPx: reading.ball.radiusPx },
    ...frameLight(small.raster, reading?.lamp ?? null),
    blurPx: reading?.lamp.blurPx ?? null,
    mmPerPx: rig?.mmPerPx ?? null,
    rig: reading && rig,
    ...lamp,
    stones,
    sketch: frameSketch(small.raster),
    refusal: refusal ?? (stones?.length === 0 ? 'no-stone' : null),
  };
}

/** Without a ball there is nothing to be said against the lamp. */
function lampChecks(
  photo: Photo,
  reading: BallReading | null,
  isAsked: boolean,
): Pick<Preview, 'secondLight' | 'lampPartly'> {
  if (!reading) return { secondLight: false, lampPartly: false };
  if (!isAsked) return { secondLight: null, lampPartly: null };
  const codes = ballChecks(photo, reading).warnings.map(({ code }) => code);
  return { secondLight: codes.includes('second-light'), lampPartly: codes.includes('lamp-partly') };
}

/** Looks where the ball was, then everywhere. */
function findBallAgain(photo: Photo, small: ShrunkPhoto, { ball }: FrameKnowledge): BallReading | null {
  return (ball && readBallAgain(photo, small, ball)) ?? readBall(photo, small, null);
}

function refusalOf(photo: Photo, small: ShrunkPhoto, ballLost: boolean): RefusalCode | null {
  try {
    refuseBlindPhoto(photo, small.raster, ballLost);
    return null;
  } catch (error) {
    if (error instanceof Refusal) return error.code;
    throw error;
  }
}

function stonesIn(
  { raster, factor }: ShrunkPhoto,
  reading: BallReading | null,
  rig: Rig,
  cv: OpenCv,
): FramedStone[] {
  const inSmall = (at: number) => (at + 0.5) / factor - 0.5;
  const ball = reading && {
    row: inSmall(reading.ball.row),
    column: inSmall(reading.ball.column),
    radiusPx: reading.ball.radiusPx / factor,
  };
  const leastPx = LEAST_STONE_MM2 / (rig.mmPerPx * factor) ** 2;
  return findStones(cv, raster, ball, lampSide(rig), leastPx).map((piece) => {
    const { row, column, width, height } = piece.box;
    const edge = Math.min(row, column, raster.height - row - height, raster.width - column - width);
    return { outline: stoneShape(cv, piece, factor).outline, cutOff: edge < CUT_OFF_PX };
  });
}
