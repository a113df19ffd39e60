/** A decoded photograph: upright, sRGB, 8 bits a channel. */
export interface Photo {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Row-major RGBA, `4 * widthPx * heightPx` bytes. */
  readonly rgba: Uint8ClampedArray;
}
