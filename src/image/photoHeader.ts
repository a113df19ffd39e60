/** What the header of a photo file says, without decoding it. */
export interface PhotoHeader {
  /** As stored, before any turning; null where the file does not say. */
  readonly size: { readonly widthPx: number; readonly heightPx: number } | null;
  /** False when the end of the file is missing. */
  readonly isWhole: boolean;
}
