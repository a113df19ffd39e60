import { fresnelReflectance } from '../optics/fresnelReflectance';
import { combine, dot, normalize, type Vector } from '../optics/vector';
import type { BallFace } from './ballFace';
import { BALL_INDEX, type BallLamp } from './ballLamp';
import { ballNormal } from './ballNormal';
import { type BrightPatch, brightPatches } from './brightPatches';
import type { Circle } from './circleFit';

/** A source of light beside the lamp, as the ball mirrors it. */
export interface SecondLight {
  /** Place of its image in the crop, and radius of the disc of equal area. */
  readonly row: number;
  readonly column: number;
  readonly radiusPx: number;
  /** Unit vector to the source: x right, y up, z along the camera's axis. */
  readonly direction: Vector;
  /** Its radiance as a share of the lamp's. */
  readonly share: number;
}

/** A light outshines a white sheet in the lamp's light so many times; near the middle, where no stone is mirrored, it may be dimmer. */
const TIMES_SHEET = { outer: 1.3, inner: 0.5 };
/** The middle of the face, share of the radius: mirrored rays rise more than 37° above the tray. */
const INNER_SHARE = 0.45;
/** Dimmer sources do no harm: share of the lamp's radiance. */
const LEAST_SHARE = 0.02;
/** The lamp's own image with its glow reaches so many of its radii, and so many pixels. */
const LAMP_REACH = { radii: 1.5, px: 2.5 };
/** Fewer pixels are noise, or the glint of a stone. */
const FEWEST_PIXELS = 5;
const LEAST_RADIUS_SHARE = 0.022;

/**
 * Finds sources of light beside the lamp in the reference ball.
 *
 * Everything above the tray is mirrored inside 0.7 radii. What only scatters the lamp's light is no brighter
 * than a white sheet, L·sin²(δ/2) for a lamp of radiance L and angular diameter δ, plus the room.
 *
 * @param face - What the ball mirrors.
 * @param ball - The ball's circle in the crop.
 * @param lamp - What was read of the lamp.
 * @param view - Unit vector from the ball to the camera.
 * @returns Sources, brightest first; empty when the lamp is alone.
 */
export function secondLights(
  face: BallFace,
  ball: Circle,
  lamp: Pick<BallLamp, 'lampRadiance' | 'angularDiameterDeg' | 'blurPx'>,
  view: Vector,
): SecondLight[] {
  const normalAt = ballNormal(ball, view);
  const lampPatch = lampPatchOf(face);
  if (!lampPatch) return [];
  const lampRadius = Math.sqrt(lampPatch.pixels.length / Math.PI);
  const reach = LAMP_REACH.radii * lampRadius + LAMP_REACH.px + 2 * lamp.blurPx;
  const sheet = lamp.lampRadiance * Math.sin((lamp.angularDiameterDeg * Math.PI) / 360) ** 2;
  const levelAt = (i: number) => {
    const [row, column] = [Math.floor(i / face.width), i % face.width];
    if (Math.hypot(row - lampPatch.row, column - lampPatch.column) < reach) return Number.POSITIVE_INFINITY;
    const share = Math.hypot(row - ball.row, column - ball.column) / ball.radiusPx;
    const mirrored = fresnelReflectance(BALL_INDEX, Math.sqrt(Math.max(0, 1 - share * share)));
    const times = share < INNER_SHARE ? TIMES_SHEET.inner : TIMES_SHEET.outer;
    return (
      Math.max(times * sheet, LEAST_SHARE * lamp.lampRadiance) * mirrored +
      Math.max(0, times - 1) * face.room(share)
    );
  };
  const fewest = Math.max(FEWEST_PIXELS, Math.PI * (LEAST_RADIUS_SHARE * ball.radiusPx) ** 2);
  return brightPatches(face.excess, face.width, levelAt)
    .filter(({ pixels }) => pixels.length >= fewest)
    .map(({ pixels, row, column, peak }) => {
      const half = normalAt(row, column);
      const radiance = peak / fresnelReflectance(BALL_INDEX, dot(half, view));
      return {
        row,
        column,
        radiusPx: Math.sqrt(pixels.length / Math.PI),
        direction: normalize(combine([2 * dot(half, view), half], [-1, view])),
        share: radiance / lamp.lampRadiance,
      };
    });
}

/** The lamp's image: what is above half of the brightest, around it. */
function lampPatchOf({ excess, width, brightest, peak }: BallFace): BrightPatch | null {
  const at = brightest.row * width + brightest.column;
  return brightPatches(excess, width, () => 0.5 * peak).find(({ pixels }) => pixels.includes(at)) ?? null;
}
