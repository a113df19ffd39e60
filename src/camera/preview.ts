import type { PixelPoint, Rig } from '../analysis/report';
import type { PlaceMark, RefusalCode } from '../image/notice';
import type { FrameSketch } from './frameSketch';

/** What is known before a frame is looked at. */
export interface FrameKnowledge {
  /** Diameter of the reference ball, mm; null when no ball lies in the tray. */
  readonly ballMm: number | null;
  /** The remembered rig in pixels of the frame; null when there is none. */
  readonly rig: Rig | null;
  /** Where the ball lay in the frame before, which makes finding it again fast; null to search everywhere. */
  readonly ball: PlaceMark | null;
  /** Whether stones shall be outlined, which takes several times as long as all else. */
  readonly outline: boolean;
  /** Whether second lights, and what hides the lamp, shall be looked for in the ball. */
  readonly checkLamp: boolean;
}

/** A stone as it is drawn over the live picture. */
export interface FramedStone {
  /** In pixels of the frame. */
  readonly outline: readonly PixelPoint[];
  /** True when the frame's edge cuts it off. */
  readonly cutOff: boolean;
}

/** What one frame of the live picture shows. */
export interface Preview {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Whether a ball was looked for. */
  readonly ballWanted: boolean;
  /** The reference ball, pixels of the frame; null when none was seen. */
  readonly ball: PlaceMark | null;
  /** Share of the lamp's image in the ball at which the camera is at its limit, 0 to 1; null without a ball. */
  readonly lampClipped: number | null;
  /** Share of the whole frame at which the camera is at its limit, 0 to 1. */
  readonly clipped: number;
  readonly tooDark: boolean;
  /** Blur read from the lamp's image in the ball, standard deviation, pixels of the frame; null without a ball. */
  readonly blurPx: number | null;
  /** Of the ball, or of the remembered rig; null without either. */
  readonly mmPerPx: number | null;
  /** Lamp and camera as the ball tells them, in pixels of the frame; null without a ball. */
  readonly rig: Rig | null;
  /** The ball mirrors a second light; null when that was not looked for. */
  readonly secondLight: boolean | null;
  /** Something hides part of the lamp from the ball; likewise. */
  readonly lampPartly: boolean | null;
  /** Null when they were not looked for. */
  readonly stones: readonly FramedStone[] | null;
  /** To tell whether something was moved since. */
  readonly sketch: FrameSketch;
  /** Why the frame could not be read to the end; null when it could. */
  readonly refusal: RefusalCode | null;
}

/**
 * Looks at frames while a photo is framed; works beside the analysis of photos and never slows it by waiting. In the
 * page a frame is an ImageBitmap and a still a Blob.
 */
export interface PreviewClient<Frame, Still> {
  /**
   * Looks at one frame, which is closed afterwards.
   *
   * @returns What it shows; null, at once, while an earlier frame is still being looked at.
   * @throws Error if the look broke.
   */
  look(frame: Frame, knowledge: FrameKnowledge): Promise<Preview | null>;
  /**
   * Measures how sharp a photo is, see `sharpness`.
   *
   * @throws Error if it cannot be decoded.
   */
  sharpnessOf(photo: Still): Promise<number>;
  /** Ends the worker; what is under way is rejected with an `AbortError`. */
  close(): void;
}
