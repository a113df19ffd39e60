import type { Preview } from './preview';

/** A check that is not met, one that is, and one that cannot be told yet. */
export type CheckState = 'good' | 'bad' | 'unknown';

/** What a person should see become good before the photo is taken. */
export interface FrameChecks {
  /** Null when the photo needs no ball. */
  readonly ball: CheckState | null;
  readonly exposure: CheckState;
  readonly focus: CheckState;
  readonly scale: CheckState;
}

/** As for a photo (`analysis/photoChecks.ts`): shares at the camera's limit, mm of blur, pixels per mm. */
const CLIPPED_LAMP = 0.2;
const CLIPPED_FRAME = 0.01;
const BLURRED_MM = 0.15;
const FEWEST_PX_PER_MM = 4;
/** Less blur than this is not told apart from none in a reduced frame, pixels of the frame. */
const LEAST_BLUR_PX = 0.5;

/**
 * Judges a frame by what a photo taken now would be like.
 *
 * @param preview - What the frame shows.
 * @param shotPx - Longer side of the photo that would be taken, pixels.
 */
export function frameChecks(preview: Preview, shotPx: number): FrameChecks {
  const size = scale(preview, shotPx);
  // A ball seen too small tells nothing of the focus.
  const isSeen = size !== 'bad' && (preview.ball !== null || !preview.ballWanted);
  return {
    ball: preview.ballWanted ? (preview.ball ? 'good' : 'bad') : null,
    exposure: exposure(preview),
    focus: focus(preview, isSeen),
    scale: size,
  };
}

/** Whether the lamp's image in the ball, or without a ball the picture, is washed out. */
export function isTooBright({ lampClipped, clipped }: Preview): boolean {
  return lampClipped !== null ? lampClipped > CLIPPED_LAMP : clipped > CLIPPED_FRAME;
}

function exposure(preview: Preview): CheckState {
  if (preview.tooDark || preview.refusal === 'too-dark') return 'bad';
  if (preview.ballWanted && preview.ball === null) return 'unknown';
  return isTooBright(preview) ? 'bad' : 'good';
}

function focus({ refusal, blurPx, mmPerPx }: Preview, isSeen: boolean): CheckState {
  if (refusal === 'out-of-focus') return 'bad';
  if (!isSeen) return 'unknown';
  const isBlurred =
    blurPx !== null && mmPerPx !== null && blurPx > LEAST_BLUR_PX && blurPx * mmPerPx > BLURRED_MM;
  return isBlurred ? 'bad' : 'good';
}

function scale({ widthPx, heightPx, mmPerPx }: Preview, shotPx: number): CheckState {
  if (mmPerPx === null) return 'unknown';
  const shotPxPerMm = shotPx / Math.max(widthPx, heightPx) / mmPerPx;
  return shotPxPerMm < FEWEST_PX_PER_MM ? 'bad' : 'good';
}
