import { findStones } from '../../src/analysis/findStones';
import { rigOf } from '../../src/analysis/locateTray';
import { type BallReading, readBall } from '../../src/analysis/readBall';
import { readScene } from '../../src/analysis/readScene';
import type { Rig, RigScene } from '../../src/analysis/report';
import type { Photo } from '../../src/image/photo';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import type { OpenCv } from '../../src/vision/openCv';

const BALL_MM = 16;
const LEAST_STONE_PX = 50;

/** What a photo tells of lamp and camera, without measuring its stones. */
export interface ReadPhoto {
  readonly rig: Rig & { readonly scene: RigScene };
  /** Reads the scene of the same tray in an altered photo, as if the ball were not known. */
  readonly sceneIn: (altered: Photo) => RigScene;
}

/** Finds ball and stones of a photo once; altered copies of it are then read with the stones at the same places. */
export function readPhoto(cv: OpenCv, photo: Photo): ReadPhoto {
  const small = shrinkPhoto(photo, 900);
  const { factor } = small;
  const reading = readBall(photo, small, null) as BallReading;
  const { ball, lamp } = reading;
  const inSmall = (at: number) => (at + 0.5) / factor - 0.5;
  const circle = { row: inSmall(ball.row), column: inSmall(ball.column), radiusPx: ball.radiusPx / factor };
  const [x, y] = lamp.direction;
  const side = [x / Math.hypot(x, y), y / Math.hypot(x, y)] as const;
  const pieces = findStones(cv, small.raster, circle, side, LEAST_STONE_PX);
  return {
    rig: { ...rigOf(reading, BALL_MM), scene: readScene(photo, small, pieces, ball) },
    sceneIn: (altered) => readScene(altered, shrinkPhoto(altered, 900), pieces, null),
  };
}
