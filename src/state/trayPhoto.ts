import type { FoundStones, Stage } from '../analysis/options';
import type { PhotoReport, PixelPoint } from '../analysis/report';
import type { RefusalCode } from '../image/notice';

export type PhotoStatus = 'waiting' | 'measuring' | 'measured' | 'refused' | 'failed' | 'cancelled';

/** One photo in the strip and what is known of it. */
export interface TrayPhoto {
  /** 1, 2, 3 … in the order in which photos were added. */
  readonly id: number;
  readonly name: string;
  readonly file: Blob;
  /** Further shots of the same scene, darker as a rule, to be merged with it. */
  readonly shots: readonly Blob[];
  /** The same tray photographed with the lamp elsewhere, which tells relief from pattern; null for none. */
  readonly lampMoved: Blob | null;
  /** True for the made photo the page opens with. */
  readonly sample: boolean;
  readonly status: PhotoStatus;
  /** Step of the analysis under way, the share of it that is done, 0 to 1, and the stones as soon as they are found. */
  readonly progress: { readonly stage: Stage; readonly share: number; readonly found?: FoundStones } | null;
  readonly report: PhotoReport | null;
  /** Code of the refusal; null when the photo was not refused. */
  readonly code: RefusalCode | null;
  /** What broke, in the engine's words; null unless the work failed. `troubleSentence` says all of it. */
  readonly detail: string | null;
  /** Where the person said the ball lies. */
  readonly ballAt: PixelPoint | null;
}
