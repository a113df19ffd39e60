import type { Stage } from '../analysis/options';
import type { PhotoReport, PixelPoint } from '../analysis/report';

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
  /** Step of the analysis under way and the share of it that is done, 0 to 1. */
  readonly progress: { readonly stage: Stage; readonly share: number } | null;
  readonly report: PhotoReport | null;
  /** Why there is no report, in one sentence for the person; null while there is nothing to say. */
  readonly sentence: string | null;
  /** Code of the refusal; null when the photo was not refused. */
  readonly code: string | null;
  /** Where the person said the ball lies. */
  readonly ballAt: PixelPoint | null;
}
