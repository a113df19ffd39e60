import type { AnalysisOptions, FoundStones, Stage } from '../analysis/options';
import type { PhotoReport, PixelPoint } from '../analysis/report';
import type { StoneCrop } from '../analysis/stoneCrop';
import type { GlossLanes, StoneGloss } from '../analysis/stoneGloss';
import type { FrameKnowledge, Preview } from '../camera/preview';
import type { RefusalCode } from '../image/notice';

/** A photo, or several shots of one scene, the photo at hand first. */
export type Files = readonly [Blob, ...Blob[]];

/** What a page asks of the analysis worker: one photo, or one scene's shots, at a time. */
export type Order =
  | {
      readonly kind: 'analyze';
      readonly files: Files;
      readonly options: AnalysisOptions;
      /** The same tray with the lamp elsewhere; null for none. */
      readonly lampMoved: Blob | null;
    }
  | { readonly kind: 'stop' }
  | PreviewOrder;

/** What a page asks while a photo is framed, of a worker of its own. */
export type PreviewOrder =
  | {
      readonly kind: 'preview';
      readonly id: number;
      readonly frame: ImageBitmap;
      readonly knowledge: FrameKnowledge;
    }
  | { readonly kind: 'sharpness'; readonly id: number; readonly photo: Blob };

/** What the worker answers: any number of `progress`, then one of the others. */
export type Answer =
  | { readonly kind: 'progress'; readonly stage: Stage; readonly share: number; readonly found?: FoundStones }
  | { readonly kind: 'done'; readonly report: PhotoReport }
  | { readonly kind: 'refused'; readonly code: RefusalCode }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly message: string };

/** A stone whose gloss is to be read. */
export interface GlossOrder {
  readonly id: number;
  /** Functions cannot be handed over: `corner` is where `toPhoto` puts the crop's first pixel. */
  readonly crop: Omit<StoneCrop, 'toPhoto'> & { readonly corner: PixelPoint };
  readonly light: Parameters<GlossLanes['read']>[1];
}

export interface GlossAnswer {
  readonly id: number;
  /** Null when reading it broke. */
  readonly gloss: StoneGloss | null;
}

/** What the worker answers to each `PreviewOrder`, by its id. */
export type PreviewAnswer =
  | { readonly kind: 'preview'; readonly id: number; readonly preview: Preview }
  | { readonly kind: 'sharpness'; readonly id: number; readonly sharpness: number }
  | { readonly kind: 'broken'; readonly id: number; readonly message: string };
