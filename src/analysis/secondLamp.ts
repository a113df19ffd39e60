import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { moved, rigidMatch, type SizedPoint } from '../measure/rigidMatch';
import type { OpenCv } from '../vision/openCv';
import { locateTray, type Tray } from './locateTray';
import type { AnalysisOptions, Watch } from './options';
import type { PixelPoint } from './report';

/** A second photo of the same tray, its lamp elsewhere, laid onto the first. */
export interface SecondLamp {
  readonly photo: Photo;
  /** Toward the second photo's lamp as the first photo's stones see it: x right, y up. */
  readonly lampXy: readonly [number, number];
  /** The same as the second photo itself shows it. */
  readonly ownLampXy: readonly [number, number];
  readonly mmPerPx: number;
  /** Where a pixel of the first photo lies in the second. */
  readonly toSecond: (at: PixelPoint) => PixelPoint;
  /** By how much the tray was turned between the photos, degrees, clockwise in the picture. */
  readonly turnDeg: number;
  /** Stones and ball that were found in both. */
  readonly inBoth: number;
}

/** The lamp must have gone at least this far, as a difference of unit vectors seen from above, for shading to follow it. */
const LEAST_WAY = 0.25;

/** Why a second photo cannot be used. */
export type SecondLampFault = 'moved-other-tray' | 'moved-same-lamp' | 'moved-no-ball';

export function isFault(second: SecondLamp | SecondLampFault): second is SecondLampFault {
  return typeof second === 'string';
}

/**
 * Finds everything in a second photo and lays it onto the first.
 *
 * @param first - The photo at hand and what lies where in it.
 * @param photo - The same stones, the lamp moved or the tray turned; the ball must be in it.
 */
export async function laySecondLamp(
  first: { readonly photo: Photo; readonly tray: Tray },
  photo: Photo,
  { ballMm }: AnalysisOptions,
  cv: OpenCv,
  watch: Watch,
): Promise<SecondLamp | SecondLampFault> {
  if (ballMm === null) return 'moved-no-ball';
  try {
    const tray = await locateTray(photo, { ballMm, ballAt: null, rig: null }, cv, watch);
    return secondLamp(first, { photo, tray });
  } catch (error) {
    if (error instanceof Refusal) return 'moved-no-ball';
    throw error;
  }
}

/**
 * Lays a second photo onto the first by the places and sizes of its stones and ball.
 *
 * @param first - The photo at hand and what lies where in it.
 * @param second - The same stones, the lamp moved or the tray turned.
 * @returns How they lie on each other, or why they cannot be compared.
 */
export function secondLamp(
  first: { readonly photo: Photo; readonly tray: Tray },
  second: { readonly photo: Photo; readonly tray: Tray },
): SecondLamp | SecondLampFault {
  const move = rigidMatch(pointsOf(first.tray), pointsOf(second.tray));
  if (!move) return 'moved-other-tray';
  const from = first.tray.expected.mmPerPx;
  const to = second.tray.expected.mmPerPx;
  const [x, y] = second.tray.expected.light.direction;
  // The picture's y grows downward, the lamp's upward: turning back by the move is a turn forward for the lamp.
  const [c, s] = [Math.cos(move.turnRad), Math.sin(move.turnRad)];
  const lampXy = [c * x - s * y, s * x + c * y] as const;
  const [ownX, ownY] = first.tray.expected.light.direction;
  if (Math.hypot(ownX - lampXy[0], ownY - lampXy[1]) < LEAST_WAY) return 'moved-same-lamp';
  return {
    photo: second.photo,
    lampXy,
    ownLampXy: [x, y],
    mmPerPx: to,
    toSecond: ([row, column]) => {
      const at = moved(move, { x: column * from, y: row * from });
      return [at.y / to, at.x / to];
    },
    turnDeg: (move.turnRad * 180) / Math.PI,
    inBoth: move.pairs.length,
  };
}

function pointsOf({ expected, stones, reading }: Tray): SizedPoint[] {
  const mm = expected.mmPerPx;
  const points = stones.map(({ shape }) => ({
    x: shape.center[1] * mm,
    y: shape.center[0] * mm,
    areaMm2: shape.areaPx * mm * mm,
  }));
  if (!reading) return points;
  const { row, column, radiusPx } = reading.ball;
  return [...points, { x: column * mm, y: row * mm, areaMm2: Math.PI * (radiusPx * mm) ** 2 }];
}
