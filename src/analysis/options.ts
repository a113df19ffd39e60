import type { Engines } from '../vision/openEngines';
import type { PixelPoint, Rig } from './report';
import type { GlossLanes } from './stoneGloss';

/** What an analysis runs on. */
export interface AnalysisEngines extends Engines {
  /** Left out where stones are read one after the other. */
  readonly glossLanes?: GlossLanes | null;
}

/** What the person says about a photo before it is measured. */
export interface AnalysisOptions {
  /** Diameter of the reference ball, mm; null when no ball lies in the tray. */
  readonly ballMm: number | null;
  /** A point on the ball when the person showed where it lies; null to look for it. */
  readonly ballAt: PixelPoint | null;
  /** The calibrated rig used when there is no ball; null when there is none. */
  readonly rig: Rig | null;
}

/** Steps of an analysis in the order a person sees them go by. */
export const STAGES = ['decode', 'ball', 'stones', 'highlights', 'flaws'] as const;

export type Stage = (typeof STAGES)[number];

/** Where the stones lie, known long before all about them is. */
export interface FoundStones {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Photo rows and columns. */
  readonly outlines: readonly (readonly PixelPoint[])[];
}

/**
 * Called between parts of the work; lets the caller show progress and stop the work.
 *
 * @param stage - Step under way.
 * @param share - Part of that step already done, 0 to 1.
 * @param found - Once, as soon as the stones are found.
 * @returns A promise to wait for, so that a worker can read its messages.
 * @throws Anything the caller wants to stop the analysis with, such as an AbortError.
 */
export type Watch = (stage: Stage, share: number, found?: FoundStones) => void | Promise<void>;
