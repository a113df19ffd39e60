import { type PlaceMark, type Warning, warning, warningAt } from '../image/notice';
import type { Photo } from '../image/photo';
import type { ShrunkPhoto } from '../image/shrinkPhoto';
import { BALL_INDEX } from '../measure/ballLamp';
import { clippedPatches } from '../measure/clippedPatches';
import { tooDark } from '../measure/tooDark';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { BallChecks } from './ballChecks';
import type { BallReading } from './readBall';
import type { Rig, StoneReport } from './report';
import { wetCheck } from './wetCheck';

/** What is known of a photo when it is checked. */
export interface CheckedPhoto {
  readonly photo: Photo;
  readonly small: ShrunkPhoto;
  /** Null when the photo has no ball. */
  readonly reading: BallReading | null;
  /** What the ball tells of the light, see `ballChecks`; null without a ball. */
  readonly light: BallChecks | null;
  readonly rig: Rig;
  readonly stones: readonly StoneReport[];
}

/** Camera blur on the stones above which near-mirrors become uncertain, mm. */
export const WARNED_BLUR_MM = 0.15;
/** Share of the ball's highlight at the camera's limit above which the mirror's radiance is only a lower bound. */
export const CLIPPED_SHARE = 0.2;
/** Share of the picture at the camera's limit: more than the glints of a tray of polished stones. */
export const CLIPPED_PICTURE = 0.01;
/** Clipped places marked. */
const MARKED_PATCHES = 3;
/** Compression stronger than this softened the edges of near-mirrors on the gloss bench's copies of quality 70 and 80, not of 95. */
export const LEAST_JPEG_QUALITY = 85;
export const FEWEST_PX_PER_MM = 4;
/** Lamps wider than this make a satin stone look like a mirror, degrees. */
export const WIDEST_LAMP_DEG = 25;

/**
 * Checks a photo before any number of it is trusted: focus, exposure, light, stones, resolution, in this order.
 *
 * @param checked - The photo and what was found in it.
 * @returns Warnings with the places and stones they are about.
 */
export function photoChecks(checked: CheckedPhoto): Warning[] {
  const { photo, reading, light, rig, stones } = checked;
  const ball = reading ? { marks: [reading.ball].map(plainMark) } : {};
  const lamp = light?.lampAt ? { marks: [light.lampAt] } : {};
  const warnings: Warning[] = [];
  if (rig.blurPx * rig.mmPerPx > WARNED_BLUR_MM) warnings.push(warningAt('blurred', ball));
  if ((photo.jpegQuality ?? 100) < LEAST_JPEG_QUALITY) warnings.push(warning('compressed'));
  warnings.push(...exposureWarnings(checked, lamp, ball));
  if (light) warnings.push(...light.warnings);
  const room = light?.room ?? 0;
  warnings.push(...wetCheck({ ...checked, ball: reading?.ball ?? null, room }));
  if (rig.light.angularDiameterDeg > WIDEST_LAMP_DEG) warnings.push(warningAt('lamp-too-large', lamp));
  const cut = stones.filter(({ cutOff }) => cutOff).map(({ id }) => id);
  if (cut.length > 0) warnings.push(warningAt('stone-cut-off', { stones: cut }));
  if (1 / rig.mmPerPx < FEWEST_PX_PER_MM) warnings.push(warningAt('low-resolution', ball));
  return warnings;
}

const plainMark = ({ row, column, radiusPx }: PlaceMark): PlaceMark => ({ row, column, radiusPx });

interface Where {
  readonly marks?: readonly PlaceMark[];
}

function exposureWarnings({ small, reading, rig }: CheckedPhoto, lamp: Where, ball: Where): Warning[] {
  const highlight = reading && rig.lampRadiance * fresnelReflectance(BALL_INDEX, 1);
  if (tooDark(small.raster, highlight)) return [warningAt('too-dark', ball)];
  const warnings: Warning[] = [];
  const { share, patches } = clippedPatches(small.raster);
  if (share > CLIPPED_PICTURE) {
    const full = (at: number) => (at + 0.5) * small.factor - 0.5;
    const marks = patches.slice(0, MARKED_PATCHES).map(({ row, column, pixels }) => ({
      row: full(row),
      column: full(column),
      radiusPx: small.factor * Math.max(3, Math.sqrt(pixels.length / Math.PI)),
    }));
    warnings.push(warningAt('clipped', { marks }));
  }
  if (reading && reading.lamp.clippedShare > CLIPPED_SHARE) warnings.push(warningAt('ball-clipped', lamp));
  return warnings;
}
